package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.sheet.Sheet;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Problems;
import dev.ringout.support.Folders;
import dev.ringout.support.LotFolder;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many units of one list, as a lead hand asks for them. */
class LotCommandTest {
  @TempDir private Path folder;
  private LotFolder cables = new LotFolder(Path.of(""), 1, 1);

  @BeforeEach
  void tenGoodUnits() {
    cables = new LotFolder(folder, 12, 26).good(10);
  }

  private Run lot(Object... more) {
    cables.write();
    Object[] words = new Object[more.length + 3];
    words[0] = "lot";
    words[1] = cables.list();
    words[2] = cables.sheets();
    System.arraycopy(more, 0, words, 3, more.length);
    return Run.of(words);
  }

  private static String flat(Run run) {
    return run.out().replaceAll("\\s+", " ");
  }

  @Test
  void a_good_lot_conforms() {
    Run run = lot();
    assertEquals(0, run.code(), run.err());
    assertEquals("", run.err());
    assertTrue(
        run.out().startsWith("10 units: 10 conform. NO INSULATION TEST: the list asks for"),
        run.out());
    assertTrue(flat(run).contains("10 of 10 whose test has an end passed at once (100 %)"));
    assertTrue(flat(run).contains("of units made like these 69 % to 100 % would (95 %)"));
  }

  /** Found as a mechanic would: a filled sheet with another serial number is another good unit. */
  @Test
  void a_sheet_that_was_copied_for_another_unit_is_named() throws IOException {
    cables = new LotFolder(folder, 20, 26).good(3);
    cables.write();
    Path copy = cables.sheets().resolve("copied");
    Folders.copy(cables.sheets().resolve("unit-0002"), copy);
    Path job = copy.resolve("job.csv");
    Files.writeString(job, Files.readString(job).replace("0002", "0009"));
    Run run = Run.of("lot", cables.list(), cables.sheets());
    assertTrue(
        flat(run).contains("Copied! 0002, 0009 have the same values, digit for digit"), run.out());
  }

  @Test
  void what_fails_where_stands_beside_each_unit() {
    cables.unit("0003").reads(5, "OL");
    cables.unit("0008").reads(2, "");
    Run run = lot();
    assertEquals(1, run.code(), run.err());
    assertTrue(run.out().startsWith("10 units: 8 conform, 1 has faults, 1 is not complete."));
    assertTrue(run.out().contains("  0003  FAULTS                open W5\n"), run.out());
    assertTrue(run.out().contains("  0008  not complete          1 not tested; "), run.out());
  }

  @Test
  void a_lot_without_faults_that_is_not_proven_is_not_complete() {
    cables.unit("0008").reads(2, "");
    assertEquals(2, lot().code());
  }

  @Test
  void a_fault_that_several_units_share_puts_the_paper_under_suspicion() {
    for (String serial : List.of("0002", "0004", "0007")) {
      cables.unit(serial).reads(5, "OL");
    }
    Run run = lot();
    assertTrue(
        flat(run)
            .contains(
                "3 units: W5 is open: J1-5 and P2-5 are not joined. Units 0002, 0004, 0007."
                    + " Look at the list, the drawing and the sleeves first: all were wired by them"),
        run.out());
  }

  @Test
  void poor_joints_at_one_place_put_the_tool_under_suspicion() {
    for (String serial : List.of("0002", "0004", "0007", "0009")) {
      cables.unit(serial).reads(5, "0.3100");
    }
    assertTrue(
        flat(lot())
            .contains("Look at the crimp tool, its setting and the batch of contacts first"));
  }

  @Test
  void two_that_meet_may_have_met_by_chance() {
    for (int i = 1; i <= 8; i++) {
      cables.unit("000" + i).reads(i == 8 ? 1 : i, "OL");
    }
    assertTrue(flat(lot()).contains("With so few units this may be chance."));
  }

  @Test
  void a_unit_that_passed_only_when_it_was_read_again_did_not_pass_at_once() throws IOException {
    cables.unit("0003").reads(5, "OL");
    cables.write();
    Path retest = Files.createDirectories(cables.sheets().resolve("unit-0003-again"));
    Files.writeString(
        retest.resolve("job.csv"),
        "Name,Value\nserial number,3\ncontinuity range,40 MΩ\nlead null,nulled\n");
    Files.writeString(retest.resolve("continuity.csv"), "From,To,Reading\nJ1-5,P2-5,0.106\n");
    Run run = Run.of("lot", cables.list(), cables.sheets());
    assertEquals(0, run.code(), run.out() + run.err());
    assertTrue(run.out().contains("  0003  conforms after retest\n"), run.out());
    assertTrue(flat(run).contains("9 of 10 whose test has an end passed at once"), run.out());
  }

  @Test
  void a_lot_says_of_a_unit_what_a_check_of_it_says() {
    cables.unit("0003").reads(5, "0.3100");
    lot();
    for (String serial : List.of("0001", "0003")) {
      Path sheet = cables.sheets().resolve("unit-" + serial);
      Run alone = Run.of("lot", cables.list(), sheet);
      assertEquals(Run.of("check", cables.list(), sheet).code(), alone.code());
    }
  }

  /** A wire that is unequal to its fellows is a fault, though each of its readings passes. */
  @Test
  void a_unit_whose_first_sheet_showed_a_fault_did_not_pass_at_once() throws IOException {
    cables.write();
    Path first = cables.sheets().resolve("unit-0003");
    Path again = cables.sheets().resolve("unit-0003 again");
    Files.createDirectories(again);
    for (String table : List.of("continuity.csv", "job.csv")) {
      Files.copy(first.resolve(table), again.resolve(table));
    }
    String rows = Files.readString(first.resolve("continuity.csv"));
    Files.writeString(
        first.resolve("continuity.csv"), rows.replaceFirst("(J1-5,P2-5,)[0-9.]+", "$10.1500"));
    assertEquals(1, Run.of("check", cables.list(), first).code());
    Run run = Run.of("lot", cables.list(), cables.sheets());
    assertEquals(0, run.code(), run.err());
    assertTrue(flat(run).contains("0003 conforms after retest"), run.out());
    assertTrue(flat(run).contains("9 of 10 whose test has an end passed at once"), run.out());
  }

  @Test
  void a_sheet_is_one_by_what_is_in_it_and_not_by_its_name() throws IOException {
    cables.write();
    Files.writeString(cables.sheets().resolve("more.txt"), "From\tTo\tReading\nJ1-1\tP2-1\tOL\n");
    Files.writeString(cables.sheets().resolve("read me.txt"), "Sheets of Monday, by hand.\n");
    Run run = Run.of("lot", cables.list(), cables.sheets());
    assertEquals(1, run.code(), run.out() + run.err());
    assertTrue(run.err().contains("read me.txt: is not a table and is not read"), run.err());
  }

  @Test
  void a_sheet_that_cant_be_understood_keeps_none_of_the_others_from_being_judged()
      throws IOException {
    cables.write();
    Files.writeString(
        cables.sheets().resolve("unit-0004").resolve("continuity.csv"), "From,Reading\nJ1-1,0.1\n");
    Run run = Run.of("lot", cables.list(), cables.sheets());
    assertEquals(65, run.code());
    assertTrue(run.out().startsWith("10 units: 9 conform, 1 can't be checked."), run.out());
    assertTrue(run.err().contains("unit-0004/continuity.csv"), run.err());
    Run json = Run.of("lot", cables.list(), cables.sheets(), "--json");
    assertTrue(json.out().contains("\"refused\" : [ {"), json.out());
  }

  @Test
  void a_cell_that_cant_be_read_is_named_and_the_lot_has_no_clean_exit() {
    cables.unit("0004").reads(5, "O.1O6");
    Run run = lot();
    assertEquals(65, run.code(), run.out());
    assertTrue(run.out().contains("1 cell not read"), run.out());
    assertTrue(run.err().contains("unit-0004/continuity.csv"), run.err());
  }

  @Test
  void a_sheet_that_is_not_there_is_missing() {
    cables.write();
    Run run = Run.of("lot", cables.list(), cables.sheets(), folder.resolve("nowhere.xlsx"));
    assertEquals(66, run.code(), run.out());
    assertTrue(run.err().contains("nowhere.xlsx"), run.err());
    assertEquals(66, Run.of("lot", folder.resolve("no-list"), cables.sheets()).code());
  }

  @Test
  void a_folder_without_sheets_is_no_lot() throws IOException {
    cables.write();
    Path empty = Files.createDirectories(folder.resolve("empty"));
    Files.writeString(empty.resolve("read me.txt"), "nothing");
    Run run = Run.of("lot", cables.list(), empty);
    assertTrue(run.err().contains("empty: is a folder that holds no test sheet"), run.err());
    assertTrue(run.err().contains("empty/read me.txt: is not a table and is not read"), run.err());
    assertEquals(65, run.code());
  }

  @Test
  void a_sheet_without_a_serial_number_is_a_unit_of_its_own() {
    cables.unit("0004").job("serial number", "");
    Run run = lot();
    assertTrue(run.err().contains("gives no serial number: taken for a unit of its own"));
    assertTrue(run.out().contains("  unit-0004 "), run.out());
  }

  @Test
  void a_difference_between_stations_is_told_and_one_between_people_is_not_made_up() {
    for (int i = 11; i <= 20; i++) {
      cables.unit("00" + i).level(0.004);
    }
    for (int i = 1; i <= 20; i++) {
      cables
          .unit(String.format(Locale.ROOT, "%04d", i))
          .job("station", i <= 10 ? "bench 1" : "bench 2")
          .job("operator", i % 2 == 0 ? "R. Adeyemi" : "\"Lindqvist, M.\"")
          .job("date", String.format(Locale.ROOT, "2026-11-%02d", i));
    }
    String page = flat(lot());
    assertTrue(page.contains("By station. They read differently"), page);
    assertTrue(page.contains("By person. No difference that chance does not explain."), page);
    assertTrue(page.contains("2026-11-01 to 2026-11-20, 20 units: all joins rise by"), page);
  }

  @Test
  void too_few_units_of_each_say_nothing() {
    for (int i = 1; i <= 10; i++) {
      cables
          .unit(String.format(Locale.ROOT, "%04d", i))
          .job("crimp tool", i <= 2 ? "CT-7" : "CT-9");
    }
    String page = flat(lot());
    assertTrue(page.contains("By crimp tool. Too few units of each to say"), page);
  }

  @Test
  void no_line_is_wider_than_80_columns() {
    cables.unit("0003").reads(5, "OL").job("station", "a bench with a name as long as this one is");
    cables.unit("0004").reads(5, "OL").job("station", "another");
    cables.unit("a serial number that is so long that no page would hold it in one line");
    Run run = lot();
    assertEquals(List.of(), run.out().lines().filter(line -> line.length() > 80).toList());
  }

  @Test
  void the_workbook_and_the_page_say_the_same() throws Exception {
    cables.unit("0003").reads(5, "OL");
    cables.unit("0009").poor(7, 0.008);
    Path book = folder.resolve("lot.xlsx");
    assertEquals(1, lot("-o", book).code());
    try (TabularFile file = TabularFile.open(book, "lot", new Problems())) {
      assertEquals(
          List.of("Lot", "Stand out", "Units", "Kinds", "Places", "Joins"),
          file.sheets().stream().map(Sheet::name).toList());
    }
    Path page = folder.resolve("lot.html");
    assertEquals(1, lot("-o", page).code());
    String html = Files.readString(page);
    assertTrue(html.contains("J1-7 to P2-7 in 0009"), "named on the first page");
    assertTrue(html.contains("aria-label=\"Joins over the units"), "drawn");
    assertFalse(html.contains("NaN"), "no number that is none");
    Path pdf = folder.resolve("lot.pdf");
    assertEquals(1, lot("-o", pdf).code());
    assertTrue(Files.size(pdf) > 5_000);
  }

  @Test
  void the_list_may_lie_among_its_sheets() throws IOException {
    cables.write();
    Path list = cables.sheets().resolve("list.csv");
    Files.writeString(list, "Wire,From,To\nW1,J1-1,P2-1\n");
    Run run = Run.of("lot", list, cables.sheets());
    assertFalse(run.out().contains("list.csv "), run.out());
  }
}

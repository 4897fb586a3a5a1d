package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import dev.ringout.support.LotFolder;
import dev.ringout.support.Run;
import dev.ringout.support.Triggers;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Units and readings in a store, as a tester uses it. */
class StoreCommandTest {
  private static final Path SAMPLE = Path.of("harness-samples/swing-bridge");
  private static final Path BOX = SAMPLE.resolve("junction-box.xlsx");

  @TempDir private Path folder;

  private Run at(Object... words) {
    List<Object> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--store", folder.resolve("bench.db")));
    return Run.of(all.toArray());
  }

  private static String flat(Run run) {
    return run.out().replaceAll("\\s+", " ");
  }

  private Path sheet(String name, String serial, String rows) throws IOException {
    Path sheet = Files.createDirectories(folder.resolve(name));
    Files.writeString(
        sheet.resolve("job.csv"),
        "Name,Value\nserial number,\"" + serial.replace("\"", "\"\"") + "\"\n");
    Files.writeString(sheet.resolve("continuity.csv"), "From,To,Reading\n" + rows);
    return sheet;
  }

  private Path list(String revision) throws IOException {
    Path list = Files.createDirectories(folder.resolve("list " + revision));
    Files.writeString(list.resolve("wires.csv"), "Wire,From,To\nW1,J1-1,P2-1\n");
    Files.writeString(
        list.resolve("header.csv"), "Name,Value\ntitle,Cable\nrevision," + revision + "\n");
    return list;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "point-to-point.xlsx",
        "point-to-point",
        "point-to-point-clean.xlsx",
        "point-to-point-values"
      })
  void a_check_of_a_unit_is_byte_for_byte_that_of_its_files(String readings) {
    Path sheet = SAMPLE.resolve(readings);
    assertEquals(0, at("store", "add", BOX, sheet).code());
    String serial =
        readings.contains("clean") ? "0417" : readings.contains("values") ? "0419" : "0418";
    Run files = Run.of("check", BOX, sheet, "--json");
    Run unit = at("check", "unit:" + serial, "--json");
    assertEquals(files.out(), unit.out());
    assertEquals(files.err(), unit.err());
    assertEquals(files.code(), unit.code());
    assertEquals(files, at("check", BOX, "unit:" + serial, "--json"), "readings alone");
    Run page = at("check", "unit:" + serial);
    String hint = "(?s)\n  ringout .*";
    assertEquals(
        Run.of("check", BOX, sheet).out().replaceFirst(hint, ""),
        page.out().replaceFirst(hint, ""));
  }

  @Test
  void what_is_odd_in_a_sheet_is_told_years_later_as_on_the_first_day() throws IOException {
    Path list = list("A");
    Path sheet = sheet("odd", "7", "J1-1,P2-1,0.2\nJ1-1,P2-1,-0.02\n");
    Files.writeString(sheet.resolve("photographs.csv"), "File\na.jpg\n");
    Files.write(
        sheet.resolve("job.csv"),
        "Name,Value\nserial number,7\nlead wire,x\noperator,Jos\u00e9\n"
            .getBytes(StandardCharsets.ISO_8859_1));
    Run files = Run.of("check", list, sheet);
    assertTrue(files.err().contains("is not UTF-8"), files.err());
    assertTrue(files.err().contains("is not read"), files.err());
    at("store", "add", list, sheet);
    assertEquals(files.err(), at("check", "unit:7").err());
  }

  @Test
  void the_same_sheet_twice_adds_nothing() {
    Path sheet = SAMPLE.resolve("point-to-point.xlsx");
    assertTrue(flat(at("store", "add", BOX, sheet)).contains("1 sheet added"));
    String before = at("store", "check").out();
    Run again = at("store", "add", BOX, sheet);
    assertEquals(0, again.code());
    assertTrue(flat(again).contains("unit 0418, was there already, nothing added"), again.out());
    assertEquals(before, at("store", "check").out());
  }

  @Test
  void a_retest_is_put_beside_the_first_failing_values_and_both_stay() throws IOException {
    Path list = list("A");
    at("store", "add", list, sheet("first", "0418", "J1-1,P2-1,OL\n"));
    at("store", "add", list, sheet("again", "418", "J1-1,P2-1,0.2\n"));
    Run history = at("units", "0418");
    assertTrue(
        flat(history).contains("1 first, 1 reading then the unit has 1 fault"), history.out());
    assertTrue(flat(history).contains("2 again, 1 reading then the unit"), history.out());
    assertTrue(at("check", "unit:0418").out().contains("READINGS THAT CHANGED"));
    assertTrue(flat(at("units")).contains("0418 conforms, 2 tests"), at("units").out());
  }

  /** Two sheets are called alike more often than not; each has its own day. */
  @Test
  void an_older_sheet_of_the_same_name_clears_no_failing_reading() throws IOException {
    Path list = list("A");
    Path failing = sheet("a/sheet", "7", "J1-1,P2-1,OL\n");
    Files.writeString(failing.resolve("job.csv"), "Name,Value\nserial number,7\ndate,2026-11-21\n");
    Path older = sheet("b/sheet", "7", "J1-1,P2-1,0.2\n");
    Files.writeString(older.resolve("job.csv"), "Name,Value\nserial number,7\ndate,2026-11-20\n");
    at("store", "add", list, failing);
    Run added = at("store", "add", list, older);
    assertTrue(flat(added).contains("the unit has 1 fault"), added.out());
    assertTrue(flat(at("units")).contains("7 has 1 fault, 2 tests"), at("units").out());
    assertEquals(1, at("check", "unit:7").code());
  }

  @Test
  void a_sheet_that_cant_be_understood_is_refused_as_a_whole_and_the_others_are_added()
      throws IOException {
    Path list = list("A");
    Run run =
        at(
            "store",
            "add",
            list,
            sheet("bad", "1", "J1-1,P2-1,0.2\nJ1-1,P9-9,0.2\n"),
            sheet("good", "2", "J1-1,P2-1,0.2\n"));
    assertEquals(65, run.code());
    assertTrue(run.err().contains("bad/continuity.csv!B3"), run.err());
    assertTrue(flat(run).contains("1 sheet added, 0 there already, 1 refused."), run.out());
    assertTrue(flat(at("units")).startsWith("1 unit in "), at("units").out());
  }

  @Test
  void a_sheet_without_a_serial_number_or_of_another_revision_is_refused() throws IOException {
    Path list = list("A");
    Run none = at("store", "add", list, sheet("none", "", "J1-1,P2-1,0.2\n"));
    assertEquals(65, none.code());
    assertTrue(none.err().contains("gives no serial number"), none.err());
    Path other = sheet("other", "3", "J1-1,P2-1,0.2\n");
    Files.writeString(other.resolve("job.csv"), "Name,Value\nserial number,3\nrevision,B\n");
    assertTrue(at("store", "add", list, other).err().contains("against revision B"));
  }

  @Test
  void a_serial_number_of_two_lists_is_asked_about() throws IOException {
    Path a = list("A");
    Path b = list("B");
    at("store", "add", a, sheet("of a", "0418", "J1-1,P2-1,0.2\n"));
    at("store", "add", b, sheet("of b", "0418", "J1-1,P2-1,OL\n"));
    Run both = at("check", "unit:0418");
    assertEquals(65, both.code(), both.out());
    assertTrue(
        both.err().contains("is the serial number of 2 units: of Cable, revision A ("), both.err());
    assertEquals(1, at("check", b, "unit:0418").code());
    assertEquals(0, at("check", a, "unit:0418").code());
    assertTrue(flat(at("units", "0418")).contains("revision B"));
  }

  @Test
  void odd_serial_numbers_are_found_again() throws IOException {
    Path list = list("A");
    int number = 0;
    for (String serial :
        List.of(
            "O'Brien\" \\ 1", "\u2744 0418 \ud83d\udd27", "x".repeat(10_000) + "1", "1*?<>|:/")) {
      Path sheet = sheet("odd" + number++, serial, "J1-1,P2-1,OL\n");
      Run added = at("store", "add", list, sheet);
      assertEquals(0, added.code(), added.err());
      assertEquals(1, at("check", "unit:" + serial).code(), serial);
      assertTrue(at("units", serial).out().startsWith("Unit "), serial);
      assertEquals(
          List.of(), at("units", serial).out().lines().filter(line -> line.length() > 80).toList());
    }
    assertEquals(0, at("store", "check").code());
  }

  /** UAX #15: one letter, one sign or two. */
  @Test
  void a_serial_number_is_the_same_however_its_letters_are_composed() throws IOException {
    Path list = list("A");
    at("store", "add", list, sheet("first", "\u00e91", "J1-1,P2-1,OL\n"));
    at("store", "add", list, sheet("second", "E\u03011", "J1-1,P2-1,0.2\n"));
    assertTrue(flat(at("units")).startsWith("1 unit in "), at("units").out());
    assertEquals(0, at("check", "unit:\u00e91").code(), "both sheets");
  }

  @Test
  void all_units_of_a_list_are_a_lot() {
    LotFolder cables = new LotFolder(folder.resolve("cables"), 12, 4).good(8);
    cables.unit("0005").poor(3, 0.008);
    cables.write();
    assertEquals(0, at("store", "add", cables.list(), cables.sheets()).code());
    Run files = Run.of("lot", cables.list(), cables.sheets());
    Run kept = at("lot", cables.list());
    assertEquals(files.out(), kept.out());
    assertEquals(files.out(), at("lot", "unit:0005").out(), "its siblings");
    Run none = at("lot", BOX);
    assertEquals(65, none.code());
    assertTrue(none.err().contains("the store keeps no unit of this list"), none.err());
    Path nowhere = folder.resolve("nowhere.db");
    Run noStore = Run.of("lot", BOX, "--store", nowhere);
    assertEquals(66, noStore.code());
    assertTrue(noStore.err().contains(nowhere + ": there is no such store yet"), noStore.err());
  }

  @Test
  void a_unit_stands_wherever_a_list_is_taken() {
    at("store", "add", BOX, SAMPLE.resolve("point-to-point.xlsx"));
    assertEquals(Run.of("trace", BOX, "J1-A").out(), at("trace", "unit:0418", "J1-A").out());
    assertEquals(Run.of("work", BOX).out(), at("work", "unit:0418").out());
    assertEquals(
        Run.of("diff", BOX, SAMPLE.resolve("junction-box-c.xlsx")).out(),
        at("diff", "unit:0418", SAMPLE.resolve("junction-box-c.xlsx")).out());
    assertEquals(
        Run.of("plan", BOX, "--after", SAMPLE.resolve("point-to-point.xlsx")).out(),
        at("plan", "unit:0418", "--after", "unit:0418").out());
    assertEquals(
        Run.of("asfound", SAMPLE.resolve("point-to-point.xlsx")).out(),
        at("asfound", "unit:0418").out());
  }

  @Test
  void a_unit_that_is_not_there_is_missing() {
    at("store", "add", BOX, SAMPLE.resolve("point-to-point.xlsx"));
    Run check = at("check", "unit:0500");
    assertEquals(66, check.code());
    assertTrue(check.err().contains("unit:0500: there is no such unit in"), check.err());
    assertEquals(66, at("units", "0500").code());
    assertEquals(66, Run.of("units", "--store", folder.resolve("nowhere.db")).code());
    assertFalse(Files.exists(folder.resolve("nowhere.db")), "looking makes no store");
    assertEquals(64, Run.of("check", BOX).code(), "a list alone has no readings");
  }

  /** A value that somebody has made good afterwards is nobody's reading. */
  @Test
  void a_unit_whose_readings_were_changed_gets_no_verdict() throws Exception {
    at("store", "add", BOX, SAMPLE.resolve("point-to-point-clean.xlsx"));
    try (Connection connection =
            DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("bench.db"));
        Statement statement = connection.createStatement()) {
      statement.execute("drop trigger entry_update");
      assertEquals(
          1, statement.executeUpdate("update entry set body = body || ' ' where seq = 20"));
    }
    Run check = at("check", "unit:0417");
    assertEquals(65, check.code(), check.out());
    assertEquals("", check.out());
    assertTrue(check.err().contains("entry 20 was changed"), check.err());
    assertEquals(65, at("lot", BOX).code());
    assertEquals(1, at("store", "check").code());
    Run added = at("store", "add", BOX, SAMPLE.resolve("point-to-point-clean"));
    assertEquals(65, added.code(), "nothing is built on it");
    Run same = at("store", "add", BOX, SAMPLE.resolve("point-to-point-clean.xlsx"));
    assertEquals(65, same.code(), "and what is there is not what is in hand");
    assertTrue(same.err().contains("was there already, and is not as it was written"));
  }

  /** Else "added" would be said of readings, of a name, or of a station that are nowhere. */
  @ParameterizedTest
  @CsvSource({
    "entry, before, select raise(ignore)",
    "entry, after, delete from entry where session = new.session and seq = new.seq",
    "station, before, select raise(ignore)",
    "people, before, select raise(ignore)"
  })
  void a_store_that_throws_away_what_is_added_never_says_added(
      String table, String when, String act) throws Exception {
    assertEquals(0, at("store", "migrate").code());
    try (Connection connection =
            DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("bench.db"));
        Statement statement = connection.createStatement()) {
      assertFalse(Triggers.takenFrom(statement).isEmpty());
      statement.execute(
          "create trigger swallows " + when + " insert on " + table + " begin " + act + "; end");
    }
    Path job = Files.writeString(folder.resolve("job.csv"), "Name,Value\nprocedure,HSB-TP-07\n");
    Path secret = Files.writeString(folder.resolve("secret"), "swing bridge by night\n");
    Run added =
        switch (table) {
          case "station" -> at("store", "station", "bench 1", job);
          case "people" ->
              at(
                  "people",
                  "add",
                  "R. Adeyemi",
                  "--who",
                  "M. Lindqvist",
                  "--role",
                  "administrator",
                  "--passphrase",
                  secret);
          default -> at("store", "add", BOX, SAMPLE.resolve("point-to-point-clean.xlsx"));
        };
    assertEquals(73, added.code(), added.toString());
    assertTrue(added.err().contains("did not keep what was added"), added.err());
  }

  private void behindItsBack(String... statements) throws Exception {
    try (Connection connection =
            DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("bench.db"));
        Statement statement = connection.createStatement()) {
      for (String table : List.of("entry", "session", "unit", "harness")) {
        statement.execute("drop trigger " + table + "_update");
        statement.execute("drop trigger " + table + "_delete");
      }
      for (String one : statements) {
        statement.execute(one);
      }
    }
  }

  /** Its bytes are the same: no digest of a list holds what it is called. */
  @Test
  void a_list_that_was_given_another_name_afterwards_is_found() throws Exception {
    at("store", "add", BOX, SAMPLE.resolve("point-to-point-clean.xlsx"));
    behindItsBack("update harness set file = 'approved.xlsx'");
    Run check = at("store", "check");
    assertEquals(1, check.code(), check.out());
    assertTrue(
        check
            .out()
            .replaceAll("\\s+", " ")
            .contains("list approved.xlsx: its tests have another name for it, or for its file"),
        check.out());
  }

  /** The bad test may have been the one that somebody took out. */
  @Test
  void a_unit_of_which_a_test_is_missing_gets_no_verdict() throws Exception {
    Path list = list("A");
    at("store", "add", list, sheet("first", "7", "J1-1,P2-1,OL\n"));
    at("store", "add", list, sheet("second", "7", "J1-1,P2-1,0.2\n"));
    behindItsBack(
        "delete from entry where session in (select id from session where number = 1)",
        "delete from session where number = 1");
    Run check = at("check", "unit:7");
    assertEquals(65, check.code(), check.out());
    assertTrue(check.err().contains("a test before it is not there"), check.err());
    assertEquals(65, at("lot", "unit:7").code());
    Run history = at("units", "7");
    assertEquals(65, history.code());
    assertFalse(history.out().contains("CONFORMS"), history.out());
    assertEquals(1, at("store", "check").code());
  }

  @Test
  void a_verdict_that_was_made_good_is_shown_to_nobody() throws Exception {
    at("store", "add", list("A"), sheet("first", "7", "J1-1,P2-1,OL\n"));
    behindItsBack("update entry set body = replace(body, 'faults', 'conforms') where seq > 5");
    Run units = at("units");
    assertEquals(65, units.code());
    assertTrue(flat(units).contains("7 NOT AS IT WAS WRITTEN, see ringout store check"));
  }

  private Path limited(String... limits) throws IOException {
    Path list = list("A");
    Files.writeString(
        list.resolve("limits.csv"), "Name,Value,Unit\n" + String.join("\n", limits) + "\n");
    return list;
  }

  @Test
  void what_an_inspector_let_through_is_told_wherever_a_unit_is() throws IOException {
    Path list = limited("closed max,0.1,Ω", "insulation test,none,");
    Path sheet = sheet("waived", "7", "J1-1,P2-1,0.15\n");
    Files.writeString(
        sheet.resolve("job.csv"),
        """
        Name,Value
        serial number,7
        operator,R. Adeyemi
        date,2026-11-20
        lead null,nulled
        instrument,milliohm meter
        calibration due,2027-03-31
        meter resolution,1 mΩ
        """);
    Files.writeString(
        sheet.resolve("waivers.csv"),
        "Kind,From,To,Accepted,Unit,Who,Why\ncontinuity,J1-1,P2-1,0.2,Ω,M. Lindqvist,short run\n");
    assertTrue(Run.of("check", list, sheet).out().startsWith("CONFORMS BY WAIVER"));
    String said = "conforms by waiver, 1 reading out of limits, no insulation test";
    assertTrue(flat(at("store", "add", list, sheet)).contains("the unit " + said));
    assertTrue(flat(at("units")).contains("7 " + said), at("units").out());
    Run lot = at("lot", list);
    assertTrue(flat(lot).startsWith("1 unit: 1 conforms (1 by waiver). NO INSULATION"), lot.out());
    assertTrue(flat(lot).contains("0 of 1 whose test has an end passed at once"), lot.out());
  }

  /** The same list, saved once more by another program, is another file. */
  @Test
  void a_unit_does_not_become_two_by_another_file_of_its_list() throws IOException {
    at("store", "add", list("A"), sheet("first", "7", "J1-1,P2-1,OL\n"));
    Path again = list("A");
    Files.writeString(again.resolve("wires.csv"), "Wire,From,To\r\nW1,J1-1,P2-1\r\n");
    Path second = sheet("second", "7", "J1-1,P2-1,0.2\n");
    Run added = at("store", "add", again, second);
    assertEquals(65, added.code());
    assertTrue(added.err().contains("give unit:7 as the list"), added.err());
    assertEquals(0, at("store", "add", "unit:7", second).code());
    Run other = at("store", "add", again, sheet("third", "8", "J1-1,P2-1,0.2\n"));
    assertEquals(0, other.code());
    assertTrue(other.err().contains("theirs is another lot"), other.err());
  }

  @Test
  void what_was_read_by_another_list_is_told_of() throws IOException {
    Path a = list("A");
    Path b = list("B");
    at("store", "add", a, sheet("of a", "7", "J1-1,P2-1,OL\n"));
    at("store", "add", b, sheet("of b", "7", "J1-1,P2-1,0.2\n"));
    Run check = at("check", b, "unit:7");
    assertTrue(check.err().contains("with another list too, Cable, revision A ("), check.err());
  }

  /** What an earlier run left half way is no backup, and in nobody's way. */
  @Test
  void a_backup_has_its_name_once_it_is_whole() throws IOException {
    at("store", "add", BOX, SAMPLE.resolve("point-to-point.xlsx"));
    Files.writeString(folder.resolve("night.db.part"), "half of it");
    Files.writeString(folder.resolve("night.db.part-wal"), "half of it");
    assertEquals(0, at("store", "backup", folder.resolve("night.db")).code());
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(
          List.of("bench.db", "night.db"),
          files.map(one -> one.getFileName().toString()).sorted().toList());
    }
  }

  @Test
  void a_result_never_goes_into_a_unit_of_the_store() {
    at("store", "add", BOX, SAMPLE.resolve("point-to-point.xlsx"));
    Path to = Path.of("unit:no such folder/x.xlsx");
    Run run = at("plan", "unit:0418", "-o", to);
    assertEquals(73, run.code());
    assertTrue(run.err().contains("unit:no such folder"), run.err());
  }

  /** A sheet that was read once more says so: else the first reading would seem to be the last. */
  @Test
  void the_same_sheet_that_is_not_the_last_is_told() throws IOException {
    Path list = list("A");
    Path bad = sheet("bad", "7", "J1-1,P2-1,OL\n");
    at("store", "add", list, bad, sheet("good", "7", "J1-1,P2-1,0.2\n"));
    Run again = at("store", "add", list, bad);
    assertEquals(0, again.code());
    assertTrue(again.err().contains("is test 1 of 2 of its unit already"), again.err());
  }

  @Test
  void a_name_of_two_lines_is_told_in_one() throws IOException {
    Path sheet = sheet("first\nsheet", "7", "J1-1,P2-1,OL\n");
    assertTrue(at("store", "add", list("A"), sheet).out().startsWith("first\ufffdsheet: unit 7"));
    assertTrue(at("units", "7").out().contains("first\ufffdsheet"));
  }

  @ParameterizedTest
  @ValueSource(strings = {":memory:", " ", "file:bench.db", "file:bench.db?mode=memory"})
  void what_is_no_file_is_no_store(String address) {
    Run run = Run.of("store", "migrate", "--store", address);
    assertEquals(65, run.code(), run.err());
    assertTrue(run.err().contains("is not a file's name"), run.err());
  }

  @Test
  void a_file_may_have_any_name() throws IOException {
    Path file = folder.resolve("odd? name % 25 #1;.db");
    Path sheet = sheet("first", "7", "J1-1,P2-1,OL\n");
    assertEquals(0, Run.of("store", "add", list("A"), sheet, "--store", file).code());
    assertTrue(Files.exists(file));
    assertEquals(1, Run.of("check", "unit:7", "--store", file).code());
  }

  /** Every command says it at once, the bench before anybody stands at it with probes. */
  @Test
  void an_older_program_says_at_once_that_a_store_is_of_a_later_version_and_writes_nothing()
      throws Exception {
    Path sheet = SAMPLE.resolve("point-to-point.xlsx");
    at("store", "add", BOX, sheet);
    try (Connection store =
            DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("bench.db"));
        Statement statement = store.createStatement()) {
      statement.execute(
          "insert into store_version (installed_rank, version, description, type, script, checksum,"
              + " installed_by, execution_time, success) select max(installed_rank) + 1, '99',"
              + " 'later', 'SQL', 'V99__later.sql', 1, 'x', 1, 1 from store_version");
    }
    byte[] before = Files.readAllBytes(folder.resolve("bench.db"));
    for (List<Object> words :
        List.<List<Object>>of(
            List.of("bench", "--no-browser"),
            List.of("units"),
            List.of("check", "unit:0418"),
            List.of("store", "migrate"),
            List.of("store", "add", BOX, sheet),
            List.of("store", "backup", folder.resolve("other.db")),
            List.of("people", "list"))) {
      Run run =
          assertTimeoutPreemptively(
              Duration.ofMinutes(1), () -> at(words.toArray()), words::toString);
      assertEquals(65, run.code(), words + run.err());
      assertTrue(run.err().contains("is of a later version"), run.err());
    }
    assertArrayEquals(before, Files.readAllBytes(folder.resolve("bench.db")));
    assertFalse(Files.exists(folder.resolve("other.db")));
  }

  /** With a sealed record beside it, years later, and without the shop's store. */
  @Test
  void one_unit_is_archived_with_its_list_and_holds_what_its_record_is_sealed_over()
      throws IOException {
    at("store", "add", BOX, SAMPLE.resolve("point-to-point.xlsx"));
    at("store", "add", BOX, SAMPLE.resolve("point-to-point-clean.xlsx"));
    Path file = folder.resolve("0418.db");
    Path record = folder.resolve("0418.html");
    Path key = folder.resolve("inspector.key");
    Run.of("report", "--new-key", key);
    assertEquals(1, at("report", "unit:0418", "-o", record, "--seal", key).code());
    Run archived = at("store", "backup", file, "--unit", "unit:0418");
    assertEquals(0, archived.code(), archived.err());
    assertTrue(flat(archived).contains("Holds 1 unit of 1 list, 1 test"), archived.out());
    assertEquals(
        at("check", "unit:0418", "--json").out(),
        Run.of("check", "unit:0418", "--json", "--store", file).out());
    assertEquals(0, Run.of("store", "check", "--store", file).code());
    assertEquals(66, Run.of("check", "unit:0417", "--store", file).code());
    Run verified = Run.of("report", "--verify", record, "--key", key + ".pub", "--store", file);
    assertEquals(0, verified.code(), verified.out());
    Path elsewhere = folder.resolve("elsewhere.db");
    assertEquals(0, Run.of("store", "copy", file, elsewhere).code());
    assertEquals(
        at("check", "unit:0418", "--json").out(),
        Run.of("check", "unit:0418", "--json", "--store", elsewhere).out());
    assertEquals(73, at("store", "backup", file, "--unit", "unit:0418").code());
    assertEquals(66, at("store", "backup", folder.resolve("9.db"), "--unit", "unit:9").code());
    assertFalse(Files.exists(folder.resolve("9.db")));
  }

  @Test
  void a_backup_is_a_store_and_is_written_over_nothing() {
    at("store", "add", BOX, SAMPLE.resolve("point-to-point.xlsx"));
    Path file = folder.resolve("backup.db");
    Run backup = at("store", "backup", file);
    assertEquals(0, backup.code(), backup.err());
    assertTrue(backup.out().startsWith("COPIED: 1 test. Both hold the same"), backup.out());
    assertEquals(
        at("check", "unit:0418", "--json").out(),
        Run.of("check", "unit:0418", "--json", "--store", file).out());
    assertEquals(73, at("store", "backup", file).code());
    for (Path itself :
        List.of(file, folder.resolve(".").resolve("backup.db"), folder.resolve("x/../backup.db"))) {
      assertEquals(65, Run.of("store", "copy", file, itself).code(), "no copy of itself");
    }
  }

  @Test
  void every_document_follows_its_schema() throws IOException {
    Path sheet = SAMPLE.resolve("point-to-point.xlsx");
    for (Run run :
        List.of(
            at("store", "add", BOX, sheet, "--json"),
            at("store", "add", BOX, sheet, "--json"),
            at("store", "add", SAMPLE.resolve("nowhere.xlsx"), sheet, "--json"),
            at("store", "check", "--json"),
            Run.of("store", "check", "--json", "--store", folder.resolve("nowhere.db")))) {
      var schema =
          SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
              .getSchema(Files.readString(Path.of("docs/reference/store.schema.json")));
      assertEquals(List.of(), schema.validate(run.out(), InputFormat.JSON), run.out());
    }
  }

  /** Its libraries are large, and the main job is run hundreds of times a day. */
  @Test
  void a_check_of_files_loads_nothing_of_the_store() throws Exception {
    Process run =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load:stdout",
                "-cp",
                Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                    .reduce((one, other) -> one + File.pathSeparator + other)
                    .orElse(""),
                Main.class.getName(),
                "check",
                BOX.toString(),
                SAMPLE.resolve("point-to-point.xlsx").toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String loaded = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(1, run.waitFor());
    assertTrue(loaded.contains("dev.ringout.check.CheckResult"));
    for (String library :
        List.of("org.sqlite.", "org.postgresql.", "org.flywaydb.", "dev.ringout.store.JdbcStore")) {
      assertFalse(loaded.contains(library), library);
    }
  }
}

package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Ways in which a unit that is not proven once passed, or might. */
class NeverAFalsePassTest {
  private static final String JOB =
      "Name,Value\nserial number,0412\ndate,2026-11-20\noperator,R. Adeyemi\n";

  @TempDir Path folder;

  private Path file(String name, String... rows) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.write(file, List.of(rows));
  }

  /** Three wires from J1 to P2, and W4 from J3 to P4, which is beside all this. */
  private Path list(String... limits) throws IOException {
    file(
        "list/wires.csv",
        "Wire,From,To,Gauge,Length",
        "W1,J1-A,P2-1,20,1 m",
        "W2,J1-B,P2-2,20,1 m",
        "W3,J1-C,P2-3,20,1 m",
        "W4,J3-A,P4-1,20,1 m",
        "W5,J3-B,P4-2,20,1 m");
    List<String> rows = new ArrayList<>(List.of("Name,Value"));
    rows.addAll(List.of(limits));
    Files.write(folder.resolve("list/limits.csv"), rows);
    return folder.resolve("list");
  }

  private static final List<String> JOINS =
      List.of("J1-A,P2-1", "J1-B,P2-2", "J1-C,P2-3", "J3-A,P4-1", "J3-B,P4-2");
  private static final List<String> NETS = List.of("J1-A", "J1-B", "J1-C", "J3-A");

  private Path sheet(String name, String join, String apart, String insulation) throws IOException {
    List<String> rows = new ArrayList<>(List.of("Step,From,To,Reading"));
    int step = 1;
    for (String pair : JOINS) {
      rows.add(step++ + "," + pair + "," + join);
    }
    for (String net : NETS) {
      rows.add(step++ + "," + net + ",REST," + apart);
    }
    file(name + "/continuity.csv", rows.toArray(String[]::new));
    rows = new ArrayList<>(List.of("Step,From,To,Volts,Reading"));
    for (String net : NETS) {
      rows.add(step++ + "," + net + ",REST," + insulation);
    }
    file(name + "/insulation.csv", rows.toArray(String[]::new));
    Files.writeString(folder.resolve(name + "/job.csv"), JOB);
    return folder.resolve(name);
  }

  private Path goodSheet(String name) throws IOException {
    return sheet(name, "0.045", "OL", "500,2000");
  }

  private static String flat(Run run) {
    return (run.out() + run.err()).replaceAll("\\s+", " ");
  }

  @Test
  void a_complete_good_sheet_conforms() throws IOException {
    Run run = Run.of("check", list(), goodSheet("good"));
    assertEquals(0, run.code(), run.out());
  }

  @Test
  void without_its_insulation_sheet_a_unit_is_not_proven() throws IOException {
    Path sheet = goodSheet("good");
    Files.delete(sheet.resolve("insulation.csv"));
    Run run = Run.of("check", list(), sheet);
    assertEquals(2, run.code(), run.out());
    assertTrue(flat(run).contains("insulated 0 of 10"), run.out());
    assertTrue(flat(run).contains("no insulation reading was made: 10 pairs of nets"), run.out());
  }

  @Test
  void of_two_insulation_rows_that_are_gone_one_leaves_a_pair_unproven() throws IOException {
    Path sheet = goodSheet("good");
    file(
        "good/insulation.csv", "From,To,Volts,Reading", "J1-A,REST,500,2000", "J1-B,REST,500,2000");
    Run run = Run.of("check", list(), sheet);
    assertEquals(2, run.code(), run.out());
    assertTrue(flat(run).contains("insulated 7 of 10"), run.out());
  }

  @Test
  void a_list_that_asks_for_no_insulation_test_says_so_in_the_headline() throws IOException {
    Path sheet = goodSheet("good");
    Files.delete(sheet.resolve("insulation.csv"));
    Run run = Run.of("check", list("insulation test,none"), sheet);
    assertEquals(0, run.code(), run.out());
    assertTrue(run.out().lines().findFirst().orElse("").contains("NO INSULATION TEST"), run.out());
    Run record =
        Run.of("report", list("insulation test,none"), sheet, "-o", folder.resolve("record.html"));
    assertEquals(0, record.code(), record.err());
    assertTrue(
        Files.readString(folder.resolve("record.html")).contains("NO INSULATION TEST"),
        "every page says it");
    Run plan = Run.of("plan", list("insulation test,none"));
    assertTrue(
        plan.out().lines().findFirst().orElse("").contains("no insulation test"), plan.out());
  }

  @Test
  void an_insulation_reading_that_does_not_say_its_volts_proves_nothing() throws IOException {
    Run run = Run.of("check", list(), sheet("silent", "0.045", "OL", ",2000"));
    assertEquals(2, run.code(), run.out());
    assertTrue(flat(run).contains("the test volts are not given"), run.out());
  }

  @Test
  void volts_may_stand_on_the_job_sheet_for_all_rows_and_the_page_says_whence() throws IOException {
    Path sheet = sheet("silent", "0.045", "OL", ",2000");
    Files.writeString(sheet.resolve("job.csv"), JOB + "insulation volts,500 V\n");
    Run run = Run.of("check", list(), sheet);
    assertEquals(0, run.code(), run.out());
    assertTrue(flat(run).contains("which the sheet Job gives for all"), run.out());
    Files.writeString(sheet.resolve("job.csv"), JOB + "insulation volts,250 V\n");
    assertEquals(2, Run.of("check", list(), sheet).code(), "not enough volts");
  }

  /** A rule of thumb has no place here: what is asked at 1000 V is not shown at 500 V. */
  @Test
  void a_net_that_is_to_be_tested_at_more_volts_is_not_proven_by_its_neighbours_readings()
      throws IOException {
    Path list = list();
    file("list/limits.csv", "Name,Value,Unit,Net", "insulation volts,1000,V,J3-B");
    Run run = Run.of("check", list, goodSheet("good"));
    assertEquals(2, run.code(), run.out());
    assertTrue(flat(run).contains("insulated 6 of 10"), run.out());
    Run plan = Run.of("plan", list, "--after", folder.resolve("good"), "--json");
    assertTrue(plan.out().contains("1000"), plan.out());
    Path more = folder.resolve("good/insulation.csv");
    Files.writeString(more, Files.readString(more) + "20,J3-B,REST,1000,2000\n");
    assertEquals(0, Run.of("check", list, folder.resolve("good")).code());
  }

  @ParameterizedTest
  @ValueSource(strings = {"OK", "PASS", "✓", "beep"})
  void words_alone_prove_nothing_where_a_value_can_be_computed(String word) throws IOException {
    Run run = Run.of("check", list(), sheet("words", word, "OL", "500,2000"));
    assertEquals(2, run.code(), run.out());
    assertTrue(
        flat(run).contains("\"" + word + "\" is not a value"), "shown as typed: " + run.out());
    assertTrue(flat(run).contains("5 with a word and no value"), run.out());
  }

  @Test
  void a_list_may_let_words_prove_its_joins_and_nothing_else() throws IOException {
    assertEquals(
        0, Run.of("check", list("words,joins"), sheet("words", "OK", "OL", "500,2000")).code());
    Run apart = Run.of("check", list("words,joins"), sheet("apart", "OK", "OK", "500,2000"));
    assertEquals(2, apart.code(), apart.out());
    Run insulation = Run.of("check", list("words,joins"), sheet("all", "OK", "OL", "500,OK"));
    assertEquals(2, insulation.code(), insulation.out());
    Run unknown = Run.of("check", list("words,mostly"), goodSheet("good"));
    assertEquals(65, unknown.code(), unknown.err());
  }

  /** Nothing can be computed there, so a beep is held against no more than a number would be. */
  @Test
  void a_word_proves_a_join_for_which_no_limit_can_be_computed() throws IOException {
    Path list = list();
    file("list/wires.csv", "Wire,From,To", "W1,J1-A,P2-1", "W2,J1-B,P2-2");
    file("two/continuity.csv", "From,To,Reading", "J1-A,P2-1,OK", "J1-B,P2-2,beep", "J1-A,REST,OL");
    file("two/insulation.csv", "From,To,Volts,Reading", "J1-A,REST,500,2000");
    assertEquals(0, Run.of("check", list, folder.resolve("two")).code());
  }

  @Test
  void readings_taken_before_a_wire_was_touched_prove_nothing_of_what_it_touches()
      throws IOException {
    Path sheet = goodSheet("good");
    Run run = Run.of("check", list(), sheet, "--touched", "W1");
    assertEquals(2, run.code(), run.out());
    assertTrue(flat(run).contains("opened J1 P2, touched W1"), run.out());
    assertTrue(flat(run).contains("joins 2 of 5"), run.out());
    assertTrue(flat(run).contains("wires 2 of 5"), run.out());
    assertTrue(flat(run).contains("pairs of nets apart 1 of 10"), run.out());
    assertTrue(flat(run).contains("insulated 1 of 10"), run.out());
    assertTrue(
        run.out().contains("--touched W1"), "the command that plans the retest: " + run.out());
  }

  @Test
  void what_was_opened_without_touching_a_wire_is_read_again_too() throws IOException {
    Run run = Run.of("check", list(), goodSheet("good"), "--opened", "P4");
    assertEquals(2, run.code(), run.out());
    assertTrue(flat(run).contains("wires 3 of 5"), run.out());
    assertEquals(64, Run.of("check", list(), goodSheet("good"), "--opened", "P9").code());
  }

  @Test
  void the_retest_of_a_touched_wire_is_planned_whole_and_its_sheet_closes_the_gap()
      throws IOException {
    Path sheet = goodSheet("good");
    Run planned =
        Run.of(
            "plan",
            list(),
            "--touched",
            "W1",
            "--after",
            sheet,
            "-o",
            folder.resolve("again") + "/");
    assertEquals(0, planned.code(), planned.err());
    String rework = Files.readString(folder.resolve("again/rework.csv"));
    assertTrue(rework.contains("W1,after"), rework);
    List<String> steps = Files.readAllLines(folder.resolve("again/continuity.csv"));
    assertTrue(
        steps.stream().anyMatch(row -> row.contains("J1") && row.contains("P2")), "" + steps);
    assertFalse(steps.stream().anyMatch(row -> row.contains("P4")), "beside it: " + steps);
    fill("again", "continuity.csv", "insulation.csv");
    Files.writeString(folder.resolve("again/job.csv"), JOB);
    Run run = Run.of("check", list(), sheet, folder.resolve("again"));
    assertEquals(0, run.code(), run.out() + run.err());
    assertEquals(
        2,
        Run.of("check", list(), folder.resolve("again")).code(),
        "the retest alone proves no more than itself");
  }

  /** Fills a planned sheet as a good unit would. */
  private void fill(String sheet, String continuity, String insulation) throws IOException {
    for (String name : List.of(continuity, insulation)) {
      Path file = folder.resolve(sheet).resolve(name);
      List<String> rows = new ArrayList<>();
      int reading = -1;
      for (String row : Files.readAllLines(file)) {
        List<String> cells = new ArrayList<>(List.of(row.split(",", -1)));
        if (reading < 0) {
          reading = cells.indexOf("Reading");
        } else {
          boolean apart = row.contains("REST");
          cells.set(reading, name.equals(insulation) ? "2000" : apart ? "OL" : "0.045");
        }
        rows.add(String.join(",", cells));
      }
      Files.write(file, rows);
    }
  }

  /** The old sheet does not come back by being named last. */
  @Test
  void an_old_sheet_given_after_the_rework_counts_no_more_than_before_it() throws IOException {
    Path old = goodSheet("old");
    file("rework/rework.csv", "Time,Items,Wires,Note", "2026-11-21 10:00,,W1,new contact");
    assertEquals(2, Run.of("check", list(), old, folder.resolve("rework")).code());
    assertEquals(2, Run.of("check", list(), folder.resolve("rework"), old).code());
  }

  @ParameterizedTest
  @CsvSource({
    "2026-11-21 10:00,2026-11-21 09:00,2,read before",
    "2026-11-21 10:00,2026-11-21 11:00,0,read after",
    "2026-11-21,2026-11-21 11:00,2,on the same day: nobody says that it was later",
    "2026-11-21,2026-11-22 08:00,0,a day later",
    "10:00,11:00,2,which day is not said",
    ",2026-11-21 11:00,2,when it was opened is not said"
  })
  void readings_in_another_sheet_count_where_they_are_dated_after_the_rework(
      String reworked, String read, int code, String why) throws IOException {
    Path sheet = goodSheet("dated");
    for (String name : List.of("continuity.csv", "insulation.csv")) {
      List<String> rows = new ArrayList<>();
      for (String row : Files.readAllLines(sheet.resolve(name))) {
        rows.add(row + "," + (rows.isEmpty() ? "Time" : read));
      }
      Files.write(sheet.resolve(name), rows);
    }
    file("rework/rework.csv", "Time,Items,Wires", (reworked == null ? "" : reworked) + ",,W1");
    Run run = Run.of("check", list(), sheet, folder.resolve("rework"));
    assertEquals(code, run.code(), why + "\n" + run.out() + run.err());
  }

  @ParameterizedTest
  @CsvSource({
    "capacitor,,0.15",
    "capacitor,,3",
    "capacitor,,20",
    "capacitor,,9k",
    "suppressor,,0.15",
    "suppressor,,3",
    "suppressor,,20",
    "diode bridge,,0.15",
    "lamp,,0.15",
    "diode,,0.15",
    "diode,,2.9"
  })
  void a_steady_reading_across_a_part_that_is_no_better_than_a_join_is_one(
      String kind, String ohms, String reading) throws IOException {
    Run run = Run.of("check", withPart(kind, ohms), withPartRead(reading, reading));
    assertEquals(1, run.code(), run.out());
  }

  @ParameterizedTest
  @CsvSource({"capacitor,,OL", "suppressor,,OL", "lamp,,20", "lamp,40,40", "diode bridge,,1.5k"})
  void what_such_a_part_reads_when_it_is_good_conforms(String kind, String ohms, String reading)
      throws IOException {
    Run run = Run.of("check", withPart(kind, ohms), withPartRead(reading, reading));
    assertEquals(0, run.code(), run.out());
  }

  @Test
  void nets_that_a_part_of_unknown_ohms_joins_are_never_counted_as_held_apart() throws IOException {
    Run run = Run.of("check", withPart("lamp", ""), withPartRead("20", "20"));
    assertTrue(flat(run).contains("pairs of nets apart 9 of 9"), run.out());
    assertTrue(flat(run).contains("no ohms are listed for lamp J1"), run.out());
  }

  @Test
  void a_part_that_was_not_read_is_not_proven() throws IOException {
    Path sheet = withPartRead("20", "20");
    Path continuity = sheet.resolve("continuity.csv");
    List<String> rows = new ArrayList<>(Files.readAllLines(continuity));
    rows.removeIf(row -> row.contains("J1-A,J1-B") || row.contains("J1-B,J1-A"));
    Files.write(continuity, rows);
    Run run = Run.of("check", withPart("lamp", "20"), sheet);
    assertEquals(2, run.code(), run.out());
    assertTrue(flat(run).contains("parts 0 of 1"), run.out());
  }

  /** A coil of 48 Ω with a suppressor across it: the suppressor hides no open coil. */
  @ParameterizedTest
  @CsvSource({"48,0", "OL,1", "3,1", "5k,1"})
  void a_coil_with_a_suppressor_across_it_still_has_to_read_its_coil(String reading, int code)
      throws IOException {
    withPart("winding", "48");
    file(
        "list/parts.csv",
        "Ref,Pin,To Pin,Kind,Ohms",
        ",J1-A,J1-B,winding,48",
        ",J1-A,J1-B,suppressor,");
    Run run = Run.of("check", folder.resolve("list"), withPartRead(reading, reading));
    assertEquals(code, run.code(), run.out());
  }

  private Path withPart(String kind, String ohms) throws IOException {
    Path list = list();
    file(
        "list/parts.csv",
        "Ref,Pin,To Pin,Kind,Ohms",
        ",J1-A,J1-B," + kind + "," + (ohms == null ? "" : ohms));
    return list;
  }

  /** A sheet of a good unit with a part between J1-A and J1-B, read in both directions. */
  private Path withPartRead(String reading, String reverse) throws IOException {
    Path sheet = goodSheet("parts");
    List<String> rows = new ArrayList<>();
    for (String row : Files.readAllLines(sheet.resolve("continuity.csv"))) {
      rows.add(row.replace("J1-B,REST", "J3-B,REST").replace("J1-A,REST", "J1-A+J1-B,REST"));
    }
    rows.add("40,J1-A,J1-B," + reading);
    rows.add("41,J1-B,J1-A," + reverse);
    Files.write(sheet.resolve("continuity.csv"), rows);
    Path insulation = sheet.resolve("insulation.csv");
    Files.writeString(
        insulation,
        Files.readString(insulation)
            .replace("J1-B,REST", "J3-B,REST")
            .replace("J1-A,REST", "J1-A+J1-B,REST"));
    return sheet;
  }

  @Test
  void one_bad_cell_stops_the_verdict_and_not_the_rest() throws IOException {
    Path sheet = goodSheet("good");
    Path continuity = sheet.resolve("continuity.csv");
    Files.writeString(
        continuity, Files.readString(continuity).replace("2,J1-B,P2-2,0.045", "2,J1-B,P2-2,0.x45"));
    Run run = Run.of("check", list(), sheet);
    assertEquals(65, run.code(), run.out());
    assertTrue(run.out().startsWith("NOT COMPLETE"), run.out());
    assertTrue(flat(run).contains("step 2, J1-B to P2-2"), run.out());
    assertTrue(flat(run).contains("wires 4 of 5"), run.out());
    Run json = Run.of("check", list(), sheet, "--json");
    assertTrue(json.out().contains("\"verdict\" : \"incomplete\""), json.out());
    assertEquals(
        65,
        Run.of("report", list(), sheet, "-o", folder.resolve("r.html")).code(),
        "no record is written");
  }

  private Path poorJoint() throws IOException {
    Path sheet = goodSheet("poor");
    Path continuity = sheet.resolve("continuity.csv");
    Files.writeString(
        continuity, Files.readString(continuity).replace("2,J1-B,P2-2,0.045", "2,J1-B,P2-2,0.092"));
    return sheet;
  }

  private Run withWaiver(String row) throws IOException {
    file("waivers/waivers.csv", "Kind,From,To,Accepted,Unit,Who,Why,Until,Serial Numbers", row);
    return Run.of("check", list(), poorJoint(), folder.resolve("waivers"));
  }

  @Test
  void a_poor_joint_that_an_inspector_accepts_is_counted_apart_and_shown() throws IOException {
    assertEquals(1, Run.of("check", list(), poorJoint()).code());
    Run run =
        withWaiver(
            "continuity,P2-2,J1-B,100,mΩ,M. Lindqvist,spare circuit,2026-12-31,0400 to 0420");
    assertEquals(0, run.code(), run.out() + run.err());
    String headline = run.out().lines().findFirst().orElse("");
    assertTrue(flat(run).contains("1 accepted out of limits, 0 fail"), run.out());
    assertTrue(headline.contains("CONFORMS BY WAIVER. 1 reading out of limits"), headline);
    assertTrue(
        flat(run).contains("accepted up to 0.1 Ω by M. Lindqvist: spare circuit"), run.out());
    Run json = Run.of("check", list(), poorJoint(), folder.resolve("waivers"), "--json");
    assertTrue(json.out().contains("\"accepted\" : 1"), json.out());
    Run record =
        Run.of(
            "report",
            list(),
            poorJoint(),
            folder.resolve("waivers"),
            "-o",
            folder.resolve("r.html"));
    assertEquals(0, record.code(), record.err());
    assertTrue(
        Files.readString(folder.resolve("r.html")).contains("M. Lindqvist"), "in the record");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "continuity,J1-B,P2-2,90,mΩ,M. Lindqvist,spare,, | the reading is further out",
        "continuity,J1-B,P2-2,100,mΩ,M. Lindqvist,spare,2026-11-19, | its last day is over",
        "continuity,J1-B,P2-2,100,mΩ,M. Lindqvist,spare,,0500 and on | for other serial numbers",
        "continuity,J1-B,P2-2,100,mΩ,R. Adeyemi,spare,, | the tester can't accept",
        "insulation,J1-B,P2-2,100,mΩ,M. Lindqvist,spare,, | no such reading",
        "continuity,J1-A,P2-1,100,mΩ,M. Lindqvist,spare,, | no such reading"
      })
  void a_waiver_that_covers_nothing_is_itself_said(String row, String why) throws IOException {
    Run run = withWaiver(row);
    assertEquals(1, run.code(), run.out() + run.err());
    assertTrue(flat(run).contains(why.strip()), run.out());
  }

  @Test
  void an_open_or_a_short_can_not_be_waived() throws IOException {
    Path sheet = goodSheet("open");
    Path continuity = sheet.resolve("continuity.csv");
    Files.writeString(
        continuity, Files.readString(continuity).replace("2,J1-B,P2-2,0.045", "2,J1-B,P2-2,OL"));
    file(
        "waivers/waivers.csv",
        "Kind,From,To,Accepted,Unit,Who,Why",
        "continuity,J1-B,P2-2,100,MΩ,M. Lindqvist,spare");
    assertEquals(1, Run.of("check", list(), sheet, folder.resolve("waivers")).code());
  }

  @Test
  void a_good_value_beyond_the_range_of_its_meter_proves_nothing() throws IOException {
    Path sheet = goodSheet("good");
    Files.writeString(sheet.resolve("job.csv"), JOB + "insulation range,1 GΩ\n");
    Run run = Run.of("check", list(), sheet);
    assertEquals(2, run.code(), run.out());
    assertTrue(flat(run).contains("is beyond the range"), run.out());
  }

  /** {@code 0 kΩ} was anything below 500 Ω. */
  @ParameterizedTest
  @ValueSource(strings = {"0 kΩ", "0 MΩ", "0k", "0.0 MEG", "0E3"})
  void a_value_too_coarse_to_tell_a_join_proves_none(String reading) throws IOException {
    Run run = Run.of("check", list(), sheet("coarse", reading, "OL", "500,2000"));
    assertEquals(2, run.code(), run.out());
    assertTrue(flat(run).contains("too coarse to tell"), run.out());
  }

  @Test
  void a_coarse_value_of_a_part_proves_no_part() throws IOException {
    Run run = Run.of("check", withPart("winding", "48"), withPartRead("0.1 kΩ", "0.1 kΩ"));
    assertEquals(2, run.code(), run.out());
  }

  /** What stands in one row was measured at once: neither value is the later one. */
  @Test
  void a_row_of_a_wire_that_reads_open_one_way_is_a_fault_whichever_way() throws IOException {
    for (String values : List.of("OL,0.045", "0.045,OL")) {
      Path sheet = goodSheet("ways");
      List<String> rows = new ArrayList<>();
      for (String row : Files.readAllLines(sheet.resolve("continuity.csv"))) {
        boolean second = row.startsWith("2,");
        rows.add(rows.isEmpty() ? row + ",Reverse" : second ? "2,J1-B,P2-2," + values : row + ",");
      }
      Files.write(sheet.resolve("continuity.csv"), rows);
      assertEquals(1, Run.of("check", list(), sheet).code(), values);
    }
  }

  /** The days of the job sheets say which was later, whatever the order of the files. */
  @Test
  void an_older_good_sheet_given_last_does_not_replace_a_newer_bad_one() throws IOException {
    Path old = goodSheet("old");
    Path bad = sheet("new", "OL", "OL", "500,2000");
    Files.writeString(bad.resolve("job.csv"), JOB.replace("2026-11-20", "2026-11-25"));
    assertEquals(1, Run.of("check", list(), bad, old).code());
    assertEquals(1, Run.of("check", list(), old, bad).code());
  }

  @ParameterizedTest
  @ValueSource(strings = {"winding", "lamp"})
  void a_part_that_always_conducts_and_reads_open_is_a_fault_without_ohms_too(String kind)
      throws IOException {
    assertEquals(1, Run.of("check", withPart(kind, ""), withPartRead("OL", "OL")).code());
  }

  @Test
  void a_part_that_may_be_missing_with_the_same_read_is_listed_as_not_seen() throws IOException {
    withPart("winding", "48");
    file(
        "list/parts.csv",
        "Ref,Pin,To Pin,Kind,Ohms",
        ",J1-A,J1-B,winding,48",
        ",J1-A,J1-B,resistor,4.7k");
    Run run = Run.of("check", folder.resolve("list"), withPartRead("47.5", "47.5"));
    assertEquals(0, run.code(), run.out());
    assertTrue(
        flat(run).contains("the resistor J1 may be missing and the reading stays the same"),
        run.out());
  }

  @ParameterizedTest
  @CsvSource({"600,>100,1", "600,>1M,0", "0 MΩ,OL,1", "5,20,1"})
  void a_diode_is_proven_by_what_it_reads_and_not_by_what_it_may_read(
      String forward, String reverse, int code) throws IOException {
    int got = Run.of("check", withPart("diode", ""), withPartRead(forward, reverse)).code();
    assertTrue(code == 0 ? got == 0 : got != 0, forward + ", " + reverse + ": " + got);
  }

  /** The laxer of two is nobody's choice. */
  @Test
  void of_two_limits_of_one_net_the_stricter_stands() throws IOException {
    for (String first : List.of("1,kΩ,J1-A", "100,MΩ,P2-1")) {
      Path list = list();
      String second = first.startsWith("1,") ? "100,MΩ,P2-1" : "1,kΩ,J1-A";
      file(
          "list/limits.csv",
          "Name,Value,Unit,Net",
          "insulation min," + first,
          "insulation min," + second);
      assertEquals(1, Run.of("check", list, sheet("low", "0.045", "OL", "500,1")).code(), first);
    }
  }

  /** Its nets are tied together for the test: the part bears no volts then. */
  @Test
  void what_a_part_bears_lowers_the_volts_of_no_other_pair_of_nets() throws IOException {
    Path list = withPart("lamp", "40");
    file("list/parts.csv", "Ref,Pin,To Pin,Kind,Ohms,Max Test Volts", ",J1-A,J1-B,lamp,40,50");
    Path sheet = withPartRead("40", "40");
    assertEquals(0, Run.of("check", list, sheet).code());
    Path insulation = sheet.resolve("insulation.csv");
    Files.writeString(
        insulation,
        Files.readString(insulation).replace("J1-A+J1-B,REST,500", "J1-A+J1-B,REST,50"));
    assertEquals(2, Run.of("check", list, sheet).code());
  }

  @Test
  void a_waiver_covers_nothing_where_who_took_the_reading_is_not_stated() throws IOException {
    file(
        "waivers/waivers.csv",
        "Kind,From,To,Accepted,Unit,Who,Why",
        "continuity,J1-B,P2-2,100,mΩ,M. Lindqvist,spare");
    Path sheet = poorJoint();
    Files.writeString(sheet.resolve("job.csv"), JOB.replace("operator,R. Adeyemi\n", ""));
    assertEquals(1, Run.of("check", list(), sheet, folder.resolve("waivers")).code());
  }

  /** Undated, with the same wires: only its number tells the second rework from the first. */
  @Test
  void a_second_rework_of_the_same_wire_is_not_taken_for_the_first() throws IOException {
    Path old = goodSheet("old");
    Run.of("plan", list(), "--touched", "W1", "--after", old, "-o", folder.resolve("first") + "/");
    fill("first", "continuity.csv", "insulation.csv");
    Files.writeString(folder.resolve("first/job.csv"), JOB);
    Path first = folder.resolve("first");
    assertEquals(0, Run.of("check", list(), old, first).code());
    assertEquals(2, Run.of("check", list(), old, first, "--touched", "W1").code());
    Run planned =
        Run.of(
            "plan",
            list(),
            "--touched",
            "W1",
            "--after",
            old,
            "--after",
            first,
            "-o",
            folder.resolve("second") + "/");
    assertEquals(0, planned.code(), planned.err());
    List<String> reworks = Files.readAllLines(folder.resolve("second/rework.csv"));
    assertEquals(3, reworks.size(), "both reworks, each by its number: " + reworks);
    Path second = folder.resolve("second");
    Files.writeString(second.resolve("job.csv"), JOB);
    assertEquals(2, Run.of("check", list(), old, first, second).code(), "not filled in yet");
    fill("second", "continuity.csv", "insulation.csv");
    Run run = Run.of("check", list(), old, first, second);
    assertEquals(0, run.code(), run.out() + run.err());
  }

  /** Somebody notes the rework in the sheet of the first test. */
  @Test
  void a_rework_noted_in_the_sheet_of_the_test_before_it_makes_that_test_older()
      throws IOException {
    Path old = goodSheet("old");
    file("old/rework.csv", "Time,Items,Wires,Note", ",,W1,new contact");
    assertEquals(2, Run.of("check", list(), old).code());
    file("old/rework.csv", "Time,Items,Wires,Note", "2026-11-21 10:00,,W1,new contact");
    assertEquals(2, Run.of("check", list(), old).code(), "a day after the test");
    Run planned = Run.of("plan", list(), "--after", old, "-o", folder.resolve("again") + "/");
    assertEquals(0, planned.code(), planned.err());
    fill("again", "continuity.csv", "insulation.csv");
    Files.writeString(folder.resolve("again/job.csv"), JOB.replace("2026-11-20", "2026-11-21"));
    assertEquals(0, Run.of("check", list(), old, folder.resolve("again")).code());
  }

  @Test
  void days_of_the_sheets_come_before_times_of_day() throws IOException {
    Path bad = sheet("bad", "OL", "OL", "500,2000");
    Path old = goodSheet("old");
    Files.writeString(bad.resolve("job.csv"), JOB.replace("2026-11-20", "2026-11-25"));
    for (Path sheet : List.of(bad, old)) {
      List<String> rows = new ArrayList<>();
      for (String row : Files.readAllLines(sheet.resolve("continuity.csv"))) {
        rows.add(row + "," + (rows.isEmpty() ? "Time" : sheet.equals(bad) ? "09:00" : "10:00"));
      }
      Files.write(sheet.resolve("continuity.csv"), rows);
    }
    assertEquals(1, Run.of("check", list(), old, bad).code());
    assertEquals(1, Run.of("check", list(), bad, old).code());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"Effectivity:", "EFFECTIVITY", "effective-for", "Serial Numbers", "valid for"})
  void the_header_s_effectivity_is_found_however_it_is_named(String name) throws IOException {
    Path list = list();
    file("list/header.csv", "Name,Value", name + ",0500 to 0600");
    assertEquals(2, Run.of("check", list, goodSheet("good")).code());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"R. Adeyemi", "R Adeyemi", "adeyemi r", "Adeyemi", "-", "n/a", "same as operator"})
  void nobody_accepts_his_own_reading_however_he_writes_his_name(String who) throws IOException {
    Run run = withWaiver("continuity,J1-B,P2-2,100,mΩ," + who + ",spare,,");
    assertTrue(run.code() != 0, run.out() + run.err());
  }

  @Test
  void a_waiver_makes_no_join_of_an_open_and_no_insulation_of_a_short() throws IOException {
    Path far = sheet("far", "99k", "OL", "500,2000");
    List<String> rows = new ArrayList<>(List.of("Kind,From,To,Accepted,Unit,Who,Why"));
    JOINS.forEach(pair -> rows.add("continuity," + pair + ",99.9,kΩ,M. Lindqvist,spare"));
    NETS.forEach(net -> rows.add("insulation," + net + ",REST,0,MΩ,M. Lindqvist,spare"));
    file("waivers/waivers.csv", rows.toArray(String[]::new));
    assertEquals(1, Run.of("check", list(), far, folder.resolve("waivers")).code());
    Path none = sheet("none", "0.045", "OL", "500,0");
    assertEquals(1, Run.of("check", list(), none, folder.resolve("waivers")).code());
  }

  @Test
  void a_waiver_that_has_run_out_by_the_day_that_the_record_states_covers_nothing()
      throws IOException {
    file(
        "waivers/waivers.csv",
        "Kind,From,To,Accepted,Unit,Who,Why,Until",
        "continuity,J1-B,P2-2,100,mΩ,M. Lindqvist,spare,2026-12-01");
    Path record = folder.resolve("record.html");
    Path waivers = folder.resolve("waivers");
    assertEquals(
        1,
        Run.of("report", list(), poorJoint(), waivers, "--date", "2027-01-01", "-o", record)
            .code());
    assertEquals(0, Run.of("report", list(), poorJoint(), waivers, "--force", "-o", record).code());
  }

  @ParameterizedTest
  @ValueSource(strings = {"-", "?", "n/a", "tbd"})
  void a_dash_is_no_serial_number(String serial) throws IOException {
    Path sheet = goodSheet("good");
    Files.writeString(sheet.resolve("job.csv"), JOB.replace("0412", serial));
    assertEquals(2, Run.of("check", list("serial number,required"), sheet).code());
  }

  @ParameterizedTest
  @ValueSource(strings = {"n/a", "same as operator", "R Adeyemi", "Adeyemi, R.", "-"})
  void an_independent_inspector_is_somebody_and_somebody_else(String inspector) throws IOException {
    Path sheet = goodSheet("good");
    Files.writeString(sheet.resolve("job.csv"), JOB + "inspector,\"" + inspector + "\"\n");
    assertEquals(2, Run.of("check", list("independent inspector,required"), sheet).code());
    Files.writeString(sheet.resolve("job.csv"), JOB + "inspector,M. Lindqvist\n");
    assertEquals(0, Run.of("check", list("independent inspector,required"), sheet).code());
  }

  @Test
  void a_day_with_more_behind_it_is_no_day() throws IOException {
    Path sheet = goodSheet("good");
    Files.writeString(
        sheet.resolve("job.csv"), JOB + "calibration due,\"2027-03-31 EXPIRED, do not use\"\n");
    assertEquals(2, Run.of("check", list(), sheet).code());
  }

  @Test
  void a_demand_that_nobody_knows_is_an_error() throws IOException {
    assertEquals(
        65, Run.of("check", list("independent inspection,required"), goodSheet("good")).code());
  }

  /** Whatever check holds against a unit, the plan of the rest asks for again. */
  @Test
  void the_plan_of_the_rest_filled_in_good_leads_to_conforms() throws IOException {
    Path sheet = goodSheet("damaged");
    Path continuity = sheet.resolve("continuity.csv");
    Files.writeString(
        continuity,
        Files.readString(continuity)
                .replace("2,J1-B,P2-2,0.045", "2,J1-B,P2-2,OL")
                .replace("6,J1-A,REST,OL", "6,J1-A,REST,5k")
            + "30,J1-A,J1-B,\n31,J3-A,J3-B,0.02\n32,P4-1,J3-A,0.001\n");
    Path insulation = sheet.resolve("insulation.csv");
    Files.writeString(
        insulation,
        Files.readString(insulation).replace("J1-C,REST,500,2000", "J1-C,REST,500,5")
            + "33,J3-B,REST,500,\n");
    assertEquals(1, Run.of("check", list(), sheet).code());
    Run planned = Run.of("plan", list(), "--after", sheet, "-o", folder.resolve("rest") + "/");
    assertEquals(0, planned.code(), planned.err());
    fillGood("rest");
    Files.writeString(folder.resolve("rest/job.csv"), JOB);
    Run run = Run.of("check", list(), sheet, folder.resolve("rest"));
    assertEquals(0, run.code(), run.out() + run.err());
  }

  private void fillGood(String sheet) throws IOException {
    for (String name : List.of("continuity.csv", "insulation.csv")) {
      Path file = folder.resolve(sheet).resolve(name);
      List<String> rows = new ArrayList<>();
      for (String row : Files.readAllLines(file)) {
        List<String> cells = new ArrayList<>(List.of(row.split(",", -1)));
        int reading = name.startsWith("cont") ? 7 : 9;
        if (!rows.isEmpty()) {
          boolean join = name.startsWith("cont") && !cells.get(13).isEmpty();
          cells.set(reading, name.startsWith("ins") ? "2000" : join ? "0.045" : "OL");
        }
        rows.add(String.join(",", cells));
      }
      Files.write(file, rows);
    }
  }
}

package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {
  @TempDir Path folder;

  private Path write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }

  private Path harness() throws IOException {
    return write("list.csv", "Wire,From,To\nW1,J1-A,P2-1\nW2,J1-B,P2-2\n");
  }

  /** The same list, that asks for no insulation test. */
  private Path withoutInsulationTest() throws IOException {
    write("list/wires.csv", "Wire,From,To\nW1,J1-A,P2-1\nW2,J1-B,P2-2\n");
    write("list/limits.csv", "Name,Value\ninsulation test,none\n");
    return folder.resolve("list");
  }

  private Path readings(String... rows) throws IOException {
    return write("readings.csv", "From,To,Reading\n" + String.join("\n", rows) + "\n");
  }

  @Test
  void a_proven_unit_exits_0() throws IOException {
    Run run =
        Run.of(
            "check",
            withoutInsulationTest(),
            readings("J1-A,P2-1,0.2", "J1-B,P2-2,0.2", "J1-A,REST,OL"));
    assertEquals(0, run.code(), run.out());
    assertTrue(run.out().startsWith("CONFORMS."), run.out());
    assertTrue(run.out().lines().findFirst().orElse("").contains("NO INSULATION TEST"), run.out());
  }

  @Test
  void a_faulty_unit_exits_1() throws IOException {
    Run run = Run.of("check", harness(), readings("J1-A,P2-1,OL", "J1-B,P2-2,0.2", "J1-A,REST,OL"));
    assertEquals(1, run.code(), run.out());
    assertTrue(run.out().startsWith("FAULTS: 1."), run.out());
  }

  @Test
  void a_fault_that_a_second_unit_has_too_is_one_of_the_paper() throws IOException {
    Path second = write("second.csv", "From,To,Reading\nJ1-A,P2-1,OL\nJ1-B,P2-2,0.2\n");
    Run run =
        Run.of(
            "check",
            harness(),
            readings("J1-A,P2-1,OL", "J1-B,P2-2,0.2", "J1-A,REST,OL"),
            "--also",
            second);
    assertEquals(1, run.code(), run.out());
    assertTrue(run.out().contains("LIST") || run.out().contains("Probably the list"), run.out());
    assertTrue(run.out().replaceAll("\\s+", " ").contains("second.csv has this too"), run.out());
  }

  @Test
  void a_unit_is_not_held_against_itself() throws IOException {
    Path readings = readings("J1-A,P2-1,OL");
    Run run = Run.of("check", harness(), readings, "--also", readings);
    assertEquals(64, run.code());
    assertTrue(run.err().contains("is among this unit's own readings"), run.err());
  }

  @Test
  void problems_of_every_file_are_named_at_once() throws IOException {
    Path list = write("list.csv", "Wire,From,To,Gauge\nW1,J1-A,P2-1,2O\n");
    Path readings = readings("J1-A,P2-1,zero");
    Path second = write("second.csv", "From,To,Reading\nJ1-A,P2-1,nil\n");
    Run run = Run.of("check", list, readings, "--also", second);
    assertEquals(65, run.code(), run.err());
    assertTrue(run.err().contains("list.csv"), run.err());
    assertTrue(run.err().contains("readings.csv"), run.err());
    assertTrue(run.err().contains("second.csv"), run.err());
  }

  @Test
  void an_unproven_unit_exits_2() throws IOException {
    Run run = Run.of("check", harness(), readings("J1-A,P2-1,0.2", "J1-B,P2-2,", "J1-A,REST,OL"));
    assertEquals(2, run.code(), run.out());
    assertTrue(run.out().startsWith("NOT COMPLETE."), run.out());
    assertTrue(run.out().contains("not tested: J1-B to P2-2 (C3)"), run.out());
  }

  @Test
  void every_reading_is_shown_with_its_cell_and_step() throws IOException {
    Path sheet =
        write(
            "sheet.csv",
            "Step,From,To,Reading\n4,J1-A,P2-1,OL\n5,J1-B,P2-2,\nStep 6,J1-A,REST,OL\n7,J1-A,P2-1,OL\n");
    Run run = Run.of("check", harness(), sheet);
    assertTrue(run.out().contains("OL        D5, step 7\n"), run.out());
    assertTrue(run.out().contains("not tested: J1-B to P2-2 (D3, step 5)"), run.out());
  }

  @Test
  void a_cell_is_shown_with_its_file_where_several_were_read() throws IOException {
    Path first = write("first.csv", "Step,From,To,Reading\n4,J1-A,P2-1,OL\n5,J1-B,P2-2,\n");
    Path second = write("second.csv", "Step,From,To,Reading\n1,J1-A,P2-1,0.2\n2,J1-A,J1-B,OL\n");
    Run run = Run.of("check", harness(), first, second);
    assertTrue(
        run.out()
            .replaceAll("\\s+", " ")
            .contains(
                "J1-A to P2-1: OL (first.csv!D2, step 4), later 0.2 Ω (second.csv!D2, step 1)"),
        run.out());
    assertTrue(run.out().contains("not tested: J1-B to P2-2 (first.csv!D3, step 5)"), run.out());
  }

  @Test
  void a_page_with_files_and_steps_holds_80_columns() throws IOException {
    Path sample = Path.of("harness-samples/swing-bridge");
    Path again = folder.resolve("read-again-on-tuesday.xlsx");
    Files.copy(sample.resolve("point-to-point.xlsx"), again);
    for (Object[] readings :
        new Object[][] {
          {sample.resolve("point-to-point.xlsx")}, {sample.resolve("point-to-point.xlsx"), again}
        }) {
      List<Object> words = new ArrayList<>(List.of("check", sample.resolve("junction-box.xlsx")));
      words.addAll(List.of(readings));
      Run run = Run.of(words.toArray());
      assertTrue(run.out().contains(", step 8\n"), run.out());
      assertTrue(run.out().lines().allMatch(line -> line.length() <= 80), run.out());
    }
  }

  private static Map<?, ?> json(Run run) throws IOException {
    return JSON.std.mapFrom(run.out());
  }

  @Test
  void json_says_which_unit_was_tested_by_whom_and_with_what() throws IOException {
    write("box/wires.csv", "From,To\nJ1-A,P2-1\n");
    write("box/header.csv", "Name,Value\ntitle,Box\ndrawing,HSB-1\nrevision,B\n");
    write("sheet/continuity.csv", "From,To,Reading\nJ1-A,P2-1,0.2\n");
    write(
        "sheet/job.csv",
        """
        Name,Value
        Revision,B
        serial number,0418
        operator,R. Adeyemi
        instrument,milliohm meter
        instrument number,T-1
        insulation instrument,tester
        insulation calibration due,2027-03-31
        """);
    Map<?, ?> json =
        json(Run.of("check", folder.resolve("box"), folder.resolve("sheet"), "--json"));
    assertEquals(
        Map.of("serialNumber", "0418", "title", "Box", "drawing", "HSB-1", "revision", "B"),
        json.get("unit"));
    Map<?, ?> job = (Map<?, ?>) ((List<?>) Objects.requireNonNull(json.get("jobs"))).get(0);
    assertEquals("sheet", job.get("file"));
    Map<?, ?> entries = (Map<?, ?>) Objects.requireNonNull(job.get("entries"));
    assertEquals("R. Adeyemi", entries.get("operator"));
    assertEquals("B", entries.get("revision"));
    assertEquals(
        List.of(
            Map.of(
                "use",
                "continuity",
                "name",
                "milliohm meter",
                "number",
                "T-1",
                "calibrationDue",
                ""),
            Map.of(
                "use",
                "insulation",
                "name",
                "tester",
                "number",
                "",
                "calibrationDue",
                "2027-03-31")),
        job.get("instruments"));
  }

  /** The judged readings of a small unit, each as {@code reading → what is said of it}. */
  private static Map<String, Map<?, ?>> judged(Run run) throws IOException {
    Map<String, Map<?, ?>> byCell = new TreeMap<>();
    for (Object one : (List<?>) Objects.requireNonNull(json(run).get("judged"))) {
      Map<?, ?> judged = (Map<?, ?>) one;
      byCell.put(String.valueOf(judged.get("reading")), judged);
    }
    return byCell;
  }

  @Test
  void json_holds_every_reading_with_its_value_limit_outcome_and_requirement() throws IOException {
    write("box/wires.csv", "Wire,From,To,Gauge,Length\nW1,J1-A,P2-1,20,1 m\nW2,J1-B,P2-2,20,1 m\n");
    write("box/parts.csv", "Ref,Pin,To Pin,Kind,Ohms\nR1,1,2,resistor,100\n");
    write(
        "sheet/continuity.csv",
        """
        Step,From,To,Reading,Unit
        1,J1-A,P2-1,40,mΩ
        2,J1-B,P2-2,,
        3,J1-A,J1-B,OL,
        4,R1-1,R1-2,150,Ω
        """);
    write(
        "sheet/insulation.csv",
        """
        Step,From,To,Volts,Reading,Unit
        5,J1-A,REST,500,>2,GΩ
        6,J1-B,REST,50,200,MΩ
        7,J1-B,REST,500,20,MΩ
        """);
    Map<String, Map<?, ?>> judged =
        judged(Run.of("check", folder.resolve("box"), folder.resolve("sheet"), "--json"));
    assertEquals(6, judged.size(), "step 6 was read again at step 7: " + judged);
    Map<?, ?> join = said(judged, "sheet/continuity.csv!D2");
    assertEquals("1", join.get("step"));
    assertEquals("continuity", join.get("kind"));
    assertEquals("J1-A", join.get("from"));
    assertEquals("P2-1", join.get("to"));
    assertEquals("", join.get("state"));
    assertEquals("0.04 Ω", join.get("value"));
    assertEquals(0.04, number(join, "ohms"), 1e-9);
    assertEquals(null, join.get("volts"));
    assertEquals("join", join.get("requirement"));
    assertEquals("conforms", join.get("outcome"));
    assertEquals("computed", limit(join).get("basis"));
    assertTrue(number(limit(join), "ohms") > 0.04);

    Map<?, ?> blank = said(judged, "sheet/continuity.csv!D3");
    assertEquals("not-tested", blank.get("outcome"));
    assertEquals("not tested", blank.get("value"));
    assertTrue(blank.containsKey("ohms") && blank.get("ohms") == null);

    Map<?, ?> apart = said(judged, "sheet/continuity.csv!D4");
    assertEquals("apart", apart.get("requirement"));
    assertEquals("OL", apart.get("value"));
    assertEquals(null, apart.get("ohms"));
    assertEquals("open-min", limit(apart).get("basis"));
    assertEquals(100_000.0, limit(apart).get("minOhms"));

    Map<?, ?> part = said(judged, "sheet/continuity.csv!D5");
    assertEquals("part", part.get("requirement"));
    assertEquals("part-value", part.get("outcome"));
    assertEquals("parts", limit(part).get("basis"));
    assertEquals(90.0, number(limit(part), "minOhms"), 1e-9);
    assertTrue(number(limit(part), "ohms") >= 110);

    Map<?, ?> good = said(judged, "sheet/insulation.csv!E2");
    assertEquals("insulation", good.get("requirement"));
    assertEquals(500.0, good.get("volts"));
    assertEquals("> 2 GΩ", good.get("value"));
    assertEquals(null, good.get("ohms"), "more than 2 GΩ is no number");
    assertEquals(1e8, limit(good).get("minOhms"));
    assertEquals("insulation-min", limit(good).get("basis"));
    assertEquals("low-insulation", said(judged, "sheet/insulation.csv!E4").get("outcome"));
  }

  private static Map<?, ?> said(Map<String, Map<?, ?>> judged, String cell) {
    return Objects.requireNonNull(judged.get(cell), cell + " of " + judged.keySet());
  }

  private static double number(Map<?, ?> json, String name) {
    return ((Number) Objects.requireNonNull(json.get(name))).doubleValue();
  }

  private static Map<?, ?> limit(Map<?, ?> judged) {
    return (Map<?, ?>) Objects.requireNonNull(judged.get("limit"));
  }

  @Test
  void json_says_why_a_reading_was_not_judged() throws IOException {
    write("box/wires.csv", "Wire,From,To\nW1,J1-A,P2-1\n");
    write("sheet/insulation.csv", "From,To,Volts,Reading,Unit\nJ1-A,REST,50,200,MΩ\n");
    write("box/pins.csv", "Ref,Pin\nJ1,B\n");
    Map<?, ?> judged =
        said(
            judged(Run.of("check", folder.resolve("box"), folder.resolve("sheet"), "--json")),
            "sheet/insulation.csv!D2");
    assertEquals("not-judged", judged.get("outcome"));
    assertTrue(String.valueOf(judged.get("why")).contains("500 V"), judged.toString());
  }

  @Test
  void a_wrong_command_line_exits_64_and_says_where_help_is() {
    for (Object[] words :
        new Object[][] {
          {}, {"chekc"}, {"check"}, {"check", "one.csv"}, {"check", "a", "b", "--nope"}
        }) {
      Run run = Run.of(words);
      assertEquals(64, run.code());
      assertTrue(run.err().contains("--help"), run.err());
      assertEquals("", run.out());
    }
  }

  @Test
  void help_names_every_option_within_80_columns() {
    Run run = Run.of("check", "--help");
    assertEquals(0, run.code());
    assertTrue(run.out().contains("--any-revision"), run.out());
    assertTrue(run.out().lines().allMatch(line -> line.length() <= 80), run.out());
  }

  @Test
  void output_goes_to_a_file_and_never_over_one_without_force() throws IOException {
    Path output = folder.resolve("result.json");
    Object[] words = {"check", harness(), readings("J1-A,P2-1,0.2"), "--json", "-o", output};
    assertEquals(2, Run.of(words).code());
    String first = Files.readString(output);
    assertTrue(first.contains("\"ringout-check/1\""));

    Run second = Run.of(words);
    assertEquals(73, second.code());
    assertTrue(second.err().contains("exists; write over it with --force"), second.err());
    assertEquals(first, Files.readString(output));

    assertEquals(
        2, Run.of("check", harness(), readings("J1-A,P2-1,0.2"), "-o", output, "--force").code());
    assertTrue(Files.readString(output).startsWith("NOT COMPLETE."));
  }

  @Test
  void output_into_a_folder_that_is_not_there_exits_73() throws IOException {
    Run run =
        Run.of("check", harness(), readings("J1-A,P2-1,0.2"), "-o", folder.resolve("no/where.txt"));
    assertEquals(73, run.code(), run.err());
  }

  @Test
  void readings_of_another_revision_are_refused_with_both_named() throws IOException {
    write("box/wires.csv", "From,To\nJ1-A,P2-1\n");
    write("box/header.csv", "Name,Value\nrevision,B\n");
    write("sheet/continuity.csv", "From,To,Reading\nJ1-A,P2-1,0.2\n");
    write("sheet/job.csv", "Name,Value\nRevision,A\n");

    Run refused = Run.of("check", folder.resolve("box"), folder.resolve("sheet"));
    assertEquals(65, refused.code());
    assertTrue(
        refused.err().contains("taken against revision A, the harness file is revision B"),
        refused.err());
    assertTrue(refused.err().contains("sheet/job.csv!B2"), refused.err());

    Run accepted =
        Run.of("check", folder.resolve("box"), folder.resolve("sheet"), "--any-revision");
    assertEquals(0, accepted.code(), accepted.err());
    assertTrue(accepted.out().contains("read against revision A"), accepted.out());
  }

  @Test
  void later_readings_replace_earlier_ones_and_both_stay_in_the_record() throws IOException {
    write("one/continuity.csv", "From,To,Reading\nJ1-A,P2-1,OL\nJ1-B,P2-2,0.2\n");
    write("two/continuity.csv", "From,To,Reading\nP2-1,J1-A,0.2\nJ1-A,REST,OL\n");
    Run run =
        Run.of("check", withoutInsulationTest(), folder.resolve("one"), folder.resolve("two"));
    assertEquals(0, run.code(), run.out());
    assertTrue(run.out().contains("1 replaced by later ones"), run.out());
    assertTrue(run.out().contains("READINGS THAT CHANGED"), run.out());
  }

  @Test
  void times_decide_which_reading_is_the_later_one() throws IOException {
    Path sheet =
        write(
            "readings.csv",
            "From,To,Reading,Time\nJ1-A,P2-1,0.2,2026-11-25 15:00\nJ1-A,P2-1,OL,2026-11-25 9:30\n"
                .replace(" 9:30", " 09:30"));
    Run run = Run.of("check", harness(), sheet);
    assertEquals(2, run.code(), run.out());
  }

  @Test
  void files_of_one_name_are_told_apart_by_their_paths() throws IOException {
    Path first = write("one/r.csv", "From,To,Reading\nJ1-A,P2-1,OL\n");
    Path second = write("two/r.csv", "From,To,Reading\nJ1-B,P2-2,x\n");
    Run run = Run.of("check", harness(), first, second);
    assertEquals(65, run.code());
    assertTrue(run.err().contains("two/r.csv!C2"), run.err());
  }

  @Test
  void json_is_the_only_thing_on_standard_output_even_where_files_cannot_be_understood()
      throws IOException {
    Run run = Run.of("check", harness(), readings("J1-A,P2-1,what"), "--json");
    assertEquals(65, run.code());
    assertTrue(run.out().startsWith("{"), run.out());
    assertTrue(run.out().contains("\"cell\" : \"C2\""), run.out());
    assertTrue(run.out().contains("\"verdict\" : \"incomplete\""), "the rest is said all the same");
    Run whole = Run.of("check", harness(), write("no.csv", "From,Reading\nJ1-A,1\n"), "--json");
    assertEquals(65, whole.code());
    assertTrue(whole.out().startsWith("{"), whole.out());
    assertFalse(whole.out().contains("verdict"), whole.out());
  }

  @Test
  void colour_adds_nothing_that_the_words_do_not_say() throws IOException {
    Object[] words = {"check", harness(), readings("J1-A,P2-1,OL"), "--color", "ALWAYS"};
    String coloured = Run.of(words).out();
    words[4] = "NEVER";
    String plain = Run.of(words).out();
    assertTrue(coloured.contains("\u001B["));
    assertFalse(plain.contains("\u001B["));
    assertEquals(plain, coloured.replaceAll("\u001B\\[[0-9;]*m", ""));
  }
}

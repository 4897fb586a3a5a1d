package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Numbers without a unit: asked about once for the whole list, and settled by one option. */
class UnitsOfAListTest {
  @TempDir Path folder;

  private Path list(String... rows) throws IOException {
    Path file = folder.resolve("list.csv");
    Files.writeString(
        file, "Wire,From,From Pin,To,To Pin,Wire Size,Length\n" + String.join("\n", rows) + "\n");
    return file;
  }

  private static List<String> about(Run run, String words) {
    return run.err().lines().filter(line -> line.contains(words)).toList();
  }

  private List<String> wires(Path list, Object... options) throws IOException {
    Path harness = folder.resolve("harness.csv");
    Object[] words = new Object[options.length + 5];
    words[0] = "import";
    words[1] = list;
    words[2] = "-o";
    words[3] = harness;
    words[4] = "--force";
    System.arraycopy(options, 0, words, 5, options.length);
    Run run = Run.of(words);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    assertFalse(run.err().contains("unit"), run.err());
    return Files.readAllLines(harness);
  }

  @Test
  void lengths_without_a_unit_are_one_message_that_names_the_option() throws Exception {
    Run run =
        Run.of(
            "import",
            list(
                "W1,J1,1,J2,1,20,12",
                "W2,J1,2,J2,2,20,13",
                "W3,J1,3,J2,3,20,14",
                "W4,J1,4,J2,4,20,9"));
    assertEquals(ExitCode.DONE, run.code());
    assertEquals(
        List.of(
            "warning: list.csv!G2 (Length): 4 lengths have no unit: \"12\" (G2), \"13\" (G3), \"14\" (G4)"
                + " and 1 more; give it once for all with --length-unit mm, or cm, m, in, ft; until"
                + " then kept as notes"),
        about(run, "unit"));
  }

  @Test
  void the_unit_of_lengths_holds_where_a_cell_gives_none() throws Exception {
    List<String> rows =
        wires(list("W1,J1,1,J2,1,20,10", "W2,J1,2,J2,2,20,4 m"), "--length-unit", "in");
    assertEquals("W1,J1,1,J2,1,AWG 20,0.254", rows.get(1));
    assertEquals("W2,J1,2,J2,2,AWG 20,4", rows.get(2));
  }

  /** 4 is an AWG size and a cross-section: the 0.75 beside it tells that these are no AWG. */
  @Test
  void no_bare_number_is_an_awg_where_one_of_its_column_can_t_be() throws Exception {
    Path list = list("W1,J1,1,J2,1,0.75,1 m", "W2,J1,2,J2,2,4,1 m", "W3,J1,3,J2,3,AWG 20,1 m");
    Run run = Run.of("import", list, "--json");
    assertFalse(run.out().contains("AWG 4"), run.out());
    assertTrue(run.out().contains("\"gauges-without-unit\""), run.out());
    assertEquals(1, about(run, "--gauge-unit mm2, or --gauge-unit AWG").size(), run.err());

    List<String> rows = wires(list, "--gauge-unit", "mm2");
    assertEquals("W1,J1,1,J2,1,0.75 mm²,1", rows.get(1));
    assertEquals("W2,J1,2,J2,2,4 mm²,1", rows.get(2));
    assertEquals("W3,J1,3,J2,3,AWG 20,1", rows.get(3));
  }

  @Test
  void the_number_stands_beside_its_wire_until_the_unit_is_given() throws Exception {
    Path harness = folder.resolve("harness.csv");
    assertEquals(0, Run.of("import", list("W1,J1,1,J2,1,0.75,12"), "-o", harness).code());
    assertEquals(
        List.of(
            "\ufeffWire,From,From Pin,To,To Pin,Listed Gauge,Listed Length",
            "W1,J1,1,J2,1,0.75,12"),
        Files.readAllLines(harness));
  }

  @Test
  void a_profile_keeps_the_units() throws Exception {
    Path profile = folder.resolve("shop.profile");
    Path list = list("W1,J1,1,J2,1,0.75,10");
    Run.of("import", list, "--save-profile", profile, "--length-unit", "cm", "--gauge-unit", "mm2");
    assertEquals("W1,J1,1,J2,1,0.75 mm²,0.1", wires(list, "--profile", profile).get(1));
  }

  @Test
  void a_unit_that_is_none_is_refused_before_anything_is_read() throws Exception {
    Path list = list("W1,J1,1,J2,1,20,10");
    Run run = Run.of("import", list, "--length-unit", "cubits");
    assertEquals(ExitCode.USAGE, run.code());
    assertTrue(run.err().contains("expected one of mm, cm, m, in, ft"), run.err());
    assertEquals(ExitCode.USAGE, Run.of("import", list, "--gauge-unit", "stone").code());
  }
}

package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The trace as a mechanic asks for it, on the sample. */
class TraceCommandTest {
  private static final String BOX = "harness-samples/swing-bridge/junction-box.xlsx";

  private static Run trace(String... words) {
    List<Object> all = new ArrayList<>(List.of("trace", BOX));
    all.addAll(List.of(words));
    return Run.of(all.toArray());
  }

  @ParameterizedTest
  @CsvSource({
    "J3-1,point J3-1",
    "j3 1,point J3-1",
    "J3.1,point J3-1",
    "J3 pin 1,point J3-1",
    "j3 01,point J3-1",
    "J3#1,point J3-1",
    "tb1 terminal 3,point TB1-3",
    "J1-a,point J1-a (not J1-A)",
    "j1 A,point J1-A (not J1-a)",
    "m1-u,point M1-U",
    "W012,wire W012",
    "w12,wire W012",
    "wire 12,wire W012",
    "12,wire W012",
    "span close,signal SPAN CLOSE",
    "24v,signal 24V"
  })
  void a_point_is_understood_as_it_is_spoken(String asked, String understood) {
    Run run = trace(asked);
    assertEquals(0, run.code(), run.err());
    assertEquals(understood, run.out().lines().findFirst().orElse(""));
  }

  @ParameterizedTest
  @CsvSource({
    "J1,\"is an item; which of its 27 points?\"",
    "J2-99,maybe J2-19",
    "nowhere,\"is not a point, wire or signal\""
  })
  void what_is_not_found_is_refused_with_what_was_probably_meant(String asked, String said) {
    Run run = trace(asked);
    assertEquals(ExitCode.USAGE, run.code());
    assertTrue(run.err().contains(said.replace("\"", "")), run.err());
    assertEquals("", run.out());
  }

  @Test
  void every_point_of_the_net_stands_under_the_one_it_hangs_on_with_its_wire() {
    String out = trace("J1-A").out();
    assertTrue(
        out.contains("  TB1-1                 W001 RED, AWG 20, 0.8 m, 24V; 0.0205 to 0.0403 Ω"),
        out);
    assertTrue(out.contains("      J2-13             W032"), out);
    assertEquals(List.of(), out.lines().filter(line -> line.length() > 80).toList());
    assertTrue(out.lines().count() <= 25, "one screen");
  }

  /**
   * 12 m of AWG 20: stranded 28.5 ohms per km at the least (MIL-DTL-29606A table III-A), solid
   * 33.31 at the most (printed tables), 10 %, two contacts of 5 mΩ.
   */
  @Test
  void between_two_points_it_says_what_the_meter_should_read() {
    Run run = trace("p1", "A", "P11-1");
    assertTrue(run.out().contains("a meter should read 0.308 to 0.451 Ω"), run.out());
    assertTrue(run.out().contains("- W044 BLK, AWG 20, P1-A to P11-1"), run.out());
  }

  @Test
  void a_switch_is_followed_in_the_state_asked_for() {
    assertTrue(
        trace("P2-1", "P2-2").out().replaceAll("\\s+", " ").contains("Joined with S1=MADE."));
    Run made = trace("P2-1", "P2-2", "--state", "s1=made");
    assertTrue(made.out().contains("Joined: a meter should read"), made.out());
    assertEquals(ExitCode.USAGE, trace("P2-1", "--state", "S1=UP").code());
    assertEquals(ExitCode.USAGE, trace("P2-1", "--state", "S1=MADE;S1=CLEAR").code());
  }

  @Test
  void through_a_part_its_value_is_expected_with_the_wires_on_the_way() {
    assertTrue(
        trace("P2-7", "P2-8").out().contains("through the lamp DS1 a meter should read 82 to"));
  }

  @Test
  void a_net_s_own_insulation_limit_and_a_part_that_bears_less_are_said(@TempDir Path folder)
      throws Exception {
    Files.writeString(folder.resolve("wires.csv"), "Wire,From,To,Signal\nW1,J1-1,CR1-A,SENSE\n");
    Files.writeString(
        folder.resolve("parts.csv"),
        "Ref,Pin,To Pin,Kind,Ohms,Max Test Volts\nCR1,A,K,diode,,50\n");
    Files.writeString(
        folder.resolve("limits.csv"),
        "Name,Value,Unit,Net\ninsulation min,20,MΩ,SENSE\ninsulation volts,250,V,J1-1\n");
    String out = Run.of("trace", folder, "sense").out().replaceAll("\\s+", " ");
    assertTrue(out.contains("At least 20 MΩ at 250 V, this net's own limit."), out);
    assertTrue(out.contains("Disconnect diode CR1 first, or test at no more than 50 V."), out);
    assertTrue(
        Run.of("trace", folder, "J1-1", "CR1-K").out().contains("through the diode CR1 any value"));
    assertTrue(
        Run.of("trace", folder, "CR1-K", "J1-1").out().contains("blocks with the positive lead"));
  }

  @Test
  void a_shop_s_own_table_gives_the_most_that_its_wire_may_have(@TempDir Path folder)
      throws Exception {
    Path tables = Files.createDirectories(folder.resolve("tables"));
    Path wires = folder.resolve("list.csv");
    Files.writeString(wires, "Wire,From,To,Gauge,Wire Type,Length\nW1,J1-1,P1-1,20,HOUSE,100 ft\n");
    Files.writeString(
        tables.resolve("wire-resistance.csv"),
        "type,awg,area_cmil,max_ohm_per_1000ft,confidence\nHOUSE,20,1000,11.5,own\n");
    String own = Run.of("trace", wires, "J1-1", "P1-1", "--tables", tables).out();
    // 1.15 Ω and two contacts of 5 mΩ, and 10 %.
    assertTrue(own.contains("to 1.28 Ω"), own);
    assertTrue(Run.of("trace", wires, "J1-1", "P1-1").out().contains("to 1.13 Ω"));
    Files.writeString(tables.resolve("lugs.csv"), "colour,finest_awg,coarsest_awg\nblue,2,1/0\n");
    Run refused = Run.of("trace", wires, "J1-1", "--tables", tables);
    assertEquals(ExitCode.USAGE, refused.code(), refused.err());
    assertTrue(refused.err().contains("lugs.csv"), refused.err());
  }

  @Test
  void json_has_every_step(@TempDir Path folder) throws Exception {
    Run run = trace("J1-A", "J2-13", "--json");
    assertTrue(run.out().contains("\"format\" : \"ringout-trace/1\""));
    assertTrue(run.out().contains("\"way\" : [ \"W001\", \"the link TB1-1/2\", \"W032\" ]"));
    Path file = folder.resolve("trace.txt");
    assertEquals(0, trace("J1-A", "-o", file.toString()).code());
    assertEquals(ExitCode.CANNOT_WRITE, trace("J1-A", "-o", file.toString()).code());
  }

  @Test
  void a_file_that_is_missing_is_said_so() {
    assertEquals(ExitCode.MISSING_INPUT, Run.of("trace", "nowhere.xlsx", "J1-1").code());
  }
}

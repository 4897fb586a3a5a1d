package dev.ringout.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.check.CheckResult.Verdict;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Alternative;
import dev.ringout.diagnose.Fault.HighResistance;
import dev.ringout.diagnose.Fault.HighWire;
import dev.ringout.diagnose.Fault.UnequalWire;
import dev.ringout.diagnose.Fault.WrongGauge;
import dev.ringout.harness.Wire;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Readings that join and are not as they should be; common practice, no source. */
class PoorJointsTest {
  @TempDir Path folder;

  private static List<String> suspects(HighResistance high) {
    return high.suspects().stream().map(one -> one.conductor().label()).toList();
  }

  /** A cable of four sections; 10 m of AWG 20 each, 0.333 Ω (printed tables). */
  private UnitUnderTest sections() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int i = 1; i <= 4; i++) {
      unit.wire("W" + i + ",TB" + i + "-1,TB" + (i + 1) + "-1,20,10 m");
    }
    return unit;
  }

  @Test
  void readings_that_share_the_way_put_a_poor_joint_where_only_the_high_ones_lead() {
    CheckResult result =
        sections()
            .reads("TB1-1", "TB5-1", "1.92")
            .reads("TB1-1", "TB3-1", "0.68")
            .reads("TB4-1", "TB5-1", "0.34")
            .check();
    HighResistance high = assertInstanceOf(HighResistance.class, OnlyFault.of(result));
    assertEquals(List.of("W3"), suspects(high));
    assertEquals(Certainty.CERTAIN, high.finding().certainty());
  }

  @Test
  void what_no_reading_tells_apart_shares_the_odds() {
    CheckResult result =
        sections().reads("TB1-1", "TB5-1", "1.92").reads("TB1-1", "TB3-1", "0.68").check();
    HighResistance high = assertInstanceOf(HighResistance.class, OnlyFault.of(result));
    assertEquals(List.of("W3", "W4"), suspects(high));
    assertEquals(0.5, high.suspects().get(0).odds(), 1e-6);
    assertEquals(Certainty.LIKELY, high.finding().certainty());
  }

  @Test
  void two_poor_joints_in_one_net_are_two_faults() {
    CheckResult result =
        sections()
            .reads("TB1-1", "TB2-1", "0.95")
            .reads("TB2-1", "TB3-1", "0.34")
            .reads("TB3-1", "TB4-1", "2.4")
            .reads("TB4-1", "TB5-1", "0.34")
            .check();
    assertEquals(
        List.of("W1", "W3"),
        result.diagnosis().faults().stream()
            .flatMap(fault -> fault.wires().stream())
            .map(Wire::name)
            .sorted()
            .toList());
  }

  /** A ring of four equal wires, one with a joint of 2 Ω; values by series and parallel. */
  @Test
  void in_a_ring_the_wire_that_fits_all_values_is_found() {
    UnitUnderTest ring = new UnitUnderTest(folder);
    double wire = 0.3431;
    double[] ohms = {wire, wire, wire + 2, wire};
    for (int i = 0; i < 4; i++) {
      ring.wire("W" + (i + 1) + ",TB1-" + (i + 1) + ",TB1-" + ((i + 1) % 4 + 1) + ",20,10 m");
    }
    double all = ohms[0] + ohms[1] + ohms[2] + ohms[3];
    for (int i = 0; i < 4; i++) {
      ring.reads(
          "TB1-" + (i + 1),
          "TB1-" + ((i + 1) % 4 + 1),
          String.format(java.util.Locale.ROOT, "%.4f", ohms[i] * (all - ohms[i]) / all));
    }
    HighResistance high = assertInstanceOf(HighResistance.class, OnlyFault.of(ring.check()));
    assertEquals("W3", suspects(high).get(0));
    assertTrue(high.suspects().get(0).odds() > 0.9, high.suspects().toString());
  }

  /** No length is listed, so nothing is computed of the ways that lead through wires. */
  @Test
  void behind_a_ring_of_jumpers_the_wire_of_all_high_readings_is_poor_and_odds_add_up() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    unit.link("TB1,4,5").link("TB1,5,6").link("TB1,6,7").link("TB1,4,7");
    unit.wire("W1,J1-1,TB1-4,,").wire("W2,TB1-6,J1-2,,").wire("W3,J1-3,TB1-5,,");
    CheckResult result =
        unit.reads("J1-1", "TB1-4", "0.25")
            .reads("J1-2", "TB1-6", "5.22")
            .reads("J1-1", "J1-2", "5.47")
            .reads("J1-3", "J1-2", "5.41")
            .reads("J1-3", "TB1-5", "0.19")
            .check();
    HighResistance high = assertInstanceOf(HighResistance.class, OnlyFault.of(result));
    assertEquals(List.of("W2"), suspects(high));
    assertEquals(1, high.suspects().stream().mapToDouble(one -> one.odds()).sum(), 1e-6);
  }

  /** Two wires side by side, one of them open: the value of the other alone. */
  @Test
  void of_parallel_wires_that_read_as_one_either_may_be_open() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,J1-A,E1-1,20,10 m")
            .wire("W2,J1-A,E1-1,20,10 m")
            .reads("J1-A", "E1-1", "0.340")
            .check();
    HighResistance high = assertInstanceOf(HighResistance.class, OnlyFault.of(result));
    assertEquals(List.of("W1", "W2"), suspects(high).stream().sorted().toList());
    assertTrue(high.suspects().get(0).inLoop());
  }

  /**
   * 30 m of solid wire: AWG 20 is 0.999 Ω, 22 is 1.589, 18 is 0.628, 24 is 2.53 (printed tables).
   */
  @ParameterizedTest
  @CsvSource({"1.60,22", "2.54,24"})
  void a_wire_that_reads_as_a_finer_one_is_that_first(String reading, int gauge) {
    HighWire high = assertInstanceOf(HighWire.class, thirtyMetresOfSolid20(reading));
    Alternative likeliest = high.causes().get(0);
    assertTrue(likeliest.odds() > 0.5);
    assertEquals(
        "AWG " + gauge, likeliest.slips().get(0).asOtherGauge().orElseThrow().gauge().label());
  }

  @ParameterizedTest
  @CsvSource({"0.633,18", "0.40,16"})
  void a_wire_that_reads_as_a_thicker_one_is_said_to_be_of_it(String reading, int gauge) {
    WrongGauge wrong = assertInstanceOf(WrongGauge.class, thirtyMetresOfSolid20(reading));
    assertEquals("AWG " + gauge, wrong.likely().label());
    assertEquals("AWG 20", wrong.listed().label());
    assertTrue(wrong.odds() > 0.5 && wrong.odds() <= 1);
    assertEquals(
        reading.equals("0.40"),
        wrong.finding().alternatives().isEmpty(),
        "another length, but no wire is cut to less than half");
  }

  private Fault thirtyMetresOfSolid20(String reading) {
    CheckResult result =
        new UnitUnderTest(folder)
            .wireOfType("W1,J1-A,P2-1,20,30 m", "solid")
            .reads("J1-A", "P2-1", reading)
            .check();
    assertEquals(Verdict.FAULTS, result.verdict());
    assertEquals(List.of(), result.diagnosis().unexplained());
    return OnlyFault.of(result);
  }

  @Test
  void a_wire_that_fits_no_gauge_has_a_poor_joint() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,J1-A,P2-1,20,30 m")
            .reads("J1-A", "P2-1", "14.7")
            .check();
    assertInstanceOf(HighResistance.class, OnlyFault.of(result));
  }

  @Test
  void wires_of_one_cable_off_the_same_reel_are_one_fault() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int pin = 1; pin <= 12; pin++) {
      unit.wireInCable("W" + pin + ",J1-" + pin + ",P2-" + pin + ",20,30 m", "C" + (pin + 2) / 3);
      unit.reads("J1-" + pin, "P2-" + pin, pin <= 3 ? "1.60" : "1.0" + pin % 3);
    }
    WrongGauge wrong = assertInstanceOf(WrongGauge.class, OnlyFault.of(unit.check()));
    assertEquals(List.of("W1", "W2", "W3"), wrong.wires().stream().map(Wire::name).toList());
  }

  /** Twelve 4 ft wires, eleven near 0.06 Ω, one 0.84 Ω: within 1 Ω, and yet no good joint. */
  @Test
  void an_outlier_is_flagged_even_where_the_limit_lets_it_pass() {
    UnitUnderTest unit = new UnitUnderTest(folder).limit("closed max,1,Ω");
    for (int pin = 1; pin <= 12; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P2-" + pin + ",20,");
      unit.reads("J1-" + pin, "P2-" + pin, pin == 7 ? "0.84" : "0.0" + (5 + pin % 3));
    }
    UnequalWire unequal = assertInstanceOf(UnequalWire.class, OnlyFault.of(unit.check()));
    assertEquals("W7", unequal.wire().name());
    assertEquals(11, unequal.fellows());
    assertEquals(0.07, unequal.fellowsOhms().highOhms(), 1e-9);
  }

  /** With good crimps alone nobody is blamed, whatever the spread of the wires. */
  @Test
  void good_wires_that_differ_a_little_are_no_outliers() {
    for (int seed = 0; seed < 40; seed++) {
      Random random = new Random(seed);
      UnitUnderTest unit = new UnitUnderTest(folder.resolve("" + seed));
      for (int pin = 1; pin <= 20; pin++) {
        unit.wire("W" + pin + ",J1-" + pin + ",P2-" + pin + ",20,12 m");
        unit.reads(
            "J1-" + pin,
            "P2-" + pin,
            String.format(
                java.util.Locale.ROOT, "%.3f", 0.41 * (1 + 0.02 * random.nextGaussian())));
      }
      assertEquals(List.of(), unit.check().diagnosis().faults(), "seed " + seed);
    }
  }
}

package dev.ringout.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Alternative;
import dev.ringout.diagnose.Fault.HighResistance;
import dev.ringout.diagnose.Fault.HighWire;
import dev.ringout.diagnose.Fault.WrongGauge;
import dev.ringout.diagnose.NextReading;
import dev.ringout.diagnose.SlipFact;
import dev.ringout.diagnose.SlipFact.OtherGauge;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.units.Gauge;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A wire of another gauge reads what such a wire has, and as the unit's other wires tell what they
 * have within a few percent; a poor joint reads anything. Which of them it is no reading between
 * its ends tells: it is one finding, and the eye tells the rest. Five metres of stranded AWG 22
 * have 0.23 to 0.27 Ω, of AWG 26 0.57 to 0.69 (MIL-DTL-29606A table III-A).
 */
class GaugeOrPoorJointTest {
  @TempDir Path folder;

  /** So many good wires, each of which reads a little under the most that it may have. */
  private UnitUnderTest wires(int good) {
    UnitUnderTest unit = new UnitUnderTest(folder.resolve("of" + good));
    for (int pin = 1; pin <= good; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P1-" + pin + ",22,5 m")
          .reads("J1-" + pin, "P1-" + pin, "0.25" + pin % 5);
    }
    return unit.wire("W20,J1-20,P1-20,22,5 m");
  }

  private CheckResult checked(int good, String reading) {
    return wires(good).reads("J1-20", "P1-20", reading).check();
  }

  private HighWire told(int good, String reading) {
    return assertInstanceOf(HighWire.class, OnlyFault.of(checked(good, reading)));
  }

  private static SlipFact likeliest(HighWire wire) {
    return wire.causes().get(0).slips().get(0);
  }

  @Test
  void what_a_finer_wire_has_is_that_wire_first() {
    OtherGauge likeliest = likeliest(told(8, "0.650")).asOtherGauge().orElseThrow();
    assertEquals(new Gauge.Awg(26), likeliest.gauge());
  }

  @Test
  void the_other_wires_tell_how_much_such_a_wire_has() {
    double alone = told(0, "0.650").causes().get(0).odds();
    double amongMany = told(8, "0.650").causes().get(0).odds();
    assertTrue(amongMany > alone + 0.1, alone + " " + amongMany);
  }

  @Test
  void between_what_gauges_have_it_is_a_poor_joint_first() {
    assertTrue(likeliest(told(8, "0.500")).asPoorJoint().isPresent());
  }

  @Test
  void that_the_wire_is_too_high_is_certain_and_no_reading_between_its_ends_is_asked_for() {
    CheckResult result = checked(8, "0.650");
    HighWire wire = told(8, "0.650");
    assertEquals(Certainty.CERTAIN, wire.finding().certainty());
    assertEquals(1, wire.causes().stream().mapToDouble(Alternative::odds).sum(), 0.03);
    assertEquals(
        List.of(),
        result.diagnosis().next().stream().filter(one -> one.from().equals("J1-20")).toList());
  }

  @Test
  void what_neither_a_gauge_nor_a_length_has_is_a_poor_joint() {
    for (String reading : List.of("0.800", "14.7")) {
      Fault told = OnlyFault.of(checked(8, reading));
      assertInstanceOf(HighResistance.class, told);
      assertEquals(Certainty.CERTAIN, told.finding().certainty());
    }
  }

  /** A tenth of it is what the wire has: the pen may have slipped. */
  @Test
  void where_the_point_may_be_misplaced_the_same_is_read_once_more() {
    UnitUnderTest unit = new UnitUnderTest(folder.resolve("pen"));
    unit.wire("W1,J1-1,P1-1,16,9 m").wire("W2,J1-2,P1-2,16,9 m").wire("W3,J1-3,P1-3,16,9 m");
    unit.reads("J1-1", "P1-1", "0.140")
        .reads("J1-2", "P1-2", "1.38")
        .reads("J1-3", "P1-3", "0.138");
    CheckResult result = unit.check();
    assertEquals(Certainty.LIKELY, OnlyFault.of(result).finding().certainty());
    NextReading next = result.diagnosis().next().get(0);
    assertEquals(List.of("J1-2", "P1-2"), List.of(next.from(), next.to()));
  }

  @Test
  void a_low_value_is_never_certain_to_be_another_gauge_for_copper_may_lie_beside_it() {
    WrongGauge wrong = assertInstanceOf(WrongGauge.class, OnlyFault.of(checked(8, "0.100")));
    assertEquals(Certainty.LIKELY, wrong.finding().certainty());
  }
}

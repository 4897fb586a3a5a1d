package dev.ringout.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.SlipFact;
import dev.ringout.harness.Point;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Joins by mistake have ohms of their own: a whisker some, a wire of sixty metres more. */
class StrayJoinsTest {
  @TempDir Path folder;

  private UnitUnderTest pairs(String length) {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int pin = 1; pin <= 4; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P2-" + pin + ",24," + length);
    }
    return unit;
  }

  @ParameterizedTest
  @CsvSource({"2.9,0.3", "0.3,2.9", "2.9,2.9", "4.5,4.5"})
  void a_bridge_with_some_ohms_is_a_short_whichever_side_reads_them(String one, String other) {
    UnitUnderTest unit = pairs("1 m");
    for (int pin = 1; pin <= 4; pin++) {
      unit.reads("J1-" + pin, "P2-" + pin, "0.085");
    }
    unit.reads("J1-1", "REST", one).reads("J1-2", "REST", other).reads("J1-1", "J1-2", one);
    unit.reads("J1-3", "REST", "OL").reads("J1-4", "REST", "OL");
    Fault.Shorted shorted = assertInstanceOf(Fault.Shorted.class, OnlyFault.of(unit.check()));
    assertEquals(2, shorted.points().size());
  }

  /**
   * Sixty metres of AWG 24 have 5.1 Ω: two of them crossed read as much where nothing is listed.
   */
  @Test
  void two_long_wires_crossed_are_a_swap_and_no_opens_with_a_leak() {
    UnitUnderTest unit = pairs("60 m");
    unit.reads("J1-1", "P2-1", "OL").reads("J1-2", "P2-2", "OL");
    unit.reads("J1-1", "P2-2", "5.1").reads("J1-2", "P2-1", "5.1");
    CheckResult result = unit.reads("J1-3", "P2-3", "5.1").reads("J1-4", "P2-4", "5.1").check();
    Fault.Miswire swap = assertInstanceOf(Fault.Miswire.class, OnlyFault.of(result));
    assertEquals(Fault.Pattern.SWAP, swap.pattern());
    assertEquals(List.of(), result.diagnosis().unexplained());
  }

  @Test
  void a_leak_that_shows_through_a_coil_is_one_leak() {
    UnitUnderTest unit = new UnitUnderTest(folder).part("K1,1,2,winding,300 Ω,10,");
    unit.wire("W1,J1-1,K1-1,,").wire("W2,J1-2,K1-2,,").wire("W3,J1-3,P2-3,,");
    unit.reads("J1-1", "K1-1", "0.1").reads("J1-2", "K1-2", "0.1").reads("J1-3", "P2-3", "0.1");
    unit.reads("K1-1", "K1-2", "301");
    unit.insulation("J1-1", "J1-3", "0.5").insulation("J1-2", "J1-3", "0.5");
    CheckResult result = unit.insulation("J1-1+J1-2", "REST", "0.5").check();
    assertInstanceOf(Fault.LowInsulation.class, OnlyFault.of(result));
  }

  /** Two wires side by side from J1-4 to P2-4, a third from J1-5 to P2-5; 20 AWG, 3.3 m. */
  private UnitUnderTest sideBySide(String gaugeAndLength) {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (String wire : List.of("W1,J1-4,P2-4,", "W2,J1-4,P2-4,", "W3,J1-5,P2-5,")) {
      unit.wire(wire + gaugeAndLength);
    }
    unit.wire("W4,J1-6,P2-6," + gaugeAndLength).reads("J1-6", "P2-6", "0.109");
    return unit.reads("J1-6", "REST", "OL");
  }

  /** Were one of them in P2-5, J1-4 to P2-4 would read twice as much. */
  @Test
  void a_bridge_beside_wires_side_by_side_is_no_moved_wire_once_their_ohms_are_read() {
    UnitUnderTest unit = sideBySide("20,3.3 m");
    unit.reads("J1-4", "P2-4", "0.055").reads("J1-5", "P2-5", "0.109");
    CheckResult result = unit.reads("J1-4", "REST", "0.166").reads("J1-5", "REST", "0.166").check();
    Fault.Shorted shorted = assertInstanceOf(Fault.Shorted.class, OnlyFault.of(result));
    assertEquals(List.of("4", "5"), shorted.points().stream().map(Point::pin).sorted().toList());
    assertEquals(Certainty.CERTAIN, shorted.finding().certainty());
  }

  @Test
  void where_no_ohms_tell_a_moved_wire_from_a_bridge_both_are_named_and_neither_is_certain() {
    UnitUnderTest unit = sideBySide(",");
    unit.reads("J1-4", "P2-4", "0.055").reads("J1-5", "P2-5", "0.109");
    CheckResult result = unit.reads("J1-4", "REST", "0.166").reads("J1-5", "REST", "0.166").check();
    Fault.Miswire moved = assertInstanceOf(Fault.Miswire.class, OnlyFault.of(result));
    assertEquals(Certainty.LIKELY, moved.finding().certainty());
    assertTrue(
        moved.finding().alternatives().stream()
            .flatMap(one -> one.slips().stream())
            .anyMatch(SlipFact.Bridge.class::isInstance));
  }

  /** W2 answers through R1: it is joined to the lead of R1 at another connector. */
  private UnitUnderTest answersThroughAResistor() {
    UnitUnderTest unit = new UnitUnderTest(folder).part("R1,1,2,resistor,100 Ω,5,");
    unit.wire("W1,J1-1,R1-1,,").wire("W2,J1-2,P2-2,,").wire("W3,R1-2,J3-1,,");
    unit.reads("J1-1", "R1-1", "0.04").reads("R1-2", "J3-1", "0.04").reads("R1-1", "R1-2", "100");
    return unit.reads("J1-2", "P2-2", "OL").reads("J1-1", "J1-2", "100");
  }

  @Test
  void what_reads_as_a_listed_resistor_is_joined_to_its_far_lead_and_no_leak() {
    CheckResult result = answersThroughAResistor().reads("J1-2", "REST", "0.04").check();
    assertEquals(List.of(), result.diagnosis().unexplained());
    assertEquals(
        List.of("Open", "Shorted"),
        result.diagnosis().faults().stream().map(one -> one.getClass().getSimpleName()).toList());
  }

  /** A leak may have a resistor's ohms, a poor joint too: no search has tried all of them. */
  @Test
  void a_story_with_a_poor_joint_of_a_resistors_ohms_is_not_certain() {
    CheckResult result = answersThroughAResistor().check();
    assertTrue(
        result.diagnosis().faults().stream()
            .noneMatch(one -> one.finding().certainty() == Certainty.CERTAIN));
  }
}

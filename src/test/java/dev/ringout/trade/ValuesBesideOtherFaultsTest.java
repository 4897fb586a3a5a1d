package dev.ringout.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import dev.ringout.check.CheckResult;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.HighResistance;
import dev.ringout.diagnose.Fault.HighWire;
import dev.ringout.harness.Wire;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Ohms are held against the unit as it was found, and a reading is blamed once. Solid AWG 20 has
 * 0.999 Ω on 30 m, AWG 22 1.589 (printed tables).
 */
class ValuesBesideOtherFaultsTest {
  @TempDir Path folder;

  private UnitUnderTest solid(String... rows) {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (String row : rows) {
      unit.wireOfType(row, "solid");
    }
    return unit;
  }

  /** Three wires in a ring; the end of W1 at P1 sits in a spare cavity. */
  private UnitUnderTest openedRing() {
    return solid("W1,J1-A,P1-1,20,30 m", "W2,P1-1,P2-1,20,30 m", "W3,P2-1,J1-A,20,30 m")
        .wireOfType("W4,J1-B,P3-1,20,30 m", "solid")
        .pin("P1,2,20")
        .reads("J1-A", "P1-2", "1.0");
  }

  private static List<HighResistance> poorJoints(CheckResult result) {
    return result.diagnosis().faults().stream()
        .map(Fault::asHighResistance)
        .flatMap(Optional::stream)
        .toList();
  }

  private static List<String> suspects(HighResistance high) {
    return high.suspects().stream().map(one -> one.conductor().label()).sorted().toList();
  }

  @Test
  void a_reading_over_a_wire_of_another_gauge_and_a_good_one_shows_the_gauge_too() {
    CheckResult result =
        solid("W1,J1-A,TB1-1,20,30 m", "W2,TB1-1,P2-1,20,30 m")
            .reads("J1-A", "TB1-1", "1.60")
            .reads("TB1-1", "P2-1", "1.00")
            .reads("J1-A", "P2-1", "2.60")
            .check();
    HighWire wrong = assertInstanceOf(HighWire.class, OnlyFault.of(result));
    assertEquals(List.of("W1"), wrong.wires().stream().map(Wire::name).toList());
    assertEquals(2, wrong.finding().readings().size(), "the one over both wires shows it as well");
    assertEquals(List.of(), result.diagnosis().unexplained());
  }

  @Test
  void a_poor_joint_elsewhere_is_not_put_down_to_a_wire_of_another_gauge() {
    CheckResult result =
        solid("W1,J1-A,P1-1,20,30 m", "W2,J1-B,P2-1,20,30 m", "W3,J1-C,P2-2,20,30 m")
            .reads("J1-A", "P1-1", "1.60")
            .reads("J1-B", "P2-1", "14.7")
            .reads("J1-C", "P2-2", "1.00")
            .check();
    assertEquals(2, result.diagnosis().faults().size());
    HighWire wrong = assertInstanceOf(HighWire.class, result.diagnosis().faults().get(0));
    assertEquals(List.of("W1"), wrong.wires().stream().map(Wire::name).toList());
    assertEquals(1, wrong.finding().readings().size());
    assertEquals(List.of("W2"), suspects(poorJoints(result).get(0)));
  }

  @Test
  void the_ohms_of_a_ring_that_a_misplaced_wire_opens_are_those_of_the_rest() {
    CheckResult result = openedRing().reads("J1-A", "P1-1", "2.0").check();
    assertEquals(1, result.diagnosis().faults().size(), "two wires in a row have 2 Ω");
    assertEquals(List.of(), poorJoints(result));
  }

  @Test
  void a_poor_joint_in_what_is_left_of_the_ring_is_told_by_what_is_expected_of_that() {
    CheckResult result = openedRing().reads("J1-A", "P1-1", "9.0").check();
    HighResistance high = poorJoints(result).get(0);
    assertEquals(2, result.diagnosis().faults().size());
    assertEquals(List.of("W2", "W3"), suspects(high));
    assertEquals(2.22, high.finding().readings().get(0).limit().ohms(), 0.01);
  }

  @Test
  void what_a_misplaced_wire_does_not_touch_is_held_against_the_list() {
    CheckResult result =
        openedRing().reads("J1-A", "P1-1", "2.0").reads("J1-B", "P3-1", "9.0").check();
    assertEquals(2, result.diagnosis().faults().size());
    assertEquals(List.of("W4"), suspects(poorJoints(result).get(0)));
  }

  @Test
  void crossed_wires_of_other_lengths_are_crossed_and_nothing_else() {
    CheckResult result =
        solid("W1,J1-A,P2-1,20,30 m", "W2,J1-B,P2-2,20,1 m")
            .reads("J1-A", "P2-1", "OL")
            .reads("J1-A", "P2-2", "1.0")
            .reads("J1-B", "P2-1", "0.034")
            .reads("J1-B", "P2-2", "OL")
            .check();
    assertInstanceOf(Fault.Miswire.class, OnlyFault.of(result));
  }

  /** It would stand out among its fellows as well. */
  @Test
  void a_poor_joint_is_not_told_a_second_time_as_a_wire_unlike_its_fellows() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int pin = 1; pin <= 12; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P2-" + pin + ",20,12 m");
      unit.reads("J1-" + pin, "P2-" + pin, pin == 7 ? "2.90" : "0.4" + pin % 3);
    }
    HighResistance high = assertInstanceOf(HighResistance.class, OnlyFault.of(unit.check()));
    assertEquals(List.of("W7"), suspects(high));
  }
}

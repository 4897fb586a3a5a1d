package dev.ringout.diagnose.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.Predictor;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.PartFault;
import dev.ringout.diagnose.SwitchFault;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.support.PublishedLimits;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What may have happened, given one reading that should not be; worked out by hand. */
class CandidatesTest {
  @TempDir Path folder;

  /** A unit, and the slips that would mend its first failing reading. */
  private record Mended(SlippedUnit unit, Judged first, Candidates candidates) {
    Set<Slip> slips() {
      return slips(List.of());
    }

    Set<Slip> slips(List<Slip> already) {
      return candidates.mending(first, already, Set.of());
    }

    /** To which points an end of a wire may have been moved. */
    Set<String> movedTo(String wire, Wire.End end) {
      return slips().stream()
          .filter(slip -> slip instanceof Slip.Moved one && one.end() == end)
          .map(Slip.Moved.class::cast)
          .filter(one -> one.wire() == unit.conductor(wire))
          .map(one -> unit.circuit().point(one.to()).toString())
          .collect(Collectors.toCollection(TreeSet::new));
    }

    Slip bridge(String one, String other) {
      int a = unit.point(one);
      int b = unit.point(other);
      return new Slip.Bridged(Math.min(a, b), Math.max(a, b));
    }
  }

  private static Mended of(UnitUnderTest written, boolean doubtful) {
    CheckResult result = written.check();
    JoinLimits limits = PublishedLimits.of(result.circuit());
    Evidence evidence =
        Evidence.of(
            result.circuit(),
            new Predictor(result.circuit(), limits.resistances()),
            result.comparison().inForce());
    Judged first = result.comparison().failing().get(0);
    return new Mended(
        new SlippedUnit(result.circuit()),
        first,
        new Candidates(
            result.circuit(),
            new Neighbours(result.circuit()),
            evidence,
            List.of(),
            doubtful ? Set.of(first) : Set.of(),
            List.of()));
  }

  private UnitUnderTest cable() {
    return new UnitUnderTest(folder)
        .wire("W1,J1-1,P1-1")
        .wire("W2,J1-2,P1-2")
        .wire("W3,J2-1,P2-1")
        .pin("J1,3,")
        .pin("P1,3,");
  }

  @Test
  void an_open_is_a_wire_broken_moved_at_either_end_or_crossed_with_one_of_the_item() {
    Mended open = of(cable().reads("J1-1", "P1-1", "OL"), false);
    Set<Slip> slips = open.slips();
    int w1 = open.unit.conductor("W1");
    int w2 = open.unit.conductor("W2");
    assertTrue(slips.contains(new Slip.Missing(w1)));
    assertFalse(slips.contains(new Slip.Missing(w2)), "another's wire is not on the way");
    assertEquals(Set.of("J1-2", "J1-3"), open.movedTo("W1", Wire.End.FROM));
    assertEquals(Set.of("P1-2", "P1-3"), open.movedTo("W1", Wire.End.TO));
    assertTrue(slips.contains(new Slip.Crossed(w1, Wire.End.FROM, w2, Wire.End.FROM)));
    assertTrue(slips.contains(new Slip.Crossed(w1, Wire.End.TO, w2, Wire.End.TO)));
    assertEquals(1 + 4 + 2, slips.size(), slips.toString());
  }

  @Test
  void a_join_is_a_bridge_a_wire_moved_into_the_other_net_or_two_crossed() {
    Mended joined = of(cable().reads("J1-1", "J1-2", "0.1"), false);
    Set<Slip> slips = joined.slips();
    int w1 = joined.unit.conductor("W1");
    int w2 = joined.unit.conductor("W2");
    assertTrue(slips.contains(joined.bridge("J1-1", "J1-2")));
    assertEquals(Set.of("J1-2"), joined.movedTo("W1", Wire.End.FROM));
    assertEquals(Set.of("P1-1"), joined.movedTo("W2", Wire.End.TO));
    assertTrue(slips.contains(new Slip.Crossed(w1, Wire.End.FROM, w2, Wire.End.FROM)));
    assertFalse(slips.contains(new Slip.Missing(w1)));
    assertEquals(1 + 4 + 2, slips.size(), slips.toString());
  }

  @Test
  void a_bridge_is_put_where_pins_of_the_two_nets_are_next_to_each_other() {
    Mended joined =
        of(
            new UnitUnderTest(folder)
                .wire("W1,J1-1,P1-5")
                .wire("W2,J1-4,P1-6")
                .pin("J1,2,")
                .pin("J1,3,")
                .reads("J1-1", "J1-4", "0.1"),
            false);
    assertTrue(joined.slips().contains(joined.bridge("P1-5", "P1-6")));
  }

  @Test
  void a_reading_in_doubt_may_have_been_taken_a_pin_off_at_either_probe() {
    UnitUnderTest unit = cable().reads("J1-1", "P1-1", "OL");
    assertTrue(of(unit, false).slips().stream().noneMatch(Slip.Misread.class::isInstance));
    Mended doubtful = of(unit, true);
    assertEquals(
        Set.of("J1-2 for the first", "P1-2 for the second"),
        doubtful.slips().stream()
            .filter(Slip.Misread.class::isInstance)
            .map(Slip.Misread.class::cast)
            .map(
                one ->
                    doubtful.unit.circuit().point(one.at())
                        + (one.first() ? " for the first" : " for the second"))
            .collect(Collectors.toSet()),
        "the third pins are two off");
  }

  @Test
  void a_poor_joint_may_be_anywhere_on_the_way_of_a_high_reading() {
    Mended high =
        of(
            new UnitUnderTest(folder)
                .wire("W1,J1-1,TB1-1")
                .wire("W2,TB1-2,P1-1")
                .link("TB1,1,2")
                .reads("J1-1", "P1-1", "50"),
            false);
    Set<Slip> slips = high.slips();
    for (String name : List.of("W1", "W2", "the link TB1-1/2")) {
      assertTrue(slips.contains(new Slip.Poor(high.unit.conductor(name))), name);
      assertTrue(slips.contains(new Slip.Missing(high.unit.conductor(name))), name);
    }
  }

  @Test
  void in_a_large_connector_an_end_is_looked_for_in_nearby_cavities() {
    for (int pins : new int[] {160, 161}) {
      UnitUnderTest unit = new UnitUnderTest(folder.resolve("" + pins));
      unit.wire("W1,J1-80,P1-1");
      for (int pin = 1; pin <= pins; pin++) {
        unit.pin("J1," + pin + ",");
      }
      Set<String> to = of(unit.reads("J1-80", "P1-1", "OL"), false).movedTo("W1", Wire.End.FROM);
      if (pins == 160) {
        assertEquals(159, to.size());
      } else {
        assertEquals(
            Set.of("J1-76", "J1-77", "J1-78", "J1-79", "J1-81", "J1-82", "J1-83", "J1-84"), to);
      }
    }
  }

  private UnitUnderTest switched(String... states) {
    UnitUnderTest unit = new UnitUnderTest(folder.resolve("" + states.length));
    unit.wire("W1,J1-1,S1-C").wire("W2,J1-2,S1-1");
    for (int i = 0; i < states.length; i++) {
      unit.contact("S1," + states[i] + ",C," + (i + 1));
    }
    return unit;
  }

  private static Slip faulty(SwitchFault how, String position, int contact) {
    return new Slip.FaultySwitch(0, how, position, contact);
  }

  @Test
  void a_switch_that_does_not_close_may_be_stuck_anywhere_or_wired_the_other_way() {
    Set<Slip> two = of(switched("SHUT", "AJAR").reads("J1-1", "J1-2", "OL"), false).slips();
    assertTrue(two.contains(faulty(SwitchFault.STUCK, "SHUT", -1)));
    assertTrue(two.contains(faulty(SwitchFault.STUCK, "AJAR", -1)));
    assertTrue(two.contains(faulty(SwitchFault.OTHER_WAY, "", -1)));
    Set<Slip> three =
        of(switched("OPEN", "STOP", "CLOSE").reads("J1-1", "J1-2", "OL"), false).slips();
    assertTrue(three.contains(faulty(SwitchFault.STUCK, "STOP", -1)));
    assertFalse(three.contains(faulty(SwitchFault.OTHER_WAY, "", -1)), "of three there is none");
  }

  @Test
  void a_contact_that_joins_what_it_should_not_may_be_welded() {
    Mended joined = of(switched("SHUT", "AJAR").readsIn("S1=AJAR", "J1-1", "J1-2", "0.1"), false);
    int contact = joined.unit.conductor("the contact S1-C/1 of S1");
    assertTrue(joined.slips().contains(faulty(SwitchFault.WELDED, "", contact)));
    assertTrue(joined.slips().contains(faulty(SwitchFault.STUCK, "SHUT", -1)));
    assertTrue(joined.slips().contains(faulty(SwitchFault.OTHER_WAY, "", -1)));
  }

  private UnitUnderTest resistor() {
    return new UnitUnderTest(folder)
        .wire("W1,J1-1,R1-1")
        .wire("W2,J1-2,R1-2")
        .part("R1,1,2,resistor,120");
  }

  @Test
  void a_value_too_high_is_another_part_and_none_is_a_part_missing_or_its_wires() {
    Mended high = of(resistor().reads("J1-1", "J1-2", "500"), false);
    int from = high.unit.point("R1-1");
    int to = high.unit.point("R1-2");
    Slip otherValue = new Slip.FaultyPart(0, PartFault.OTHER_VALUE, from, to);
    Slip missing = new Slip.FaultyPart(0, PartFault.MISSING, from, to);
    assertTrue(high.slips().contains(otherValue));
    assertFalse(high.slips(List.of(missing)).contains(otherValue), "a part is wrong in one way");
    Mended none = of(resistor().reads("J1-1", "J1-2", "OL"), false);
    assertTrue(none.slips().contains(missing));
    assertTrue(none.slips().contains(new Slip.Missing(none.unit.conductor("W1"))));
    assertTrue(none.slips().contains(new Slip.Missing(none.unit.conductor("W2"))));
  }

  @Test
  void bridges_settle_where_beside_the_other_slips_their_pins_are_nearest() {
    Mended joined = of(cable().reads("J1-1", "J1-2", "0.1"), false);
    int w3 = joined.unit.conductor("W3");
    Slip moved = new Slip.Moved(w3, Wire.End.TO, joined.unit.point("P2-1"));
    Slip far = joined.bridge("J1-1", "P1-2");
    assertEquals(
        List.of(joined.bridge("J1-1", "J1-2"), moved),
        joined.candidates.settled(List.of(far, moved), SwitchState.normal()));
  }
}

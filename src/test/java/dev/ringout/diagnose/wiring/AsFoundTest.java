package dev.ringout.diagnose.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.diagnose.PartFault;
import dev.ringout.diagnose.SwitchFault;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a unit is once it has slips in it, worked out by hand. */
class AsFoundTest {
  @TempDir Path folder;

  private SlippedUnit unit() {
    return new SlippedUnit(
        Circuit.of(
            new UnitUnderTest(folder)
                .wire("W1,J1-1,P1-1")
                .wire("W2,J1-2,P1-2")
                .wire("W3,J1-3,S1-1")
                .link("P1,2,3")
                .contact("S1,SHUT,1,2")
                .contact("S1,AJAR,1,3")
                .contact("S2,ON,1,2")
                .contact("S2,OFF,1,3")
                .part("R1,1,2,resistor,100")
                .part("CR1,A,K,diode,")
                .harness()));
  }

  private static AsFound found(SlippedUnit unit, Slip... slips) {
    return AsFound.of(unit.circuit(), List.of(slips));
  }

  private static boolean joins(AsFound found, SwitchState state, String one, String other) {
    SlippedUnit now = new SlippedUnit(found.circuit());
    return found.circuit().in(state).of(now.point(one))
        == found.circuit().in(state).of(now.point(other));
  }

  private static boolean joins(AsFound found, String one, String other) {
    return joins(found, SwitchState.normal(), one, other);
  }

  private static SwitchState ajar(SlippedUnit unit) {
    return SwitchState.normal().with(unit.circuit().harness().switches().get(0), "AJAR");
  }

  private static SwitchState off(SlippedUnit unit) {
    return SwitchState.normal().with(unit.circuit().harness().switches().get(1), "OFF");
  }

  @Test
  void without_slips_it_is_the_listed_unit() {
    SlippedUnit unit = unit();
    AsFound found = found(unit);
    assertTrue(found.isAsListed());
    assertSame(unit.circuit(), found.circuit());
    assertFalse(found(unit, new Slip.Missing(unit.conductor("W1"))).isAsListed());
  }

  @Test
  void what_is_open_joins_nothing_and_its_points_stay() {
    SlippedUnit unit = unit();
    AsFound found = found(unit, new Slip.Missing(unit.conductor("W1")));
    assertFalse(joins(found, "J1-1", "P1-1"));
    assertTrue(joins(found, "J1-2", "P1-2"));
    assertEquals(unit.circuit().size(), found.circuit().size());
    assertFalse(
        joins(found(unit, new Slip.Missing(unit.conductor("the link P1-2/3"))), "P1-2", "P1-3"));
  }

  @Test
  void wires_crossed_stand_on_paper_where_they_are_listed() {
    SlippedUnit unit = unit();
    int w1 = unit.conductor("W1");
    int w2 = unit.conductor("W2");
    AsFound found = found(unit, new Slip.Crossed(w1, Wire.End.FROM, w2, Wire.End.FROM));
    assertTrue(joins(found, "J1-1", "P1-2"));
    assertTrue(joins(found, "J1-2", "P1-1"));
    Conductor now = found.circuit().conductors().get(w1);
    assertEquals(new Point("J1", "2"), now.from());
    assertEquals(new Point("J1", "1"), found.listed(now).from());
    Conductor untouched = found.circuit().conductors().get(unit.conductor("W3"));
    assertEquals(untouched, found.listed(untouched));
    Conductor link = found.circuit().conductors().get(unit.conductor("the link P1-2/3"));
    assertSame(link, found.listed(link));
  }

  @Test
  void an_end_moved_joins_what_it_sits_at() {
    SlippedUnit unit = unit();
    AsFound found =
        found(unit, new Slip.Moved(unit.conductor("W1"), Wire.End.TO, unit.point("P1-3")));
    assertTrue(joins(found, "J1-1", "P1-3"));
    assertFalse(joins(found, "J1-1", "P1-1"));
  }

  @Test
  void a_bridge_joins() {
    SlippedUnit unit = unit();
    AsFound found = found(unit, new Slip.Bridged(unit.point("J1-1"), unit.point("J1-2")));
    assertTrue(joins(found, "P1-1", "P1-3"));
  }

  @Test
  void a_stuck_switch_is_as_at_one_position_in_all() {
    SlippedUnit unit = unit();
    AsFound found = found(unit, new Slip.FaultySwitch(0, SwitchFault.STUCK, "AJAR", -1));
    assertTrue(joins(found, "S1-1", "S1-3"));
    assertFalse(joins(found, "S1-1", "S1-2"));
    assertTrue(joins(found, ajar(unit), "S1-1", "S1-3"));
    assertTrue(joins(found, "S2-1", "S2-2"), "the other switch is as listed");
    assertFalse(joins(found, off(unit), "S2-1", "S2-2"));
    assertTrue(joins(found, off(unit), "S2-1", "S2-3"));
  }

  @Test
  void a_welded_contact_stays_shut_and_the_others_change() {
    SlippedUnit unit = unit();
    int welded = unit.conductor("the contact S1-1/2 of S1");
    AsFound found = found(unit, new Slip.FaultySwitch(0, SwitchFault.WELDED, "", welded));
    assertTrue(joins(found, "S1-1", "S1-2"));
    assertFalse(joins(found, "S1-1", "S1-3"));
    assertTrue(joins(found, ajar(unit), "S1-1", "S1-2"));
    assertTrue(joins(found, ajar(unit), "S1-1", "S1-3"));
  }

  @Test
  void a_switch_the_other_way_round_closes_each_contact_at_the_other_position() {
    SlippedUnit unit = unit();
    AsFound found = found(unit, new Slip.FaultySwitch(0, SwitchFault.OTHER_WAY, "", -1));
    assertTrue(joins(found, "S1-1", "S1-3"));
    assertFalse(joins(found, "S1-1", "S1-2"));
    assertTrue(joins(found, ajar(unit), "S1-1", "S1-2"));
    assertTrue(joins(found, "S2-1", "S2-2"));
  }

  @Test
  void a_contact_that_never_makes_is_gone() {
    SlippedUnit unit = unit();
    AsFound found = found(unit, new Slip.Missing(unit.conductor("the contact S1-1/2 of S1")));
    assertFalse(joins(found, "S1-1", "S1-2"));
    assertTrue(joins(found, ajar(unit), "S1-1", "S1-3"));
    Switch first = found.circuit().harness().switches().get(0);
    assertEquals(1, first.contacts().size());
  }

  @Test
  void parts_are_gone_turned_round_or_of_any_value() {
    SlippedUnit unit = unit();
    int from = unit.point("R1-1");
    int to = unit.point("R1-2");
    List<Part> without = parts(unit, new Slip.FaultyPart(0, PartFault.MISSING, from, to));
    assertEquals(List.of("CR1"), without.stream().map(Part::ref).toList());
    List<Part> other = parts(unit, new Slip.FaultyPart(0, PartFault.OTHER_VALUE, from, to));
    assertTrue(other.get(0).ohms().isEmpty());
    assertEquals(unit.circuit().part(1), other.get(1));
    List<Part> turned =
        parts(
            unit,
            new Slip.FaultyPart(1, PartFault.REVERSED, unit.point("CR1-K"), unit.point("CR1-A")));
    assertEquals(new Point("CR1", "K"), turned.get(1).from());
    assertEquals(100, turned.get(0).ohms().orElseThrow());
    List<Part> elsewhere =
        parts(unit, new Slip.FaultyPart(0, PartFault.OTHER_POINTS, from, unit.point("CR1-A")));
    assertEquals(new Point("CR1", "A"), elsewhere.get(0).to());
    assertEquals(100, elsewhere.get(0).ohms().orElseThrow());
  }

  private static List<Part> parts(SlippedUnit unit, Slip slip) {
    return found(unit, slip).circuit().harness().parts();
  }
}

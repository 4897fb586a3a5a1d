package dev.ringout.diagnose.wiring;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.circuit.Circuit;
import dev.ringout.diagnose.PartFault;
import dev.ringout.diagnose.SwitchFault;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The nets of a unit with slips in it, worked out by hand. */
class SlippedNetsTest {
  private final SlippedUnit unit;

  SlippedNetsTest(@TempDir Path folder) {
    unit =
        new SlippedUnit(
            Circuit.of(
                new UnitUnderTest(folder)
                    .wire("W1,J1-1,TB1-1")
                    .wire("W2,TB1-2,P1-1")
                    .wire("W3,J1-2,P1-2")
                    .wire("W4,J1-3,R1-1")
                    .wire("W5,R1-2,P1-3")
                    .link("TB1,1,2")
                    .contact("S1,SHUT,1,2")
                    .contact("S1,AJAR,1,3")
                    .part("R1,1,2,resistor,100")
                    .harness()));
  }

  private SlippedNets nets(Slip... slips) {
    return new SlippedNets(unit.circuit(), SwitchState.normal(), List.of(slips));
  }

  private boolean joins(SlippedNets nets, String one, String other) {
    return nets.groupOf(unit.point(one)) == nets.groupOf(unit.point(other));
  }

  private int net(String point) {
    return unit.circuit().normal().of(unit.point(point));
  }

  private List<String> way(SlippedNets nets, String from, String to) {
    int goal = unit.point(to);
    return nets.way(new int[] {unit.point(from)}, point -> point == goal).stream()
        .map(one -> unit.circuit().conductors().get(one).label())
        .toList();
  }

  private List<String> points(SlippedNets nets, String at) {
    return unit.names(Arrays.stream(nets.pointsOf(nets.groupOf(unit.point(at)))).boxed().toList());
  }

  @Test
  void an_open_wire_parts_its_net_and_leaves_the_others_as_listed() {
    SlippedNets nets = nets(new Slip.Missing(unit.conductor("W1")));
    assertFalse(joins(nets, "J1-1", "TB1-1"));
    assertTrue(joins(nets, "TB1-1", "P1-1"));
    assertEquals(List.of("J1-1"), points(nets, "J1-1"));
    assertEquals(List.of("P1-1", "TB1-1", "TB1-2"), points(nets, "P1-1"));
    assertFalse(nets.isAsListed(nets.groupOf(unit.point("J1-1"))));
    assertTrue(nets.isAsListed(nets.groupOf(unit.point("J1-2"))));
    assertEquals(net("J1-2"), nets.groupOf(unit.point("J1-2")));
    assertEquals(Set.of(net("J1-1")), nets.affectedNets());
    assertEquals(2, nets.newGroups().size());
  }

  @Test
  void the_way_between_two_points_is_the_shortest_over_what_is_there() {
    SlippedNets asListed = nets();
    assertEquals(List.of("W2", "the link TB1-1/2", "W1"), way(asListed, "J1-1", "P1-1"));
    assertEquals(List.of(), way(asListed, "J1-1", "P1-2"));
    SlippedNets bridged = nets(new Slip.Bridged(unit.point("J1-1"), unit.point("J1-2")));
    assertEquals(List.of("W3"), way(bridged, "J1-1", "P1-2"), "a bridge is no conductor");
    assertEquals(4, way(bridged, "P1-2", "P1-1").size());
  }

  @Test
  void ends_crossed_twice_are_where_they_were() {
    int w1 = unit.conductor("W1");
    int w3 = unit.conductor("W3");
    Slip crossed = new Slip.Crossed(w1, Wire.End.FROM, w3, Wire.End.FROM);
    SlippedNets once = nets(crossed);
    assertTrue(joins(once, "J1-2", "TB1-1"));
    assertTrue(joins(once, "J1-1", "P1-2"));
    assertEquals(unit.point("J1-2"), once.end(w1, Wire.End.FROM));
    assertEquals(unit.point("TB1-1"), once.end(w1, Wire.End.TO));
    SlippedNets twice = nets(crossed, crossed);
    assertTrue(joins(twice, "J1-1", "TB1-1"));
    assertTrue(joins(twice, "J1-2", "P1-2"));
  }

  @Test
  void an_end_moved_leaves_its_point_and_joins_another() {
    SlippedNets nets = nets(new Slip.Moved(unit.conductor("W3"), Wire.End.TO, unit.point("P1-3")));
    assertTrue(joins(nets, "J1-2", "R1-2"));
    assertFalse(joins(nets, "J1-2", "P1-2"));
    assertEquals(
        List.of("W3", "W5"),
        nets.wiresIn(nets.groupOf(unit.point("P1-3"))).stream()
            .map(one -> unit.circuit().conductors().get(one).label())
            .toList());
    assertEquals(Set.of(net("P1-3"), net("J1-2")), nets.affectedNets());
  }

  @Test
  void a_poor_joint_joins_poorly_what_hangs_on_it() {
    SlippedNets nets = nets(new Slip.Poor(unit.conductor("the link TB1-1/2")));
    int one = unit.point("J1-1");
    int other = unit.point("P1-1");
    assertFalse(joins(nets, "J1-1", "P1-1"), "as far as good joins go");
    assertTrue(nets.joinsPoorly(one, other));
    assertFalse(nets.joinsPoorly(one, unit.point("TB1-1")), "these two are joined well");
    assertFalse(nets.joinsPoorly(one, unit.point("J1-2")));
    assertFalse(nets().joinsPoorly(one, unit.point("J1-2")));
    SlippedNets two =
        nets(
            new Slip.Poor(unit.conductor("W2")), new Slip.Poor(unit.conductor("the link TB1-1/2")));
    assertTrue(two.joinsPoorly(one, other), "over both");
  }

  @Test
  void contacts_follow_a_faulty_switch() {
    SlippedNets stuck = nets(new Slip.FaultySwitch(0, SwitchFault.STUCK, "AJAR", -1));
    assertTrue(joins(stuck, "S1-1", "S1-3"));
    assertFalse(joins(stuck, "S1-1", "S1-2"));
    SlippedNets otherWay = nets(new Slip.FaultySwitch(0, SwitchFault.OTHER_WAY, "", -1));
    assertTrue(joins(otherWay, "S1-1", "S1-3"));
    SlippedNets welded =
        nets(
            new Slip.FaultySwitch(
                0, SwitchFault.WELDED, "", unit.conductor("the contact S1-1/3 of S1")));
    assertTrue(joins(welded, "S1-2", "S1-3"));
    SlippedNets asItIs = nets(new Slip.FaultySwitch(0, SwitchFault.STUCK, "SHUT", -1));
    assertTrue(asItIs.affectedNets().isEmpty(), "stuck where it is, nothing shows it here");
  }

  @Test
  void a_part_that_is_not_as_listed_touches_the_nets_at_both_its_places() {
    SlippedNets nets =
        nets(
            new Slip.FaultyPart(0, PartFault.OTHER_POINTS, unit.point("R1-1"), unit.point("P1-2")));
    assertTrue(nets.affectedNets().isEmpty(), "what is joined is as listed");
    assertEquals(Set.of(net("R1-1"), net("R1-2"), net("P1-2")), nets.touchedNets());
    assertArrayEquals(new int[] {0}, nets.partsAt(nets.groupOf(unit.point("J1-3"))));
    assertArrayEquals(new int[] {}, nets.partsAt(nets.groupOf(unit.point("J1-1"))));
  }
}

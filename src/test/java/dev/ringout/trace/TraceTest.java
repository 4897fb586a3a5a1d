package dev.ringout.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.JoinLimits.Basis;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Link;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.source.Place;
import dev.ringout.standards.Tables;
import dev.ringout.support.PlainLimits;
import dev.ringout.support.PlainWires;
import dev.ringout.trace.Trace.Between;
import dev.ringout.trace.Trace.Step;
import dev.ringout.units.Gauge;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * What is on a net and what leads on from it. The unit: 24 V comes in at J1-A, goes by W1 to the
 * strip TB1, over its jumper to terminal 2 and by W2 to J2-1; W3 runs beside W1 and the jumper. The
 * switch S1 joins J2-1 to J3-1 when it is made, and a lamp lies from there to J4-1.
 */
class TraceTest {
  private static final Place LIST = Place.of("list");
  private static final Point SUPPLY = new Point("J1", "A");
  private static final Point STRIP_1 = new Point("TB1", "1");
  private static final Point STRIP_2 = new Point("TB1", "2");
  private static final Point OUT = new Point("J2", "1");
  private static final Point LAMP = new Point("J3", "1");
  private static final Point RETURN = new Point("J4", "1");

  private static final Switch S1 =
      new Switch(
          "S1",
          List.of("CLEAR", "MADE"),
          List.of(new Switch.Contact("S1", "MADE", OUT, LAMP, LIST)));

  private static Wire wire(String name, Point from, Point to) {
    return PlainWires.of(name, from, to, new Gauge.Awg(20), 10, LIST);
  }

  private static Trace trace(Point from, Optional<Point> to, SwitchState state) {
    Harness unit =
        Harness.builder(PlainLimits.of())
            .wires(
                List.of(
                    wire("W1", SUPPLY, STRIP_1),
                    wire("W2", STRIP_2, OUT),
                    wire("W3", SUPPLY, STRIP_2)))
            .links(List.of(new Link(STRIP_1, STRIP_2, "", LIST)))
            .switches(List.of(S1))
            .parts(
                List.of(
                    new Part(
                        "DS1",
                        LAMP,
                        RETURN,
                        Part.Kind.LAMP,
                        OptionalDouble.of(100),
                        OptionalDouble.empty(),
                        OptionalDouble.of(50),
                        "",
                        LIST)))
            .build();
    Circuit circuit = Circuit.of(unit);
    return Trace.of(circuit, JoinLimits.of(circuit, Tables.published()), from, to, state);
  }

  private static Trace trace(Point from) {
    return trace(from, Optional.empty(), SwitchState.normal());
  }

  private static Between between(Point from, Point to, SwitchState state) {
    return trace(from, Optional.of(to), state).between().orElseThrow();
  }

  @Test
  void every_other_point_of_the_net_stands_after_the_one_by_which_it_is_reached() {
    Trace trace = trace(SUPPLY);
    assertEquals(4, trace.points());
    assertEquals(
        List.of("1 W1 TB1-1", "2 the link TB1-1/2 TB1-2", "3 W2 J2-1"),
        trace.steps().stream()
            .map(step -> step.depth() + " " + step.by().label() + " " + step.to())
            .toList());
  }

  @Test
  void a_wire_without_which_the_net_holds_is_shown_as_a_loop() {
    assertEquals(List.of("W3"), trace(SUPPLY).loops().stream().map(Conductor::label).toList());
  }

  /** Source: printed tables of copper wire: AWG 20 has 33.3 Ω/km; two of 10 m and no loop. */
  @Test
  void what_a_meter_may_read_from_the_start_grows_with_the_way() {
    List<Step> steps = trace(OUT).steps();
    Step first = steps.get(0);
    assertEquals(STRIP_2, first.to());
    double copper = 0.333;
    assertTrue(first.fromStart().lowOhms() < copper && copper < first.fromStart().highOhms());
  }

  @Test
  void an_open_contact_is_named_with_the_position_that_closes_it_seen_from_here() {
    assertEquals(
        List.of(new Trace.OpenContact("S1", "MADE", OUT, LAMP)), trace(SUPPLY).openContacts());
    assertEquals(
        List.of(new Trace.OpenContact("S1", "MADE", LAMP, OUT)), trace(LAMP).openContacts());
  }

  @Test
  void parts_that_hang_on_the_net_are_shown_and_do_not_join_it_to_others() {
    Trace trace = trace(LAMP);
    assertEquals(1, trace.points());
    assertEquals(List.of("lamp DS1"), trace.parts().stream().map(Part::label).toList());
    assertEquals(50, trace.insulation().leastVolts(), "what the lamp bears");
  }

  @Test
  void two_points_of_one_net_are_joined_by_a_way_and_held_against_a_computed_limit() {
    Between between = between(SUPPLY, OUT, SwitchState.normal());
    assertTrue(between.expected().isJoined());
    assertEquals("W2", between.way().get(between.way().size() - 1).label());
    assertEquals(Basis.COMPUTED, between.limit().basis());
    assertEquals(List.of(), between.joinedIn());
  }

  @Test
  void two_nets_that_a_switch_would_join_say_in_which_position() {
    Between apart = between(SUPPLY, LAMP, SwitchState.normal());
    assertTrue(apart.expected().isApart());
    assertEquals(List.of("S1=MADE"), apart.joinedIn().stream().map(Object::toString).toList());
    Between joined = between(SUPPLY, LAMP, SwitchState.normal().with(S1, "MADE"));
    assertTrue(joined.expected().isJoined());
  }

  @Test
  void through_a_part_alone_its_value_is_expected() {
    Between through = between(LAMP, RETURN, SwitchState.normal());
    assertEquals(List.of("lamp DS1"), through.parts().stream().map(Part::label).toList());
    var expected = through.expected().throughParts().orElseThrow();
    assertTrue(expected.lowOhms() < 100 && 100 < expected.highOhms());
  }
}

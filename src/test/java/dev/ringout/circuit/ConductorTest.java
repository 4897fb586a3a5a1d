package dev.ringout.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Link;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.source.Place;
import dev.ringout.support.PlainLimits;
import dev.ringout.support.PlainWires;
import dev.ringout.units.Gauge;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Wires, links and switch contacts join points, each in its own way. */
class ConductorTest {
  private static final Place LIST = Place.of("list");
  private static final Point J1_A = new Point("J1", "A");
  private static final Point TB1_1 = new Point("TB1", "1");
  private static final Point TB1_2 = new Point("TB1", "2");
  private static final Wire W1 = PlainWires.of("W1", J1_A, TB1_1, new Gauge.Awg(20), 1, LIST);
  private static final Switch.Contact MADE =
      new Switch.Contact("S1", "MADE", TB1_2, new Point("S1", "2"), LIST);
  private static final Switch S1 = new Switch("S1", List.of("CLEAR", "MADE"), List.of(MADE));

  private final Circuit circuit =
      Circuit.of(
          Harness.builder(PlainLimits.of())
              .wires(List.of(W1))
              .links(List.of(new Link(TB1_1, TB1_2, "", LIST)))
              .switches(List.of(S1))
              .build());

  @Test
  void each_is_what_it_is_and_nothing_else() {
    List<Conductor> conductors = circuit.conductors();
    assertEquals(List.of(W1), conductors.stream().flatMap(c -> c.asWire().stream()).toList());
    assertEquals(1, conductors.stream().flatMap(c -> c.asLink().stream()).count());
    assertEquals(List.of(MADE), conductors.stream().flatMap(c -> c.asContact().stream()).toList());
    assertEquals(List.of(true, false, false), conductors.stream().map(Conductor::isWire).toList());
  }

  @Test
  void each_is_named_as_a_mechanic_says_it() {
    assertEquals(
        List.of("W1", "the link TB1-1/2", "the contact TB1-2/S1-2 of S1"),
        circuit.conductors().stream().map(Conductor::label).toList());
  }

  @Test
  void a_lifted_wire_and_a_contact_in_another_position_join_nothing_and_a_link_always_does() {
    SwitchState normal = SwitchState.normal();
    assertTrue(circuit.isClosed(0, normal));
    assertFalse(circuit.isClosed(0, normal.withLifted(W1)));
    assertTrue(circuit.isClosed(1, normal.withLifted(W1)));
    assertFalse(circuit.isClosed(2, normal));
    assertTrue(circuit.isClosed(2, normal.with(S1, "MADE")));
  }
}

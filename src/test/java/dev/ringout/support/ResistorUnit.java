package dev.ringout.support;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Resistances;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Limits;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.source.Place;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.Tables;
import dev.ringout.standards.WireOhms;
import dev.ringout.units.Gauge;
import dev.ringout.units.OhmsRange;
import java.util.ArrayList;
import java.util.List;

/**
 * A unit made of resistances alone: each is a solid wire of AWG 30 just long enough, with contacts
 * and tolerance of nothing, so that what is computed is a single value.
 */
public final class ResistorUnit {
  private static final CopperWire COPPER = CopperWire.published();
  private static final WireOhms WIRES = WireOhms.of(COPPER, Tables.published());
  private static final Gauge GAUGE = new Gauge.Awg(30);

  private final List<Wire> wires = new ArrayList<>();

  /** A resistance between two nodes. */
  public ResistorUnit resistor(String from, String to, double ohms) {
    double metres = ohms / COPPER.ohmsPerMetre(GAUGE, 20).orElseThrow();
    wires.add(wire("W" + wires.size(), from, to, metres));
    return this;
  }

  private static Wire wire(String name, String from, String to, double metres) {
    Wire wire =
        PlainWires.of(
            name, new Point("N", from), new Point("N", to), GAUGE, metres, Place.of("test"));
    return wire.madeOf(wire.make().ofType("solid"));
  }

  /** Resistances of one ohm between nodes: {@code 1-2}. */
  public ResistorUnit ones(String... pairs) {
    for (String pair : pairs) {
      String[] ends = pair.split("-", 2);
      resistor(ends[0], ends[1], 1);
    }
    return this;
  }

  /** The same resistances in another order. */
  public ResistorUnit inOrder(List<Integer> order) {
    ResistorUnit other = new ResistorUnit();
    order.forEach(i -> other.wires.add(wires.get(i)));
    return other;
  }

  /** The circuit. */
  public Circuit circuit() {
    Limits limits = Limits.usual(0).toBuilder().contactOhms(0).tolerancePercent(0).build();
    return Circuit.of(Harness.builder(limits).wires(wires).build());
  }

  /** What is computed between two nodes. */
  public static OhmsRange between(
      Circuit circuit, Resistances resistances, String from, String to) {
    return resistances.between(
        circuit.index(new Point("N", from)),
        circuit.index(new Point("N", to)),
        SwitchState.normal());
  }

  /** The resistances of a circuit. */
  public static Resistances resistances(Circuit circuit) {
    return new Resistances(circuit, WIRES, 20);
  }

  /** The one value that is computed between two nodes. */
  public double between(String from, String to) {
    Circuit circuit = circuit();
    OhmsRange range = between(circuit, resistances(circuit), from, to);
    if (range.highOhms() - range.lowOhms() > 1e-9 * range.highOhms()) {
      throw new AssertionError("no single value: " + range);
    }
    return range.lowOhms();
  }
}

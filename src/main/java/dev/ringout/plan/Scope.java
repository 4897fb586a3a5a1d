package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.harness.Wire;
import java.util.BitSet;
import java.util.HashSet;
import java.util.Set;

/** The nets that a plan is about. */
final class Scope {
  private Scope() {}

  /** The items that a plan is about; none where it is about all. */
  static Set<String> items(Circuit circuit, PlanOptions options) {
    Set<String> items = new HashSet<>(options.only());
    for (int wire = 0; wire < circuit.harness().wires().size(); wire++) {
      Wire one = circuit.harness().wires().get(wire);
      if (options.touched().contains(one.name())) {
        // What was beside it when its connectors were opened may have been disturbed too.
        items.add(one.from().ref());
        items.add(one.to().ref());
      }
    }
    return items;
  }

  static BitSet nets(Circuit circuit, Set<String> items) {
    Nets normal = circuit.normal();
    BitSet nets = new BitSet();
    if (items.isEmpty()) {
      nets.set(0, normal.count());
      return nets;
    }
    for (int point = 0; point < circuit.size(); point++) {
      if (items.contains(circuit.point(point).ref())) {
        nets.set(normal.of(point));
      }
    }
    return nets;
  }
}

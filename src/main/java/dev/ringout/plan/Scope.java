package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.readings.Rework;
import java.util.BitSet;
import java.util.HashSet;
import java.util.Set;

/** The nets that a plan is about. */
final class Scope {
  private Scope() {}

  /** The items that were opened, and those that the plan is limited to. */
  static Set<String> items(Circuit circuit, PlanOptions options) {
    Set<String> items = new HashSet<>(options.only());
    // What was beside a wire when its connectors were opened may have been disturbed too.
    items.addAll(Rework.opened(circuit.harness(), options.touched(), options.opened()));
    return items;
  }

  /**
   * The nets that a plan is about. Where earlier readings stand, what they do not prove is planned,
   * in the items that were opened and elsewhere.
   */
  static BitSet nets(Circuit circuit, PlanOptions options) {
    return nets(circuit, options.after().isPresent() ? options.only() : items(circuit, options));
  }

  private static BitSet nets(Circuit circuit, Set<String> items) {
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

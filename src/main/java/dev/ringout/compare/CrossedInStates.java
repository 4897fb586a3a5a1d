package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Probing;
import dev.ringout.circuit.TreePaths;
import dev.ringout.harness.SwitchState;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The conductors that good readings between two points crossed with no way around, in each state of
 * the switches.
 */
final class CrossedInStates {
  private final Circuit circuit;
  private final Map<SwitchState, InState> states = new LinkedHashMap<>();

  private static final class InState {
    final Nets nets;
    final TreePaths paths;
    final boolean[] crossed;

    InState(Nets nets, int conductors) {
      this.nets = nets;
      this.paths = new TreePaths(nets);
      this.crossed = new boolean[conductors];
    }
  }

  private CrossedInStates(Circuit circuit) {
    this.circuit = circuit;
  }

  /** What readings in force crossed. */
  static CrossedInStates of(Circuit circuit, List<Judged> inForce) {
    CrossedInStates crossed = new CrossedInStates(circuit);
    inForce.stream()
        .filter(judged -> judged.provesJoin() && judged.probing().isPair())
        .forEach(judged -> crossed.add(judged.probing(), judged.reading().state()));
    return crossed;
  }

  private void add(Probing pair, SwitchState state) {
    InState here =
        states.computeIfAbsent(
            state, one -> new InState(circuit.in(one), circuit.conductors().size()));
    here.paths.mark(
        pair.from()[0], pair.to()[0], edge -> here.crossed[edge] |= here.nets.isCutEdge(edge));
  }

  /** Whether one was crossed in a state. */
  boolean has(int conductor, SwitchState state) {
    InState here = states.get(state);
    return here != null && here.crossed[conductor];
  }

  /** Those crossed in any state, by their numbers. */
  boolean[] inAny() {
    boolean[] all = new boolean[circuit.conductors().size()];
    for (InState here : states.values()) {
      for (int conductor = 0; conductor < all.length; conductor++) {
        all[conductor] |= here.crossed[conductor];
      }
    }
    return all;
  }
}

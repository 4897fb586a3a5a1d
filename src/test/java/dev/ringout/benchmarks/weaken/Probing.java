package dev.ringout.benchmarks.weaken;

import dev.ringout.benchmarks.weaken.Unit.State;
import java.util.List;

/**
 * Where the probes are.
 *
 * @param from the positive side
 * @param to the other side; empty: the rest
 */
record Probing(boolean insulation, List<Integer> from, List<Integer> to, State state) {
  Probing {
    from = List.copyOf(from);
    to = List.copyOf(to);
  }

  boolean isRest() {
    return to.isEmpty();
  }

  Probing exchanged() {
    return isRest() ? this : new Probing(insulation, to, from, state);
  }
}

package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.harness.Point;
import java.util.List;
import java.util.stream.IntStream;

/** A circuit by the names of its points and conductors, for tests of what slips do to it. */
record SlippedUnit(Circuit circuit) {

  /** {@code J1-A}. */
  int point(String name) {
    int dash = name.indexOf('-');
    return circuit.index(new Point(name.substring(0, dash), name.substring(dash + 1)));
  }

  /** A wire, link or contact by what it is called in a report. */
  int conductor(String label) {
    return IntStream.range(0, circuit.conductors().size())
        .filter(one -> circuit.conductors().get(one).label().equals(label))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no conductor " + label));
  }

  List<String> names(List<Integer> points) {
    return points.stream().map(point -> circuit.point(point).toString()).toList();
  }
}

package dev.ringout.diagnose;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected.Joined;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.Nets;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.readings.Measured;
import dev.ringout.units.OhmsRange;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Readings through parts that are as much too high as a join of one of their nets is: a poor joint
 * on the way to a part, which by itself may be good.
 */
final class HighThroughParts {
  private final Circuit circuit;
  private final Map<Judged, Judged> joinOf = new LinkedHashMap<>();

  HighThroughParts(Circuit circuit, Comparison comparison) {
    this.circuit = circuit;
    List<Judged> joins =
        comparison.with(Outcome.RESISTIVE).stream()
            .filter(one -> one.expected() instanceof Joined && isPairOfValue(one))
            .toList();
    if (joins.isEmpty()) {
      return;
    }
    for (Judged judged : comparison.with(Outcome.PART_VALUE)) {
      if (isPairOfValue(judged) && judged.expected() instanceof ThroughParts parts) {
        joins.stream()
            .filter(join -> shareANet(judged, join) && accountsFor(join, judged, parts))
            .findFirst()
            .ifPresent(join -> joinOf.put(judged, join));
      }
    }
  }

  private static boolean isPairOfValue(Judged judged) {
    return judged.probing().isPair() && judged.reading().measured() instanceof Measured.Value;
  }

  private boolean shareANet(Judged one, Judged join) {
    if (!one.reading().state().equals(join.reading().state())) {
      return false;
    }
    Nets nets = circuit.in(one.reading().state());
    int net = nets.of(join.probing().from()[0]);
    return one.probing().points().anyMatch(point -> nets.of(point) == net);
  }

  /** Whether the value is within what the parts allow once the join's excess is taken from it. */
  private static boolean accountsFor(Judged join, Judged judged, ThroughParts parts) {
    OhmsRange expected = join.limit().expected();
    double least = join.seen().lowOhms() - (expected.isKnown() ? expected.highOhms() : 0);
    double most = join.seen().highOhms() - expected.lowOhms();
    return least > 0
        && parts.allows(
            new OhmsRange(judged.seen().lowOhms() - most, judged.seen().highOhms() - least));
  }

  /** The readings that a poor joint elsewhere accounts for. */
  Set<Judged> readings() {
    return joinOf.keySet();
  }

  /** A fault with the readings through parts that it shows in too. */
  Fault shown(Fault fault) {
    if (!(fault instanceof Fault.HighResistance high)) {
      return fault;
    }
    List<Judged> readings = new ArrayList<>(high.finding().readings());
    joinOf.forEach(
        (judged, join) -> {
          if (high.finding().readings().contains(join)) {
            readings.add(judged);
          }
        });
    if (readings.size() == high.finding().readings().size()) {
      return fault;
    }
    return new Fault.HighResistance(
        high.finding().shownBy(readings),
        high.suspects(),
        high.points(),
        high.limitOhms(),
        high.measuredOhms());
  }
}

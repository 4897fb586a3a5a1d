package dev.ringout.diagnose.values;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.Nets;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.Fault;
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
public final class HighThroughParts {
  private final Circuit circuit;
  private final Map<Judged, Judged> joinOf = new LinkedHashMap<>();

  private HighThroughParts(Circuit circuit) {
    this.circuit = circuit;
  }

  /** The readings through parts of a comparison that a high join accounts for. */
  public static HighThroughParts of(Circuit circuit, Comparison comparison) {
    HighThroughParts found = new HighThroughParts(circuit);
    List<Judged> joins =
        comparison.with(Outcome.RESISTIVE).stream()
            .filter(one -> one.expected().isJoined() && isPairOfValue(one))
            .toList();
    if (!joins.isEmpty()) {
      comparison.with(Outcome.PART_VALUE).stream()
          .filter(HighThroughParts::isPairOfValue)
          .forEach(judged -> found.lookFor(judged, joins));
    }
    return found;
  }

  /** The first join that accounts for a reading through parts. */
  private void lookFor(Judged judged, List<Judged> joins) {
    judged
        .expected()
        .throughParts()
        .flatMap(
            parts ->
                joins.stream()
                    .filter(join -> shareANet(judged, join) && accountsFor(join, judged, parts))
                    .findFirst())
        .ifPresent(join -> joinOf.put(judged, join));
  }

  private static boolean isPairOfValue(Judged judged) {
    return judged.probing().isPair() && judged.reading().measured().value().isPresent();
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
  public Set<Judged> readings() {
    return joinOf.keySet();
  }

  /** A fault with the readings through parts that it shows in too. */
  public Fault shown(Fault fault) {
    return fault.alsoShownBy(behind(fault));
  }

  private List<Judged> behind(Fault fault) {
    List<Judged> behind = new ArrayList<>();
    joinOf.forEach(
        (judged, join) -> {
          if (fault.finding().readings().contains(join)) {
            behind.add(judged);
          }
        });
    return behind;
  }
}

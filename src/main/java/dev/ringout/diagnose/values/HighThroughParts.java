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
import java.util.stream.Collectors;

/**
 * Readings through parts that something else accounts for, so that the parts may be good: a poor
 * joint on the way to them, or a leak beside them.
 */
public final class HighThroughParts {
  /** A leak reads so much alike from time to time (common practice, no source). */
  private static final double ALIKE = 0.1;

  private final Circuit circuit;
  private final Map<Judged, Judged> accountedBy = new LinkedHashMap<>();

  private HighThroughParts(Circuit circuit) {
    this.circuit = circuit;
  }

  /** The readings through parts of a comparison that a high join accounts for. */
  public static HighThroughParts of(Circuit circuit, Comparison comparison) {
    HighThroughParts found = new HighThroughParts(circuit);
    List<Judged> values =
        comparison.with(Outcome.RESISTIVE).stream()
            .filter(HighThroughParts::isPairOfValue)
            .toList();
    List<Judged> joins = values.stream().filter(one -> one.expected().isJoined()).toList();
    comparison
        .with(Outcome.PART_VALUE)
        .forEach(judged -> found.lookFor(judged, joins, found::isHighByTheJoin));
    // A leak that was read with a lead of the part off accounts for what is read with it on.
    List<Judged> leaks =
        values.stream()
            .filter(one -> one.expected().isApart() && one.reading().state().liftsAny())
            .toList();
    comparison.failing().forEach(judged -> found.lookFor(judged, leaks, found::isLowByTheLeak));
    return found;
  }

  /** Whether one reading accounts for another, which is through parts. */
  private interface Accounts {
    boolean of(Judged one, Judged judged, ThroughParts parts);
  }

  /** The first reading that accounts for one through parts. */
  private void lookFor(Judged judged, List<Judged> others, Accounts accounts) {
    judged
        .expected()
        .throughParts()
        .filter(parts -> isPairOfValue(judged))
        .flatMap(
            parts -> others.stream().filter(other -> accounts.of(other, judged, parts)).findFirst())
        .ifPresent(other -> accountedBy.put(judged, other));
  }

  private boolean isHighByTheJoin(Judged join, Judged judged, ThroughParts parts) {
    return shareANet(judged, join) && accountsFor(join, judged, parts);
  }

  private boolean isLowByTheLeak(Judged leak, Judged judged, ThroughParts parts) {
    return areOfTheSameNets(judged, leak) && isWithTheLeak(leak, judged, parts);
  }

  private boolean areOfTheSameNets(Judged one, Judged other) {
    return nets(one).equals(nets(other));
  }

  private Set<Integer> nets(Judged judged) {
    return judged.probing().points().map(circuit.normal()::of).boxed().collect(Collectors.toSet());
  }

  /** Whether a value is that of the parts and a leak side by side. */
  private static boolean isWithTheLeak(Judged leak, Judged judged, ThroughParts parts) {
    double least = 1 / (1 / leak.seen().lowOhms() + 1 / parts.lowOhms());
    double most = 1 / (1 / leak.seen().highOhms() + 1 / parts.highOhms());
    return judged.seen().highOhms() >= least * (1 - ALIKE)
        && judged.seen().lowOhms() <= most * (1 + ALIKE);
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
    return accountedBy.keySet();
  }

  /** A fault with the readings through parts that it shows in too. */
  public Fault shown(Fault fault) {
    return fault.alsoShownBy(behind(fault));
  }

  private List<Judged> behind(Fault fault) {
    List<Judged> behind = new ArrayList<>();
    accountedBy.forEach(
        (judged, join) -> {
          if (fault.finding().readings().contains(join)) {
            behind.add(judged);
          }
        });
    return behind;
  }
}

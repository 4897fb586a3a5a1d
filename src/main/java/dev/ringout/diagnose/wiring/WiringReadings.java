package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Contradiction;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Observed;
import dev.ringout.compare.Outcome;
import dev.ringout.compare.RowExchange;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What the readings of a unit say of what is joined, made ready once: it is searched up to a cost
 * where a slip of the test is held against it, and without a limit in the end.
 */
public final class WiringReadings {
  private final ListedUnit unit;
  private final Comparison comparison;
  private final Set<Judged> contradictory;
  private final List<RowExchange> exchanges;
  private final Evidence evidence;
  private final List<Judged> failing;
  private final Arrangements arrangements;

  private WiringReadings(ListedUnit unit, Comparison comparison) {
    Circuit circuit = unit.circuit();
    this.unit = unit;
    this.comparison = comparison;
    this.contradictory = contradictory(comparison);
    this.exchanges = RowExchange.find(circuit, unit.limits(), comparison);
    this.evidence = Evidence.of(circuit, unit.predictor(), comparison.inForce());
    this.failing = comparison.inForce().stream().filter(this::isOfWiring).toList();
    this.arrangements =
        Arrangements.of(
            circuit, unit.neighbours(), unit.costs(), evidence, comparison.inForce(), failing);
  }

  /** The readings in force of a unit. */
  public static WiringReadings of(ListedUnit unit, Comparison comparison) {
    return new WiringReadings(unit, comparison);
  }

  private static Set<Judged> contradictory(Comparison comparison) {
    Set<Judged> contradictory = new HashSet<>();
    for (Contradiction contradiction : comparison.contradictions()) {
      contradictory.add(contradiction.apart());
      contradictory.addAll(contradiction.joins());
    }
    return contradictory;
  }

  private boolean isOfWiring(Judged judged) {
    return judged.outcome() == Outcome.OPEN
        || judged.outcome() == Outcome.UNEXPECTED_JOIN
        || judged.outcome() == Outcome.PART_VALUE
        || isJoinByInsulation(judged)
        || evidence.valuesOfParts().contains(judged);
  }

  /** An insulation tester that shows nothing at all shows a join. */
  private static boolean isJoinByInsulation(Judged judged) {
    return judged.outcome() == Outcome.LOW_INSULATION && judged.observed() == Observed.JOINED;
  }

  ListedUnit unit() {
    return unit;
  }

  Comparison comparison() {
    return comparison;
  }

  /** Readings that can't all be true. */
  Set<Judged> contradictory() {
    return contradictory;
  }

  /** Rows that would both be as expected were each the other's. */
  List<RowExchange> exchanges() {
    return exchanges;
  }

  Evidence evidence() {
    return evidence;
  }

  /** The evidence without what contradicts itself. */
  Evidence consistent() {
    return contradictory.isEmpty()
        ? evidence
        : Evidence.of(
            unit.circuit(),
            unit.predictor(),
            comparison.inForce().stream()
                .filter(judged -> !contradictory.contains(judged))
                .toList());
  }

  /** Those that show something else joined than is listed. */
  List<Judged> failing() {
    return failing;
  }

  /** Mistakes of many ends at once that are worth a thought. */
  Arrangements arrangements() {
    return arrangements;
  }
}

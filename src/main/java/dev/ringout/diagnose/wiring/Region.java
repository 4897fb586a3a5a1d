package dev.ringout.diagnose.wiring;

import dev.ringout.compare.Judged;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.wiring.Search.Explanation;
import dev.ringout.diagnose.wiring.Search.NearMiss;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;

/**
 * Failing readings that hang together, with the explanations that fit them, sorted into classes:
 * within a class no reading of any kind could tell one from the other.
 *
 * @param classes likeliest first; empty where nothing explains the readings
 * @param complete whether the search ended by itself
 * @param shownOnce whether a single reading, made once, is all that shows it, for a probe that did
 *     not touch shows the same; or two in rows that may be exchanged, or one that may not be of its
 *     row
 * @param runnerUp the nearest story that readings speak against
 */
record Region(
    List<Judged> failing,
    List<EquivalenceClass> classes,
    boolean complete,
    boolean shownOnce,
    Optional<NearMiss> runnerUp) {

  private static final double ALL_BUT_SURE = 0.99;

  /** What values speak so much against, or is so rare beside the likeliest, is not meant by it. */
  private static final double NOT_MEANT = 4;

  /**
   * Explanations that join the same points.
   *
   * @param explanations likeliest first, those that values do not rule out
   * @param shares what each of them has of the class, by what values say too
   * @param odds the class's share of all, from 0 to 1
   */
  record EquivalenceClass(List<Explanation> explanations, List<Double> shares, double odds) {
    Explanation primary() {
      return explanations.get(0);
    }

    int size() {
      return primary().slips().size();
    }
  }

  static Region of(
      List<Judged> failing,
      Search.Result result,
      boolean shownOnce,
      Signatures signatures,
      ToDoubleFunction<Explanation> costByValues,
      ToIntFunction<Explanation> itemsTouched) {
    Map<Object, List<Explanation>> bySignature = new LinkedHashMap<>();
    for (Explanation explanation : result.explanations()) {
      if (isSaidBetter(explanation, result.explanations())) {
        continue;
      }
      List<Explanation> same =
          bySignature.computeIfAbsent(signatures.of(explanation), key -> new ArrayList<>());
      // Two moves that make one swap are no second explanation beside the swap.
      if (same.isEmpty() || explanation.slips().size() == same.get(0).slips().size()) {
        same.add(explanation);
      }
    }
    double total = bySignature.values().stream().mapToDouble(Region::weight).sum();
    List<EquivalenceClass> classes = new ArrayList<>();
    for (List<Explanation> same : bySignature.values()) {
      List<Costed> meant = meant(same, costByValues, itemsTouched);
      double all = meant.stream().mapToDouble(Costed::weight).sum();
      classes.add(
          new EquivalenceClass(
              meant.stream().map(Costed::explanation).toList(),
              meant.stream().map(one -> one.weight() / all).toList(),
              weight(same) / total));
    }
    classes.sort((left, right) -> Double.compare(right.odds(), left.odds()));
    return new Region(
        failing, List.copyOf(classes), result.complete(), shownOnce, result.runnerUp());
  }

  /** Of explanations that join the same points the cheapest, and of those at the fewest items. */
  private static List<Costed> meant(
      List<Explanation> same,
      ToDoubleFunction<Explanation> costByValues,
      ToIntFunction<Explanation> itemsTouched) {
    if (same.size() == 1) {
      return List.of(new Costed(same.get(0), same.get(0).cost()));
    }
    List<Costed> costed =
        same.stream()
            .map(one -> new Costed(one, costByValues.applyAsDouble(one)))
            .sorted(
                Comparator.comparingDouble(Costed::cost)
                    .thenComparingInt(one -> itemsTouched.applyAsInt(one.explanation())))
            .toList();
    double most = costed.get(0).cost() + NOT_MEANT;
    return costed.stream().filter(one -> one.cost() <= most).toList();
  }

  private record Costed(Explanation explanation, double cost) {
    double weight() {
      return Math.exp(-cost);
    }
  }

  private static boolean isSaidBetter(Explanation vague, List<Explanation> all) {
    return all.stream().anyMatch(precise -> isVaguerThan(vague, precise));
  }

  private static boolean isVaguerThan(Explanation vague, Explanation precise) {
    List<Slip> only = new ArrayList<>(vague.slips());
    only.removeAll(precise.slips());
    List<Slip> instead = new ArrayList<>(precise.slips());
    instead.removeAll(vague.slips());
    return vague.slips().size() == precise.slips().size()
        && only.size() == 1
        && instead.size() == 1
        && only.get(0).isVaguerThan(instead.get(0));
  }

  private static double weight(List<Explanation> same) {
    return same.stream().mapToDouble(one -> Math.exp(-one.cost())).sum();
  }

  /** The same beside readings that nothing explains: then it is not certain. */
  Region inDoubt() {
    return new Region(failing, classes, false, shownOnce, runnerUp);
  }

  EquivalenceClass best() {
    return classes.get(0);
  }

  /** The classes that have no more slips than the best, itself included. */
  List<EquivalenceClass> ofBestSize() {
    return classes.stream().filter(one -> one.size() <= best().size()).toList();
  }

  /**
   * Certain: more than one reading shows it, nothing of the same size fits, nothing larger is worth
   * a thought, and the readings were made at the points that the sheet names. A poor joint that has
   * just what a part has may as well be a leak.
   */
  Certainty certainty() {
    // Who read wrongly once is asked to read again.
    boolean isOfTheTest = best().primary().isOfTheTest();
    boolean isPoor = best().primary().slips().stream().anyMatch(one -> one.asPoor().isPresent());
    if (!shownOnce
        && complete
        && !isPoor
        && !isOfTheTest
        && ofBestSize().size() == 1
        && best().odds() >= ALL_BUT_SURE) {
      return Certainty.CERTAIN;
    }
    return best().odds() > 0.5 ? Certainty.LIKELY : Certainty.POSSIBLE;
  }
}

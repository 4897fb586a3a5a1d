package dev.ringout.diagnose.values;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Leaks.Pair;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Partition;
import dev.ringout.compare.Judged;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Between which nets, as they are at rest, each reading shows a leak. In a position of a switch its
 * two sides may hold points of several: the fewest pairs that account for such readings are
 * supposed, but those that read well.
 */
final class LeakPairs {
  private final Circuit circuit;
  private final Partition found;

  /** Pairs beside which others account for the same readings. */
  private final Set<Pair> unsure = new HashSet<>();

  LeakPairs(Circuit circuit, Partition found) {
    this.circuit = circuit;
    this.found = found;
  }

  /** The pairs that a reading between two points may be of; none where it is of others. */
  Set<Pair> of(Judged judged) {
    if (!judged.probing().isPair()) {
      return Set.of();
    }
    Set<Pair> pairs = new TreeSet<>(Comparator.comparing(Pair::one).thenComparing(Pair::other));
    for (int one : nets(judged, judged.probing().from()[0])) {
      for (int other : nets(judged, judged.probing().to()[0])) {
        if (one != other) {
          pairs.add(Pair.of(one, other));
        }
      }
    }
    return pairs;
  }

  /** The pair of a reading, where it can be of no other. */
  Optional<Pair> onlyOf(Judged judged) {
    Set<Pair> pairs = of(judged);
    return pairs.size() == 1 ? pairs.stream().findFirst() : Optional.empty();
  }

  private Set<Integer> nets(Judged judged, int point) {
    if (judged.reading().state().isNormal()) {
      return Set.of(found.groupOf(point));
    }
    Nets inState = circuit.in(judged.reading().state());
    return IntStream.of(inState.pointsOf(inState.of(point)))
        .mapToObj(found::groupOf)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /**
   * The pairs that some readings show, each with the least ohms read.
   *
   * @param open pairs that read well
   */
  Map<Pair, Double> shownBy(List<Judged> low, Set<Pair> open, ToDoubleFunction<Judged> ohmsOf) {
    Map<Pair, Double> ohms = new HashMap<>();
    List<Judged> left = new ArrayList<>();
    for (Judged judged : low) {
      Optional<Pair> only = onlyOf(judged);
      only.ifPresent(pair -> ohms.merge(pair, ohmsOf.applyAsDouble(judged), Math::min));
      if (only.isEmpty()) {
        left.add(judged);
      }
    }
    left.removeIf(judged -> of(judged).stream().anyMatch(ohms::containsKey));
    while (true) {
      Map<Pair, List<Judged>> shown = new LinkedHashMap<>();
      for (Judged judged : left) {
        of(judged).stream()
            .filter(pair -> !open.contains(pair))
            .forEach(pair -> shown.computeIfAbsent(pair, key -> new ArrayList<>()).add(judged));
      }
      int most = shown.values().stream().mapToInt(List::size).max().orElse(0);
      if (most == 0) {
        return ohms;
      }
      List<Map.Entry<Pair, List<Judged>>> best =
          shown.entrySet().stream().filter(entry -> entry.getValue().size() == most).toList();
      Pair pair = best.get(0).getKey();
      List<Judged> taken = best.get(0).getValue();
      ohms.put(pair, taken.stream().mapToDouble(ohmsOf).min().orElse(0));
      if (best.size() > 1) {
        unsure.add(pair);
      }
      left.removeAll(taken);
    }
  }

  /** Whether another pair accounts for its readings as well. */
  boolean isUnsure(Pair pair) {
    return unsure.contains(pair);
  }
}

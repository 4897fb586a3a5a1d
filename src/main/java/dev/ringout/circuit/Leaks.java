package dev.ringout.circuit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;

/**
 * The fewest leaks that account for low insulation. Resistances in series add up and conductances
 * in parallel do: a pair that reads what a way over other leaks accounts for has no leak of its
 * own, and a net's reading against the rest is all of its leaks together. Nets by any number.
 */
public final class Leaks {
  /** A reading within this share of what is accounted for shows nothing more. */
  private static final double SLACK = 0.2;

  /** Two readings against the rest that differ by no more may be one leak's two ends. */
  private static final double ALIKE = 0.1;

  /** An unordered pair of nets. */
  public record Pair(int one, int other) {
    /** The two in their order. */
    public static Pair of(int one, int other) {
      return new Pair(Math.min(one, other), Math.max(one, other));
    }

    /** Whether a net is one of the two. */
    public boolean has(int net) {
      return one == net || other == net;
    }
  }

  /**
   * A leak between two nets.
   *
   * @param read whether a reading between the two shows it; else their readings against the rest
   */
  public record Leak(Pair between, double ohms, boolean read) {}

  private final List<Leak> leaks = new ArrayList<>();
  private final Set<Integer> loose = new LinkedHashSet<>();

  /**
   * Finds the leaks.
   *
   * @param pairs ohms between two nets, where low; 0 where the reading is no number
   * @param toRest ohms of a net against all others, where low; 0 where the reading is no number
   * @param apart pairs of nets that read well
   */
  public Leaks(Map<Pair, Double> pairs, Map<Integer, Double> toRest, Set<Pair> apart) {
    this(pairs, toRest, apart, Map.of());
  }

  /**
   * Finds the leaks.
   *
   * @param pairs ohms between two nets, where low; 0 where the reading is no number
   * @param toRest ohms of a net against all others, where low; 0 where the reading is no number
   * @param apart pairs of nets that read well
   * @param parts ohms of the parts between two nets: a leak shows through them too
   */
  public Leaks(
      Map<Pair, Double> pairs,
      Map<Integer, Double> toRest,
      Set<Pair> apart,
      Map<Pair, Double> parts) {
    fromPairs(pairs, parts);
    Map<Integer, Double> siemens = new TreeMap<>();
    toRest.forEach(
        (net, ohms) -> {
          double known =
              leaks.stream()
                  .filter(leak -> leak.between().has(net))
                  .mapToDouble(leak -> 1 / leak.ohms())
                  .sum();
          if (known * (1 + SLACK) < 1 / ohms || known == 0) {
            siemens.put(net, 1 / ohms - known);
          }
        });
    fromRests(siemens, apart);
    loose.addAll(siemens.keySet());
  }

  private void fromPairs(Map<Pair, Double> pairs, Map<Pair, Double> parts) {
    SimpleWeightedGraph<Integer, DefaultWeightedEdge> graph =
        new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    parts.forEach(
        (pair, ohms) -> {
          graph.addVertex(pair.one());
          graph.addVertex(pair.other());
          graph.setEdgeWeight(graph.addEdge(pair.one(), pair.other()), ohms);
        });
    pairs.entrySet().stream()
        .sorted(
            Map.Entry.<Pair, Double>comparingByValue()
                .thenComparing(entry -> entry.getKey().one())
                .thenComparing(entry -> entry.getKey().other()))
        .forEach(
            entry -> {
              Pair pair = entry.getKey();
              graph.addVertex(pair.one());
              graph.addVertex(pair.other());
              double way =
                  new DijkstraShortestPath<>(graph).getPathWeight(pair.one(), pair.other());
              if (entry.getValue() < way * (1 - SLACK)) {
                graph.removeEdge(pair.one(), pair.other());
                graph.setEdgeWeight(graph.addEdge(pair.one(), pair.other()), entry.getValue());
                leaks.add(new Leak(pair, entry.getValue(), true));
              }
            });
  }

  /** One net that leaks to several reads what they read together; two that leak read alike. */
  private void fromRests(Map<Integer, Double> siemens, Set<Pair> apart) {
    List<Integer> nets =
        siemens.entrySet().stream()
            .sorted(Map.Entry.<Integer, Double>comparingByValue(Comparator.reverseOrder()))
            .map(Map.Entry::getKey)
            .toList();
    for (int hub : nets) {
      double most = siemens.getOrDefault(hub, 0.0);
      Map<Integer, Double> others = new LinkedHashMap<>(siemens);
      others.keySet().removeIf(net -> net == hub || apart.contains(Pair.of(net, hub)));
      double sum = others.values().stream().mapToDouble(Double::doubleValue).sum();
      if (most > 0 && others.size() > 1 && areAlike(sum, most)) {
        others.forEach((net, one) -> leaks.add(new Leak(Pair.of(net, hub), 1 / one, false)));
        siemens.keySet().removeAll(others.keySet());
        siemens.remove(hub);
        return;
      }
    }
    for (int i = 0; i + 1 < nets.size(); i++) {
      int one = nets.get(i);
      int other = nets.get(i + 1);
      Double first = siemens.get(one);
      Double second = siemens.get(other);
      if (first != null
          && second != null
          && areAlike(first, second)
          && !apart.contains(Pair.of(one, other))) {
        leaks.add(new Leak(Pair.of(one, other), 1 / first, false));
        siemens.keySet().removeAll(List.of(one, other));
      }
    }
  }

  private static boolean areAlike(double one, double other) {
    return one == other || Math.abs(one - other) <= ALIKE * Math.max(one, other);
  }

  /** Each leak. */
  public List<Leak> all() {
    return leaks;
  }

  /** Nets that read low against the rest and no leak found accounts for. */
  public Set<Integer> loose() {
    return loose;
  }
}

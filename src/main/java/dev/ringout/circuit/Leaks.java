package dev.ringout.circuit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jgrapht.GraphPath;
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

  /** The leaks read between two nets, and the parts: what a reading may lead over. */
  private final SimpleWeightedGraph<Integer, DefaultWeightedEdge> graph =
      new SimpleWeightedGraph<>(DefaultWeightedEdge.class);

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
    OfRests found = fewest(siemens, apart);
    leaks.addAll(found.leaks());
    found.leaks().forEach(leak -> lay(leak.between(), leak.ohms()));
    loose.addAll(found.loose().keySet());
  }

  private void lay(Pair pair, double ohms) {
    graph.addVertex(pair.one());
    graph.addVertex(pair.other());
    graph.removeEdge(pair.one(), pair.other());
    graph.setEdgeWeight(graph.addEdge(pair.one(), pair.other()), ohms);
  }

  private void fromPairs(Map<Pair, Double> pairs, Map<Pair, Double> parts) {
    parts.forEach(this::lay);
    pairs.entrySet().stream()
        .sorted(
            Map.Entry.<Pair, Double>comparingByValue()
                .thenComparing(entry -> entry.getKey().one())
                .thenComparing(entry -> entry.getKey().other()))
        .forEach(
            entry -> {
              Pair pair = entry.getKey();
              double way = way(pair).map(GraphPath::getWeight).orElse(Double.POSITIVE_INFINITY);
              if (entry.getValue() < way * (1 - SLACK)) {
                lay(pair, entry.getValue());
                leaks.add(new Leak(pair, entry.getValue(), true));
              }
            });
  }

  private Optional<GraphPath<Integer, DefaultWeightedEdge>> way(Pair pair) {
    return graph.containsVertex(pair.one()) && graph.containsVertex(pair.other())
        ? Optional.ofNullable(new DijkstraShortestPath<>(graph).getPath(pair.one(), pair.other()))
        : Optional.empty();
  }

  /** Whether a reading between two nets leads over a leak, which then accounts for it. */
  public boolean accountsFor(Leak leak, Pair read, double ohms) {
    DefaultWeightedEdge own = graph.getEdge(leak.between().one(), leak.between().other());
    return way(read)
        .filter(way -> way.getWeight() * (1 - SLACK) <= ohms || ohms == 0)
        .filter(way -> way.getEdgeList().contains(own))
        .isPresent();
  }

  /** Leaks that readings against the rest show, and the nets that they leave. */
  private record OfRests(List<Leak> leaks, Map<Integer, Double> loose) {
    boolean isBetterThan(OfRests other) {
      return loose.size() < other.loose.size()
          || (loose.size() == other.loose.size() && leaks.size() < other.leaks.size());
    }
  }

  /** One net that leaks to several reads what they read together; two that leak read alike. */
  private static OfRests fewest(Map<Integer, Double> siemens, Set<Pair> apart) {
    OfRests best = pairs(List.of(), siemens, apart);
    for (int hub : siemens.keySet()) {
      double most = siemens.getOrDefault(hub, 0.0);
      Map<Integer, Double> others = new LinkedHashMap<>(siemens);
      others.keySet().removeIf(net -> net == hub || apart.contains(Pair.of(net, hub)));
      double sum = others.values().stream().mapToDouble(Double::doubleValue).sum();
      if (most > 0 && others.size() > 1 && areAlike(sum, most)) {
        List<Leak> leaks = new ArrayList<>();
        others.forEach((net, one) -> leaks.add(new Leak(Pair.of(net, hub), 1 / one, false)));
        Map<Integer, Double> left = new TreeMap<>(siemens);
        left.keySet().removeAll(others.keySet());
        left.remove(hub);
        OfRests found = pairs(leaks, left, apart);
        best = found.isBetterThan(best) ? found : best;
      }
    }
    return best;
  }

  /** Nets that read alike, two by two. */
  private static OfRests pairs(List<Leak> before, Map<Integer, Double> siemens, Set<Pair> apart) {
    List<Leak> leaks = new ArrayList<>(before);
    Map<Integer, Double> left = new TreeMap<>(siemens);
    List<Integer> nets =
        siemens.entrySet().stream()
            .sorted(Map.Entry.<Integer, Double>comparingByValue(Comparator.reverseOrder()))
            .map(Map.Entry::getKey)
            .toList();
    for (int i = 0; i + 1 < nets.size(); i++) {
      int one = nets.get(i);
      int other = nets.get(i + 1);
      Double first = left.get(one);
      Double second = left.get(other);
      if (first != null
          && second != null
          && areAlike(first, second)
          && !apart.contains(Pair.of(one, other))) {
        leaks.add(new Leak(Pair.of(one, other), 1 / first, false));
        left.keySet().removeAll(List.of(one, other));
      }
    }
    return new OfRests(leaks, left);
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

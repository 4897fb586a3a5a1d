package dev.ringout.circuit;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Item;
import dev.ringout.harness.NaturalOrder;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jgrapht.Graph;
import org.jgrapht.alg.drawing.FRLayoutAlgorithm2D;
import org.jgrapht.alg.drawing.model.Box2D;
import org.jgrapht.alg.drawing.model.MapLayoutModel2D;
import org.jgrapht.alg.drawing.model.Point2D;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;

/**
 * The items of a unit as places on a map, and what runs between them. Items that have many wires in
 * common lie near each other (Fruchterman and Reingold, the same each time).
 *
 * @param places each item's place, both from 0 to 1
 * @param bundles how many wires run between two items
 * @param mated halves that are plugged into each other
 */
public record UnitMap(Map<String, Place> places, List<Bundle> bundles, List<Mated> mated) {
  private static final int ITERATIONS = 300;
  private static final int SEED = 1;

  /** A place on the map. */
  public record Place(double x, double y) {}

  /** Two halves of a connector. */
  public record Mated(String one, String other) {}

  /** Wires between two items, with the cables in which they run. */
  public record Bundle(String one, String other, int wires, List<String> cables) {}

  /** Two items in natural order, ordered as plain text. */
  private record Pair(String one, String other) implements Comparable<Pair> {
    static Pair of(String some, String next) {
      return NaturalOrder.INSTANCE.compare(some, next) <= 0
          ? new Pair(some, next)
          : new Pair(next, some);
    }

    @Override
    public int compareTo(Pair pair) {
      int byOne = one.compareTo(pair.one);
      return byOne != 0 ? byOne : other.compareTo(pair.other);
    }
  }

  /** The map of a unit. */
  public static UnitMap of(Harness harness) {
    Set<String> refs = new TreeSet<>(NaturalOrder.INSTANCE);
    harness.pointsAsListed().stream().map(Point::ref).forEach(refs::add);
    SortedMap<Pair, List<Wire>> between = new TreeMap<>();
    // Halves that are mated lie beside each other though no wire joins them.
    Set<Pair> beside = new LinkedHashSet<>();
    for (Wire wire : harness.wires()) {
      Pair ends = Pair.of(wire.from().ref(), wire.to().ref());
      if (!ends.one().equals(ends.other())) {
        between.computeIfAbsent(ends, pair -> new ArrayList<>()).add(wire);
        beside.add(ends);
      }
    }
    Set<Pair> mated = mated(harness, refs);
    beside.addAll(mated);
    return new UnitMap(
        places(refs, beside),
        between.entrySet().stream().map(one -> bundle(one.getKey(), one.getValue())).toList(),
        mated.stream().map(pair -> new Mated(pair.one(), pair.other())).toList());
  }

  private static Set<Pair> mated(Harness harness, Set<String> refs) {
    Set<Pair> mated = new LinkedHashSet<>();
    for (Item item : harness.items()) {
      boolean known = refs.contains(item.ref()) && refs.contains(item.mates());
      if (known && !item.ref().equals(item.mates())) {
        mated.add(Pair.of(item.ref(), item.mates()));
      }
    }
    return mated;
  }

  private static Bundle bundle(Pair ends, List<Wire> wires) {
    return new Bundle(
        ends.one(),
        ends.other(),
        wires.size(),
        wires.stream()
            .map(Wire::cable)
            .filter(cable -> !cable.isEmpty())
            .distinct()
            .sorted()
            .toList());
  }

  private static Map<String, Place> places(Set<String> refs, Set<Pair> beside) {
    Graph<String, DefaultEdge> graph = new SimpleGraph<>(DefaultEdge.class);
    refs.forEach(graph::addVertex);
    beside.forEach(pair -> graph.addEdge(pair.one(), pair.other()));
    MapLayoutModel2D<String> model = new MapLayoutModel2D<>(new Box2D(0, 0, 1, 1));
    new FRLayoutAlgorithm2D<String, DefaultEdge>(
            ITERATIONS, FRLayoutAlgorithm2D.DEFAULT_NORMALIZATION_FACTOR, new Random(SEED))
        .layout(graph, model);
    Map<String, Place> places = new LinkedHashMap<>();
    for (String ref : refs) {
      Point2D at = model.get(ref);
      places.put(ref, new Place(at.getX(), at.getY()));
    }
    return Collections.unmodifiableMap(places);
  }
}

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

  /** The map of a unit. */
  public static UnitMap of(Harness harness) {
    Graph<String, DefaultEdge> graph = new SimpleGraph<>(DefaultEdge.class);
    TreeSet<String> refs = new TreeSet<>(NaturalOrder.INSTANCE);
    harness.pointsAsListed().stream().map(Point::ref).forEach(refs::add);
    refs.forEach(graph::addVertex);
    Map<String, List<Wire>> between = new TreeMap<>();
    for (Wire wire : harness.wires()) {
      String one = wire.from().ref();
      String other = wire.to().ref();
      if (!one.equals(other)) {
        boolean inOrder = NaturalOrder.INSTANCE.compare(one, other) <= 0;
        String key = inOrder ? one + "\t" + other : other + "\t" + one;
        between.computeIfAbsent(key, k -> new ArrayList<>()).add(wire);
        graph.addEdge(one, other);
      }
    }
    // Halves that are mated lie beside each other though no wire joins them.
    Set<Mated> mated = new LinkedHashSet<>();
    for (Item item : harness.items()) {
      boolean known = refs.contains(item.ref()) && refs.contains(item.mates());
      if (known && !item.ref().equals(item.mates())) {
        graph.addEdge(item.ref(), item.mates());
        boolean inOrder = NaturalOrder.INSTANCE.compare(item.ref(), item.mates()) <= 0;
        mated.add(
            inOrder ? new Mated(item.ref(), item.mates()) : new Mated(item.mates(), item.ref()));
      }
    }
    MapLayoutModel2D<String> model = new MapLayoutModel2D<>(new Box2D(0, 0, 1, 1));
    new FRLayoutAlgorithm2D<String, DefaultEdge>(
            ITERATIONS, FRLayoutAlgorithm2D.DEFAULT_NORMALIZATION_FACTOR, new Random(SEED))
        .layout(graph, model);
    Map<String, Place> places = new LinkedHashMap<>();
    for (String ref : refs) {
      Point2D at = model.get(ref);
      places.put(ref, new Place(at.getX(), at.getY()));
    }
    List<Bundle> bundles = new ArrayList<>();
    between.forEach(
        (key, wires) -> {
          String[] ends = key.split("\t", -1);
          bundles.add(
              new Bundle(
                  ends[0],
                  ends[1],
                  wires.size(),
                  wires.stream()
                      .map(Wire::cable)
                      .filter(cable -> !cable.isEmpty())
                      .distinct()
                      .sorted()
                      .toList()));
        });
    return new UnitMap(
        Collections.unmodifiableMap(places), List.copyOf(bundles), List.copyOf(mated));
  }
}

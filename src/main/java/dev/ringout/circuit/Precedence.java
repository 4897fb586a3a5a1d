package dev.ringout.circuit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.KosarajuStrongConnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleDirectedGraph;
import org.jgrapht.traverse.TopologicalOrderIterator;

/** What must come before what; what must come before each other comes together. */
public final class Precedence {
  private final Comparator<String> order;
  private final Graph<String, DefaultEdge> graph = new SimpleDirectedGraph<>(DefaultEdge.class);

  /** Nothing yet; names that may come in any order come in this one. */
  public Precedence(Comparator<String> order) {
    this.order = order;
  }

  /** A name that has a turn. */
  public void add(String name) {
    graph.addVertex(name);
  }

  /** One name comes before another. */
  public void before(String first, String then) {
    add(first);
    add(then);
    if (!first.equals(then)) {
      graph.addEdge(first, then);
    }
  }

  /** The turns: each the names that come together. */
  public List<Collection<String>> turns() {
    Graph<Graph<String, DefaultEdge>, DefaultEdge> together =
        new KosarajuStrongConnectivityInspector<>(graph).getCondensation();
    Comparator<Graph<String, DefaultEdge>> byFirst =
        Comparator.comparing(one -> sorted(one.vertexSet()).first(), order);
    List<Collection<String>> turns = new ArrayList<>();
    new TopologicalOrderIterator<>(together, byFirst)
        .forEachRemaining(one -> turns.add(List.copyOf(sorted(one.vertexSet()))));
    return turns;
  }

  private SortedSet<String> sorted(Set<String> names) {
    SortedSet<String> sorted = new TreeSet<>(order);
    sorted.addAll(names);
    return sorted;
  }
}

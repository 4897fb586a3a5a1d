package dev.ringout.circuit;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Set;
import org.jgrapht.alg.interfaces.MatchingAlgorithm.Matching;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;

/** Pairs things of two kinds so that all pairs together cost the least. */
public final class LeastCost {
  private LeastCost() {}

  /**
   * The least-cost assignment of a square matrix (Kuhn and Munkres; cubic in its size).
   *
   * @param costs row by row; none negative
   * @return for each row its column
   */
  public static int[] assignment(int[][] costs) {
    int size = costs.length;
    if (size == 1) {
      return new int[] {0};
    }
    SimpleWeightedGraph<Integer, DefaultWeightedEdge> graph =
        new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    Set<Integer> rows = new LinkedHashSet<>();
    Set<Integer> columns = new LinkedHashSet<>();
    for (int i = 0; i < size; i++) {
      graph.addVertex(i);
      rows.add(i);
    }
    for (int j = 0; j < size; j++) {
      graph.addVertex(size + j);
      columns.add(size + j);
    }
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        graph.setEdgeWeight(graph.addEdge(i, size + j), costs[i][j]);
      }
    }
    Matching<Integer, DefaultWeightedEdge> matching =
        new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, rows, columns).getMatching();
    int[] columnOf = new int[size];
    Arrays.fill(columnOf, -1);
    for (DefaultWeightedEdge edge : matching.getEdges()) {
      int one = graph.getEdgeSource(edge);
      int other = graph.getEdgeTarget(edge);
      columnOf[Math.min(one, other)] = Math.max(one, other) - size;
    }
    return columnOf;
  }
}

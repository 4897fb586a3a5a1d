package dev.ringout.circuit;

import java.util.function.IntConsumer;

/**
 * Visits the tree edges between pairs of points, each edge at most once over all pairs: edges
 * already visited are skipped by path compression, so any number of pairs costs little more than
 * one walk over the tree.
 */
public final class TreePaths {
  private final Nets nets;
  private final int[] top;

  /** A fresh set of paths: no edge has been visited. */
  public TreePaths(Nets nets) {
    this.nets = nets;
    this.top = new int[nets.points()];
    for (int point = 0; point < top.length; point++) {
      top[point] = point;
    }
  }

  /** Visits the edges between two points of one net that no earlier pair has visited. */
  public void mark(int first, int second, IntConsumer edge) {
    int a = top(first);
    int b = top(second);
    while (a != b) {
      if (nets.depth(a) < nets.depth(b)) {
        int swap = a;
        a = b;
        b = swap;
      }
      edge.accept(nets.parentConductor(a));
      top[a] = nets.parent(a);
      a = top(a);
    }
  }

  private int top(int point) {
    int root = point;
    while (top[root] != root) {
      root = top[root];
    }
    int next = point;
    while (top[next] != root) {
      int after = top[next];
      top[next] = root;
      next = after;
    }
    return root;
  }
}

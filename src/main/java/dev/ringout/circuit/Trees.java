package dev.ringout.circuit;

import java.util.Arrays;
import org.jgrapht.Graph;
import org.jgrapht.graph.Multigraph;
import org.jgrapht.traverse.BreadthFirstIterator;
import org.jspecify.annotations.Nullable;

/**
 * A spanning tree of each net, and the cut edges: conductors that no other path goes around. Each
 * is found when its net is first asked for: the tree by a breadth-first walk over the net as a
 * graph; cut edges are the tree's edges that no edge outside the tree spans. Each tree edge is
 * visited once, so a net may be of any size and shape. (The graph library's own inspector of them
 * recurses once a point and overflows the stack on long nets; the tests compare with it on short
 * ones.)
 */
final class Trees {
  private final Circuit circuit;
  private final Nets nets;
  private final boolean[] isKnown;
  private final int[] parent;
  private final int[] parentConductor;
  private final int[] depth;
  private final boolean[] cutEdge;
  private @Nullable TreePaths spanned;

  Trees(Circuit circuit, Nets nets) {
    this.circuit = circuit;
    this.nets = nets;
    isKnown = new boolean[nets.count()];
    parent = new int[circuit.size()];
    parentConductor = new int[circuit.size()];
    depth = new int[circuit.size()];
    cutEdge = new boolean[circuit.conductors().size()];
    Arrays.fill(parent, Nets.NONE);
    Arrays.fill(parentConductor, Nets.NONE);
  }

  int parent(int point) {
    know(nets.of(point));
    return parent[point];
  }

  int parentConductor(int point) {
    know(nets.of(point));
    return parentConductor[point];
  }

  int depth(int point) {
    know(nets.of(point));
    return depth[point];
  }

  boolean isCutEdge(int conductor) {
    know(nets.of(circuit.from(conductor)));
    return cutEdge[conductor];
  }

  private void know(int net) {
    if (isKnown[net]) {
      return;
    }
    isKnown[net] = true;
    int[] conductors = nets.conductorsOf(net);
    int first = nets.pointsOf(net)[0];
    if (conductors.length == 1 && nets.pointsOf(net).length == 2) {
      // Most nets are one wire; that needs no graph.
      int only = conductors[0];
      hang(circuit.from(only) == first ? circuit.to(only) : circuit.from(only), first, only);
      return;
    }
    if (conductors.length > 0) {
      walk(net, first);
    }
    if (nets.hasLoops(net)) {
      findSpanned(conductors);
    }
  }

  private void hang(int point, int above, int conductor) {
    parent[point] = above;
    parentConductor[point] = conductor;
    depth[point] = depth[above] + 1;
    cutEdge[conductor] = true;
  }

  private void walk(int net, int first) {
    Graph<Integer, Integer> joined = new Multigraph<>(null, null, false);
    for (int point : nets.pointsOf(net)) {
      joined.addVertex(point);
    }
    for (int conductor : nets.conductorsOf(net)) {
      if (circuit.from(conductor) != circuit.to(conductor)) {
        joined.addEdge(circuit.from(conductor), circuit.to(conductor), conductor);
      }
    }
    BreadthFirstIterator<Integer, Integer> walk = new BreadthFirstIterator<>(joined, first);
    walk.next();
    while (walk.hasNext()) {
      int point = walk.next();
      hang(point, walk.getParent(point), walk.getSpanningTreeEdge(point));
    }
  }

  /** Takes the conductors off the cut edges that another way goes around. */
  private void findSpanned(int[] conductors) {
    TreePaths visited = spanned == null ? new TreePaths(nets) : spanned;
    spanned = visited;
    for (int conductor : conductors) {
      int from = circuit.from(conductor);
      int to = circuit.to(conductor);
      if (parentConductor[from] != conductor && parentConductor[to] != conductor) {
        visited.mark(from, to, edge -> cutEdge[edge] = false);
      }
    }
  }
}

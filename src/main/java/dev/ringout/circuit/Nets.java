package dev.ringout.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import org.jgrapht.Graph;
import org.jgrapht.traverse.BreadthFirstIterator;

/**
 * The nets of a circuit in one state of its switches, numbered from 0 in the order of their first
 * points, with a spanning tree of each and the bridges: conductors that no other path goes around.
 *
 * <p>Nets and trees come from a breadth-first walk. Bridges are the tree's edges that no edge
 * outside the tree spans; each tree edge is visited once, so a net may be of any size and shape.
 * (The graph library's own inspector of bridges recurses once a point and overflows the stack on
 * long nets; the tests compare with it on short ones.)
 */
public final class Nets implements Partition {
  /** No conductor, or no point: at the root of a net's tree. */
  public static final int NONE = -1;

  private final Circuit circuit;
  private final int[] netOf;
  private final int[] parent;
  private final int[] parentConductor;
  private final int[] depth;
  private final int[][] pointsOf;
  private final int[][] conductorsOf;
  private final int[][] partsAt;
  private final boolean[] closed;
  private final boolean[] bridge;

  Nets(Circuit circuit, Graph<Integer, Integer> joined, boolean[] closed) {
    this.circuit = circuit;
    this.closed = closed;
    int size = circuit.size();
    netOf = new int[size];
    parent = new int[size];
    parentConductor = new int[size];
    depth = new int[size];
    List<List<Integer>> nets = new ArrayList<>();
    BreadthFirstIterator<Integer, Integer> walk = new BreadthFirstIterator<>(joined);
    while (walk.hasNext()) {
      int point = walk.next();
      Integer above = walk.getParent(point);
      if (above == null) {
        nets.add(new ArrayList<>());
        parent[point] = NONE;
        parentConductor[point] = NONE;
      } else {
        parent[point] = above;
        parentConductor[point] = walk.getSpanningTreeEdge(point);
        depth[point] = depth[above] + 1;
      }
      netOf[point] = nets.size() - 1;
      nets.get(nets.size() - 1).add(point);
    }
    pointsOf = new int[nets.size()][];
    for (int net = 0; net < pointsOf.length; net++) {
      pointsOf[net] = nets.get(net).stream().mapToInt(Integer::intValue).sorted().toArray();
    }
    conductorsOf = conductorsByNet();
    partsAt = partsByNet();
    bridge = findBridges();
  }

  private int[][] conductorsByNet() {
    int[] count = new int[pointsOf.length];
    for (int c = 0; c < closed.length; c++) {
      if (closed[c]) {
        count[netOf[circuit.from(c)]]++;
      }
    }
    int[][] byNet = new int[pointsOf.length][];
    for (int net = 0; net < byNet.length; net++) {
      byNet[net] = new int[count[net]];
    }
    for (int c = closed.length - 1; c >= 0; c--) {
      if (closed[c]) {
        int net = netOf[circuit.from(c)];
        byNet[net][--count[net]] = c;
      }
    }
    return byNet;
  }

  private int[][] partsByNet() {
    int[][] byNet = new int[pointsOf.length][];
    for (int net = 0; net < byNet.length; net++) {
      byNet[net] = circuit.partsAt(pointsOf[net]);
    }
    return byNet;
  }

  private boolean[] findBridges() {
    boolean[] isBridge = new boolean[closed.length];
    TreePaths spanned = new TreePaths(this);
    for (int point = 0; point < parentConductor.length; point++) {
      if (parentConductor[point] != NONE) {
        isBridge[parentConductor[point]] = true;
      }
    }
    for (int c = 0; c < closed.length; c++) {
      if (closed[c] && !isTreeEdge(c)) {
        spanned.mark(circuit.from(c), circuit.to(c), edge -> isBridge[edge] = false);
      }
    }
    return isBridge;
  }

  private boolean isTreeEdge(int conductor) {
    return parentConductor[circuit.from(conductor)] == conductor
        || parentConductor[circuit.to(conductor)] == conductor;
  }

  /** How many nets there are, unconnected points included. */
  public int count() {
    return pointsOf.length;
  }

  @Override
  public int groupOf(int point) {
    return netOf[point];
  }

  @Override
  public boolean isAsListed(int group) {
    return true;
  }

  /** The net of a point. */
  public int of(int point) {
    return netOf[point];
  }

  /** The points of a net in natural order. */
  @Override
  public int[] pointsOf(int net) {
    return pointsOf[net];
  }

  /** The conductors of a net, closed ones only, in the circuit's order. */
  public int[] conductorsOf(int net) {
    return conductorsOf[net];
  }

  @Override
  public int[] partsAt(int net) {
    return partsAt[net];
  }

  /** Whether a conductor joins its ends in this state. */
  public boolean isClosed(int conductor) {
    return closed[conductor];
  }

  /** Whether a conductor is the only way between its ends. */
  public boolean isBridge(int conductor) {
    return bridge[conductor];
  }

  /** Whether any two points of a net have more than one way between them. */
  public boolean hasLoops(int net) {
    return conductorsOf[net].length >= pointsOf[net].length;
  }

  /** The next point towards the root of the net's tree, or {@link #NONE}. */
  int parent(int point) {
    return parent[point];
  }

  /** The conductor towards the root, or {@link #NONE}. */
  int parentConductor(int point) {
    return parentConductor[point];
  }

  int depth(int point) {
    return depth[point];
  }

  int points() {
    return netOf.length;
  }

  /** Hands over the conductors of the tree's path between two points of one net, in no order. */
  public void eachOnWay(int first, int second, IntConsumer each) {
    int a = first;
    int b = second;
    while (a != b) {
      if (depth[a] >= depth[b]) {
        each.accept(parentConductor[a]);
        a = parent[a];
      } else {
        each.accept(parentConductor[b]);
        b = parent[b];
      }
    }
  }

  /**
   * The conductors of the tree's path between two points of one net, from the first to the second.
   */
  public List<Integer> path(int first, int second) {
    List<Integer> up = new ArrayList<>();
    List<Integer> down = new ArrayList<>();
    int a = first;
    int b = second;
    while (a != b) {
      if (depth[a] >= depth[b]) {
        up.add(parentConductor[a]);
        a = parent[a];
      } else {
        down.add(parentConductor[b]);
        b = parent[b];
      }
    }
    for (int i = down.size() - 1; i >= 0; i--) {
      up.add(down.get(i));
    }
    return up;
  }
}

package dev.ringout.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.function.IntUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * The nets of a circuit in one state of its switches, numbered from 0 in the order of their first
 * points. A net's tree, ways and cut edges are found when they are first asked for ({@link Trees}).
 *
 * <p>Not for use by several threads at once.
 */
public final class Nets implements Partition {
  /** No conductor, or no point: at the root of a net's tree. */
  public static final int NONE = -1;

  private final Circuit circuit;
  private final boolean[] closed;
  private final Set<Integer> liftedParts;
  private final int[] netOf;
  private final int count;
  private int @Nullable [][] pointsOf;
  private int @Nullable [][] conductorsOf;
  private int @Nullable [][] partsAt;
  private @Nullable Trees trees;

  Nets(Circuit circuit, boolean[] closed, Set<Integer> liftedParts) {
    this.circuit = circuit;
    this.closed = closed;
    this.liftedParts = liftedParts;
    DisjointPoints joined = new DisjointPoints(circuit.size());
    for (int c = 0; c < closed.length; c++) {
      if (closed[c]) {
        joined.union(circuit.from(c), circuit.to(c));
      }
    }
    netOf = joined.numbered();
    count = joined.count();
  }

  private Trees trees() {
    Trees known = trees;
    if (known == null) {
      known = new Trees(circuit, this);
      trees = known;
    }
    return known;
  }

  /** Numbers from 0 sorted by their nets, rising in each; those of no net are left out. */
  private int[][] byNet(int numbers, IntUnaryOperator netOf) {
    int[] size = new int[count];
    for (int number = 0; number < numbers; number++) {
      int net = netOf.applyAsInt(number);
      if (net != NONE) {
        size[net]++;
      }
    }
    int[][] byNet = new int[count][];
    for (int net = 0; net < count; net++) {
      byNet[net] = new int[size[net]];
    }
    for (int number = numbers - 1; number >= 0; number--) {
      int net = netOf.applyAsInt(number);
      if (net != NONE) {
        byNet[net][--size[net]] = number;
      }
    }
    return byNet;
  }

  /** How many nets there are, unconnected points included. */
  public int count() {
    return count;
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
    int[][] known = pointsOf;
    if (known == null) {
      known = byNet(netOf.length, point -> netOf[point]);
      pointsOf = known;
    }
    return known[net];
  }

  /** The conductors of a net, closed ones only, in the circuit's order. */
  public int[] conductorsOf(int net) {
    int[][] known = conductorsOf;
    if (known == null) {
      known = byNet(closed.length, c -> closed[c] ? netOf[circuit.from(c)] : NONE);
      conductorsOf = known;
    }
    return known[net];
  }

  @Override
  public boolean isLifted(int part) {
    return liftedParts.contains(part);
  }

  /** The parts with an end at any of some points; none with a lead off. */
  public int[] partsAt(int[] points) {
    int[] parts = circuit.partsAt(points);
    return liftedParts.isEmpty()
        ? parts
        : Arrays.stream(parts).filter(part -> !isLifted(part)).toArray();
  }

  @Override
  public int[] partsAt(int net) {
    int[][] known = partsAt;
    if (known == null) {
      known = new int[count][];
      for (int one = 0; one < count; one++) {
        known[one] = partsAt(pointsOf(one));
      }
      partsAt = known;
    }
    return known[net];
  }

  /** Whether a conductor joins its ends in this state. */
  public boolean isClosed(int conductor) {
    return closed[conductor];
  }

  /** Whether a conductor is the only way between its ends. */
  public boolean isCutEdge(int conductor) {
    return closed[conductor] && trees().isCutEdge(conductor);
  }

  /** Whether any two points of a net have more than one way between them. */
  public boolean hasLoops(int net) {
    return conductorsOf(net).length >= pointsOf(net).length;
  }

  /** The next point towards the root of the net's tree, or {@link #NONE}. */
  int parent(int point) {
    return trees().parent(point);
  }

  /** The conductor towards the root, or {@link #NONE}. */
  int parentConductor(int point) {
    return trees().parentConductor(point);
  }

  int depth(int point) {
    return trees().depth(point);
  }

  int points() {
    return netOf.length;
  }

  /** Hands over the conductors of the tree's path between two points of one net, in no order. */
  public void eachOnWay(int first, int second, IntConsumer each) {
    Trees tree = trees();
    int a = first;
    int b = second;
    while (a != b) {
      if (tree.depth(a) >= tree.depth(b)) {
        each.accept(tree.parentConductor(a));
        a = tree.parent(a);
      } else {
        each.accept(tree.parentConductor(b));
        b = tree.parent(b);
      }
    }
  }

  /**
   * The conductors of the tree's path between two points of one net, from the first to the second.
   */
  public List<Integer> path(int first, int second) {
    Trees tree = trees();
    List<Integer> up = new ArrayList<>();
    List<Integer> down = new ArrayList<>();
    int a = first;
    int b = second;
    while (a != b) {
      if (tree.depth(a) >= tree.depth(b)) {
        up.add(tree.parentConductor(a));
        a = tree.parent(a);
      } else {
        down.add(tree.parentConductor(b));
        b = tree.parent(b);
      }
    }
    for (int i = down.size() - 1; i >= 0; i--) {
      up.add(down.get(i));
    }
    return up;
  }
}

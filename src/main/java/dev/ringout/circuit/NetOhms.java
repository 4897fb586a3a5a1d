package dev.ringout.circuit;

import dev.ringout.units.OhmsRange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * What may be read between any two points of one net in one state.
 *
 * <p>The net is taken apart into its blocks (J. Hopcroft and R. Tarjan, "Algorithm 447: efficient
 * algorithms for graph manipulation", Communications of the ACM 16, 1973; here without recursion,
 * for nets of any length). Resistances add up over the blocks on the way. From every point the sum
 * to the root is kept once it was asked for, and the last common point of two ways is found by
 * jumping (E. W. Myers, "An applicative random-access stack", Information Processing Letters 17,
 * 1983): a reading costs the logarithm of the number of blocks on its way, and within the one block
 * where the two ways meet a solve.
 */
final class NetOhms {
  private static final int NONE = -1;

  private final int[] points;

  /** Blocks with loops; a conductor that nothing goes around is kept by itself. */
  private final List<Block> blocks = new ArrayList<>();

  /** For each point what leads from it towards the root: a block, or a single conductor. */
  private final int[] blockOf;

  private final int[] cutEdgeOf;
  private final int[] above;
  private final int[] jump;
  private final int[] depth;
  private final int[] unknown;
  private final int[] wires;
  private final double[] lowToRoot;
  private final double[] highToRoot;

  /** The net's conductors and their ends by the places of the points. */
  private final int[] conductors;

  private final int[] from;
  private final int[] to;
  private final OhmsRange[] ohms;
  private final boolean[] isWire;

  NetOhms(Circuit circuit, Nets nets, int net, ConductorOhms resistances) {
    this(circuit, nets.pointsOf(net), nets.conductorsOf(net), resistances);
  }

  /** The same net without one conductor that others go around. */
  static NetOhms without(
      int conductor, Circuit circuit, Nets nets, int net, ConductorOhms resistances) {
    return new NetOhms(
        circuit,
        nets.pointsOf(net),
        Arrays.stream(nets.conductorsOf(net)).filter(one -> one != conductor).toArray(),
        resistances);
  }

  private NetOhms(Circuit circuit, int[] points, int[] conductors, ConductorOhms resistances) {
    this.points = points;
    this.conductors = conductors;
    from = new int[conductors.length];
    to = new int[conductors.length];
    ohms = new OhmsRange[conductors.length];
    isWire = new boolean[conductors.length];
    for (int i = 0; i < conductors.length; i++) {
      Conductor conductor = circuit.conductors().get(conductors[i]);
      from[i] = place(circuit.from(conductors[i]));
      to[i] = place(circuit.to(conductors[i]));
      ohms[i] = resistances.of(conductor);
      isWire[i] = conductor.isWire();
    }
    blockOf = new int[points.length];
    cutEdgeOf = new int[points.length];
    above = new int[points.length];
    jump = new int[points.length];
    depth = new int[points.length];
    unknown = new int[points.length];
    wires = new int[points.length];
    lowToRoot = new double[points.length];
    highToRoot = new double[points.length];
    Arrays.fill(blockOf, NONE);
    Arrays.fill(cutEdgeOf, NONE);
    Arrays.fill(lowToRoot, Double.NaN);
    lowToRoot[0] = 0;
    for (int point : new Walk().find()) {
      hang(point);
    }
  }

  private int place(int point) {
    return Arrays.binarySearch(points, point);
  }

  /** Counts what lies between a point and the root; the point above it is counted already. */
  private void hang(int point) {
    if (point == 0) {
      return;
    }
    int top = above[point];
    depth[point] = depth[top] + 1;
    unknown[point] = unknown[top] + (isStepKnown(point) ? 0 : 1);
    wires[point] = wires[top] + (hasStepWire(point) ? 1 : 0);
    boolean longJump = depth[top] - depth[jump[top]] == depth[jump[top]] - depth[jump[jump[top]]];
    jump[point] = longJump ? jump[jump[top]] : top;
  }

  private boolean isStepKnown(int point) {
    return blockOf[point] == NONE
        ? ohms[cutEdgeOf[point]].isKnown()
        : blocks.get(blockOf[point]).isKnown();
  }

  private boolean hasStepWire(int point) {
    return blockOf[point] == NONE ? isWire[cutEdgeOf[point]] : hasWire(blocks.get(blockOf[point]));
  }

  private boolean hasWire(Block block) {
    return Arrays.stream(block.conductors()).anyMatch(conductor -> isWire[conductor]);
  }

  private OhmsRange step(int point) {
    return blockOf[point] == NONE
        ? ohms[cutEdgeOf[point]]
        : blocks.get(blockOf[point]).between(above[point], point);
  }

  /**
   * A way between two points.
   *
   * @param one the point at which the way from the one reaches the block where both meet
   * @param other the same from the other
   * @param meeting the point nearest to the root on the way, outside of that block
   * @param block where the two meet; {@link #NONE} where they meet in a point
   */
  private record Way(int one, int other, int meeting, int block) {}

  private Way way(int a, int b) {
    int one = a;
    int other = b;
    while (depth[one] > depth[other]) {
      one = depth[jump[one]] >= depth[other] ? jump[one] : above[one];
    }
    while (depth[other] > depth[one]) {
      other = depth[jump[other]] >= depth[one] ? jump[other] : above[other];
    }
    if (one == other) {
      return new Way(one, other, one, NONE);
    }
    while (above[one] != above[other]) {
      boolean far = jump[one] != jump[other];
      one = far ? jump[one] : above[one];
      other = far ? jump[other] : above[other];
    }
    return blockOf[one] != NONE && blockOf[one] == blockOf[other]
        ? new Way(one, other, above[one], blockOf[one])
        : new Way(above[one], above[other], above[one], NONE);
  }

  /** What may be read between two points, both of this net. */
  OhmsRange between(int onePoint, int otherPoint) {
    int a = place(onePoint);
    int b = place(otherPoint);
    Way way = way(a, b);
    int unknowns = unknown[a] + unknown[b] - unknown[way.one()] - unknown[way.other()];
    boolean meetsUnknown = way.block() != NONE && !blocks.get(way.block()).isKnown();
    if (unknowns > 0 || meetsUnknown) {
      return OhmsRange.ANY;
    }
    toRoot(a);
    toRoot(b);
    toRoot(way.one());
    toRoot(way.other());
    double low = lowToRoot[a] - lowToRoot[way.one()] + lowToRoot[b] - lowToRoot[way.other()];
    double high = highToRoot[a] - highToRoot[way.one()] + highToRoot[b] - highToRoot[way.other()];
    OhmsRange outside = new OhmsRange(Math.max(0, low), Math.max(0, high));
    return way.block() == NONE
        ? outside
        : outside.plus(blocks.get(way.block()).between(way.one(), way.other()));
  }

  /** Whether a way leads over any wire. */
  boolean hasWire(int onePoint, int otherPoint) {
    int a = place(onePoint);
    int b = place(otherPoint);
    Way way = way(a, b);
    boolean inBlock = way.block() != NONE && hasWire(blocks.get(way.block()));
    return inBlock || wires[a] + wires[b] - wires[way.one()] - wires[way.other()] > 0;
  }

  /** The conductors of all blocks on the way: those that a reading's value depends on. */
  int[] conductorsBetween(int onePoint, int otherPoint) {
    int a = place(onePoint);
    int b = place(otherPoint);
    Way way = way(a, b);
    List<Integer> passed = new ArrayList<>();
    for (int point = a; point != way.one(); point = above[point]) {
      addStep(point, passed);
    }
    if (way.block() != NONE) {
      addAll(blocks.get(way.block()), passed);
    }
    List<Integer> back = new ArrayList<>();
    for (int point = b; point != way.other(); point = above[point]) {
      addStep(point, back);
    }
    Collections.reverse(back);
    passed.addAll(back);
    return passed.stream().mapToInt(Integer::intValue).toArray();
  }

  private void addStep(int point, List<Integer> passed) {
    if (blockOf[point] == NONE) {
      passed.add(conductors[cutEdgeOf[point]]);
    } else {
      addAll(blocks.get(blockOf[point]), passed);
    }
  }

  private void addAll(Block block, List<Integer> passed) {
    for (int conductor : block.conductors()) {
      passed.add(conductors[conductor]);
    }
  }

  private void toRoot(int point) {
    int known = point;
    int steps = 0;
    while (Double.isNaN(lowToRoot[known])) {
      known = above[known];
      steps++;
    }
    int[] down = new int[steps];
    for (int p = point; steps > 0; p = above[p]) {
      down[--steps] = p;
    }
    for (int p : down) {
      OhmsRange step = step(p);
      // Beyond what is unknown no sum is ever asked for; it only must not spoil the rest.
      boolean counts = step.isKnown();
      lowToRoot[p] = lowToRoot[above[p]] + (counts ? step.lowOhms() : 0);
      highToRoot[p] = highToRoot[above[p]] + (counts ? step.highOhms() : 0);
    }
  }

  /** The depth-first walk that finds the blocks, farthest from the root first. */
  private final class Walk {
    private final int[][] at = new int[points.length][];
    private final int[] next = new int[points.length];
    private final int[] number = new int[points.length];
    private final int[] lowest = new int[points.length];
    private final int[] cameBy = new int[points.length];
    private final int[] placeIn = new int[points.length];
    private final int[] edges = new int[conductors.length];
    private int edgeCount;

    Walk() {
      int[] count = new int[points.length];
      for (int i = 0; i < conductors.length; i++) {
        count[from[i]]++;
        count[to[i]]++;
      }
      for (int point = 0; point < points.length; point++) {
        at[point] = new int[count[point]];
      }
      for (int i = conductors.length - 1; i >= 0; i--) {
        at[from[i]][--count[from[i]]] = i;
        at[to[i]][--count[to[i]]] = i;
      }
      Arrays.fill(cameBy, -1);
    }

    /** All points, each after the one above it. */
    int[] find() {
      int[] inOrder = new int[points.length];
      int[] path = new int[points.length];
      int length = 1;
      int visited = 1;
      number[0] = 1;
      lowest[0] = 1;
      while (length > 0) {
        int point = path[length - 1];
        if (next[point] < at[point].length) {
          int edge = at[point][next[point]++];
          int other = from[edge] == point ? to[edge] : from[edge];
          if (edge == cameBy[point]) {
            continue;
          }
          if (number[other] == 0) {
            edges[edgeCount++] = edge;
            cameBy[other] = edge;
            inOrder[visited] = other;
            number[other] = ++visited;
            lowest[other] = visited;
            path[length++] = other;
          } else if (number[other] < number[point]) {
            edges[edgeCount++] = edge;
            lowest[point] = Math.min(lowest[point], number[other]);
          }
        } else {
          length--;
          if (length > 0) {
            int before = path[length - 1];
            lowest[before] = Math.min(lowest[before], lowest[point]);
            if (lowest[point] >= number[before]) {
              close(before, point);
            }
          }
        }
      }
      return inOrder;
    }

    /** Everything since the edge that led from the top to a point is one block. */
    private void close(int top, int point) {
      int start = edgeCount;
      do {
        start--;
      } while (edges[start] != cameBy[point]);
      int[] own = Arrays.copyOfRange(edges, start, edgeCount);
      edgeCount = start;
      if (own.length == 1) {
        cutEdgeOf[point] = own[0];
        above[point] = top;
        return;
      }
      List<Integer> members = new ArrayList<>();
      members.add(top);
      placeIn[top] = 0;
      int[] ownFrom = new int[own.length];
      int[] ownTo = new int[own.length];
      OhmsRange[] ownOhms = new OhmsRange[own.length];
      for (int i = 0; i < own.length; i++) {
        ownFrom[i] = placeAmong(members, from[own[i]]);
        ownTo[i] = placeAmong(members, to[own[i]]);
        ownOhms[i] = ohms[own[i]];
      }
      for (int member : members.subList(1, members.size())) {
        blockOf[member] = blocks.size();
        above[member] = top;
      }
      int[] all = members.stream().mapToInt(Integer::intValue).toArray();
      blocks.add(new Block(all, own, ownFrom, ownTo, ownOhms));
    }

    /** A point's place among a block's members, to which it is added where it is new. */
    private int placeAmong(List<Integer> members, int point) {
      int place = placeIn[point];
      if (place >= members.size() || members.get(place) != point) {
        place = members.size();
        placeIn[point] = place;
        members.add(point);
      }
      return place;
    }
  }
}

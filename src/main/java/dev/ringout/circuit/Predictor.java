package dev.ringout.circuit;

import dev.ringout.circuit.Expected.Apart;
import dev.ringout.circuit.Expected.Joined;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.harness.Limits;
import dev.ringout.harness.Part;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;

/**
 * Says what a reading should find, by recomputing which points are joined. The same computation
 * serves the unit as listed and the unit with slips in it.
 */
public final class Predictor {
  /**
   * More part-joined nets than any bench unit has between two probes; beyond it any value will do.
   */
  private static final int MOST_NODES = 400;

  private static final int FROM_SIDE = 0;
  private static final int TO_SIDE = 1;

  private final Circuit circuit;

  /** A predictor for one circuit. */
  public Predictor(Circuit circuit) {
    this.circuit = circuit;
  }

  /** What a reading should find on the unit as listed. */
  public Expected asListed(Probing probing) {
    Nets listed = circuit.in(probing.state());
    return expect(probing, listed, listed, Set.of());
  }

  /**
   * What a reading should find.
   *
   * @param listed the nets on paper, by which the operator chose the points of {@code REST}
   * @param actual what is really joined
   * @param faultyParts parts that may read anything
   */
  public Expected expect(Probing probing, Nets listed, Partition actual, Set<Integer> faultyParts) {
    Set<Integer> from = groups(probing.from(), actual);
    IntPredicate isTo = toSide(probing, listed, actual);
    if (from.stream().anyMatch(isTo::test)) {
      return new Joined();
    }
    return throughParts(from, isTo, actual, faultyParts);
  }

  private static Set<Integer> groups(int[] points, Partition actual) {
    if (points.length == 1) {
      return Set.of(actual.groupOf(points[0]));
    }
    Set<Integer> groups = new HashSet<>();
    for (int point : points) {
      groups.add(actual.groupOf(point));
    }
    return groups;
  }

  private static IntPredicate toSide(Probing probing, Nets listed, Partition actual) {
    if (!probing.toRest()) {
      return groups(probing.to(), actual)::contains;
    }
    Set<Integer> ownNets = groups(probing.from(), listed);
    return group -> {
      for (int point : actual.pointsOf(group)) {
        if (!ownNets.contains(listed.of(point))) {
          return true;
        }
      }
      return false;
    };
  }

  private Expected throughParts(
      Set<Integer> from, IntPredicate isTo, Partition actual, Set<Integer> faultyParts) {
    PartNetwork network = new PartNetwork();
    Map<Integer, Integer> nodeOf = new HashMap<>();
    Set<Integer> parts = new TreeSet<>();
    Deque<Integer> open = new ArrayDeque<>(from);
    from.forEach(group -> nodeOf.put(group, FROM_SIDE));
    boolean reached = false;
    while (!open.isEmpty()) {
      int group = open.remove();
      for (int part : actual.partsAt(group)) {
        if (!parts.add(part)) {
          continue;
        }
        int other = otherEnd(part, group, actual);
        Integer node = nodeOf.get(other);
        if (node == null) {
          boolean to = isTo.test(other);
          node = to ? TO_SIDE : nodeOf.size() + 2;
          nodeOf.put(other, node);
          if (!to) {
            open.add(other);
          }
        }
        reached |= node == TO_SIDE;
        addBranch(network, part, nodeOf.getOrDefault(group, FROM_SIDE), node, faultyParts);
        if (nodeOf.size() > MOST_NODES) {
          return new ThroughParts(0, Double.POSITIVE_INFINITY, List.copyOf(parts));
        }
      }
    }
    if (!reached) {
      return new Apart();
    }
    double allowance = wiringAllowanceOhms();
    return new ThroughParts(network.lowOhms(), network.highOhms() + allowance, List.copyOf(parts));
  }

  private int otherEnd(int part, int group, Partition actual) {
    Part one = circuit.part(part);
    int from = actual.groupOf(circuit.index(one.from()));
    return from == group ? actual.groupOf(circuit.index(one.to())) : from;
  }

  private void addBranch(
      PartNetwork network, int part, int from, int to, Set<Integer> faultyParts) {
    if (from == to) {
      return;
    }
    Part one = circuit.part(part);
    boolean known = one.ohms().isPresent() && one.kind().readsTheSameReversed();
    if (!known || faultyParts.contains(part)) {
      network.add(from, to, 0, Double.POSITIVE_INFINITY);
      return;
    }
    Limits limits = circuit.harness().limits();
    double share = one.tolerancePercent().orElse(limits.tolerancePercent()) / 100;
    double ohms = one.ohms().getAsDouble();
    network.add(from, to, ohms * (1 - share), ohms * (1 + share));
  }

  /**
   * What the wires on the way to a part may add: the highest reading that still counts as joined.
   */
  private double wiringAllowanceOhms() {
    Limits limits = circuit.harness().limits();
    return limits.closedMaxOhms().orElse(limits.fixedClosedMaxOhms());
  }
}

package dev.ringout.circuit;

import dev.ringout.harness.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;

/** Nets, of the normal state, that parts of some kind join to each other. */
public final class PartGroups {
  private final int[] groupOf;
  private final int[] sizeOf;

  /**
   * The groups of a circuit.
   *
   * @param which the parts that join
   */
  public PartGroups(Circuit circuit, Predicate<Part> which) {
    Nets normal = circuit.normal();
    DisjointPoints joined = new DisjointPoints(normal.count());
    for (int part = 0; part < circuit.harness().parts().size(); part++) {
      if (which.test(circuit.part(part))) {
        joined.union(normal.of(circuit.fromOfPart(part)), normal.of(circuit.toOfPart(part)));
      }
    }
    groupOf = joined.numbered();
    sizeOf = new int[joined.count()];
    for (int net = 0; net < groupOf.length; net++) {
      sizeOf[groupOf[net]]++;
    }
  }

  /** The group of a net. */
  public int of(int net) {
    return groupOf[net];
  }

  /** How many nets a group has. */
  public int size(int group) {
    return sizeOf[group];
  }

  /** The nets of each group that has more than one, both in rising order. */
  public Map<Integer, List<Integer>> netsOf() {
    Map<Integer, List<Integer>> netsOf = new TreeMap<>();
    for (int net = 0; net < groupOf.length; net++) {
      if (size(of(net)) > 1) {
        netsOf.computeIfAbsent(of(net), group -> new ArrayList<>()).add(net);
      }
    }
    return netsOf;
  }

  /** How many pairs of nets stand in one group. */
  public long pairsWithin() {
    long pairs = 0;
    for (int size : sizeOf) {
      pairs += (long) size * (size - 1) / 2;
    }
    return pairs;
  }
}

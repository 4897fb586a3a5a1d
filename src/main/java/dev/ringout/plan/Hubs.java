package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.PartGroups;
import dev.ringout.harness.Item;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * The point of each net at which it is held against others: at an item where many nets can be
 * reached. Nets that parts join are one group: at the group's points nothing is across a part.
 */
final class Hubs {
  private static final List<String> SCREWS = List.of("strip", "terminal", "stud", "lug", "block");

  private final Circuit circuit;
  private final Map<String, String> kindOf = new HashMap<>();
  private final List<int[]> groups = new ArrayList<>();
  private final int[] groupOfNet;

  private int largest;
  private int mostPoints = -1;

  private Hubs(Circuit circuit) {
    this.circuit = circuit;
    this.groupOfNet = new int[circuit.normal().count()];
    for (Item item : circuit.harness().items()) {
      kindOf.put(item.ref(), item.kind().toLowerCase(Locale.ROOT));
    }
  }

  /**
   * The hubs of a circuit.
   *
   * @param preferred items that are open anyway
   */
  static Hubs of(Circuit circuit, Set<String> preferred) {
    Hubs hubs = new Hubs(circuit);
    Nets normal = circuit.normal();
    int[] hubOf = hubs.hubs(normal, preferred);
    PartGroups behind = new PartGroups(circuit, part -> true);
    Map<Integer, List<Integer>> byGroup = new LinkedHashMap<>();
    for (int net = 0; net < normal.count(); net++) {
      byGroup.computeIfAbsent(behind.of(net), key -> new ArrayList<>()).add(net);
    }
    byGroup.values().forEach(nets -> hubs.add(nets, hubOf));
    return hubs;
  }

  private void add(List<Integer> nets, int[] hubOf) {
    for (int net : nets) {
      groupOfNet[net] = groups.size();
    }
    int points = nets.stream().mapToInt(net -> circuit.normal().pointsOf(net).length).sum();
    if (points > mostPoints) {
      mostPoints = points;
      largest = groups.size();
    }
    groups.add(nets.stream().mapToInt(net -> hubOf[net]).toArray());
  }

  private int[] hubs(Nets normal, Set<String> preferred) {
    Map<String, Integer> netsAt = new HashMap<>();
    for (int net = 0; net < normal.count(); net++) {
      for (int point : normal.pointsOf(net)) {
        netsAt.merge(circuit.point(point).ref(), 1, Integer::sum);
      }
    }
    int[] hubOf = new int[normal.count()];
    for (int net = 0; net < hubOf.length; net++) {
      int most = -1;
      for (int point : normal.pointsOf(net)) {
        String ref = circuit.point(point).ref();
        int nets = preferred.contains(ref) ? Integer.MAX_VALUE : netsAt.getOrDefault(ref, 0);
        if (nets > most) {
          most = nets;
          hubOf[net] = point;
        }
      }
    }
    return hubOf;
  }

  /** A point of each net of each group. */
  List<int[]> groups() {
    return groups;
  }

  /** The group with the most points, of several the first; there must be one. */
  int largest() {
    return largest;
  }

  int[] groupOf(int point) {
    return groups.get(groupOfNet[circuit.normal().of(point)]);
  }

  /** Whether a wire at a point is held by a screw: by the item's kind, else by its designator. */
  boolean isScrew(int point) {
    String ref = circuit.point(point).ref();
    String kind = kindOf.getOrDefault(ref, "");
    return SCREWS.stream().anyMatch(kind::contains)
        || (kind.isEmpty() && ref.toUpperCase(Locale.ROOT).startsWith("TB"));
  }
}

package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.DisjointPoints;
import dev.ringout.circuit.Nets;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.wiring.Arrangements.Supposed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Sorts failing readings into regions that have nothing to do with each other. */
final class Regions {
  /** Of more there are too many ways to pair them. */
  private static final int MOST_STRAYS_ALONE = 4;

  private final Circuit circuit;
  private final Nets normal;
  private final DisjointPoints joined;

  private Regions(Circuit circuit) {
    this.circuit = circuit;
    this.normal = circuit.normal();
    this.joined = new DisjointPoints(normal.count());
  }

  /**
   * Readings that share a net belong together; so do a join with the rest and the open nets or
   * other such joins at the same items, since a wire may have strayed from the one to the other;
   * the only two open wires between the same two items, which may be crossed; whatever one
   * arrangement of many ends would explain; and a few nets of which nothing is shown but that each
   * is joined to the rest: to one another, for all that is known.
   */
  static List<List<Judged>> of(Circuit circuit, List<Judged> failing, List<Supposed> arrangements) {
    Regions regions = new Regions(circuit);
    regions.joinNets(failing);
    regions.joinStrays(failing);
    regions.joinOpenPairs(failing);
    arrangements.forEach(arrangement -> regions.joinMended(arrangement));
    regions.joinStraysAlone(failing);
    return regions.sorted(failing);
  }

  /** The same by nothing but the nets that they share, and what one arrangement would explain. */
  static List<List<Judged>> byNets(
      Circuit circuit, List<Judged> failing, List<Supposed> arrangements) {
    Regions regions = new Regions(circuit);
    regions.joinNets(failing);
    arrangements.forEach(arrangement -> regions.joinMended(arrangement));
    return regions.sorted(failing);
  }

  private void joinNets(List<Judged> failing) {
    failing.forEach(judged -> join(net(judged), judged));
  }

  /** The net of the first probe. */
  private int net(Judged judged) {
    return normal.of(judged.probing().from()[0]);
  }

  private void join(int net, Judged judged) {
    judged.probing().points().forEach(point -> joined.union(net, normal.of(point)));
  }

  private List<List<Judged>> sorted(List<Judged> failing) {
    Map<Integer, List<Judged>> byRegion = new LinkedHashMap<>();
    for (Judged judged : failing) {
      byRegion.computeIfAbsent(joined.firstOf(net(judged)), key -> new ArrayList<>()).add(judged);
    }
    return List.copyOf(byRegion.values());
  }

  private List<Integer> nets(Judged judged) {
    return judged.probing().points().map(normal::of).distinct().sorted().boxed().toList();
  }

  private Set<String> items(int net) {
    Set<String> items = new TreeSet<>();
    for (int point : normal.pointsOf(net)) {
      items.add(circuit.point(point).ref());
    }
    return items;
  }

  /** What one arrangement of many ends would explain. */
  private void joinMended(Supposed arrangement) {
    arrangement.mended().stream()
        .findFirst()
        .ifPresent(first -> arrangement.mended().forEach(judged -> join(net(first), judged)));
  }

  private void joinStrays(List<Judged> failing) {
    Map<String, Integer> strayAt = new HashMap<>();
    for (Judged judged : failing) {
      if (judged.probing().toRest()) {
        for (int net : nets(judged)) {
          for (String item : items(net)) {
            Integer other = strayAt.putIfAbsent(item, net);
            if (other != null) {
              joined.union(net, other);
            }
          }
        }
      }
    }
    for (Judged judged : failing) {
      if (judged.outcome() == Outcome.OPEN) {
        for (int net : nets(judged)) {
          for (String item : items(net)) {
            Integer stray = strayAt.get(item);
            if (stray != null) {
              joined.union(net, stray);
            }
          }
        }
      }
    }
  }

  private void joinStraysAlone(List<Judged> failing) {
    List<Integer> alone = new ArrayList<>();
    for (List<Judged> region : sorted(failing)) {
      boolean isAlone =
          region.stream().allMatch(judged -> judged.probing().toRest())
              && region.stream().flatMap(judged -> nets(judged).stream()).distinct().count() == 1;
      if (isAlone) {
        alone.add(net(region.get(0)));
      }
    }
    if (alone.size() <= MOST_STRAYS_ALONE) {
      alone.forEach(net -> joined.union(net, alone.get(0)));
    }
  }

  private void joinOpenPairs(List<Judged> failing) {
    Map<Set<String>, Set<Integer>> openBetween = new LinkedHashMap<>();
    for (Judged judged : failing) {
      if (judged.outcome() == Outcome.OPEN && judged.probing().isPair()) {
        int net = normal.of(judged.probing().from()[0]);
        Set<String> ends = new TreeSet<>();
        ends.add(circuit.point(judged.probing().from()[0]).ref());
        ends.add(circuit.point(judged.probing().to()[0]).ref());
        openBetween.computeIfAbsent(ends, key -> new TreeSet<>()).add(net);
      }
    }
    for (Set<Integer> nets : openBetween.values()) {
      if (nets.size() == 2) {
        List<Integer> pair = List.copyOf(nets);
        joined.union(pair.get(0), pair.get(1));
      }
    }
  }
}

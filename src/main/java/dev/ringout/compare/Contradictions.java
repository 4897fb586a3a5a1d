package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.harness.SwitchState;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds points that one reading holds apart and others, taken in the same state, join. */
final class Contradictions {
  private final Circuit circuit;
  private final Map<SwitchState, Map<Integer, List<Join>>> joinsOf = new HashMap<>();

  /** A reading that joins a point to another. */
  private record Join(int to, Judged by) {}

  private Contradictions(Circuit circuit) {
    this.circuit = circuit;
  }

  static List<Contradiction> find(Circuit circuit, List<Judged> inForce) {
    Contradictions search = new Contradictions(circuit);
    for (Judged judged : inForce) {
      if (judged.observed() == Observed.JOINED && judged.probing().isPair()) {
        search.add(judged);
      }
    }
    List<Contradiction> found = new ArrayList<>();
    for (Judged judged : inForce) {
      if (judged.observed() == Observed.APART) {
        List<Judged> joins = search.joining(judged);
        if (!joins.isEmpty()) {
          found.add(new Contradiction(judged, joins));
        }
      }
    }
    return List.copyOf(found);
  }

  private void add(Judged judged) {
    int from = judged.probing().from()[0];
    int to = judged.probing().to()[0];
    Map<Integer, List<Join>> joins =
        joinsOf.computeIfAbsent(judged.reading().state(), state -> new HashMap<>());
    joins.computeIfAbsent(from, point -> new ArrayList<>()).add(new Join(to, judged));
    joins.computeIfAbsent(to, point -> new ArrayList<>()).add(new Join(from, judged));
  }

  /** The readings on a way between the two sides, or none. */
  private List<Judged> joining(Judged apart) {
    Map<Integer, List<Join>> joins = joinsOf.getOrDefault(apart.reading().state(), Map.of());
    Map<Integer, Join> cameBy = new HashMap<>();
    Deque<Integer> open = new ArrayDeque<>();
    Set<Integer> starts = new HashSet<>();
    for (int point : apart.probing().from()) {
      starts.add(point);
      open.add(point);
    }
    while (!open.isEmpty()) {
      int point = open.remove();
      if (!starts.contains(point) && isOnOtherSide(point, apart)) {
        return way(point, starts, cameBy);
      }
      for (Join join : joins.getOrDefault(point, List.of())) {
        if (!starts.contains(join.to()) && !cameBy.containsKey(join.to())) {
          cameBy.put(join.to(), new Join(point, join.by()));
          open.add(join.to());
        }
      }
    }
    return List.of();
  }

  private boolean isOnOtherSide(int point, Judged apart) {
    if (!apart.probing().toRest()) {
      for (int to : apart.probing().to()) {
        if (to == point) {
          return true;
        }
      }
      return false;
    }
    Nets nets = circuit.in(apart.reading().state());
    for (int from : apart.probing().from()) {
      if (nets.of(from) == nets.of(point)) {
        return false;
      }
    }
    return true;
  }

  private static List<Judged> way(int end, Set<Integer> starts, Map<Integer, Join> cameBy) {
    List<Judged> way = new ArrayList<>();
    int point = end;
    while (!starts.contains(point)) {
      Join join = cameBy.get(point);
      if (join == null) {
        return way;
      }
      way.add(join.by());
      point = join.to();
    }
    return way;
  }
}

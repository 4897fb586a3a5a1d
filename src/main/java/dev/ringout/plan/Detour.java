package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A way around a conductor: what makes a beep across it prove nothing. */
final class Detour {
  private Detour() {}

  /** The conductors of a shortest one in some state, some being off; empty where none is. */
  static List<Integer> around(Nets nets, Circuit circuit, int wire, Set<Integer> off) {
    Map<Integer, List<Integer>> at = new HashMap<>();
    for (int conductor : nets.conductorsOf(nets.of(circuit.from(wire)))) {
      if (conductor != wire && !off.contains(conductor)) {
        at.computeIfAbsent(circuit.from(conductor), key -> new ArrayList<>()).add(conductor);
        at.computeIfAbsent(circuit.to(conductor), key -> new ArrayList<>()).add(conductor);
      }
    }
    Map<Integer, Integer> cameBy = new HashMap<>();
    Set<Integer> reached = new HashSet<>(Set.of(circuit.from(wire)));
    Deque<Integer> open = new ArrayDeque<>(reached);
    while (!open.isEmpty() && !reached.contains(circuit.to(wire))) {
      int point = open.remove();
      for (int conductor : at.getOrDefault(point, List.of())) {
        int next = other(circuit, conductor, point);
        if (reached.add(next)) {
          cameBy.put(next, conductor);
          open.add(next);
        }
      }
    }
    List<Integer> way = new ArrayList<>();
    int point = circuit.to(wire);
    while (cameBy.containsKey(point)) {
      int conductor = cameBy.getOrDefault(point, Nets.NONE);
      way.add(conductor);
      point = other(circuit, conductor, point);
    }
    return way;
  }

  private static int other(Circuit circuit, int conductor, int point) {
    return circuit.from(conductor) == point ? circuit.to(conductor) : circuit.from(conductor);
  }
}

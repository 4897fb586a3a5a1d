package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.DisjointPoints;
import dev.ringout.circuit.Nets;
import dev.ringout.harness.SwitchState;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * Finds points that one reading holds apart and others, taken in the same state, join. Whether any
 * do is asked of all readings at once, by integers; which they are only where some do.
 */
final class Contradictions {
  private static final int SEVERAL = -1;

  private final Circuit circuit;
  private final SwitchState state;
  private final List<Judged> joins = new ArrayList<>();
  private final DisjointPoints joined;

  /** For each set of joined points, by its first, the one listed net of all; or several. */
  private final int[] netOfJoined;

  private final Map<Integer, List<Join>> joinsAt = new HashMap<>();

  /** A reading that joins a point to another. */
  private record Join(int to, Judged by) {}

  private Contradictions(Circuit circuit, SwitchState state) {
    this.circuit = circuit;
    this.state = state;
    this.joined = new DisjointPoints(circuit.size());
    this.netOfJoined = new int[circuit.size()];
  }

  /** The readings of one state, put together. */
  private static Contradictions of(Circuit circuit, SwitchState state, List<Judged> ofState) {
    Contradictions all = new Contradictions(circuit, state);
    ofState.forEach(all::join);
    all.findNets();
    return all;
  }

  private void join(Judged judged) {
    if (judged.observed() == Observed.JOINED && judged.probing().isPair()) {
      joins.add(judged);
      joined.union(judged.probing().from()[0], judged.probing().to()[0]);
    }
  }

  private void findNets() {
    Nets nets = circuit.in(state);
    for (int point = 0; point < netOfJoined.length; point++) {
      int first = joined.firstOf(point);
      if (first == point) {
        netOfJoined[point] = nets.of(point);
      } else if (netOfJoined[first] != nets.of(point)) {
        netOfJoined[first] = SEVERAL;
      }
    }
  }

  static List<Contradiction> find(Circuit circuit, List<Judged> inForce) {
    Map<SwitchState, List<Judged>> byState = new HashMap<>();
    for (Judged judged : inForce) {
      byState.computeIfAbsent(judged.reading().state(), state -> new ArrayList<>()).add(judged);
    }
    Map<Judged, Contradiction> found = new HashMap<>();
    byState.forEach(
        (state, ofState) ->
            of(circuit, state, ofState).find(ofState).forEach(one -> found.put(one.apart(), one)));
    return found.isEmpty()
        ? List.of()
        : inForce.stream().map(found::get).filter(Objects::nonNull).toList();
  }

  private List<Contradiction> find(List<Judged> ofState) {
    List<Contradiction> found = new ArrayList<>();
    for (Judged judged : ofState) {
      if (judged.observed() == Observed.APART && mayJoin(judged)) {
        List<Judged> way = joining(judged);
        if (!way.isEmpty()) {
          found.add(new Contradiction(judged, way));
        }
      }
    }
    return found;
  }

  /** Whether joins lead from one side to a point of the other. */
  private boolean mayJoin(Judged apart) {
    for (int from : apart.probing().from()) {
      int first = joined.firstOf(from);
      if (apart.probing().toRest()) {
        if (netOfJoined[first] == SEVERAL) {
          return true;
        }
      } else {
        for (int to : apart.probing().to()) {
          if (joined.firstOf(to) == first) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private Map<Integer, List<Join>> joinsAt() {
    if (joinsAt.isEmpty()) {
      for (Judged judged : joins) {
        int from = judged.probing().from()[0];
        int to = judged.probing().to()[0];
        joinsAt.computeIfAbsent(from, point -> new ArrayList<>()).add(new Join(to, judged));
        joinsAt.computeIfAbsent(to, point -> new ArrayList<>()).add(new Join(from, judged));
      }
    }
    return joinsAt;
  }

  /** The readings on a way between the two sides, or none. */
  private List<Judged> joining(Judged apart) {
    Map<Integer, List<Join>> joins = joinsAt();
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
    Nets nets = circuit.in(state);
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

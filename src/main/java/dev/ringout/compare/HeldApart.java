package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.compare.Prover.Islands;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What each island is held apart from by readings: one row of bits at a time, since pairs are never
 * listed.
 */
final class HeldApart {
  private final Circuit circuit;
  private final Islands islands;
  private final Nets normal;

  /** The islands of single nets that were read against the rest, in a state, before a rework. */
  private final Map<Against, BitSet> againstRest = new LinkedHashMap<>();

  /**
   * Readings of several nets tied together against the rest: apart from it, not from each other.
   */
  private final List<TiedAgainstRest> tied = new ArrayList<>();

  /**
   * How single nets were read against the rest.
   *
   * @param touchedSince the nets of the rest of which it proves nothing any more
   */
  private record Against(SwitchState state, TouchedNets touchedSince) {
    static final Against NOW = new Against(SwitchState.normal(), TouchedNets.NONE);
  }

  /**
   * Several nets against the rest.
   *
   * @param read the islands that were touched
   * @param nets every island of the nets that were touched: no part of the rest
   */
  private record TiedAgainstRest(BitSet read, BitSet nets) {}

  private static final BitSet NOTHING = new BitSet();

  /** The islands of each set of touched nets: every row of bits asks for them. */
  private final Map<TouchedNets, BitSet> touchedIslands = new HashMap<>();

  private boolean linksAny;

  /** For each island, the islands on the other side of readings between named groups. */
  private final List<List<int[]>> across = new ArrayList<>();

  private HeldApart(Circuit circuit, Islands islands) {
    this.circuit = circuit;
    this.islands = islands;
    this.normal = circuit.normal();
    for (int island = 0; island < islands.count(); island++) {
      across.add(List.of());
    }
  }

  /**
   * What some readings show.
   *
   * @param showing the readings that hold their sides apart as is asked
   */
  static HeldApart of(Circuit circuit, Islands islands, Iterable<Judged> showing) {
    HeldApart held = new HeldApart(circuit, islands);
    showing.forEach(held::add);
    return held;
  }

  /** Whether a net was read whole against the rest with nothing touched since. */
  boolean isFromAll(int net) {
    BitSet all = againstRest.getOrDefault(Against.NOW, NOTHING);
    for (int point : normal.pointsOf(net)) {
      if (!all.get(islands.of(point))) {
        return false;
      }
    }
    return true;
  }

  private void add(Judged judged) {
    SwitchState state = judged.reading().state();
    Set<Integer> from = wholeIslands(judged.probing().from(), state);
    if (judged.probing().toRest() && touchesSeveralNets(judged)) {
      BitSet read = new BitSet();
      from.forEach(read::set);
      BitSet nets = new BitSet();
      for (int point : judged.probing().from()) {
        nets.or(islandsInNetsOf(point, state));
      }
      nets.or(islandsOf(judged.touchedSince()));
      tied.add(new TiedAgainstRest(read, nets));
      return;
    }
    if (judged.probing().toRest()) {
      BitSet read =
          againstRest.computeIfAbsent(
              new Against(state, judged.touchedSince()), key -> new BitSet());
      from.forEach(read::set);
      return;
    }
    Set<Integer> to = wholeIslands(judged.probing().to(), state);
    link(from, to);
    link(to, from);
  }

  private boolean touchesSeveralNets(Judged judged) {
    Nets nets = circuit.in(judged.reading().state());
    for (int point : judged.probing().from()) {
      if (nets.of(point) != nets.of(judged.probing().from()[0])) {
        return true;
      }
    }
    return false;
  }

  private void link(Set<Integer> from, Set<Integer> to) {
    // Few islands of many: their numbers take a thousandth of a row of bits.
    int[] other = to.stream().mapToInt(Integer::intValue).toArray();
    linksAny = true;
    for (int island : from) {
      if (across.get(island).isEmpty()) {
        across.set(island, new ArrayList<>(2));
      }
      across.get(island).add(other);
    }
  }

  /** The islands of some points, but only those that are in one piece in that state too. */
  private Set<Integer> wholeIslands(int[] points, SwitchState state) {
    Set<Integer> whole = new HashSet<>();
    for (int point : points) {
      if (state.isNormal() || isWhole(point, circuit.in(state))) {
        whole.add(islands.of(point));
      }
    }
    return whole;
  }

  private boolean isWhole(int point, Nets nets) {
    for (int conductor : normal.conductorsOf(normal.of(point))) {
      if (!nets.isClosed(conductor)) {
        return false;
      }
    }
    return true;
  }

  private boolean saysNothing() {
    return againstRest.isEmpty() && tied.isEmpty() && !linksAny;
  }

  /** The islands that every island of a net is held apart from. */
  BitSet from(int net) {
    return saysNothing() ? NOTHING : apartFrom(net);
  }

  private BitSet apartFrom(int net) {
    BitSet apart = new BitSet();
    Set<Integer> own = new LinkedHashSet<>();
    for (int point : normal.pointsOf(net)) {
      if (own.add(islands.of(point))) {
        BitSet row = row(islands.of(point));
        if (own.size() == 1) {
          apart.or(row);
        } else {
          apart.and(row);
        }
      }
    }
    return apart;
  }

  /** The islands that an island is held apart from. */
  private BitSet row(int island) {
    BitSet row = new BitSet(islands.count());
    for (int[] others : across.get(island)) {
      for (int other : others) {
        row.set(other);
      }
    }
    for (Map.Entry<Against, BitSet> entry : againstRest.entrySet()) {
      BitSet own = islandsBeside(island, entry.getKey().state());
      TouchedNets touched = entry.getKey().touchedSince();
      if (!touched.isEmpty()) {
        if (touched.has(normal.of(islands.first(island)))) {
          continue;
        }
        own.or(islandsOf(touched));
      }
      BitSet apart = new BitSet(islands.count());
      if (entry.getValue().get(island)) {
        apart.set(0, islands.count());
      } else {
        apart.or(entry.getValue());
      }
      apart.andNot(own);
      row.or(apart);
    }
    for (TiedAgainstRest tiedAgainstRest : tied) {
      if (tiedAgainstRest.read().get(island)) {
        BitSet rest = new BitSet(islands.count());
        rest.set(0, islands.count());
        rest.andNot(tiedAgainstRest.nets());
        row.or(rest);
      } else if (!tiedAgainstRest.nets().get(island)) {
        row.or(tiedAgainstRest.read());
      }
    }
    return row;
  }

  /** The islands of nets that have been touched. */
  private BitSet islandsOf(TouchedNets touched) {
    return touchedIslands.computeIfAbsent(touched, this::findIslandsOf);
  }

  private BitSet findIslandsOf(TouchedNets touched) {
    BitSet found = new BitSet();
    if (!touched.isEmpty()) {
      for (int island = 0; island < islands.count(); island++) {
        if (touched.has(normal.of(islands.first(island)))) {
          found.set(island);
        }
      }
    }
    return found;
  }

  /** The islands in the net that a point has in a state: no part of the rest. */
  private BitSet islandsInNetsOf(int point, SwitchState state) {
    Nets nets = circuit.in(state);
    BitSet found = new BitSet();
    for (int other : nets.pointsOf(nets.of(point))) {
      found.set(islands.of(other));
    }
    return found;
  }

  /** The islands that share a net with any point of an island in a state. */
  private BitSet islandsBeside(int island, SwitchState state) {
    BitSet found = new BitSet();
    Nets nets = circuit.in(state);
    Set<Integer> seen = new HashSet<>();
    for (int point : normal.pointsOf(normal.of(islands.first(island)))) {
      if (islands.of(point) == island && seen.add(nets.of(point))) {
        found.or(islandsInNetsOf(point, state));
      }
    }
    return found;
  }
}

package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.PartGroups;
import dev.ringout.compare.Coverage.Tally;
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
import java.util.function.Consumer;
import java.util.function.IntConsumer;

/**
 * Which pairs of nets the readings hold apart.
 *
 * <p>The proof is made on islands (points proven to be joined): an open reading between two groups
 * holds each island of the one apart from each of the other; two nets are apart when all their
 * islands are. Pairs are never listed: one row of bits at a time says what an island is apart from,
 * so 40,000 nets need no more than some seconds and a few kilobytes.
 */
final class IsolationProof {
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

  /**
   * Ready to prove.
   *
   * @param showing the readings that hold their sides apart as is asked
   */
  IsolationProof(Circuit circuit, Islands islands, Iterable<Judged> showing) {
    this.circuit = circuit;
    this.islands = islands;
    this.normal = circuit.normal();
    for (int island = 0; island < islands.count(); island++) {
      across.add(List.of());
    }
    showing.forEach(this::add);
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

  /** Which pairs of nets are to be held apart. */
  interface Pairs {
    /** How many there are. */
    long needed();

    /** How many kinds of nets are told apart. */
    int kinds();

    /** The kind of a net, from 0. */
    int kind(int net);

    /** Whether nets of one kind are to be held apart from those of another. */
    boolean isAsked(int kind, int otherKind);

    /** Nets between which parts lie: from those of its own group a net need not be held apart. */
    PartGroups groups();

    /** What to say of a net that is not held apart from so many, of which one is named. */
    Unproven unproven(int point, int other, long others, boolean waitsForJoins);
  }

  /** The islands, each a whole net, from which nets of a kind are to be held apart. */
  private record Wanted(BitSet islands, int count) {}

  Tally prove(Pairs pairs, Consumer<Unproven> unproven) {
    long missingEnds = 0;
    BitSet sole = soleIslands();
    List<Integer> netsInPieces = netsInPieces();
    BitSet all = againstRest.getOrDefault(Against.NOW, new BitSet());
    Map<Integer, Wanted> wantedOf = new HashMap<>();
    Map<Integer, List<Integer>> netsOf = pairs.groups().netsOf();
    for (int net = 0; net < normal.count(); net++) {
      if (containsAll(all, net)) {
        continue;
      }
      int kind = pairs.kind(net);
      Wanted wanted = wantedOf.computeIfAbsent(kind, one -> wanted(pairs, one, sole));
      List<Integer> own = netsOf.getOrDefault(pairs.groups().of(net), List.of(net));
      BitSet apart = saysNothing() ? NOTHING : apartFrom(net);
      BitSet missing = wanted.islands();
      long count = wanted.count();
      if (apart.isEmpty()) {
        // Nothing was read: every other net is missing, and that needs no walk over them all.
        count -= countOf(own, missing);
      } else {
        missing = (BitSet) missing.clone();
        missing.andNot(apart);
        eachIsland(own, missing::clear);
        count = missing.cardinality();
      }
      boolean waitsForJoins = count == 0 || !isInOnePiece(net);
      int example = count == 0 ? Nets.NONE : firstBeside(missing, own);
      for (int other : netsInPieces) {
        if (other != net
            && pairs.isAsked(kind, pairs.kind(other))
            && pairs.groups().of(other) != pairs.groups().of(net)
            && !containsAll(apart, other)) {
          count++;
          example = example == Nets.NONE ? normal.pointsOf(other)[0] : example;
        }
      }
      if (count > 0) {
        missingEnds += count;
        unproven.accept(pairs.unproven(normal.pointsOf(net)[0], example, count, waitsForJoins));
      }
    }
    return new Tally(pairs.needed(), pairs.needed() - missingEnds / 2);
  }

  private boolean saysNothing() {
    return againstRest.isEmpty() && tied.isEmpty() && !linksAny;
  }

  private Wanted wanted(Pairs pairs, int kind, BitSet sole) {
    BitSet wanted = (BitSet) sole.clone();
    if (pairs.kinds() > 1) {
      for (int island = sole.nextSetBit(0); island >= 0; island = sole.nextSetBit(island + 1)) {
        if (!pairs.isAsked(kind, pairs.kind(normal.of(islands.first(island))))) {
          wanted.clear(island);
        }
      }
    }
    return new Wanted(wanted, wanted.cardinality());
  }

  private void eachIsland(List<Integer> nets, IntConsumer each) {
    for (int net : nets) {
      for (int point : normal.pointsOf(net)) {
        each.accept(islands.of(point));
      }
    }
  }

  /** How many of some nets, each one island, are among others. */
  private int countOf(List<Integer> nets, BitSet among) {
    int count = 0;
    for (int net : nets) {
      count += among.get(islands.of(normal.pointsOf(net)[0])) ? 1 : 0;
    }
    return count;
  }

  /** The first point of the first island that is not in some nets. */
  private int firstBeside(BitSet some, List<Integer> nets) {
    for (int island = some.nextSetBit(0); island >= 0; island = some.nextSetBit(island + 1)) {
      if (!nets.contains(normal.of(islands.first(island)))) {
        return islands.first(island);
      }
    }
    return Nets.NONE;
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
    for (TiedAgainstRest one : tied) {
      if (one.read().get(island)) {
        BitSet rest = new BitSet(islands.count());
        rest.set(0, islands.count());
        rest.andNot(one.nets());
        row.or(rest);
      } else if (!one.nets().get(island)) {
        row.or(one.read());
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

  private boolean isInOnePiece(int net) {
    int[] points = normal.pointsOf(net);
    for (int point : points) {
      if (islands.of(point) != islands.of(points[0])) {
        return false;
      }
    }
    return true;
  }

  /** The islands that are a whole net each. */
  private BitSet soleIslands() {
    BitSet sole = new BitSet();
    for (int net = 0; net < normal.count(); net++) {
      if (isInOnePiece(net)) {
        sole.set(islands.of(normal.pointsOf(net)[0]));
      }
    }
    return sole;
  }

  private List<Integer> netsInPieces() {
    List<Integer> pieces = new ArrayList<>();
    for (int net = 0; net < normal.count(); net++) {
      if (!isInOnePiece(net)) {
        pieces.add(net);
      }
    }
    return pieces;
  }

  private boolean containsAll(BitSet set, int net) {
    for (int point : normal.pointsOf(net)) {
      if (!set.get(islands.of(point))) {
        return false;
      }
    }
    return true;
  }
}

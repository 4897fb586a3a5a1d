package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.PartGroups;
import dev.ringout.compare.Coverage.Tally;
import dev.ringout.compare.Prover.Islands;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
  private final Islands islands;
  private final Nets normal;
  private final HeldApart held;

  /** The islands that are a whole net each. */
  private final BitSet sole;

  private final List<Integer> netsInPieces;

  private IsolationProof(Islands islands, Nets normal, HeldApart held) {
    this.islands = islands;
    this.normal = normal;
    this.held = held;
    this.sole = soleIslands();
    this.netsInPieces = netsInPieces();
  }

  /**
   * Ready to prove.
   *
   * @param showing the readings that hold their sides apart as is asked
   */
  static IsolationProof of(Circuit circuit, Islands islands, Iterable<Judged> showing) {
    return new IsolationProof(islands, circuit.normal(), HeldApart.of(circuit, islands, showing));
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

  /** How many of the pairs asked for are held apart; what is not is handed over net by net. */
  Tally prove(Pairs pairs, Consumer<Unproven> unproven) {
    long missingEnds = 0;
    Question question = new Question(pairs, pairs.groups().netsOf());
    for (int net = 0; net < normal.count(); net++) {
      if (!held.isFromAll(net)) {
        Missing missing = question.missing(net);
        if (missing.count() > 0) {
          missingEnds += missing.count();
          unproven.accept(
              pairs.unproven(
                  normal.pointsOf(net)[0],
                  missing.example(),
                  missing.count(),
                  missing.waitsForJoins()));
        }
      }
    }
    return new Tally(pairs.needed(), pairs.needed() - missingEnds / 2);
  }

  /**
   * From how many nets a net is not held apart.
   *
   * @param example a point of one of them
   */
  private record Missing(long count, int example, boolean waitsForJoins) {}

  /** Which pairs are asked for, with what is worked out once for each kind of net. */
  private final class Question {
    private final Pairs pairs;
    private final Map<Integer, List<Integer>> netsOf;
    private final Map<Integer, Wanted> wantedOf = new HashMap<>();

    Question(Pairs pairs, Map<Integer, List<Integer>> netsOf) {
      this.pairs = pairs;
      this.netsOf = netsOf;
    }

    Missing missing(int net) {
      int kind = pairs.kind(net);
      Wanted wanted = wantedOf.computeIfAbsent(kind, one -> wanted(pairs, one, sole));
      List<Integer> own = netsOf.getOrDefault(pairs.groups().of(net), List.of(net));
      BitSet apart = held.from(net);
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
        if (isAsked(net, other) && !containsAll(apart, other)) {
          count++;
          example = example == Nets.NONE ? normal.pointsOf(other)[0] : example;
        }
      }
      return new Missing(count, example, waitsForJoins);
    }

    private boolean isAsked(int net, int other) {
      return other != net
          && pairs.isAsked(pairs.kind(net), pairs.kind(other))
          && pairs.groups().of(other) != pairs.groups().of(net);
    }
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

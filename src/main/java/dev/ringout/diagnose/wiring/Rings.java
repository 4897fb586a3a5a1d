package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Observed;
import dev.ringout.diagnose.wiring.Neighbours.WireEnd;
import dev.ringout.diagnose.wiring.Slip.Put;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Three or more wire ends of an item that may sit in each other's places. */
final class Rings {
  /** So many ends are tried in any order. */
  private static final int MOST_ENDS_IN_ANY_ORDER = 8;

  /** A longer ring is found only where its crosses were read. */
  private static final int LONGEST_IN_ANY_ORDER = 6;

  private final Circuit circuit;
  private final List<WireEnd> brokenEnds;

  /** The nets with every broken wire off. */
  private final SlippedNets nets;

  private final Map<Integer, Set<Integer>> joinedTo = new HashMap<>();
  private final Map<Integer, Set<Integer>> apartFrom = new HashMap<>();
  private final List<List<Put>> all = new ArrayList<>();
  private int answered;

  private Rings(Circuit circuit, List<WireEnd> brokenEnds, SlippedNets nets) {
    this.circuit = circuit;
    this.brokenEnds = brokenEnds;
    this.nets = nets;
  }

  static Rings of(
      Circuit circuit, Evidence evidence, List<Integer> pins, List<WireEnd> brokenEnds) {
    List<Slip> off = new ArrayList<>();
    brokenEnds.forEach(end -> off.add(new Slip.Missing(end.wire())));
    Rings rings = new Rings(circuit, brokenEnds, evidence.nets(off, SwitchState.normal()));
    evidence
        .at(off)
        .filter(judged -> judged.probing().isPair() && judged.reading().state().isNormal())
        .forEach(rings::note);
    rings.answered = rings.asRead(pins);
    if (brokenEnds.size() <= MOST_ENDS_IN_ANY_ORDER) {
      rings.inAnyOrder(new ArrayList<>(), 0);
    }
    return rings;
  }

  private void note(Judged judged) {
    int one = nets.groupOf(judged.probing().from()[0]);
    int other = nets.groupOf(judged.probing().to()[0]);
    if (one != other && judged.observed() == Observed.JOINED) {
      joinedTo.computeIfAbsent(one, key -> new TreeSet<>()).add(other);
      joinedTo.computeIfAbsent(other, key -> new TreeSet<>()).add(one);
    } else if (judged.observed() == Observed.APART) {
      apartFrom.computeIfAbsent(one, key -> new HashSet<>()).add(other);
      apartFrom.computeIfAbsent(other, key -> new HashSet<>()).add(one);
    }
  }

  /** Each ring by where it puts its ends. */
  List<List<Put>> all() {
    return all;
  }

  /**
   * The least that an explanation with a ring costs that is not among these. Every one of the ends
   * must be accounted for: by one ring of them all, or by a ring of some and something beside.
   */
  double leastUntried(SlipCosts costs) {
    int unread = brokenEnds.size() - answered;
    if (unread <= LONGEST_IN_ANY_ORDER) {
      return Double.POSITIVE_INFINITY;
    }
    return brokenEnds.size() <= MOST_ENDS_IN_ANY_ORDER
        ? costs.ofRing(LONGEST_IN_ANY_ORDER + 1)
        : Math.min(
            costs.ofRing(unread), costs.ofRing(Arrangements.LEAST_ENDS) + costs.leastArrangement());
  }

  private int at(WireEnd end) {
    return circuit.at(end.wire(), end.end());
  }

  private int far(WireEnd end) {
    return nets.groupOf(circuit.at(end.wire(), end.end().opposite()));
  }

  /**
   * Where the far ends of the broken wires were read to answer, followed round.
   *
   * @return how many were read to answer at one pin
   */
  private int asRead(List<Integer> pins) {
    Map<Integer, Integer> pinOf = new HashMap<>();
    pins.forEach(pin -> pinOf.put(nets.groupOf(pin), pin));
    Map<Integer, WireEnd> endAt = new HashMap<>();
    Map<WireEnd, Integer> goalOf = new LinkedHashMap<>();
    for (WireEnd end : brokenEnds) {
      endAt.put(at(end), end);
      List<Integer> answers =
          joinedTo.getOrDefault(far(end), Set.of()).stream()
              .filter(pinOf::containsKey)
              .map(group -> pinOf.getOrDefault(group, 0))
              .toList();
      if (answers.size() == 1) {
        goalOf.put(end, answers.get(0));
      }
    }
    Set<WireEnd> followed = new HashSet<>();
    for (WireEnd start : goalOf.keySet()) {
      List<Put> puts = new ArrayList<>();
      WireEnd end = start;
      while (end != null && goalOf.containsKey(end) && followed.add(end)) {
        int goal = goalOf.getOrDefault(end, 0);
        puts.add(new Put(end.wire(), end.end(), goal));
        end = endAt.get(goal);
      }
      if (!puts.isEmpty() && start.equals(end)) {
        all.add(puts);
      }
    }
    return goalOf.size();
  }

  /** Every ring of three or more of the ends: their crosses may not have been read. */
  private void inAnyOrder(List<WireEnd> chosen, int from) {
    if (chosen.size() >= Arrangements.LEAST_ENDS) {
      orders(chosen, new ArrayList<>(chosen.subList(0, 1)));
    }
    for (int i = from; i < brokenEnds.size() && chosen.size() < LONGEST_IN_ANY_ORDER; i++) {
      List<WireEnd> more = new ArrayList<>(chosen);
      more.add(brokenEnds.get(i));
      inAnyOrder(more, i + 1);
    }
  }

  private void orders(List<WireEnd> ends, List<WireEnd> ring) {
    WireEnd last = ring.get(ring.size() - 1);
    if (ring.size() == ends.size()) {
      if (mayBeAt(last, ring.get(0))) {
        List<Put> puts = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
          WireEnd end = ring.get(i);
          puts.add(new Put(end.wire(), end.end(), at(ring.get((i + 1) % ring.size()))));
        }
        all.add(puts);
      }
      return;
    }
    for (WireEnd end : ends) {
      if (!ring.contains(end) && mayBeAt(last, end)) {
        List<WireEnd> longer = new ArrayList<>(ring);
        longer.add(end);
        orders(ends, longer);
      }
    }
  }

  /** Whether no reading says that one end is not in the place of another. */
  private boolean mayBeAt(WireEnd end, WireEnd place) {
    return !apartFrom.getOrDefault(far(end), Set.of()).contains(nets.groupOf(at(place)));
  }
}

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
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Three or more wire ends of an item that may sit in each other's places. */
final class Rings {
  /** So many ends are tried in any order. */
  private static final int MOST_ENDS_IN_ANY_ORDER = 8;

  /** So many that another arrangement leaves. */
  private static final int MOST_ENDS_BESIDE = 5;

  /** A longer ring is found only where its crosses were read. */
  private static final int LONGEST_IN_ANY_ORDER = 6;

  private final Circuit circuit;
  private final List<WireEnd> brokenEnds;

  /** The nets with every broken wire off. */
  private final SlippedNets nets;

  private final Map<Integer, Set<Integer>> joinedTo = new HashMap<>();
  private final Map<Integer, Set<Integer>> apartFrom = new HashMap<>();
  private final List<List<Put>> all = new ArrayList<>();

  /** Where an end was read to answer, by the group of the pin, if at one pin only. */
  private final Map<WireEnd, Integer> answersAt = new HashMap<>();

  /** Sets of ends that were tried in any order. */
  private final Set<Set<WireEnd>> tried = new HashSet<>();

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
    rings.asRead(pins);
    rings.inAnyOrder(brokenEnds, MOST_ENDS_IN_ANY_ORDER);
    rings.inAnyOrder(List.copyOf(rings.unread(brokenEnds)), MOST_ENDS_IN_ANY_ORDER);
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

  /** Rings of the few ends that another arrangement leaves. */
  void beside(List<WireEnd> left) {
    inAnyOrder(left, MOST_ENDS_BESIDE);
  }

  private void inAnyOrder(List<WireEnd> some, int most) {
    if (some.size() >= Arrangements.LEAST_ENDS
        && some.size() <= most
        && tried.stream().noneMatch(more -> more.containsAll(some))) {
      tried.add(Set.copyOf(some));
      inAnyOrder(some, new ArrayList<>(), 0);
    }
  }

  private Set<WireEnd> unread(List<WireEnd> ends) {
    Set<WireEnd> unread = new LinkedHashSet<>(ends);
    unread.removeAll(answersAt.keySet());
    return unread;
  }

  /**
   * The least that it costs to account for some of the ends by a ring that is not among these and
   * by slips of single ends. No such slip mends more than two nets, or two wires.
   *
   * @param surelyBroken wires that no slip of another conductor explains
   */
  double leastUntried(List<WireEnd> ends, Set<Integer> surelyBroken, SlipCosts costs) {
    Set<WireEnd> unread = unread(ends);
    boolean isTried = tried.stream().anyMatch(some -> some.containsAll(unread));
    int shortest = isTried ? LONGEST_IN_ANY_ORDER + 1 : Arrangements.LEAST_ENDS;
    Set<Integer> atNets = new HashSet<>();
    unread.forEach(end -> atNets.add(circuit.normal().of(at(end))));
    int sure = (int) unread.stream().filter(end -> surelyBroken.contains(end.wire())).count();
    double leastPerNet = costs.leastPerNet(atNets);
    double least = Double.POSITIVE_INFINITY;
    for (int ring = shortest; ring <= unread.size(); ring++) {
      int beside = Math.max(0, Math.max(atNets.size(), sure) - ring);
      least = Math.min(least, costs.ofRing(ring) + beside * leastPerNet);
    }
    return least;
  }

  private int at(WireEnd end) {
    return circuit.at(end.wire(), end.end());
  }

  private int far(WireEnd end) {
    return nets.groupOf(circuit.at(end.wire(), end.end().opposite()));
  }

  /** Where the far ends of the broken wires were read to answer, followed round. */
  private void asRead(List<Integer> pins) {
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
    goalOf.forEach((end, pin) -> answersAt.put(end, nets.groupOf(pin)));
  }

  /** Every ring of three or more of the ends: their crosses may not have been read. */
  private void inAnyOrder(List<WireEnd> some, List<WireEnd> chosen, int from) {
    if (chosen.size() >= Arrangements.LEAST_ENDS) {
      orders(chosen, new ArrayList<>(chosen.subList(0, 1)));
    }
    for (int i = from; i < some.size() && chosen.size() < LONGEST_IN_ANY_ORDER; i++) {
      List<WireEnd> more = new ArrayList<>(chosen);
      more.add(some.get(i));
      inAnyOrder(some, more, i + 1);
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

  /**
   * Whether no reading says that one end is not in the place of another: that the two are apart, or
   * that what the end leads to answers elsewhere.
   */
  private boolean mayBeAt(WireEnd end, WireEnd place) {
    Integer answers = answersAt.get(end);
    if (answers != null && answers != nets.groupOf(at(place))) {
      return false;
    }
    return !apartFrom.getOrDefault(far(end), Set.of()).contains(nets.groupOf(at(place)));
  }
}

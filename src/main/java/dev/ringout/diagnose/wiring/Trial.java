package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.AlteredPart;
import dev.ringout.circuit.AlteredPart.How;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Observed;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A set of slips held against the readings of one state. */
final class Trial {
  private final Circuit circuit;
  private final Evidence evidence;
  private final SwitchState state;
  private final Evidence.OfState readings;
  private final List<Slip> slips;
  private final Set<Judged> against;
  private final Nets listed;
  private final SlippedNets nets;
  private final Set<Integer> touched;

  Trial(
      Circuit circuit,
      Evidence evidence,
      SwitchState state,
      Evidence.OfState readings,
      List<Slip> slips,
      Set<Judged> against) {
    this.circuit = circuit;
    this.evidence = evidence;
    this.state = state;
    this.readings = readings;
    this.slips = slips;
    this.against = against;
    this.listed = circuit.in(state);
    this.nets = evidence.nets(slips, state);
    this.touched = touchedNets();
  }

  /** Adds the readings that a unit with these slips would not give. */
  void run(List<Judged> failing) {
    for (Judged judged : failing) {
      if (judged.reading().state().equals(state) && !isTouched(judged)) {
        judge(judged);
      }
    }
    for (int net : touched) {
      ofNet(net).told().forEach(this::judge);
    }
    nets.newGroups().forEach(this::apartWithin);
    if (!circuit.harness().parts().isEmpty()) {
      apartThroughParts();
    }
  }

  private void judge(Judged judged) {
    if (!evidence.agrees(judged, nets, slips)) {
      against.add(judged);
    }
  }

  private boolean isTouched(Judged judged) {
    return isTouched(judged.probing().from()) || isTouched(judged.probing().to());
  }

  private boolean isTouched(int[] points) {
    for (int point : points) {
      if (touched.contains(listed.of(point))) {
        return true;
      }
    }
    return false;
  }

  private Set<Integer> touchedNets() {
    Set<Integer> found = nets.touchedNets();
    // A part carries a change of its net on to the nets behind it.
    for (int net : List.copyOf(found)) {
      for (int part : listed.partsAt(net)) {
        found.add(listed.of(circuit.fromOfPart(part)));
        found.add(listed.of(circuit.toOfPart(part)));
      }
    }
    return found;
  }

  private Evidence.OfNet ofNet(int net) {
    return readings.nets.computeIfAbsent(net, this::sorted);
  }

  private Evidence.OfNet sorted(int net) {
    List<Judged> told = new ArrayList<>();
    Map<Long, Judged> apart = new HashMap<>();
    for (Judged judged : readings.readings.getOrDefault(net, List.of())) {
      if (judged.probing().isPair()
          && judged.observed() == Observed.APART
          && judged.expected().isApart()) {
        Judged other = apart.putIfAbsent(key(judged), judged);
        if (other != null) {
          told.add(judged);
        }
      } else {
        told.add(judged);
      }
    }
    return new Evidence.OfNet(told, apart);
  }

  private long key(Judged judged) {
    return key(judged.probing().from()[0], judged.probing().to()[0]);
  }

  private long key(int one, int other) {
    return (long) Math.min(one, other) * circuit.size() + Math.max(one, other);
  }

  /** Readings that hold two points apart which the slips have put into one group. */
  private void apartWithin(int[] group) {
    List<List<Integer>> fragments = fragments(group);
    for (int i = 0; i < fragments.size(); i++) {
      for (int j = i + 1; j < fragments.size(); j++) {
        judgeApart(fragments.get(i), fragments.get(j));
      }
    }
  }

  private void judgeApart(List<Integer> some, List<Integer> others) {
    Map<Long, Judged> apart = ofNet(listed.of(some.get(0))).apart();
    if (apart.isEmpty()) {
      return;
    }
    if (apart.size() < (long) some.size() * others.size()) {
      Set<Integer> ends = new HashSet<>(some);
      Set<Integer> otherEnds = new HashSet<>(others);
      for (Judged judged : apart.values()) {
        int from = judged.probing().from()[0];
        int to = judged.probing().to()[0];
        if ((ends.contains(from) && otherEnds.contains(to))
            || (ends.contains(to) && otherEnds.contains(from))) {
          judge(judged);
        }
      }
      return;
    }
    for (int one : some) {
      for (int other : others) {
        Judged judged = apart.get(key(one, other));
        if (judged != null) {
          judge(judged);
        }
      }
    }
  }

  /** Readings that hold apart what a slip has put across a part. */
  private void apartThroughParts() {
    Set<Integer> groups = new LinkedHashSet<>();
    nets.newGroups().forEach(group -> groups.add(nets.groupOf(group[0])));
    for (AlteredPart part : nets.altered().values()) {
      groups.add(nets.groupOf(part.from()));
      groups.add(nets.groupOf(part.to()));
    }
    for (int group : groups) {
      List<List<Integer>> some = fragments(nets.pointsOf(group));
      for (int behind : behindParts(group)) {
        List<List<Integer>> others = fragments(nets.pointsOf(behind));
        some.forEach(one -> others.forEach(other -> judgeApart(one, other)));
      }
    }
  }

  /** The points of a group, by their listed nets. */
  private List<List<Integer>> fragments(int[] group) {
    Map<Integer, List<Integer>> byNet = new HashMap<>();
    for (int point : group) {
      byNet.computeIfAbsent(listed.of(point), key -> new ArrayList<>()).add(point);
    }
    return List.copyOf(byNet.values());
  }

  /** The other groups at the parts of a group. */
  private Set<Integer> behindParts(int group) {
    Set<Integer> behind = new LinkedHashSet<>();
    for (int part : nets.partsAt(group)) {
      if (!nets.altered().containsKey(part)) {
        behind.add(nets.groupOf(circuit.fromOfPart(part)));
        behind.add(nets.groupOf(circuit.toOfPart(part)));
      }
    }
    for (AlteredPart part : nets.altered().values()) {
      int from = nets.groupOf(part.from());
      int to = nets.groupOf(part.to());
      if (part.how() != How.MISSING && (from == group || to == group)) {
        behind.add(from);
        behind.add(to);
      }
    }
    behind.remove(group);
    return behind;
  }
}

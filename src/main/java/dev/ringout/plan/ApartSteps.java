package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Unproven;
import dev.ringout.harness.SwitchState;
import dev.ringout.plan.Step.Purpose;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Steps that hold nets apart, by continuity and by insulation volts. */
final class ApartSteps {
  private final Circuit circuit;
  private final Nets normal;
  private final Scope scope;
  private final Hubs hubs;
  private final PlanOptions options;
  private final DraftSteps draft;

  ApartSteps(Circuit circuit, Scope scope, Hubs hubs, PlanOptions options, DraftSteps draft) {
    this.circuit = circuit;
    this.normal = circuit.normal();
    this.scope = scope;
    this.hubs = hubs;
    this.options = options;
    this.draft = draft;
  }

  /** Nets apart, those that parts join taken together at first. */
  void add(List<Unproven> unproven) {
    switch (options.isolation()) {
      case REST -> wanted(unproven).forEach(this::againstRest);
      case FIXTURE -> byBits();
      case NEIGHBOURS -> neighbours();
      case INSULATION -> {}
    }
  }

  private void add(Probing probing) {
    draft.add(probing, Purpose.APART, "");
  }

  private void againstRest(int[] group) {
    add(Probing.groupToRest(group, SwitchState.normal()));
  }

  private void pair(int from, int to) {
    add(Probing.pair(from, to, SwitchState.normal()));
  }

  /** The groups of nets to hold against the rest: one may be left out where all others are read. */
  private List<int[]> wanted(List<Unproven> unproven) {
    Set<Integer> owed = isolationOwed(unproven);
    List<int[]> groups = new ArrayList<>();
    for (int[] group : hubs.groups()) {
      if (scope.hasAny(group) && (options.after().isEmpty() || isAmong(group, owed))) {
        groups.add(group);
      }
    }
    if (groups.size() == hubs.groups().size() && !groups.isEmpty()) {
      groups.remove(hubs.largest());
    }
    return groups;
  }

  private boolean isAmong(int[] group, Set<Integer> nets) {
    return Arrays.stream(group).map(normal::of).anyMatch(nets::contains);
  }

  private Set<Integer> isolationOwed(List<Unproven> unproven) {
    Map<Integer, Long> others = new LinkedHashMap<>();
    for (Unproven one : unproven) {
      one.asIsolation()
          .ifPresent(gap -> others.merge(normal.of(gap.point()), gap.others(), Long::sum));
    }
    return owed(others);
  }

  private Set<Integer> insulationOwed(List<Unproven> unproven) {
    Map<Integer, Long> others = new LinkedHashMap<>();
    for (Unproven one : unproven) {
      one.asInsulation()
          .ifPresent(gap -> others.merge(normal.of(gap.point()), gap.others(), Long::sum));
    }
    return owed(others);
  }

  /**
   * The nets that lack the most: read against the rest, they leave little or nothing to those that
   * only lack a few.
   */
  private static Set<Integer> owed(Map<Integer, Long> othersOfNet) {
    long most = othersOfNet.values().stream().mapToLong(Long::longValue).max().orElse(0);
    Set<Integer> owed = new HashSet<>();
    othersOfNet.forEach(
        (net, count) -> {
          if (2 * count > most) {
            owed.add(net);
          }
        });
    return owed;
  }

  private void byBits() {
    for (MultiProbe.Halves half : MultiProbe.halves(hubs.groups())) {
      add(Probing.groups(array(half.from()), array(half.to()), SwitchState.normal()));
    }
  }

  private static int[] array(List<Integer> numbers) {
    return numbers.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Pins next to each other, in the order of their names. */
  private void neighbours() {
    for (int point = 1; point < circuit.size(); point++) {
      int one = point - 1;
      if (circuit.point(one).ref().equals(circuit.point(point).ref())
          && normal.of(one) != normal.of(point)
          && (scope.has(one) || scope.has(point))) {
        pair(one, point);
      }
    }
  }

  /** Insulation, each group of nets that parts join against the rest. */
  void addInsulation(List<Unproven> unproven) {
    Set<Integer> owed = insulationOwed(unproven);
    boolean fresh = options.after().isEmpty();
    // One may be left out where all others are read.
    boolean all =
        scope.isEverything()
            && (fresh || hubs.groups().stream().allMatch(group -> isAmong(group, owed)));
    for (int number = 0; number < hubs.groups().size(); number++) {
      int[] group = hubs.groups().get(number);
      boolean wanted = !(all && number == hubs.largest()) && (fresh || isAmong(group, owed));
      if (wanted && scope.hasAny(group)) {
        addInsulation(group);
      }
    }
  }

  /** Insulation of the group of nets that a point is in. */
  void addInsulation(Unproven.Insulation gap) {
    addInsulation(hubs.groupOf(gap.point()));
  }

  private void addInsulation(int[] group) {
    draft.addInsulation(Probing.groupToRest(group, SwitchState.normal()));
  }

  /** A net against the others that parts join to it, tied together: the parts are read. */
  void addBehindParts(Unproven.Isolation isolation) {
    int[] group = hubs.groupOf(isolation.point());
    int net = normal.of(isolation.point());
    int other = normal.of(isolation.other());
    int[] own = Arrays.stream(group).filter(point -> normal.of(point) == net).toArray();
    int[] others = Arrays.stream(group).filter(point -> normal.of(point) != net).toArray();
    if (own.length > 0 && Arrays.stream(others).map(normal::of).anyMatch(one -> one == other)) {
      add(Probing.groups(own, others, SwitchState.normal()));
    } else if (isolation.others() > 1) {
      againstRest(group);
    } else {
      pair(isolation.point(), isolation.other());
    }
  }
}

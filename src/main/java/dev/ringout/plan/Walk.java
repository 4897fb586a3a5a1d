package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Probing;
import dev.ringout.harness.InsertOrder;
import dev.ringout.harness.NaturalOrder;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Reading;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.ItemKinds;
import dev.ringout.standards.Tables;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The order in which steps take the hands the least: one position of the switches after the other,
 * in it the readings between the same two items together, and next to them those that share an
 * item.
 */
final class Walk {
  private final Circuit circuit;
  private final HandMovements movements;

  /** Where one stands first: at the connectors, then at strips and studs, last at single parts. */
  private final Comparator<String> items;

  private final Comparator<Point> points;

  Walk(Circuit circuit, HandMovements movements) {
    this.circuit = circuit;
    this.movements = movements;
    ItemKinds kinds = ItemKinds.of(circuit.harness(), Tables.published());
    this.items =
        Comparator.comparing((String ref) -> !kinds.isConnector(ref))
            .thenComparing(ref -> !kinds.isTerminal(ref))
            .thenComparing(NaturalOrder.INSTANCE);
    this.points =
        Comparator.comparing(Point::ref, items).thenComparing(Point::pin, InsertOrder.INSTANCE);
  }

  /** The steps in a new order, numbered. */
  List<Step> order(List<Step> steps, boolean byConnector) {
    List<Step> ordered = new ArrayList<>();
    for (Reading.Kind kind : Reading.Kind.values()) {
      Map<SwitchState, List<Step>> byState = new LinkedHashMap<>();
      byState.put(SwitchState.normal(), new ArrayList<>());
      for (Step step : steps) {
        if (step.kind() == kind) {
          byState.computeIfAbsent(step.probing().state(), state -> new ArrayList<>()).add(step);
        }
      }
      for (SwitchState state : states(byState.keySet())) {
        inOneState(byState.getOrDefault(state, List.of()), byConnector, ordered);
      }
    }
    return numbered(ordered);
  }

  /** From one to the next with the fewest switches moved. */
  private static List<SwitchState> states(Set<SwitchState> states) {
    Set<SwitchState> left = new LinkedHashSet<>(states);
    List<SwitchState> order = new ArrayList<>();
    SwitchState now = SwitchState.normal();
    while (!left.isEmpty()) {
      SwitchState here = now;
      SwitchState next =
          Collections.min(left, Comparator.comparingInt(state -> moved(here, state)));
      left.remove(next);
      order.add(next);
      now = next;
    }
    return order;
  }

  private static int moved(SwitchState one, SwitchState other) {
    Set<String> refs = new HashSet<>(one.positions().keySet());
    refs.addAll(other.positions().keySet());
    refs.removeIf(
        ref ->
            one.positions().getOrDefault(ref, "").equals(other.positions().getOrDefault(ref, "")));
    return refs.size();
  }

  private void inOneState(List<Step> steps, boolean byConnector, List<Step> ordered) {
    Map<List<String>, List<Step>> groups = new TreeMap<>(byItems());
    List<Step> rest = new ArrayList<>();
    for (Step step : steps) {
      if (step.probing().isPair()) {
        Step facing = facing(step);
        groups.computeIfAbsent(at(step, byConnector), key -> new ArrayList<>()).add(facing);
      } else {
        rest.add(step);
      }
    }
    for (List<String> key : byConnector ? groups.keySet() : chained(groups)) {
      List<Step> group = new ArrayList<>(groups.getOrDefault(key, List.of()));
      group.sort(
          Comparator.comparing((Step step) -> at(step, key.get(0)), points)
              .thenComparing(step -> circuit.point(step.probing().to()[0]), points));
      ordered.addAll(group);
    }
    rest.sort(Comparator.comparing(step -> circuit.point(step.probing().from()[0]), points));
    ordered.addAll(rest);
  }

  private Comparator<List<String>> byItems() {
    return Comparator.comparing((List<String> key) -> key.get(0), items)
        .thenComparing(key -> key.get(key.size() - 1), items);
  }

  /** With its first probe where one stands first; a part keeps its leads as they are. */
  private Step facing(Step step) {
    int from = step.probing().from()[0];
    int to = step.probing().to()[0];
    boolean faces = items.compare(circuit.point(from).ref(), circuit.point(to).ref()) <= 0;
    return faces || step.purpose() == Step.Purpose.PART
        ? step
        : step.probedAt(Probing.pair(to, from, step.probing().state()));
  }

  /** The point of a step at an item. */
  private Point at(Step step, String item) {
    Point from = circuit.point(step.probing().from()[0]);
    return from.ref().equals(item) ? from : circuit.point(step.probing().to()[0]);
  }

  /** The two items of a step, that where one stands first before the other; or that one alone. */
  private List<String> at(Step step, boolean firstAlone) {
    String from = circuit.point(step.probing().from()[0]).ref();
    String to = circuit.point(step.probing().to()[0]).ref();
    boolean faces = items.compare(from, to) <= 0;
    if (firstAlone) {
      return List.of(faces ? from : to);
    }
    return faces ? List.of(from, to) : List.of(to, from);
  }

  /** Pairs of items so that the next shares an item with the last, where any does. */
  private static List<List<String>> chained(Map<List<String>, List<Step>> pairs) {
    Map<String, Deque<List<String>>> at = new HashMap<>();
    for (List<String> pair : pairs.keySet()) {
      for (String item : pair) {
        at.computeIfAbsent(item, key -> new ArrayDeque<>()).add(pair);
      }
    }
    List<List<String>> order = new ArrayList<>();
    Set<List<String>> done = new HashSet<>();
    Deque<List<String>> left = new ArrayDeque<>(pairs.keySet());
    while (order.size() < pairs.size()) {
      @Nullable List<String> next = null;
      if (!order.isEmpty()) {
        List<String> last = order.get(order.size() - 1);
        for (int i = last.size() - 1; i >= 0 && next == null; i--) {
          next = take(at.getOrDefault(last.get(i), new ArrayDeque<>()), done);
        }
      }
      if (next == null) {
        next = take(left, done);
      }
      if (next != null) {
        done.add(next);
        order.add(next);
      }
    }
    return order;
  }

  private static @Nullable List<String> take(Deque<List<String>> pairs, Set<List<String>> done) {
    while (!pairs.isEmpty() && done.contains(pairs.getFirst())) {
      pairs.removeFirst();
    }
    return pairs.peekFirst();
  }

  private List<Step> numbered(List<Step> ordered) {
    List<Step> numbered = new ArrayList<>();
    for (Step step : ordered) {
      Step placed = numbered.isEmpty() ? step : turned(step, numbered.get(numbered.size() - 1));
      boolean stays =
          !numbered.isEmpty()
              && placed.kind() == Reading.Kind.CONTINUITY
              && touches(numbered.get(numbered.size() - 1), placed.probing().from());
      numbered.add(placed.at(numbered.size() + 1, stays));
    }
    return numbered;
  }

  /** With the point first that the step before had too; a diode is not turned round. */
  private Step turned(Step step, Step last) {
    Probing probing = step.probing();
    boolean mayTurn = probing.isPair() && step.purpose() != Step.Purpose.PART;
    if (mayTurn && touches(last, probing.to()) && !touches(last, probing.from())) {
      return step.probedAt(Probing.pair(probing.to()[0], probing.from()[0], probing.state()));
    }
    return step;
  }

  private static boolean touches(Step step, int[] points) {
    return step.probing().isPair()
        && points.length == 1
        && (step.probing().from()[0] == points[0] || step.probing().to()[0] == points[0]);
  }

  /** What the hands do over some steps in their order. */
  double movements(List<Step> steps) {
    double sum = 0;
    Set<Integer> probes = Set.of();
    Set<String> items = Set.of();
    SwitchState state = SwitchState.normal();
    boolean othersTied = false;
    for (Step step : steps) {
      Probing probing = step.probing();
      Set<Integer> now = new LinkedHashSet<>();
      probing.points().forEach(now::add);
      Set<String> itemsNow = new HashSet<>();
      for (int point : now) {
        String item = circuit.point(point).ref();
        itemsNow.add(item);
        if (!probes.contains(point)) {
          sum += movements.probe(items.contains(item));
        }
      }
      if (probing.toRest()) {
        // Tied once, each net is taken out in turn and put back.
        sum += othersTied ? movements.probe(true) : movements.allOthers();
      }
      othersTied = probing.toRest();
      sum += movements.switches(moved(state, probing.state()));
      state = probing.state();
      probes = now;
      items = itemsNow;
    }
    return sum;
  }
}

package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.Arrangement;
import dev.ringout.diagnose.wiring.Neighbours.Face;
import dev.ringout.diagnose.wiring.Neighbours.WireEnd;
import dev.ringout.diagnose.wiring.Slip.Put;
import dev.ringout.diagnose.wiring.Slip.Rearranged;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntConsumer;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;

/**
 * One mistake that puts many ends of an item into wrong places: supposed wherever several wires of
 * one item are shown broken, and kept where it mends more readings than it spoils.
 */
final class Arrangements {
  static final int LEAST_ENDS = 3;

  /** So many at each end of a run may fail and not be shifted: what was shifted sits there. */
  private static final int MOST_TRIMMED = 2;

  private final Circuit circuit;
  private final Neighbours neighbours;
  private final SlipCosts costs;
  private final Evidence evidence;
  private final List<Judged> inForce;
  private final List<Judged> failing;

  /** Wires of nets at which readings fail. */
  private final Set<Integer> doubtful;

  /** Wires on ways that were read open, and for which no good reading speaks. */
  private final Set<Integer> broken;

  /** Of these the wires that are all that is left on a way that was read open. */
  private final Set<Integer> surelyBroken = new HashSet<>();

  private final List<Untried> untried = new ArrayList<>();
  private final Set<Set<Put>> known = new HashSet<>();
  private final Map<Object, Supposed> supposed = new LinkedHashMap<>();

  /**
   * An arrangement worth a thought.
   *
   * @param mended the failing readings that it would explain
   * @param nets the nets that it touches in the normal state
   * @param alike rings of the same ends in other orders, of which every reading says the same
   */
  record Supposed(Rearranged slip, Set<Judged> mended, Set<Integer> nets, List<Rearranged> alike) {}

  /**
   * Explanations with a ring that is not among those supposed.
   *
   * @param nets where it would be
   * @param cost the least that its item's share costs
   * @param accounted the conductors that this accounts for
   */
  private record Untried(Set<Integer> nets, double cost, Set<Integer> accounted) {}

  /** What all orders of a ring share that no reading tells apart. */
  private record Look(Set<WireEnd> ends, Set<Judged> mended, Set<Judged> spoilt) {}

  private Arrangements(
      Circuit circuit,
      Neighbours neighbours,
      SlipCosts costs,
      Evidence evidence,
      List<Judged> inForce,
      List<Judged> failing) {
    this.circuit = circuit;
    this.neighbours = neighbours;
    this.costs = costs;
    this.evidence = evidence;
    this.inForce = inForce;
    this.failing = failing;
    this.doubtful = doubtfulWires();
    this.broken = brokenWires();
  }

  /** The arrangements that the readings in force allow. */
  static Arrangements of(
      Circuit circuit,
      Neighbours neighbours,
      SlipCosts costs,
      Evidence evidence,
      List<Judged> inForce,
      List<Judged> failing) {
    Arrangements found = new Arrangements(circuit, neighbours, costs, evidence, inForce, failing);
    Map<String, List<WireEnd>> brokenAt = found.endsByItem(found.broken);
    brokenAt.values().removeIf(ends -> ends.size() < LEAST_ENDS);
    Map<String, List<WireEnd>> doubtfulAt = found.endsByItem(found.doubtful);
    brokenAt.forEach(
        (ref, ends) -> found.suppose(ref, ends, doubtfulAt.getOrDefault(ref, List.of())));
    found.plugsCrossed(brokenAt.keySet());
    List<Supposed> besides = found.supposed();
    brokenAt.forEach((ref, ends) -> found.rings(ref, ends, besides));
    return found;
  }

  private Map<String, List<WireEnd>> endsByItem(Set<Integer> wires) {
    Map<String, List<WireEnd>> byItem = new TreeMap<>();
    for (int wire : wires) {
      for (Wire.End end : Wire.End.values()) {
        byItem
            .computeIfAbsent(neighbours.refOf(circuit.at(wire, end)), key -> new ArrayList<>())
            .add(new WireEnd(wire, end));
      }
    }
    return byItem;
  }

  /** The least that an explanation costs that some readings allow and that was not tried. */
  double leastUntried(List<Judged> readings) {
    if (untried.isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    Set<Integer> nets = new HashSet<>();
    readings.forEach(judged -> nets.addAll(evidence.netsOf(judged)));
    Set<Integer> toAccountFor = new HashSet<>(surelyBroken);
    toAccountFor.removeIf(one -> !nets.contains(circuit.normal().of(circuit.from(one))));
    return untried.stream()
        .filter(one -> !Collections.disjoint(one.nets(), nets))
        .mapToDouble(one -> one.cost() + leastBeside(one, toAccountFor))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** The least that it costs to account for what is broken elsewhere. */
  private double leastBeside(Untried ring, Set<Integer> toAccountFor) {
    double least = 0;
    for (int conductor : toAccountFor) {
      if (!ring.accounted().contains(conductor)) {
        least +=
            circuit.isWire(conductor)
                ? costs.leastPerNet(Set.of(circuit.normal().of(circuit.from(conductor))))
                : costs.of(new Slip.Missing(conductor));
      }
    }
    return Math.min(least, costs.leastArrangement());
  }

  List<Supposed> supposed() {
    return List.copyOf(supposed.values());
  }

  /** The wires of the nets at which readings fail. */
  private Set<Integer> doubtfulWires() {
    Set<Integer> wires = new TreeSet<>();
    for (Judged judged : failing) {
      addWires(judged, wires);
    }
    return wires;
  }

  private void addWires(Judged judged, Set<Integer> wires) {
    Nets listed = circuit.in(judged.reading().state());
    for (int net : evidence.netsOf(judged)) {
      for (int conductor : listed.conductorsOf(net)) {
        if (circuit.isWire(conductor)) {
          wires.add(conductor);
        }
      }
    }
  }

  /**
   * The wires on the ways that were read open, save those that a good reading goes through and
   * nothing goes around.
   */
  private Set<Integer> brokenWires() {
    Set<Integer> suspects = new TreeSet<>();
    for (Judged judged : failing) {
      eachOnOpenWay(judged, suspects::add);
      if (judged.outcome() == Outcome.PART_VALUE) {
        addWires(judged, suspects);
      }
    }
    for (Judged judged : inForce) {
      if (judged.expected().isJoined()
          && judged.outcome() == Outcome.CONFORMS
          && judged.probing().isPair()) {
        Nets listed = circuit.in(judged.reading().state());
        listed.eachOnWay(
            judged.probing().from()[0],
            judged.probing().to()[0],
            one -> {
              if (listed.isCutEdge(one)) {
                suspects.remove(one);
              }
            });
      }
    }
    for (Judged judged : failing) {
      List<Integer> left = new ArrayList<>();
      eachOnOpenWay(judged, one -> left.add(one));
      left.retainAll(suspects);
      if (left.size() == 1) {
        surelyBroken.addAll(left);
      }
    }
    suspects.removeIf(suspect -> !circuit.isWire(suspect));
    return suspects;
  }

  private void eachOnOpenWay(Judged judged, IntConsumer of) {
    if (judged.expected().isJoined() && judged.probing().isPair()) {
      circuit
          .in(judged.reading().state())
          .eachOnWay(judged.probing().from()[0], judged.probing().to()[0], of);
    }
  }

  private void suppose(String ref, List<WireEnd> brokenEnds, List<WireEnd> doubtfulEnds) {
    List<Integer> pins = neighbours.pinsOf(ref);
    Map<Integer, Integer> rank = new HashMap<>();
    pins.forEach(pin -> rank.put(pin, rank.size()));
    shifted(ref, brokenEnds);
    // Where a wire sits beside one of its own net, its place is read good all the same.
    shifted(ref, doubtfulEnds);
    List<WireEnd> ends =
        neighbours.endsAt(ref).stream().filter(end -> rank.containsKey(at(end))).toList();
    // What the face says comes first: the same places may be another turn of the pins' order.
    faces(ref, ends);
    int size = pins.size();
    whole(Arrangement.MIRRORED, ends, pin -> pins.get(size - 1 - rankOf(pin, rank)));
    whole(Arrangement.MIRRORED, ends, pin -> pins.get((size - rankOf(pin, rank)) % size));
    for (int step = 1; step < size; step++) {
      int steps = step;
      whole(Arrangement.ROTATED, ends, pin -> pins.get((rankOf(pin, rank) + steps) % size));
    }
  }

  /** Rings of an item's broken ends, by themselves or beside another arrangement. */
  private void rings(String ref, List<WireEnd> brokenEnds, List<Supposed> besides) {
    Rings rings = Rings.of(circuit, evidence, neighbours.pinsOf(ref), brokenEnds);
    for (Supposed beside : besides) {
      rings.beside(left(brokenEnds, beside));
    }
    rings.all().forEach(ring -> suppose(Arrangement.RING, ring));
    noteUntried(rings, brokenEnds, besides);
  }

  /** The ends that an arrangement leaves where they are. */
  private static List<WireEnd> left(List<WireEnd> ends, Supposed beside) {
    Set<Integer> misplaced = beside.slip().misplaced();
    return ends.stream().filter(end -> !misplaced.contains(end.wire())).toList();
  }

  private void noteUntried(Rings rings, List<WireEnd> brokenEnds, List<Supposed> besides) {
    double alone = rings.leastUntried(brokenEnds, surelyBroken, costs);
    if (alone == Double.POSITIVE_INFINITY) {
      return;
    }
    Set<Integer> nets = new HashSet<>();
    brokenEnds.forEach(end -> nets.add(circuit.normal().of(at(end))));
    Set<Integer> wires = brokenEnds.stream().map(WireEnd::wire).collect(Collectors.toSet());
    untried.add(new Untried(nets, alone, wires));
    for (Supposed beside : besides) {
      double more = rings.leastUntried(left(brokenEnds, beside), surelyBroken, costs);
      Set<Integer> accounted = new HashSet<>(wires);
      accounted.addAll(beside.slip().misplaced());
      untried.add(new Untried(nets, costs.of(beside.slip()) + more, accounted));
    }
    double ofThree = 2 * costs.leastArrangement() + costs.ofRing(LEAST_ENDS);
    untried.add(new Untried(nets, ofThree, surelyBroken));
  }

  private static int rankOf(int pin, Map<Integer, Integer> rank) {
    return rank.getOrDefault(pin, 0);
  }

  private int at(WireEnd end) {
    return circuit.at(end.wire(), end.end());
  }

  private void shifted(String ref, List<WireEnd> ends) {
    List<Integer> pins = neighbours.pinsOf(ref);
    TreeMap<Integer, List<WireEnd>> byRank = new TreeMap<>();
    for (WireEnd end : ends) {
      int place = pins.indexOf(at(end));
      if (place >= 0) {
        byRank.computeIfAbsent(place, key -> new ArrayList<>()).add(end);
      }
    }
    List<Integer> run = new ArrayList<>();
    for (int place : byRank.keySet()) {
      if (!run.isEmpty() && place != run.get(run.size() - 1) + 1) {
        shiftedRun(run, pins, byRank);
        run = new ArrayList<>();
      }
      run.add(place);
    }
    shiftedRun(run, pins, byRank);
  }

  /** A run of neighbouring pins, whole or without some of its first or last. */
  private void shiftedRun(
      List<Integer> run, List<Integer> pins, Map<Integer, List<WireEnd>> byRank) {
    for (int skip = 0; skip <= MOST_TRIMMED; skip++) {
      for (int drop = 0; drop <= MOST_TRIMMED && skip + drop < run.size(); drop++) {
        for (int step : new int[] {1, -1}) {
          List<Put> puts = new ArrayList<>();
          for (int place : run.subList(skip, run.size() - drop)) {
            int goal = place + step;
            if (goal < 0 || goal >= pins.size()) {
              puts.clear();
              break;
            }
            byRank
                .getOrDefault(place, List.of())
                .forEach(end -> puts.add(new Put(end.wire(), end.end(), pins.get(goal))));
          }
          suppose(Arrangement.SHIFTED, puts);
        }
      }
    }
  }

  private void whole(Arrangement how, List<WireEnd> ends, IntUnaryOperator goal) {
    List<Put> puts = new ArrayList<>();
    for (WireEnd end : ends) {
      int to = goal.applyAsInt(at(end));
      if (to != at(end)) {
        puts.add(new Put(end.wire(), end.end(), to));
      }
    }
    suppose(how, puts);
  }

  /** The insert seen from the other side, or upside down, or one row the other way round. */
  private void faces(String ref, List<WireEnd> ends) {
    Map<Integer, Face> faces = neighbours.facesOf(ref);
    if (faces.isEmpty()) {
      return;
    }
    Map<Double, List<Integer>> rows = new TreeMap<>();
    Map<Double, List<Integer>> columns = new TreeMap<>();
    faces.keySet().stream()
        .sorted((left, right) -> compare(faces, left, right))
        .forEach(
            pin -> {
              Face face = face(faces, pin);
              rows.computeIfAbsent(face.y(), key -> new ArrayList<>()).add(pin);
              columns.computeIfAbsent(face.x(), key -> new ArrayList<>()).add(pin);
            });
    Map<Integer, Integer> leftRight = new HashMap<>();
    rows.values().forEach(row -> reversed(row, leftRight));
    Map<Integer, Integer> upDown = new HashMap<>();
    columns.values().forEach(column -> reversed(column, upDown));
    whole(Arrangement.MIRRORED, ends, pin -> leftRight.getOrDefault(pin, pin));
    whole(Arrangement.MIRRORED, ends, pin -> upDown.getOrDefault(pin, pin));
    whole(
        Arrangement.ROTATED,
        ends,
        pin -> {
          int across = leftRight.getOrDefault(pin, pin);
          return upDown.getOrDefault(across, across);
        });
    for (List<Integer> row : rows.values()) {
      List<WireEnd> inRow = ends.stream().filter(end -> row.contains(at(end))).toList();
      whole(Arrangement.MIRRORED_ROW, inRow, pin -> leftRight.getOrDefault(pin, pin));
    }
  }

  private static Face face(Map<Integer, Face> faces, int pin) {
    return faces.getOrDefault(pin, new Face(0, 0));
  }

  private static int compare(Map<Integer, Face> faces, int left, int right) {
    int byX = Double.compare(face(faces, left).x(), face(faces, right).x());
    return byX != 0 ? byX : Double.compare(face(faces, left).y(), face(faces, right).y());
  }

  private static void reversed(List<Integer> row, Map<Integer, Integer> goals) {
    for (int i = 0; i < row.size(); i++) {
      goals.put(row.get(i), row.get(row.size() - 1 - i));
    }
  }

  private void plugsCrossed(Set<String> refs) {
    List<String> plugs = List.copyOf(refs);
    for (int i = 0; i < plugs.size(); i++) {
      for (int j = i + 1; j < plugs.size(); j++) {
        List<Put> puts = new ArrayList<>();
        if (crossed(plugs.get(i), plugs.get(j), puts)
            && crossed(plugs.get(j), plugs.get(i), puts)) {
          suppose(Arrangement.PLUGS_CROSSED, puts);
        }
      }
    }
  }

  private boolean crossed(String ref, String other, List<Put> puts) {
    Map<String, Integer> pinOf = new HashMap<>();
    neighbours.pinsOf(other).forEach(pin -> pinOf.put(circuit.point(pin).pin(), pin));
    Set<Integer> pins = new HashSet<>(neighbours.pinsOf(ref));
    for (WireEnd end : neighbours.endsAt(ref)) {
      if (pins.contains(at(end))) {
        Integer to = pinOf.get(circuit.point(at(end)).pin());
        if (to == null) {
          return false;
        }
        puts.add(new Put(end.wire(), end.end(), to));
      }
    }
    return true;
  }

  private void suppose(Arrangement how, List<Put> puts) {
    long shown = puts.stream().filter(put -> broken.contains(put.wire())).count();
    long touched = puts.stream().filter(put -> doubtful.contains(put.wire())).count();
    if (shown < LEAST_ENDS || touched * 2 < puts.size() || !known.add(Set.copyOf(puts))) {
      return;
    }
    Rearranged slip = new Rearranged(how, List.copyOf(puts));
    List<Judged> against = evidence.contradicted(List.of(slip), failing);
    Set<Judged> mended = new LinkedHashSet<>(failing);
    against.forEach(mended::remove);
    Set<Judged> spoilt = new LinkedHashSet<>(against);
    failing.forEach(spoilt::remove);
    if (mended.size() >= LEAST_ENDS - 1 && spoilt.size() * 2 <= mended.size()) {
      Set<Integer> nets = evidence.nets(List.of(slip), SwitchState.normal()).affectedNets();
      Supposed first =
          supposed.computeIfAbsent(
              how == Arrangement.RING ? new Look(ends(puts), mended, spoilt) : slip,
              key -> new Supposed(slip, mended, nets, new ArrayList<>()));
      if (!first.slip().equals(slip)) {
        first.alike().add(slip);
      }
    }
  }

  private static Set<WireEnd> ends(List<Put> puts) {
    return puts.stream().map(put -> new WireEnd(put.wire(), put.end())).collect(Collectors.toSet());
  }
}

package dev.ringout.diagnose;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.Predictor;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Contradiction;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.compare.Replaced;
import dev.ringout.diagnose.Arrangements.Supposed;
import dev.ringout.diagnose.Search.Explanation;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Faults of what is joined to what: opens, shorts, miswires and wrong parts. */
final class WiringFaults {
  private final Circuit circuit;
  private final JoinLimits limits;
  private final Neighbours neighbours;
  private final SlipCosts costs;
  private final boolean anyResistive;
  private final double mostCost;
  private final Evidence evidence;
  private final Evidence consistent;
  private final Set<Judged> contradictory = new HashSet<>();
  private final Arrangements supposed;

  /** Readings that an earlier one of the same points bears out. */
  private final Set<Judged> readTwice;

  private final List<Region> regions = new ArrayList<>();

  /** How far each region goes, in the same order. */
  private final List<Reach> reaches = new ArrayList<>();

  private final List<RegionFaults> told = new ArrayList<>();
  private final List<Fault> faults = new ArrayList<>();
  private final Set<Judged> explained = new LinkedHashSet<>();

  WiringFaults(
      Circuit circuit,
      JoinLimits limits,
      Predictor predictor,
      Neighbours neighbours,
      SlipCosts costs,
      Comparison comparison,
      double mostCost) {
    this.circuit = circuit;
    this.limits = limits;
    this.anyResistive = !comparison.with(Outcome.RESISTIVE).isEmpty();
    this.neighbours = neighbours;
    this.costs = costs;
    this.mostCost = mostCost;
    for (Contradiction contradiction : comparison.contradictions()) {
      contradictory.add(contradiction.apart());
      contradictory.addAll(contradiction.joins());
    }
    this.readTwice =
        comparison.replaced().stream()
            .filter(one -> !one.changed())
            .map(Replaced::later)
            .collect(Collectors.toSet());
    this.evidence = new Evidence(circuit, predictor, comparison.inForce());
    List<Judged> consistent =
        comparison.inForce().stream().filter(judged -> !contradictory.contains(judged)).toList();
    this.consistent =
        contradictory.isEmpty() ? evidence : new Evidence(circuit, predictor, consistent);
    List<Judged> failing = comparison.inForce().stream().filter(this::isOfWiring).toList();
    supposed =
        new Arrangements(circuit, neighbours, costs, evidence, comparison.inForce(), failing);
    List<Supposed> arrangements = supposed.supposed();
    for (List<Judged> region : Regions.of(circuit, failing, arrangements)) {
      add(explain(region, arrangements), arrangements);
    }
    List<Judged> low = comparison.with(Outcome.LOW_INSULATION);
    for (int i = 0; i < regions.size(); i++) {
      Region region = regions.get(i);
      if (!region.classes().isEmpty()) {
        RegionFaults made = new RegionFaults(circuit, neighbours, evidence, region, low, i + 1);
        told.add(made);
        faults.addAll(made.faults());
        explained.addAll(made.explained());
      }
    }
  }

  /** What explains one region may have to do with another: then both are explained together. */
  private void add(Region region, List<Supposed> arrangements) {
    Reach reach = reach(region);
    for (int i = 0; i < regions.size(); i++) {
      if (reach.meets(reaches.get(i))) {
        reaches.remove(i);
        List<Judged> both = new ArrayList<>(regions.remove(i).failing());
        both.addAll(region.failing());
        add(explain(both, arrangements), arrangements);
        return;
      }
    }
    regions.add(region);
    reaches.add(reach);
  }

  /**
   * How far a region goes, by listed nets.
   *
   * @param failing where its readings fail
   * @param touched what its likeliest explanation touches
   */
  private record Reach(Set<Integer> failing, Set<Integer> touched) {
    boolean meets(Reach other) {
      return !Collections.disjoint(touched, other.failing)
          || !Collections.disjoint(other.touched, failing);
    }
  }

  private Reach reach(Region region) {
    Set<Integer> failing = new HashSet<>();
    for (Judged judged : region.failing()) {
      judged.probing().points().forEach(point -> failing.add(circuit.normal().of(point)));
    }
    return new Reach(
        failing,
        region.classes().isEmpty()
            ? Set.of()
            : evidence.nets(region.best().primary().slips(), SwitchState.normal()).touchedNets());
  }

  /**
   * A reading that contradicts others may have been taken at another pin; so may one that alone
   * shows what it shows, and any, once no single slip explains them all. Where nothing does, what
   * contradicts itself is left out.
   */
  private Region explain(List<Judged> failing, List<Supposed> arrangements) {
    List<Supposed> here =
        arrangements.stream()
            .filter(one -> failing.stream().anyMatch(one.mended()::contains))
            .toList();
    Search search = search(evidence, here, contradictory);
    if (isShownOnce(failing) || !search.oneSlipExplains(failing)) {
      Set<Judged> doubtful = new HashSet<>(contradictory);
      doubtful.addAll(failing);
      search = search(evidence, here, doubtful);
    }
    Search.Result result = search.explain(failing);
    if (result.explanations().isEmpty() && !contradictory.isEmpty()) {
      List<Judged> without =
          failing.stream().filter(judged -> !contradictory.contains(judged)).toList();
      if (!without.isEmpty()) {
        Search.Result left = search(consistent, here, Set.of()).explain(without);
        return region(without, left, consistent);
      }
    }
    return region(failing, result, evidence);
  }

  private Search search(Evidence held, List<Supposed> arrangements, Set<Judged> mayBeMisread) {
    return new Search(
        circuit,
        held,
        costs,
        arrangements,
        new Candidates(circuit, neighbours, held, arrangements, mayBeMisread),
        mostCost);
  }

  private Region region(List<Judged> failing, Search.Result result, Evidence held) {
    boolean allTried =
        result.explanations().isEmpty()
            || supposed.leastUntried(failing) > result.explanations().get(0).cost() + Search.MARGIN;
    Search.Result found =
        new Search.Result(result.explanations(), result.complete() && allTried, result.runnerUp());
    return Region.of(
        failing, found, isShownOnce(failing), new Signatures(circuit, held), likelierFirst());
  }

  /**
   * Of explanations that join the same points the cheaper, or that which leaves no join too high;
   * of those the one at the fewest items.
   */
  private Comparator<Explanation> likelierFirst() {
    Map<Explanation, Double> known = new HashMap<>();
    return Comparator.comparingDouble(
            (Explanation one) -> known.computeIfAbsent(one, this::costWithJoints))
        .thenComparingInt(this::itemsTouched);
  }

  private double costWithJoints(Explanation explanation) {
    boolean another =
        anyResistive && ValueFaults.leaveJoinsHigh(explanation.slips(), circuit, limits, evidence);
    return explanation.cost() + (another ? costs.leastPoor() : 0);
  }

  private boolean isShownOnce(List<Judged> failing) {
    return failing.size() == 1 && !readTwice.contains(failing.get(0));
  }

  private boolean isOfWiring(Judged judged) {
    return judged.outcome() == Outcome.OPEN
        || judged.outcome() == Outcome.UNEXPECTED_JOIN
        || judged.outcome() == Outcome.PART_VALUE
        || PartValues.isOfAPart(judged, circuit);
  }

  List<Fault> faults() {
    return faults;
  }

  Set<Judged> explained() {
    return explained;
  }

  /** The regions that something explains, with their faults. */
  List<RegionFaults> told() {
    return told;
  }

  /** Every slip of the likeliest explanations. */
  List<Slip> slips() {
    return regions.stream()
        .filter(region -> !region.classes().isEmpty())
        .flatMap(region -> region.best().primary().slips().stream())
        .toList();
  }

  /** What it costs that the unit itself shows some readings. */
  double costOf(Collection<Judged> readings) {
    return regions.stream()
        .filter(region -> !Collections.disjoint(readings, region.failing()))
        .mapToDouble(
            region ->
                region.classes().isEmpty()
                    ? Double.POSITIVE_INFINITY
                    : region.best().primary().cost())
        .sum();
  }

  Evidence evidence() {
    return evidence;
  }

  boolean isComplete() {
    return regions.stream().allMatch(Region::complete);
  }

  /** At how many items wire ends are misplaced: one hand's slip is at one item. */
  private int itemsTouched(Explanation explanation) {
    Set<String> items = new HashSet<>();
    for (Slip slip : explanation.slips()) {
      if (slip instanceof Slip.Moved moved) {
        items.add(circuit.point(moved.to()).ref());
      } else if (slip instanceof Slip.Crossed crossed) {
        items.add(circuit.point(circuit.at(crossed.wire(), crossed.end())).ref());
      } else if (slip instanceof Slip.Rearranged many) {
        many.puts().forEach(put -> items.add(circuit.point(put.to()).ref()));
      }
    }
    return items.size();
  }
}

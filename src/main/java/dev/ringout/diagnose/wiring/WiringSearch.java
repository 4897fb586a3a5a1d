package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.compare.RowExchange;
import dev.ringout.compare.ValueVerdict;
import dev.ringout.diagnose.wiring.Arrangements.Supposed;
import dev.ringout.diagnose.wiring.Search.Explanation;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Searches what explains the readings of what is joined to what, region by region. */
final class WiringSearch {
  /** More are not held against each other two by two. */
  private static final int MOST_PIECES = 8;

  private static final double A_HAIR = 1e-6;

  /** Stories of two pieces together that have less of all than this are not missed. */
  private static final double LEAST_TOGETHER = 0.005;

  private final ListedUnit unit;
  private final Circuit circuit;
  private final double mostCost;
  private final Evidence evidence;
  private final Evidence consistent;
  private final Set<Judged> contradictory;
  private final Predicate<Judged> inDoubt;
  private final Arrangements supposed;

  /** Readings that an earlier one of the same points bears out. */
  private final Set<Judged> readTwice;

  /** Rows that would both be as expected were each the other's. */
  private final List<RowExchange> exchanges;

  /** Whether of several nets nothing is shown but that each is joined to the rest. */
  private boolean areStraysMany;

  private final List<Region> regions = new ArrayList<>();

  /** How far each region goes, in the same order. */
  private final List<Reach> reaches = new ArrayList<>();

  private WiringSearch(WiringReadings readings, double mostCost, Predicate<Judged> inDoubt) {
    this.unit = readings.unit();
    this.inDoubt = inDoubt;
    this.circuit = unit.circuit();
    this.mostCost = mostCost;
    this.contradictory = readings.contradictory();
    this.readTwice = readings.comparison().readTwiceAlike();
    this.exchanges = readings.exchanges();
    this.evidence = readings.evidence();
    this.consistent = readings.consistent();
    this.supposed = readings.arrangements();
  }

  /** The faults of a unit that cost no more than so much. */
  static WiringFaults faults(WiringReadings readings, double mostCost, Predicate<Judged> inDoubt) {
    WiringSearch search = new WiringSearch(readings, mostCost, inDoubt);
    List<Supposed> arrangements = search.supposed.supposed();
    List<List<Judged>> found = Regions.of(search.circuit, readings.failing(), arrangements);
    search.areStraysMany = found.stream().filter(search::isStrayAlone).count() > 1;
    for (List<Judged> region : found) {
      search.explained(region, arrangements).forEach(one -> search.add(one, arrangements));
    }
    search.joinStrays(arrangements);
    Comparison comparison = readings.comparison();
    return new WiringFaults(
        search.circuit,
        search.regions,
        search.told(
            Stream.concat(
                    comparison.with(Outcome.LOW_INSULATION).stream(),
                    comparison.with(Outcome.RESISTIVE).stream())
                .toList()),
        inDoubt);
  }

  /** The regions that something explains, with their faults. */
  private List<RegionFaults> told(List<Judged> besides) {
    List<RegionFaults> told = new ArrayList<>();
    for (int i = 0; i < regions.size(); i++) {
      Region region = regions.get(i);
      if (!region.classes().isEmpty()) {
        told.add(
            new RegionStory(
                    circuit,
                    unit.neighbours(),
                    evidence,
                    region,
                    readTwice,
                    besides.stream().filter(one -> !region.failing().contains(one)).toList())
                .told(i + 1));
      }
    }
    return told;
  }

  /** What explains one region may have to do with another: then both are explained together. */
  private void add(Region region, List<Supposed> arrangements) {
    Reach reach = reach(region);
    for (int i = 0; i < regions.size(); i++) {
      if (reach.meets(reaches.get(i))) {
        Region both = together(regions.get(i), region, arrangements);
        if (both.classes().isEmpty()) {
          // Each keeps the story that it has by itself.
          continue;
        }
        reaches.remove(i);
        regions.remove(i);
        add(both, arrangements);
        return;
      }
    }
    regions.add(region);
    reaches.add(reach);
  }

  /**
   * A region; or its pieces that share no net, where each by itself and any two of them together
   * are explained alike: three faults side by side have too many explanations to try them all.
   */
  private List<Region> explained(List<Judged> failing, List<Supposed> arrangements) {
    List<List<Judged>> pieces = Regions.byNets(circuit, failing, arrangements);
    if (pieces.size() > 2 && pieces.size() <= MOST_PIECES) {
      List<Region> apart = apart(pieces, arrangements);
      if (apart.stream().allMatch(piece -> piece.complete() && !piece.classes().isEmpty())) {
        return apart;
      }
    }
    Region all = explain(failing, arrangements);
    if (!all.complete() || all.classes().isEmpty()) {
      List<Region> byNets =
          Regions.byNets(circuit, failing, List.of()).stream()
              .map(piece -> explain(piece, arrangements).inDoubt())
              .toList();
      if (byNets.stream().mapToDouble(WiringSearch::cost).sum() < cost(all)) {
        return byNets;
      }
    }
    return all.classes().isEmpty() && pieces.size() > 1
        ? pieces.stream().map(piece -> explain(piece, arrangements).inDoubt()).toList()
        : List.of(all);
  }

  private List<Region> apart(List<List<Judged>> pieces, List<Supposed> arrangements) {
    List<Region> apart = new ArrayList<>();
    for (List<Judged> piece : pieces) {
      Region next = explain(piece, arrangements);
      for (int known = 0; known < apart.size(); known++) {
        Region together = together(apart.get(known), next, arrangements);
        if (!areApart(apart.get(known), next, together)) {
          // What hangs together is held against those before once more.
          apart.remove(known);
          next = together;
          known = -1;
        }
      }
      apart.add(next);
    }
    return apart;
  }

  private Region together(Region one, Region other, List<Supposed> arrangements) {
    List<Judged> both = new ArrayList<>(one.failing());
    both.addAll(other.failing());
    return explain(both, arrangements);
  }

  /** Whether two pieces explained together say no more than each by itself. */
  private static boolean areApart(Region one, Region other, Region together) {
    return !one.classes().isEmpty()
        && !other.classes().isEmpty()
        && !together.classes().isEmpty()
        && together.complete()
        && Math.abs(cost(one) + cost(other) - cost(together)) < A_HAIR
        && together.best().odds() > one.best().odds() * other.best().odds() - LEAST_TOGETHER;
  }

  /**
   * Two nets that are joined to the rest, each by itself, may be joined to each other: where that
   * is more likely than one join at each, it is one story; of more than two it is not sure which.
   */
  private void joinStrays(List<Supposed> arrangements) {
    boolean isOneWayOfMany = regions.stream().filter(this::isStrayAlone).count() > 2;
    for (int one = 0; one < regions.size(); one++) {
      for (int other = one + 1; other < regions.size(); other++) {
        if (isStrayAlone(regions.get(one)) && isStrayAlone(regions.get(other))) {
          Region together = together(regions.get(one), regions.get(other), arrangements);
          if (cost(together) < cost(regions.get(one)) + cost(regions.get(other))) {
            regions.set(one, isOneWayOfMany ? together.inDoubt() : together);
            reaches.set(one, reach(together));
            regions.remove(other);
            reaches.remove(other);
            other = regions.size();
          }
        }
      }
    }
  }

  /** Whether all that is shown is that one net is joined to the rest. */
  private boolean isStrayAlone(Region region) {
    return isStrayAlone(region.failing());
  }

  private boolean isStrayAlone(List<Judged> failing) {
    return failing.stream().allMatch(judged -> judged.probing().toRest())
        && failing.stream().flatMap(judged -> evidence.netsOf(judged).stream()).distinct().count()
            == 1;
  }

  private static double cost(Region region) {
    return region.classes().isEmpty() ? Double.POSITIVE_INFINITY : region.best().primary().cost();
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
            .filter(arrangement -> failing.stream().anyMatch(arrangement.mended()::contains))
            .toList();
    // Dearer than a bridge to another such net nothing is worth a thought.
    double most =
        areStraysMany && isStrayAlone(failing)
            ? Math.min(mostCost, unit.costs().ofFarBridge() + Search.MARGIN)
            : mostCost;
    Search search = search(evidence, here, contradictory, most);
    if (isShownOnce(failing) || !search.oneSlipExplains(failing)) {
      Set<Judged> doubtful = new HashSet<>(contradictory);
      doubtful.addAll(failing);
      search = search(evidence, here, doubtful, most);
    }
    Search.Result result = search.explain(failing);
    if (result.explanations().isEmpty() && !contradictory.isEmpty()) {
      List<Judged> without =
          failing.stream().filter(judged -> !contradictory.contains(judged)).toList();
      if (!without.isEmpty()) {
        Search.Result left = search(consistent, here, Set.of(), most).explain(without);
        return region(without, left, consistent);
      }
    }
    return region(failing, result, evidence);
  }

  private Search search(
      Evidence held, List<Supposed> arrangements, Set<Judged> mayBeMisread, double most) {
    return new Search(
        circuit,
        held,
        unit.costs(),
        arrangements,
        new Candidates(circuit, unit.neighbours(), held, arrangements, mayBeMisread, exchanges),
        most);
  }

  private Region region(List<Judged> failing, Search.Result result, Evidence held) {
    boolean allTried =
        result.explanations().isEmpty()
            || supposed.leastUntried(failing) > result.explanations().get(0).cost() + Search.MARGIN;
    Search.Result found =
        new Search.Result(result.explanations(), result.complete() && allTried, result.runnerUp());
    return Region.of(
        failing,
        found,
        isShownOnce(failing) || failing.stream().anyMatch(inDoubt),
        new Signatures(circuit, held, found.explanations()),
        this::costByValues,
        this::itemsTouched);
  }

  /** What an explanation costs, each join that it leaves too high or too low counted too. */
  private double costByValues(Explanation explanation) {
    return explanation.cost() + joinsLeftOff(explanation.slips()) * unit.costs().leastPoor();
  }

  /** Whether one slip of the pen would do: one reading at another pin, or two rows exchanged. */
  private boolean isShownOnce(List<Judged> failing) {
    return (failing.size() == 1 && !readTwice.contains(failing.get(0)))
        || (failing.size() == 2
            && exchanges.stream().anyMatch(one -> failing.containsAll(one.rows())));
  }

  /** How many joins are too high, or too low, for the ways that are there on a unit with slips. */
  private long joinsLeftOff(List<Slip> slips) {
    Circuit found = AsFound.of(circuit, slips).circuit();
    return Comparison.inForce(evidence.at(slips).toList())
        .comparedWith(found, unit.limits().on(found), judged -> true)
        .inForce()
        .stream()
        .filter(
            judged -> judged.outcome() == Outcome.RESISTIVE || judged.value() == ValueVerdict.LOW)
        .count();
  }

  /** At how many items wire ends are misplaced: one hand's slip is at one item. */
  private int itemsTouched(Explanation explanation) {
    Set<String> items = new HashSet<>();
    for (Slip slip : explanation.slips()) {
      slip.placedAt(circuit).forEach(point -> items.add(circuit.point(point).ref()));
    }
    return items.size();
  }
}

package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Partition;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.harness.SwitchState;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Faults of what is joined to what: opens, shorts, miswires and wrong parts. */
public final class WiringFaults {
  /** No explanation costs too much. */
  public static final double ANY_COST = Search.ANY_COST;

  private final List<Region> regions;
  private final List<RegionFaults> told;
  private final Circuit circuit;
  private final Predicate<Judged> inDoubt;

  WiringFaults(
      Circuit circuit, List<Region> regions, List<RegionFaults> told, Predicate<Judged> inDoubt) {
    this.circuit = circuit;
    this.regions = List.copyOf(regions);
    this.told = List.copyOf(told);
    this.inDoubt = inDoubt;
  }

  /** The faults of a unit that cost no more than so much. */
  public static WiringFaults of(WiringReadings readings, double mostCost) {
    return WiringSearch.faults(readings, mostCost, judged -> false);
  }

  /**
   * The faults of a unit.
   *
   * @param inDoubt readings of which it is not sure that they were made at these points: nothing
   *     that needs them is certain
   */
  public static WiringFaults of(WiringReadings readings, Predicate<Judged> inDoubt) {
    return WiringSearch.faults(readings, ANY_COST, inDoubt);
  }

  /** What is wrong, region by region. */
  public List<Fault> faults() {
    return told.stream().flatMap(one -> one.faults().stream()).toList();
  }

  /** Every reading that these faults explain. */
  public Set<Judged> explained() {
    Set<Judged> explained = new LinkedHashSet<>();
    told.forEach(one -> explained.addAll(one.explained()));
    return explained;
  }

  /** The regions that something explains, with their faults. */
  public List<RegionFaults> told() {
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
  public double costOf(Collection<Judged> readings) {
    return regions.stream()
        .filter(region -> !Collections.disjoint(readings, region.failing()))
        .mapToDouble(
            region ->
                region.classes().isEmpty()
                    ? Double.POSITIVE_INFINITY
                    : region.best().primary().cost())
        .sum();
  }

  /** Whether a story was found for a reading. */
  public boolean explains(Judged judged) {
    return regions.stream()
        .anyMatch(region -> !region.classes().isEmpty() && region.failing().contains(judged));
  }

  /**
   * How sure a fault of values is: what else is wrong at its nets, and has no story, may be all
   * that is wrong.
   *
   * @param isSure whether its readings alone leave no doubt
   */
  public Certainty certaintyBeside(boolean isSure, Collection<Judged> readings) {
    return isSure && !leavesDoubt(readings) ? Certainty.CERTAIN : Certainty.LIKELY;
  }

  /**
   * Whether some readings are in doubt themselves, or a failing one that shares a net with them was
   * left without a story.
   */
  private boolean leavesDoubt(Collection<Judged> readings) {
    if (readings.stream().anyMatch(inDoubt)) {
      return true;
    }
    Set<Integer> nets = netsOf(readings);
    return regions.stream()
        .filter(region -> region.classes().isEmpty())
        .anyMatch(region -> !Collections.disjoint(nets, netsOf(region.failing())));
  }

  private Set<Integer> netsOf(Collection<Judged> readings) {
    return readings.stream()
        .flatMapToInt(judged -> judged.probing().points().map(circuit.normal()::of))
        .boxed()
        .collect(Collectors.toSet());
  }

  /** Whether no failing reading beside some hangs together with them. */
  public boolean areAlone(Collection<Judged> readings) {
    return regions.stream()
        .filter(region -> !Collections.disjoint(readings, region.failing()))
        .allMatch(region -> readings.containsAll(region.failing()));
  }

  /** The unit with the likeliest slips in it. */
  public AsFound asFound() {
    return AsFound.of(circuit, slips());
  }

  /** The points as they were found to be joined, in the normal state. */
  public Partition found() {
    return new SlippedNets(circuit, SwitchState.normal(), slips());
  }

  /** The listed nets that the likeliest slips touch in a state. */
  public Set<Integer> touchedNets(SwitchState state) {
    return new SlippedNets(circuit, state, slips()).touchedNets();
  }

  /** Whether no search for an explanation was cut short. */
  public boolean isComplete() {
    return regions.stream().allMatch(Region::complete);
  }
}

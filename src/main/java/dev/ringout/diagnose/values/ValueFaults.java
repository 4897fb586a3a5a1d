package dev.ringout.diagnose.values;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.Nets;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Alternative;
import dev.ringout.diagnose.wiring.AsFound;
import dev.ringout.diagnose.wiring.ListedUnit;
import dev.ringout.diagnose.wiring.SlipCosts;
import dev.ringout.diagnose.wiring.WiringFaults;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Faults of what is joined, but with other ohms than its wires account for: wrong gauges, poor
 * joints, unequal wires. Held against the unit as it was found.
 */
public final class ValueFaults {
  private ValueFaults() {}

  /**
   * The faults by value that no fault of the wiring explains.
   *
   * @param maybeOfThePen values that may be slips of the pen, with the odds against a poor joint
   */
  public static List<Fault> of(
      ListedUnit unit,
      Comparison comparison,
      WiringFaults wiring,
      Map<Judged, Alternative> maybeOfThePen,
      boolean leadsInDoubt) {
    AsFound asFound = wiring.asFound();
    JoinLimits limits = unit.limits();
    SlipCosts costs = unit.costs();
    Circuit circuit = asFound.circuit();
    JoinLimits limitsFound = asFound.isAsListed() ? limits : limits.on(circuit);
    Comparison held =
        asFound.isAsListed()
            ? comparison
            : comparison.valuesComparedWith(circuit, limitsFound, changed(unit.circuit(), wiring));
    Set<Judged> claimed = new LinkedHashSet<>(wiring.explained());
    List<Fault> faults = new ArrayList<>();
    WrongGauges gauges = new WrongGauges(unit, wiring, limitsFound, held);
    List<Fault> ofWires = leadsInDoubt ? List.of() : gauges.faults(claimed);
    ofWires.forEach(fault -> claimed.addAll(fault.finding().readings()));
    HighResistances high = new HighResistances(wiring, limitsFound, costs, held, leadsInDoubt);
    Map<Fault, List<Judged>> overThem = new HashMap<>();
    List<Fault> poor = new ArrayList<>();
    for (Fault fault : high.faults(claimed)) {
      Optional<Fault> over = overAWire(ofWires, fault);
      if (over.isPresent()) {
        overThem
            .computeIfAbsent(over.get(), key -> new ArrayList<>())
            .addAll(fault.finding().readings());
      } else {
        poor.add(fault.asHighResistance().map(gauges::weighed).orElse(fault));
      }
    }
    ofWires.stream()
        .map(fault -> fault.alsoShownBy(overThem.getOrDefault(fault, List.of())))
        .map(fault -> besidePen(fault, maybeOfThePen))
        .forEach(fault -> add(fault, faults, claimed));
    poor.stream()
        .map(fault -> besidePen(fault, maybeOfThePen))
        .forEach(fault -> add(fault, faults, claimed));
    if (!leadsInDoubt) {
      new UnequalWires(asFound, limitsFound, held)
          .faults(claimed)
          .forEach(fault -> add(fault, faults, claimed));
    }
    return faults;
  }

  /** What one value alone shows, with the slip of the pen that it may be. */
  public static Fault besidePen(Fault fault, Map<Judged, Alternative> maybeOfThePen) {
    Alternative pen = maybeOfThePen.get(fault.finding().readings().get(0));
    if (pen == null || fault.finding().readings().size() > 1) {
      return fault;
    }
    // Its odds are against a poor joint alone, which has only what other causes leave.
    double joint = fault.asHighWire().map(ValueFaults::oddsOfPoor).orElse(1.0);
    double weight = pen.odds() / (1 - pen.odds()) * joint;
    return fault.beside(List.of(new Alternative(weight / (1 + weight), pen.slips())));
  }

  private static double oddsOfPoor(Fault.HighWire wire) {
    return wire.causes().stream()
        .filter(cause -> cause.slips().get(0).asPoorJoint().isPresent())
        .mapToDouble(Alternative::odds)
        .sum();
  }

  /** The fault of a wire that a way which is too high leads over. */
  private static Optional<Fault> overAWire(List<Fault> ofWires, Fault fault) {
    Optional<Wire> suspect =
        fault
            .asHighResistance()
            .flatMap(high -> high.suspects().stream().findFirst())
            .flatMap(likeliest -> likeliest.conductor().asWire());
    return ofWires.stream()
        .filter(one -> suspect.filter(one.wires()::contains).isPresent())
        .findFirst();
  }

  private static void add(Fault fault, List<Fault> faults, Set<Judged> claimed) {
    faults.add(fault);
    claimed.addAll(fault.finding().readings());
  }

  /** Readings at nets that the slips touch. */
  private static Predicate<Judged> changed(Circuit listed, WiringFaults wiring) {
    Map<SwitchState, Set<Integer>> touched = new HashMap<>();
    return judged -> {
      SwitchState state = judged.reading().state();
      Set<Integer> here = touched.computeIfAbsent(state, wiring::touchedNets);
      Nets nets = listed.in(state);
      return isAtAny(judged.probing().from(), nets, here)
          || isAtAny(judged.probing().to(), nets, here);
    };
  }

  private static boolean isAtAny(int[] points, Nets nets, Set<Integer> here) {
    for (int point : points) {
      if (here.contains(nets.of(point))) {
        return true;
      }
    }
    return false;
  }
}

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
    WrongGauges gauges = new WrongGauges(unit, asFound, limitsFound, held);
    List<Fault.WrongGauge> ofGauge = leadsInDoubt ? List.of() : gauges.faults(claimed);
    ofGauge.forEach(fault -> claimed.addAll(fault.finding().readings()));
    HighResistances high = new HighResistances(asFound, limitsFound, costs, held, leadsInDoubt);
    Map<Fault.WrongGauge, List<Judged>> overThem = new HashMap<>();
    List<Fault> poor = new ArrayList<>();
    for (Fault fault : high.faults(claimed)) {
      Optional<Fault.WrongGauge> over = overAWire(ofGauge, fault);
      if (over.isPresent()) {
        overThem
            .computeIfAbsent(over.get(), key -> new ArrayList<>())
            .addAll(fault.finding().readings());
      } else {
        poor.add(
            fault
                .asHighResistance()
                .map(gauges::weighed)
                .<Fault>map(one -> besidePen(one, maybeOfThePen))
                .orElse(fault));
      }
    }
    List<Fault.WrongGauge> shown =
        ofGauge.stream()
            .map(fault -> fault.alsoShownBy(overThem.getOrDefault(fault, List.of())))
            .toList();
    add(shown, faults, claimed);
    add(poor, faults, claimed);
    if (!leadsInDoubt) {
      add(new UnequalWires(asFound, limitsFound, held).faults(claimed), faults, claimed);
    }
    return faults;
  }

  /** A poor joint that one value alone shows, with the slip of the pen that it may be. */
  private static Fault.HighResistance besidePen(
      Fault.HighResistance high, Map<Judged, Alternative> maybeOfThePen) {
    Alternative pen = maybeOfThePen.get(high.finding().readings().get(0));
    if (pen == null || high.finding().readings().size() > 1) {
      return high;
    }
    double others = high.finding().alternatives().stream().mapToDouble(Alternative::odds).sum();
    // Its odds are against the joint alone, which has only what the others leave.
    double weight = pen.odds() / (1 - pen.odds()) * (1 - others);
    List<Alternative> all = new ArrayList<>();
    all.add(new Alternative(weight / (1 + weight), pen.slips()));
    high.finding()
        .alternatives()
        .forEach(one -> all.add(new Alternative(one.odds() / (1 + weight), one.slips())));
    all.sort((one, other) -> Double.compare(other.odds(), one.odds()));
    return high.beside(all);
  }

  /** The wire of another gauge that a way which is too high leads over. */
  private static Optional<Fault.WrongGauge> overAWire(List<Fault.WrongGauge> ofGauge, Fault fault) {
    Optional<Wire> suspect =
        fault
            .asHighResistance()
            .filter(high -> !high.suspects().isEmpty())
            .flatMap(high -> high.suspects().get(0).conductor().asWire());
    return ofGauge.stream()
        .filter(one -> suspect.filter(one.wires()::contains).isPresent())
        .findFirst();
  }

  private static void add(List<? extends Fault> more, List<Fault> faults, Set<Judged> claimed) {
    faults.addAll(more);
    more.forEach(fault -> claimed.addAll(fault.finding().readings()));
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

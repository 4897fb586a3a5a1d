package dev.ringout.diagnose;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.Nets;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Faults of what is joined, but with other ohms than its wires account for: wrong gauges, poor
 * joints, unequal wires. Held against the unit as it was found.
 */
final class ValueFaults {
  private ValueFaults() {}

  static List<Fault> of(
      AsFound asFound,
      Circuit listed,
      JoinLimits limits,
      SlipCosts costs,
      Comparison comparison,
      WiringFaults wiring,
      boolean leadsInDoubt) {
    Circuit circuit = asFound.circuit();
    JoinLimits limitsFound = asFound.isAsListed() ? limits : limits.on(circuit);
    Comparison held =
        asFound.isAsListed()
            ? comparison
            : comparison.heldAgainst(circuit, limitsFound, changed(listed, wiring.slips()));
    Set<Judged> claimed = new LinkedHashSet<>(wiring.explained());
    List<Fault> faults = new ArrayList<>();
    if (!leadsInDoubt) {
      add(new WrongGauges(circuit, limitsFound, costs, held).faults(claimed), faults, claimed);
    }
    HighResistances high = new HighResistances(circuit, limitsFound, costs, held, leadsInDoubt);
    add(high.faults(claimed), faults, claimed);
    if (!leadsInDoubt) {
      add(new UnequalWires(circuit, limitsFound, held).faults(claimed), faults, claimed);
    }
    return faults.stream().map(fault -> onPaper(fault, asFound)).toList();
  }

  /** Whether joins are too high on a unit with slips for the ways that are there then. */
  static boolean leaveJoinsHigh(
      List<Slip> slips, Circuit listed, JoinLimits limits, Evidence evidence) {
    Circuit found = AsFound.of(listed, slips).circuit();
    return !Comparison.inForce(evidence.at(slips).toList())
        .heldAgainst(found, limits.on(found), judged -> true)
        .with(Outcome.RESISTIVE)
        .isEmpty();
  }

  private static void add(List<? extends Fault> more, List<Fault> faults, Set<Judged> claimed) {
    faults.addAll(more);
    more.forEach(fault -> claimed.addAll(fault.finding().readings()));
  }

  /** Readings at nets that the slips touch. */
  private static Predicate<Judged> changed(Circuit listed, List<Slip> slips) {
    Map<SwitchState, Set<Integer>> touched = new HashMap<>();
    return judged -> {
      SwitchState state = judged.reading().state();
      Set<Integer> here =
          touched.computeIfAbsent(state, one -> new SlippedNets(listed, one, slips).touchedNets());
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

  /** The same fault with its wires as they stand on the list. */
  private static Fault onPaper(Fault fault, AsFound asFound) {
    if (fault instanceof Fault.HighResistance high) {
      return new Fault.HighResistance(
          high.finding(),
          high.suspects().stream()
              .map(
                  one ->
                      new Fault.Suspicion(
                          asFound.listed(one.conductor()), one.odds(), one.inLoop()))
              .toList(),
          high.points(),
          high.limitOhms(),
          high.measuredOhms());
    }
    if (fault instanceof Fault.UnequalWire unequal) {
      return new Fault.UnequalWire(
          unequal.finding(),
          asFound.listed(unequal.wire()),
          unequal.limitOhms(),
          unequal.measuredOhms(),
          unequal.fellows(),
          unequal.fellowsOhms());
    }
    if (fault instanceof Fault.WrongGauge wrong) {
      return new Fault.WrongGauge(
          wrong.finding(),
          wrong.wires().stream().map(asFound::listed).toList(),
          wrong.listed(),
          wrong.likely(),
          wrong.odds(),
          wrong.expected(),
          wrong.expectedOfLikely(),
          wrong.measuredOhms());
    }
    return fault;
  }
}

package dev.ringout.diagnose.run;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Coverage;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.Diagnosis;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.values.HighThroughParts;
import dev.ringout.diagnose.values.LowInsulations;
import dev.ringout.diagnose.values.ValueFaults;
import dev.ringout.diagnose.wiring.ListedUnit;
import dev.ringout.diagnose.wiring.WiringFaults;
import dev.ringout.diagnose.wiring.WiringReadings;
import dev.ringout.source.Place;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.Tables;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Explains the failing readings of a comparison: first by faults of the test as a whole, then by
 * what is joined to what, then by values on the unit as it was found.
 */
public final class Diagnoser {
  private Diagnoser() {}

  /**
   * Explains the failing readings of a comparison.
   *
   * @param tables how often slips happen, and what a reading takes of the hand
   * @param leadsInDoubt whether nearly all values are off, which speaks against the meter's leads
   *     and not against single wires
   */
  public static Diagnosis diagnose(
      Circuit circuit,
      JoinLimits limits,
      Comparison comparison,
      Coverage coverage,
      Tables tables,
      boolean leadsInDoubt) {
    ListedUnit unit = ListedUnit.of(circuit, limits, tables);
    Diagnosis diagnosis =
        diagnose(
            unit,
            comparison,
            coverage,
            tables,
            TestFaults.of(unit, comparison, true),
            leadsInDoubt);
    return blamesLeadsForUnequalWires(diagnosis.faults())
        ? diagnose(
            unit,
            comparison,
            coverage,
            tables,
            TestFaults.of(unit, comparison, false),
            leadsInDoubt)
        : diagnosis;
  }

  /** Whether all that leads account for are wires that differ from those like them all the same. */
  private static boolean blamesLeadsForUnequalWires(List<Fault> faults) {
    Set<Place> ofLeads = placesOf(faults, Fault.LeadsNotNulled.class);
    return !ofLeads.isEmpty() && placesOf(faults, Fault.UnequalWire.class).containsAll(ofLeads);
  }

  /** Where the readings stand that faults of a kind explain. */
  private static Set<Place> placesOf(List<Fault> faults, Class<? extends Fault> kind) {
    return faults.stream()
        .filter(kind::isInstance)
        .flatMap(fault -> fault.finding().readings().stream())
        .map(judged -> judged.reading().place())
        .collect(Collectors.toSet());
  }

  private static Diagnosis diagnose(
      ListedUnit unit,
      Comparison comparison,
      Coverage coverage,
      Tables tables,
      TestFaults ofTheTest,
      boolean leadsInDoubt) {
    Circuit circuit = unit.circuit();
    Comparison ofTheUnit = ofTheTest.left();
    HighThroughParts high = HighThroughParts.of(circuit, ofTheUnit);
    WiringReadings readings =
        high.readings().isEmpty()
            ? ofTheTest.ofWiring()
            : WiringReadings.of(unit, ofTheUnit.without(high.readings()));
    WiringFaults wiring = WiringFaults.of(readings, ofTheTest.inDoubt());
    List<Fault> faults = new ArrayList<>(ofTheTest.faults());
    wiring.faults().stream()
        .map(fault -> ValueFaults.besidePen(fault, ofTheTest.maybeOfThePen()))
        .forEach(faults::add);
    boolean leadsUnknown = leadsInDoubt && !ofTheTest.leadsAreKnown();
    faults.addAll(ValueFaults.of(unit, ofTheUnit, wiring, ofTheTest.maybeOfThePen(), leadsUnknown));
    faults.addAll(LowInsulations.of(unit, ofTheUnit, wiring));
    faults.replaceAll(high::shown);
    return new Diagnosis(
        List.copyOf(faults),
        unexplained(comparison, wiring, faults),
        BlindSpots.of(circuit, unit.limits().resistances(), comparison),
        NextReadings.of(circuit, comparison, coverage, wiring, faults, new HandMovements(tables)),
        wiring.isComplete());
  }

  private static List<Judged> unexplained(
      Comparison comparison, WiringFaults wiring, List<Fault> faults) {
    Set<Judged> explained = new LinkedHashSet<>(wiring.explained());
    faults.forEach(fault -> explained.addAll(fault.finding().readings()));
    return comparison.failing().stream().filter(judged -> !explained.contains(judged)).toList();
  }
}

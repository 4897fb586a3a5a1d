package dev.ringout.diagnose;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.Predictor;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Coverage;
import dev.ringout.compare.Judged;
import dev.ringout.harness.SwitchState;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.Tables;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is wrong, how sure, and what to measure next.
 *
 * @param unexplained failing readings that no fault explains: none is lost
 * @param blind what could be wrong without any reading showing it
 * @param searchComplete false where the search for explanations was cut short
 */
public record Diagnosis(
    List<Fault> faults,
    List<Judged> unexplained,
    List<String> blind,
    List<NextReading> next,
    boolean searchComplete) {

  /**
   * Explains the failing readings of a comparison.
   *
   * @param tables how often slips happen, and what a reading takes of the hand
   * @param leadsInDoubt whether nearly all values are off, which speaks against the meter's leads
   *     and not against single wires
   */
  public static Diagnosis of(
      Circuit circuit,
      JoinLimits limits,
      Comparison comparison,
      Coverage coverage,
      Tables tables,
      boolean leadsInDoubt) {
    Neighbours neighbours = new Neighbours(circuit);
    SlipCosts costs = new SlipCosts(circuit, neighbours, tables);
    Predictor predictor = new Predictor(circuit, limits.resistances());
    TestFaults ofTheTest =
        new TestFaults(
            circuit,
            limits,
            costs,
            comparison,
            (held, mostCost) ->
                new WiringFaults(circuit, limits, predictor, neighbours, costs, held, mostCost));
    Comparison ofTheUnit = ofTheTest.left();
    HighThroughParts high = new HighThroughParts(circuit, ofTheUnit);
    WiringFaults wiring =
        new WiringFaults(
            circuit,
            limits,
            predictor,
            neighbours,
            costs,
            ofTheUnit.without(high.readings()),
            Search.ANY_COST);
    List<Fault> faults = new ArrayList<>(ofTheTest.faults());
    faults.addAll(wiring.faults());
    AsFound asFound = AsFound.of(circuit, wiring.slips());
    faults.addAll(ValueFaults.of(asFound, circuit, limits, costs, ofTheUnit, wiring, leadsInDoubt));
    faults.addAll(
        new LowInsulations(
                circuit,
                neighbours,
                ofTheUnit,
                new SlippedNets(circuit, SwitchState.normal(), wiring.slips()))
            .faults(wiring.explained()));
    faults.replaceAll(high::shown);
    Set<Judged> explained = new LinkedHashSet<>(wiring.explained());
    faults.forEach(fault -> explained.addAll(fault.finding().readings()));
    List<Judged> unexplained =
        comparison.failing().stream().filter(judged -> !explained.contains(judged)).toList();
    List<NextReading> next =
        new NextReadings(circuit, comparison, coverage, wiring, faults, new HandMovements(tables))
            .list();
    return new Diagnosis(
        List.copyOf(faults),
        unexplained,
        BlindSpots.of(circuit, limits.resistances(), comparison),
        next,
        wiring.isComplete());
  }

  /**
   * The same, once other units of the same list have been read: a fault that another has too is
   * likelier one of the paper.
   *
   * @param others what was found in each, by its file
   */
  public Diagnosis heldAgainst(Map<String, Diagnosis> others) {
    List<Fault> held = new ArrayList<>();
    for (Fault fault : faults) {
      List<String> too =
          others.entrySet().stream()
              .filter(other -> other.getValue().faults().stream().anyMatch(fault::isLike))
              .map(Map.Entry::getKey)
              .toList();
      held.add(too.isEmpty() ? fault : new Fault.OnPaper(fault.finding(), fault, too));
    }
    return new Diagnosis(List.copyOf(held), unexplained, blind, next, searchComplete);
  }
}

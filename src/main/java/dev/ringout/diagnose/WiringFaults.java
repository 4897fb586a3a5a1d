package dev.ringout.diagnose;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Predictor;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Contradiction;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.Search.Explanation;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Faults of what is joined to what: opens, shorts, miswires and wrong parts. */
final class WiringFaults {
  private final Circuit circuit;
  private final Evidence evidence;
  private final List<Region> regions = new ArrayList<>();
  private final List<Fault> faults = new ArrayList<>();
  private final Set<Judged> explained = new LinkedHashSet<>();

  WiringFaults(Circuit circuit, Predictor predictor, Neighbours neighbours, Comparison comparison) {
    this.circuit = circuit;
    Set<Judged> contradictory = new HashSet<>();
    for (Contradiction contradiction : comparison.contradictions()) {
      contradictory.add(contradiction.apart());
      contradictory.addAll(contradiction.joins());
    }
    List<Judged> consistent =
        comparison.inForce().stream().filter(judged -> !contradictory.contains(judged)).toList();
    this.evidence = new Evidence(circuit, predictor, consistent);
    List<Judged> failing = consistent.stream().filter(this::isOfWiring).toList();
    Search search = new Search(circuit, evidence, neighbours);
    Signatures signatures = new Signatures(circuit, evidence);
    for (List<Judged> region : Regions.of(circuit, failing)) {
      regions.add(Region.of(region, search.explain(region), signatures, this::itemsTouched));
    }
    List<Judged> low = comparison.with(Outcome.LOW_INSULATION);
    for (Region region : regions) {
      if (!region.classes().isEmpty()) {
        RegionFaults made = new RegionFaults(circuit, neighbours, evidence, region, low);
        faults.addAll(made.faults());
        explained.addAll(made.explained());
      }
    }
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

  List<Region> regions() {
    return regions;
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
      }
    }
    return items.size();
  }
}

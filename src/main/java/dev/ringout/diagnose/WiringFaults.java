package dev.ringout.diagnose;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.Expected.Joined;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.Predictor;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Contradiction;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.Fault.Alternative;
import dev.ringout.diagnose.Fault.Finding;
import dev.ringout.diagnose.Fault.Pattern;
import dev.ringout.diagnose.Region.EquivalenceClass;
import dev.ringout.diagnose.Search.Explanation;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
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

  WiringFaults(Circuit circuit, Neighbours neighbours, Comparison comparison) {
    this.circuit = circuit;
    Set<Judged> contradictory = new HashSet<>();
    for (Contradiction contradiction : comparison.contradictions()) {
      contradictory.add(contradiction.apart());
      contradictory.addAll(contradiction.joins());
    }
    List<Judged> consistent =
        comparison.inForce().stream().filter(judged -> !contradictory.contains(judged)).toList();
    this.evidence = new Evidence(circuit, consistent);
    List<Judged> failing = consistent.stream().filter(WiringFaults::isOfWiring).toList();
    Search search = new Search(circuit, evidence, neighbours);
    Signatures signatures = new Signatures(circuit, evidence);
    for (List<Judged> region : Regions.of(circuit, failing)) {
      regions.add(Region.of(region, search.explain(region), signatures));
    }
    List<Judged> low = comparison.with(Outcome.LOW_INSULATION);
    for (Region region : regions) {
      if (!region.classes().isEmpty()) {
        addFaults(region, low);
      }
    }
  }

  private static boolean isOfWiring(Judged judged) {
    return judged.outcome() == Outcome.OPEN
        || judged.outcome() == Outcome.UNEXPECTED_JOIN
        || judged.outcome() == Outcome.PART_VALUE;
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

  private void addFaults(Region region, List<Judged> lowInsulation) {
    Explanation best = region.best().primary();
    // An insulation tester across a stray join reads next to nothing: that is no second fault.
    List<Judged> low =
        lowInsulation.stream().filter(judged -> isJoined(judged, best.slips())).toList();
    explained.addAll(region.failing());
    explained.addAll(low);
    List<List<Judged>> shownBySlip = new ArrayList<>();
    for (Slip slip : best.slips()) {
      List<Judged> shown = new ArrayList<>(shownBy(slip, best, region));
      shown.addAll(lowBecauseOf(slip, best, low));
      shownBySlip.add(shown);
    }
    addTheRest(region, shownBySlip);
    for (int i = 0; i < best.slips().size(); i++) {
      Finding finding =
          new Finding(
              region.certainty(),
              List.copyOf(shownBySlip.get(i)),
              i == 0 ? alternatives(region) : List.of());
      faults.add(fault(best.slips().get(i), finding, region));
    }
  }

  /** A reading that only several slips together explain shows each of them. */
  private static void addTheRest(Region region, List<List<Judged>> shownBySlip) {
    Set<Judged> shown = new HashSet<>();
    shownBySlip.forEach(shown::addAll);
    for (Judged judged : region.failing()) {
      if (!shown.contains(judged)) {
        shownBySlip.forEach(readings -> readings.add(judged));
      }
    }
    for (List<Judged> readings : shownBySlip) {
      if (readings.isEmpty()) {
        // Needed only so that good readings stay good: the whole region speaks for it.
        readings.addAll(region.failing());
      }
    }
  }

  private boolean isJoined(Judged judged, List<Slip> slips) {
    return evidence.predict(judged.probing(), slips) instanceof Joined;
  }

  private List<Judged> lowBecauseOf(Slip slip, Explanation best, List<Judged> low) {
    List<Slip> others = without(slip, best);
    return low.stream().filter(judged -> !isJoined(judged, others)).toList();
  }

  private static List<Slip> without(Slip slip, Explanation best) {
    return best.slips().stream().filter(one -> !one.equals(slip)).toList();
  }

  /** The failing readings that would stay unexplained without this slip. */
  private List<Judged> shownBy(Slip slip, Explanation best, Region region) {
    List<Judged> contradicted = evidence.contradicted(without(slip, best), region.failing());
    return region.failing().stream().filter(contradicted::contains).toList();
  }

  private List<Alternative> alternatives(Region region) {
    return region.classes().stream()
        .skip(1)
        .filter(one -> one.odds() >= 0.005 || one.size() <= region.best().size())
        .map(
            one ->
                new Alternative(
                    one.odds(), one.primary().slips().stream().map(this::fact).toList()))
        .toList();
  }

  SlipFact fact(Slip slip) {
    if (slip instanceof Slip.Missing missing) {
      return new SlipFact.Opened(circuit.conductors().get(missing.conductor()));
    }
    if (slip instanceof Slip.Bridged bridged) {
      return new SlipFact.Bridge(circuit.point(bridged.one()), circuit.point(bridged.other()));
    }
    if (slip instanceof Slip.FaultyPart faulty) {
      return new SlipFact.BadPart(circuit.part(faulty.part()));
    }
    return new SlipFact.Misplaced(moves(slip));
  }

  private List<Move> moves(Slip slip) {
    if (slip instanceof Slip.Moved moved) {
      Wire wire = wire(moved.wire());
      return List.of(new Move(wire, wire.at(moved.end()), circuit.point(moved.to())));
    }
    Slip.Crossed crossed = (Slip.Crossed) slip;
    Wire one = wire(crossed.wire());
    Wire other = wire(crossed.otherWire());
    Point at = one.at(crossed.end());
    Point otherAt = other.at(crossed.otherEnd());
    return List.of(new Move(one, at, otherAt), new Move(other, otherAt, at));
  }

  private Wire wire(int conductor) {
    return ((Conductor.OfWire) circuit.conductors().get(conductor)).wire();
  }

  private Fault fault(Slip slip, Finding finding, Region region) {
    if (slip instanceof Slip.Missing missing) {
      return open(missing, finding, region);
    }
    if (slip instanceof Slip.Bridged bridged) {
      return new Fault.Shorted(
          finding, List.of(circuit.point(bridged.one()), circuit.point(bridged.other())));
    }
    if (slip instanceof Slip.FaultyPart faulty) {
      return wrongPart(circuit.part(faulty.part()), finding);
    }
    return new Fault.Miswire(
        finding,
        slip instanceof Slip.Crossed ? Pattern.SWAP : Pattern.MOVED,
        moves(slip),
        equivalents(slip, region));
  }

  /** Slips that could stand in the place of this one without any reading showing it. */
  private List<List<Move>> equivalents(Slip slip, Region region) {
    Explanation best = region.best().primary();
    List<List<Move>> equivalents = new ArrayList<>();
    for (Explanation other : region.best().explanations()) {
      Slip replacement = replacement(slip, best, other);
      if (replacement instanceof Slip.Crossed || replacement instanceof Slip.Moved) {
        equivalents.add(moves(replacement));
      }
    }
    return equivalents;
  }

  /** The slip of another explanation that differs from the best only in this one; else the slip. */
  private static Slip replacement(Slip slip, Explanation best, Explanation other) {
    Set<Slip> added = new HashSet<>(other.slips());
    best.slips().forEach(added::remove);
    Set<Slip> removed = new HashSet<>(best.slips());
    other.slips().forEach(removed::remove);
    boolean onlyThisOne = removed.equals(Set.of(slip)) && added.size() == 1;
    return onlyThisOne ? added.iterator().next() : new Slip.Missing(-1);
  }

  /** An open with every conductor that could be the one, as far as the readings tell. */
  private Fault open(Slip.Missing slip, Finding finding, Region region) {
    Explanation best = region.best().primary();
    Set<Conductor> suspects = new LinkedHashSet<>();
    suspects.add(circuit.conductors().get(slip.conductor()));
    boolean onlySuspectsDiffer = true;
    for (EquivalenceClass other : region.ofBestSize()) {
      Slip replacement = replacement(slip, best, other.primary());
      if (replacement instanceof Slip.Missing missing && missing.conductor() >= 0) {
        suspects.add(circuit.conductors().get(missing.conductor()));
      } else if (!other.equals(region.best())) {
        onlySuspectsDiffer = false;
      }
    }
    Judged shown = finding.readings().get(0);
    List<Point> ends =
        shown.probing().isPair()
            ? List.of(
                circuit.point(shown.probing().from()[0]), circuit.point(shown.probing().to()[0]))
            : suspects.stream()
                .flatMap(one -> java.util.stream.Stream.of(one.from(), one.to()))
                .distinct()
                .toList();
    Certainty certainty =
        suspects.size() > 1 && onlySuspectsDiffer && region.complete()
            ? Certainty.LIKELY
            : finding.certainty();
    List<Alternative> alternatives =
        finding.alternatives().stream()
            .filter(alternative -> !isOneOf(alternative, suspects))
            .toList();
    return new Fault.Open(
        new Finding(certainty, finding.readings(), alternatives), List.copyOf(suspects), ends);
  }

  private static boolean isOneOf(Alternative alternative, Set<Conductor> suspects) {
    return alternative.slips().size() == 1
        && alternative.slips().get(0) instanceof SlipFact.Opened opened
        && suspects.contains(opened.conductor());
  }

  private Fault wrongPart(Part part, Finding finding) {
    Judged shown = finding.readings().get(0);
    double low = 0;
    double high = Double.POSITIVE_INFINITY;
    if (new Predictor(circuit).asListed(shown.probing()) instanceof ThroughParts through) {
      low = through.lowOhms();
      high = through.highOhms();
    }
    return new Fault.WrongPart(
        finding,
        part,
        List.of(part.from(), part.to()),
        low,
        high,
        shown.reading().measured().text());
  }
}

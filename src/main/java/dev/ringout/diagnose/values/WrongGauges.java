package dev.ringout.diagnose.values;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.compare.ValueVerdict;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Alternative;
import dev.ringout.diagnose.Fault.Finding;
import dev.ringout.diagnose.SlipFact;
import dev.ringout.diagnose.wiring.AsFound;
import dev.ringout.diagnose.wiring.ListedUnit;
import dev.ringout.diagnose.wiring.SlipCosts;
import dev.ringout.diagnose.wiring.WiringFaults;
import dev.ringout.harness.Wire;
import dev.ringout.standards.CrimpBarrels;
import dev.ringout.units.Gauge;
import dev.ringout.units.OhmsRange;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Single wires whose reading another standard gauge fits clearly better than the listed one,
 * weighed against a poor joint and another length (Bayes): how often each happens stands in {@code
 * slips.csv}; a gauge says what is read within some percent ({@link WiresAsMade}), a poor joint may
 * add anything, a length is seldom off by much.
 */
final class WrongGauges {
  /** A low value is no fault by itself: that it is another gauge must be clear. */
  private static final double CLEARLY = 0.5;

  private static final double ALL_BUT_SURE = 0.99;
  private static final double LEAST_ODDS = 0.01;

  /** Wire more gauge numbers off would not go into the contact. */
  private static final double FARTHEST = 6.5;

  /** Wire of another barrel falls out of it or does not go in, which nine of ten see. */
  private static final double BEYOND_THE_BARREL = 0.1;

  /**
   * A wire of another length is mostly so much longer or shorter, seldom twice (common practice).
   */
  private static final double LENGTHS_DIFFER = 0.15;

  /** No wire of a gauge has less than this share of the least that it may have. */
  private static final double MOST_OFF = 0.5;

  private final WiringFaults wiring;
  private final AsFound asFound;
  private final Circuit circuit;
  private final JoinLimits limits;
  private final SlipCosts costs;
  private final CrimpBarrels barrels;
  private final Comparison comparison;
  private final WiresAsMade asMade;

  WrongGauges(ListedUnit unit, WiringFaults wiring, JoinLimits limits, Comparison comparison) {
    this.wiring = wiring;
    this.asFound = wiring.asFound();
    this.circuit = asFound.circuit();
    this.limits = limits;
    this.costs = unit.costs();
    this.barrels = unit.barrels();
    this.comparison = comparison;
    this.asMade = WiresAsMade.of(comparison);
  }

  private record Fit(Gauge gauge, double weight) {}

  /** Wires of one cable that all seem to be of the same other gauge are one fault. */
  private record Same(String cable, Gauge listed, Gauge likely) {}

  List<Fault> faults(Set<Judged> explainedOtherwise) {
    Map<Same, List<Fault.WrongGauge>> alike = new LinkedHashMap<>();
    Set<Integer> seen = new HashSet<>();
    for (Judged judged : comparison.inForce()) {
      // A high value that a limit in the file lets pass is left to the comparison with its fellows.
      boolean outside =
          judged.outcome() == Outcome.RESISTIVE
              ? judged.value() == ValueVerdict.HIGH
              : judged.outcome() == Outcome.CONFORMS && judged.value() == ValueVerdict.LOW;
      if (outside && judged.expected().isJoined() && !explainedOtherwise.contains(judged)) {
        fault(judged, seen)
            .ifPresent(
                fault -> {
                  Wire wire = fault.wires().get(0);
                  String cable = wire.cable().isEmpty() ? wire.name() : wire.cable();
                  alike
                      .computeIfAbsent(
                          new Same(cable, fault.listed(), fault.likely()), key -> new ArrayList<>())
                      .add(fault);
                });
      }
    }
    return alike.values().stream().map(this::together).toList();
  }

  private Fault together(List<Fault.WrongGauge> alike) {
    Fault.WrongGauge first = alike.get(0);
    if (alike.size() == 1) {
      return byItself(first);
    }
    return new Fault.WrongGauge(
        Finding.alone(
            first.finding().certainty(),
            alike.stream().flatMap(one -> one.finding().readings().stream()).toList(),
            first.finding().alternatives()),
        alike.stream().flatMap(one -> one.wires().stream()).toList(),
        first.listed(),
        first.likely(),
        first.odds(),
        first.expected(),
        first.expectedOfLikely(),
        first.measuredOhms());
  }

  /** Why a wire is too high no reading tells, unless only another gauge fits. */
  private Fault byItself(Fault.WrongGauge wrong) {
    Finding finding = wrong.finding();
    boolean isHigh = wrong.measuredOhms() > wrong.expected().highOhms();
    if (!isHigh || finding.alternatives().isEmpty()) {
      return wrong;
    }
    Wire wire = wrong.wires().get(0);
    List<Alternative> causes = new ArrayList<>(finding.alternatives());
    causes.add(
        0, new Alternative(wrong.odds(), List.of(new SlipFact.OtherGauge(wire, wrong.likely()))));
    return new Fault.HighWire(
        Finding.alone(
            wiring.certaintyBeside(true, finding.readings()), finding.readings(), List.of()),
        wire,
        List.copyOf(causes),
        wrong.expected(),
        wrong.measuredOhms());
  }

  private Optional<Fault.WrongGauge> fault(Judged judged, Set<Integer> seen) {
    int[] way = way(judged);
    if (way.length != 1) {
      return Optional.empty();
    }
    Optional<Wire> wire = circuit.conductors().get(way[0]).asWire();
    Optional<Gauge> listed = wire.flatMap(Wire::gauge);
    if (listed.isEmpty() || judged.seen().middleOhms() <= 0 || !seen.add(way[0])) {
      return Optional.empty();
    }
    return fault(judged, wire.get(), listed.get());
  }

  private Optional<Fault.WrongGauge> fault(Judged judged, Wire wire, Gauge listed) {
    double ohms = judged.seen().middleOhms();
    Weighed weighed = weighed(judged, wire, listed);
    Fit best = weighed.best();
    double odds = best.weight() / weighed.total();
    boolean likeliest = best.weight() >= Math.max(weighed.poor(), weighed.length());
    boolean isLow = judged.outcome() == Outcome.CONFORMS;
    if (best.gauge().equals(listed) || !likeliest || (isLow && odds < CLEARLY)) {
      return Optional.empty();
    }
    OhmsRange ofBest = limits.resistances(judged.reading().meter()).ofWireAs(wire, best.gauge());
    if (isLow && judged.seen().highOhms() < ofBest.lowOhms() * MOST_OFF) {
      return Optional.empty();
    }
    List<Alternative> alternatives = new ArrayList<>();
    alternative(
        alternatives,
        weighed.poor() / weighed.total(),
        new SlipFact.PoorJoint(new Conductor.OfWire(wire)));
    alternatives.addAll(otherLength(judged, wire, weighed));
    alternatives.addAll(otherGauges(weighed, wire, listed, best));
    alternatives.sort((a, b) -> Double.compare(b.odds(), a.odds()));
    return Optional.of(
        new Fault.WrongGauge(
            Finding.alone(
                // Copper beside it makes a value low as well.
                wiring.certaintyBeside(odds >= ALL_BUT_SURE && !isLow, List.of(judged)),
                List.of(judged),
                List.copyOf(alternatives)),
            List.of(asFound.listed(wire)),
            listed,
            best.gauge(),
            odds,
            judged.limit().expected(),
            ofBest,
            ohms));
  }

  /** What may have made a single wire's reading, each by how likely it is. */
  private record Weighed(List<Fit> fits, double poor, double length) {
    double total() {
      return fits.stream().mapToDouble(Fit::weight).sum() + poor + length;
    }

    Fit best() {
      return fits.stream().max((a, b) -> Double.compare(a.weight(), b.weight())).orElseThrow();
    }
  }

  private Weighed weighed(Judged judged, Wire wire, Gauge listed) {
    double ohms = judged.seen().middleOhms();
    double excess = ohms - asMade.likelyOhms(judged.limit().expected());
    double poor = excess > 0 ? costs.rateOf("poor wire") * costs.densityOfPoor(excess) : 0;
    double times = times(judged);
    double length =
        costs.rateOf("length other")
            * Math.exp(-Math.abs(Math.log(times)) / LENGTHS_DIFFER)
            / (2 * LENGTHS_DIFFER * ohms);
    return new Weighed(fits(judged, wire, listed), poor, length);
  }

  /** How many times what such a wire of this unit is likely to have. */
  private double times(Judged judged) {
    return judged.seen().middleOhms() / asMade.likelyOhms(judged.limit().expected());
  }

  private List<Alternative> otherLength(Judged judged, Wire wire, Weighed weighed) {
    double times = times(judged);
    List<Alternative> length = new ArrayList<>();
    alternative(
        length,
        weighed.length() / weighed.total(),
        new SlipFact.OtherLength(wire, wire.length().orElseThrow().metres() * times));
    return length;
  }

  private static List<Alternative> otherGauges(
      Weighed weighed, Wire wire, Gauge listed, Fit without) {
    List<Alternative> gauges = new ArrayList<>();
    for (Fit fit : weighed.fits()) {
      if (!fit.gauge().equals(listed) && !fit.equals(without)) {
        alternative(
            gauges, fit.weight() / weighed.total(), new SlipFact.OtherGauge(wire, fit.gauge()));
      }
    }
    return gauges;
  }

  /**
   * What a poor joint of one wire is once it is weighed against another gauge and another length:
   * the same where neither fits, else a wire of which no reading tells why it is too high.
   */
  Fault weighed(Fault.HighResistance high) {
    if (high.suspects().size() != 1) {
      return high;
    }
    Conductor suspect = high.suspects().get(0).conductor();
    Optional<Wire> wire = suspect.asWire();
    Optional<Gauge> listed = wire.flatMap(Wire::gauge);
    if (listed.isEmpty() || wire.get().length().isEmpty()) {
      return high;
    }
    return high.finding().readings().stream()
        .filter(judged -> isOf(judged, wire.get()) && judged.limit().expected().isKnown())
        .findFirst()
        .map(judged -> weighed(high, judged, wire.get(), listed.get()))
        .orElse(high);
  }

  private Fault weighed(Fault.HighResistance high, Judged judged, Wire wire, Gauge listed) {
    Weighed weighed = weighed(judged, wire, listed);
    List<Alternative> causes = new ArrayList<>();
    causes.addAll(otherLength(judged, wire, weighed));
    causes.addAll(otherGauges(weighed, wire, listed, new Fit(listed, 0)));
    if (causes.isEmpty()) {
      return high;
    }
    double others = causes.stream().mapToDouble(Alternative::odds).sum();
    causes.add(
        new Alternative(1 - others, List.of(new SlipFact.PoorJoint(new Conductor.OfWire(wire)))));
    causes.sort((a, b) -> Double.compare(b.odds(), a.odds()));
    return new Fault.HighWire(
        high.finding(),
        asFound.listed(wire),
        List.copyOf(causes),
        judged.limit().expected(),
        judged.seen().middleOhms());
  }

  /** Whether a reading is of one wire and nothing else. */
  private boolean isOf(Judged judged, Wire wire) {
    int[] way = way(judged);
    return way.length == 1
        && circuit.conductors().get(way[0]).asWire().filter(wire::equals).isPresent();
  }

  private int[] way(Judged judged) {
    return judged.probing().isPair()
        ? limits
            .resistances(judged.reading().meter())
            .conductorsBetween(
                judged.probing().from()[0], judged.probing().to()[0], judged.reading().state())
        : new int[0];
  }

  /** How well each gauge in use fits what was read, weighed by how often it is taken. */
  private List<Fit> fits(Judged judged, Wire wire, Gauge listed) {
    Map<Gauge, Double> others = othersTaken(listed);
    double all = others.values().stream().mapToDouble(Double::doubleValue).sum();
    List<Fit> fits = new ArrayList<>();
    fits.add(new Fit(listed, density(judged, wire, listed)));
    others.forEach(
        (gauge, share) -> {
          double often = costs.rateOf("gauge other") * share / all;
          fits.add(new Fit(gauge, often * density(judged, wire, gauge)));
        });
    return fits;
  }

  private double density(Judged judged, Wire wire, Gauge gauge) {
    return asMade.density(
        limits.resistances(judged.reading().meter()).makesOfWireAs(wire, gauge), judged.seen());
  }

  /** The gauges that may be taken for another, each as likely that goes into the same barrel. */
  private Map<Gauge, Double> othersTaken(Gauge listed) {
    Map<Gauge, Double> others = new LinkedHashMap<>();
    for (Gauge gauge : limits.wires().copper().sizesLike(listed)) {
      if (!gauge.equals(listed) && isInUse(gauge) && steps(listed, gauge) <= FARTHEST) {
        others.put(gauge, barrels.takeBoth(listed, gauge) ? 1 : BEYOND_THE_BARREL);
      }
    }
    return others;
  }

  private static void alternative(List<Alternative> to, double odds, SlipFact fact) {
    if (odds >= LEAST_ODDS) {
      to.add(new Alternative(odds, List.of(fact)));
    }
  }

  /** Odd gauges finer than 2 are hardly made as hook-up wire (common practice, no source). */
  private static boolean isInUse(Gauge gauge) {
    return gauge.asAwg().filter(awg -> awg.number() > 2 && awg.number() % 2 != 0).isEmpty();
  }

  /** How many gauge numbers apart; a gauge number is a factor of 1.26 in area (ASTM B258). */
  private double steps(Gauge one, Gauge other) {
    double ratio =
        limits.wires().copper().squareMillimetres(one).orElseThrow()
            / limits.wires().copper().squareMillimetres(other).orElseThrow();
    return Math.abs(Math.log(ratio) / Math.log(Math.pow(92, 2 / 39.0)));
  }
}

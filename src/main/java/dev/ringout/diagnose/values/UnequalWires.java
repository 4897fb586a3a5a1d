package dev.ringout.diagnose.values;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Finding;
import dev.ringout.diagnose.wiring.AsFound;
import dev.ringout.harness.Wire;
import dev.ringout.readings.Meter;
import dev.ringout.standards.MadFactors;
import dev.ringout.units.Gauge;
import dev.ringout.units.Length;
import dev.ringout.units.OhmsRange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Wires that read more than their fellows of the same gauge, type and length, though within the
 * limit: more than a tenth above the middle one (common practice, no source: a core more than 10 %
 * off its fellows is rejected), and far outside how much the fellows differ among themselves.
 */
final class UnequalWires {
  private static final int LEAST_FELLOWS = 5;
  private static final double ABOVE_FELLOWS = 0.10;

  /** Without lengths only what is far off counts: the wires may differ. */
  private static final double ABOVE_FELLOWS_OF_UNKNOWN_LENGTH = 2;

  private static final double TIMES_THEIR_SPREAD = 5;

  private static final double TIMES_THE_METER = 3;

  private final AsFound asFound;
  private final Circuit circuit;
  private final JoinLimits limits;
  private final Comparison comparison;

  UnequalWires(AsFound asFound, JoinLimits limits, Comparison comparison) {
    this.asFound = asFound;
    this.circuit = asFound.circuit();
    this.limits = limits;
    this.comparison = comparison;
  }

  /**
   * A reading of one wire.
   *
   * @param ohms without what the leads have gained since the first row
   */
  private record Read(Judged judged, Wire wire, double ohms) {
    double asRead() {
      return judged.reading().measured().writtenAtLeastOhms().orElse(ohms);
    }
  }

  List<Fault> faults(Set<Judged> explainedOtherwise) {
    LeadTrend leads = new LeadTrend(comparison);
    Map<Kind, List<Read>> alike = new LinkedHashMap<>();
    for (Judged judged : comparison.inForce()) {
      if (judged.outcome() == Outcome.CONFORMS
          && judged.limit().basis() != JoinLimits.Basis.LINKS_ALONE
          && judged.probing().isPair()
          && judged.reading().measured().value().isPresent()
          && !explainedOtherwise.contains(judged)) {
        double ohms = judged.reading().measured().value().get().ohms() - leads.gainedOhms(judged);
        single(judged)
            .ifPresent(
                wire ->
                    alike
                        .computeIfAbsent(Kind.of(wire, judged), key -> new ArrayList<>())
                        .add(new Read(judged, wire, ohms)));
      }
    }
    List<Fault> faults = new ArrayList<>();
    alike.values().forEach(fellows -> compare(fellows, faults));
    return faults;
  }

  private Optional<Wire> single(Judged judged) {
    int from = judged.probing().from()[0];
    int to = judged.probing().to()[0];
    if (circuit.in(judged.reading().state()).of(from)
        != circuit.in(judged.reading().state()).of(to)) {
      return Optional.empty();
    }
    int[] way =
        limits
            .resistances(judged.reading().meter())
            .conductorsBetween(from, to, judged.reading().state());
    return way.length == 1 ? circuit.conductors().get(way[0]).asWire() : Optional.empty();
  }

  /** What makes wires fellows: all of their making, or where lengths are not known, one cable. */
  private record Kind(
      Optional<Gauge> gauge,
      String type,
      Optional<Length> length,
      String cable,
      String fromItem,
      String toItem,
      Meter meter) {
    static Kind of(Wire wire, Judged judged) {
      boolean known = wire.length().isPresent();
      return new Kind(
          wire.gauge(),
          wire.type(),
          wire.length(),
          known ? "" : wire.cable(),
          known ? "" : wire.from().ref(),
          known ? "" : wire.to().ref(),
          judged.reading().meter());
    }
  }

  private static double spreadOfTheMeter(Read read) {
    return TIMES_THE_METER * read.judged().seen().halfWidthOhms();
  }

  private void compare(List<Read> fellows, List<Fault> faults) {
    if (fellows.size() <= LEAST_FELLOWS) {
      return;
    }
    double[] sorted = fellows.stream().mapToDouble(Read::ohms).sorted().toArray();
    double middle = sorted[sorted.length / 2];
    double[] off = Arrays.stream(sorted).map(ohms -> Math.abs(ohms - middle)).sorted().toArray();
    double spread = MadFactors.OF_MANY * off[off.length / 2];
    for (Read read : fellows) {
      boolean known = read.wire().length().isPresent();
      double allowed =
          Math.max(
              Math.max(TIMES_THEIR_SPREAD * spread, spreadOfTheMeter(read)),
              Math.max(
                  circuit.harness().limits().contactOhms(),
                  middle * (known ? ABOVE_FELLOWS : ABOVE_FELLOWS_OF_UNKNOWN_LENGTH)));
      if (read.ohms() - middle > allowed) {
        double[] others =
            fellows.stream()
                .filter(fellow -> fellow.ohms() <= middle + allowed)
                .mapToDouble(Read::asRead)
                .sorted()
                .toArray();
        if (!known
            && others[others.length - 1] - others[0] > Math.max(middle, spreadOfTheMeter(read))) {
          // They differ so much among themselves that they are of several gauges or lengths.
          continue;
        }
        faults.add(
            new Fault.UnequalWire(
                Finding.alone(Certainty.LIKELY, List.of(read.judged()), List.of()),
                asFound.listed(read.wire()),
                read.judged().limit().ohms(),
                read.asRead(),
                others.length,
                new OhmsRange(others[0], others[others.length - 1])));
      }
    }
  }
}

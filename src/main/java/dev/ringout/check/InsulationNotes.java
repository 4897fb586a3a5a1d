package dev.ringout.check;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.InsulationLimits;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.harness.Part;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds what must be said about insulation readings beside their verdicts. */
final class InsulationNotes {
  /** Insulation halves for so many degrees more: a rule of thumb (IEEE 43 for windings). */
  private static final double HALVING_KELVIN = 10;

  private static final double REFERENCE_CELSIUS = 20;
  private static final int MOST_SAID = 8;

  private InsulationNotes() {}

  static List<InsulationNote> of(Circuit circuit, Comparison comparison) {
    List<Judged> made =
        comparison.inForce().stream()
            .filter(judged -> judged.reading().kind() == Reading.Kind.INSULATION)
            .filter(judged -> judged.reading().measured().made())
            .toList();
    List<InsulationNote> notes = new ArrayList<>(strained(circuit, made));
    warmer(made).ifPresent(notes::add);
    return List.copyOf(notes);
  }

  private static List<InsulationNote> strained(Circuit circuit, List<Judged> made) {
    if (circuit.harness().parts().stream().allMatch(part -> part.maxTestVolts().isEmpty())) {
      return List.of();
    }
    InsulationLimits limits = new InsulationLimits(circuit);
    return made.stream()
        .flatMap(judged -> strained(circuit, limits, judged).stream())
        .limit(MOST_SAID)
        .toList();
  }

  private static Optional<InsulationNote> strained(
      Circuit circuit, InsulationLimits limits, Judged judged) {
    double volts = judged.reading().volts().orElse(circuit.harness().limits().insulationVolts());
    List<Part> strained =
        limits.of(judged.probing()).across().stream()
            .filter(part -> part.maxTestVolts().orElse(Double.POSITIVE_INFINITY) < volts)
            .toList();
    return strained.isEmpty()
        ? Optional.empty()
        : Optional.of(new InsulationNote.Strained(judged, volts, strained));
  }

  /** Of the lowest value that failed and has a temperature, of several the first. */
  private static Optional<InsulationNote> warmer(List<Judged> made) {
    return made.stream()
        .filter(judged -> judged.outcome() == Outcome.LOW_INSULATION)
        .filter(judged -> judged.reading().measured().value().isPresent())
        .filter(judged -> judged.reading().meter().celsius().isPresent())
        .min(Comparator.comparingDouble(judged -> judged.reading().measured().atMostOhms()))
        .map(Judged::reading)
        .filter(lowest -> celsius(lowest) != REFERENCE_CELSIUS)
        .map(lowest -> warmer(celsius(lowest), lowest.measured()));
  }

  private static double celsius(Reading reading) {
    return reading.meter().celsius().orElse(REFERENCE_CELSIUS);
  }

  private static InsulationNote warmer(double celsius, Measured lowest) {
    double ohms = lowest.atMostOhms();
    double factor = Math.pow(2, (celsius - REFERENCE_CELSIUS) / HALVING_KELVIN);
    return new InsulationNote.Warmer(celsius, ohms, ohms * factor);
  }
}

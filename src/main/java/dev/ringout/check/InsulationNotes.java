package dev.ringout.check;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.InsulationLimits;
import dev.ringout.circuit.InsulationLimits.InsulationLimit;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.harness.Part;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.units.Numbers;
import dev.ringout.units.Ohms;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What must be said about insulation readings beside their verdicts. */
final class InsulationNotes {
  /** Insulation halves for so many degrees more: a rule of thumb (IEEE 43 for windings). */
  private static final double HALVING_KELVIN = 10;

  private static final double REFERENCE_CELSIUS = 20;
  private static final int MOST_SAID = 8;

  private InsulationNotes() {}

  static List<String> of(Circuit circuit, Comparison comparison) {
    List<String> notes = new ArrayList<>();
    InsulationLimits limits = new InsulationLimits(circuit);
    OptionalDouble lowest = OptionalDouble.empty();
    OptionalDouble celsius = OptionalDouble.empty();
    boolean hasLimited =
        circuit.harness().parts().stream().anyMatch(part -> part.maxTestVolts().isPresent());
    for (Judged judged : comparison.inForce()) {
      if (judged.reading().kind() != Reading.Kind.INSULATION
          || !judged.reading().measured().made()) {
        continue;
      }
      if (hasLimited && notes.size() < MOST_SAID) {
        strained(circuit, limits.of(judged.probing()), judged, notes);
      }
      if (judged.outcome() == Outcome.LOW_INSULATION
          && judged.reading().measured() instanceof Measured.Value value
          && judged.reading().meter().celsius().isPresent()
          && value.ohms() < lowest.orElse(Double.POSITIVE_INFINITY)) {
        lowest = OptionalDouble.of(value.ohms());
        celsius = judged.reading().meter().celsius();
      }
    }
    if (lowest.isPresent() && celsius.orElse(REFERENCE_CELSIUS) != REFERENCE_CELSIUS) {
      double warmer = celsius.getAsDouble() - REFERENCE_CELSIUS;
      notes.add(
          Text.of(
              "The readings were taken at %s °C. By a rule of thumb (halves for each 10 °C) the lowest, %s, would be %s at 20 °C; it is shown only, no verdict uses it.",
              Numbers.plain(celsius.getAsDouble()),
              Ohms.text(lowest.getAsDouble()),
              Ohms.text(lowest.getAsDouble() * Math.pow(2, warmer / HALVING_KELVIN))));
    }
    return List.copyOf(notes);
  }

  private static void strained(
      Circuit circuit, InsulationLimit limit, Judged judged, List<String> notes) {
    double volts = judged.reading().volts().orElse(circuit.harness().limits().insulationVolts());
    List<Part> strained =
        limit.across().stream()
            .filter(part -> part.maxTestVolts().orElse(Double.POSITIVE_INFINITY) < volts)
            .toList();
    if (!strained.isEmpty()) {
      notes.add(
          Text.of(
              "%s was tested at %s V, which %s does not bear (%s V): if it was not disconnected, prove it again.",
              judged.reading().subject(),
              Numbers.plain(volts),
              strained.stream().map(Part::label).distinct().collect(Collectors.joining(", ")),
              Numbers.plain(strained.get(0).maxTestVolts().orElse(0))));
    }
  }
}

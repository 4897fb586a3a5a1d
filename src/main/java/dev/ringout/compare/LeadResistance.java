package dev.ringout.compare;

import dev.ringout.circuit.Expected.Joined;
import dev.ringout.circuit.JoinLimits.Basis;
import dev.ringout.readings.Measured;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import dev.ringout.units.Ohms;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Most readings above what their wires account for are likelier one pair of leads that was not
 * nulled than as many poor joints (common practice, no source).
 */
public final class LeadResistance {
  private static final int LEAST_READINGS = 5;
  private static final double MOST_OF_THEM = 0.8;

  private LeadResistance() {}

  /** A warning to null the leads, where nearly all readings with a computed limit are above it. */
  public static Optional<Problem> doubt(Comparison comparison) {
    List<Double> excesses = new ArrayList<>();
    Optional<Place> place = Optional.empty();
    int computed = 0;
    for (Judged judged : comparison.inForce()) {
      if (judged.limit().basis() != Basis.COMPUTED
          || !(judged.expected() instanceof Joined)
          || !(judged.reading().measured() instanceof Measured.Value value)) {
        continue;
      }
      computed++;
      if (judged.outcome() == Outcome.RESISTIVE) {
        excesses.add(value.ohms() - judged.limit().ohms());
        place = place.isPresent() ? place : Optional.of(judged.reading().place());
      }
    }
    if (computed < LEAST_READINGS || excesses.size() < computed * MOST_OF_THEM) {
      return Optional.empty();
    }
    double least = excesses.stream().mapToDouble(Double::doubleValue).min().orElse(0);
    String text =
        Text.of(
            "%d of %d readings across wires are above what copper and contacts account for, the"
                + " least by %s; were the leads nulled? If not, state their resistance as \"meter\""
                + " on the sheet Limits",
            excesses.size(), computed, Ohms.text(least));
    return place.map(first -> new Problem(first, "Reading", Severity.WARNING, text, ""));
  }
}

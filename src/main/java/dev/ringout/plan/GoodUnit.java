package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.harness.Limits;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.List;

/** What the steps of a plan read on a unit that is as listed. */
public final class GoodUnit {
  /** A good meter: a thousandth of an ohm. */
  private static final double HALF_DIGIT_OHMS = 0.0005;

  private static final double FAR_LESS = 20;

  private GoodUnit() {}

  /** The readings of a good unit, in the order of the steps. */
  public static ReadingSet readings(Circuit circuit, List<Step> steps) {
    List<Reading> readings = new ArrayList<>();
    for (Step step : steps) {
      readings.add(reading(circuit, step));
    }
    return new ReadingSet(readings, List.of());
  }

  private static Reading reading(Circuit circuit, Step step) {
    return step.read(circuit, measured(circuit.harness().limits(), step), Place.NOWHERE);
  }

  private static Measured measured(Limits limits, Step step) {
    return step.kind() == Reading.Kind.INSULATION
        ? new Measured.MoreThan(2 * step.minOhms().orElse(limits.insulationMinOhms()))
        : step.expected().match(new Continuity(limits, step));
  }

  /** What a good meter shows of a continuity step: half way between its limits. */
  private record Continuity(Limits limits, Step step) implements Expected.Cases<Measured> {
    @Override
    public Measured joined(Expected.Joined expected) {
      double high = step.maxOhms().orElse(limits.fixedClosedMaxOhms());
      // Of what is not computed a good one has far less than the fixed limit.
      double ohms =
          step.minOhms().isPresent() ? (step.minOhms().getAsDouble() + high) / 2 : high / FAR_LESS;
      return new Measured.Value(ohms, HALF_DIGIT_OHMS);
    }

    @Override
    public Measured apart(Expected.Apart expected) {
      return new Measured.MoreThan(2 * limits.openMinOhms());
    }

    @Override
    public Measured throughParts(Expected.ThroughParts parts) {
      boolean anythingWillDo = parts.lowOhms() == 0 && Double.isInfinite(parts.highOhms());
      if (Double.isInfinite(parts.lowOhms()) || anythingWillDo) {
        return new Measured.MoreThan(2 * limits.openMinOhms());
      }
      double high = Double.isInfinite(parts.highOhms()) ? 2 * parts.lowOhms() : parts.highOhms();
      return new Measured.Value((parts.lowOhms() + high) / 2, HALF_DIGIT_OHMS);
    }
  }
}

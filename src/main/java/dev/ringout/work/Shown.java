package dev.ringout.work;

import dev.ringout.circuit.ShownByOhms;
import dev.ringout.harness.Limits;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;

/**
 * What one reading of an unknown unit shows. There is no list to say otherwise, so the limits are
 * those that hold where a harness file gives none.
 */
enum Shown {
  JOINED,
  APART,
  BETWEEN,
  NOTHING;

  static Shown by(Reading reading) {
    boolean continuity = reading.kind() == Reading.Kind.CONTINUITY;
    Measured measured = reading.measured();
    if (measured instanceof Measured.Word word) {
      return continuity && word.meaning() != Measured.Meaning.FAIL ? JOINED : NOTHING;
    }
    if (measured instanceof Measured.OverRange over) {
      boolean enough = over.rangeOhms().orElse(Limits.OPEN_MIN_OHMS) >= Limits.OPEN_MIN_OHMS;
      return continuity && enough ? APART : NOTHING;
    }
    if (measured instanceof Measured.MoreThan more) {
      return more.ohms() >= Limits.OPEN_MIN_OHMS ? APART : NOTHING;
    }
    if (measured instanceof Measured.LessThan less) {
      return less.ohms() <= closedMaxOhms(reading) ? JOINED : NOTHING;
    }
    return measured instanceof Measured.Value value ? by(value, reading) : NOTHING;
  }

  private static Shown by(Measured.Value value, Reading reading) {
    double closedMaxOhms = closedMaxOhms(reading);
    ShownByOhms shown = ShownByOhms.of(value, reading.meter(), closedMaxOhms, Limits.OPEN_MIN_OHMS);
    return switch (shown) {
      case JOINED ->
          ShownByOhms.isTooCoarse(value, reading.meter(), closedMaxOhms) ? NOTHING : JOINED;
      case BETWEEN -> BETWEEN;
      case APART -> APART;
    };
  }

  /** Leads that were not nulled are still in the reading. */
  private static double closedMaxOhms(Reading reading) {
    return Limits.FIXED_CLOSED_MAX_OHMS + reading.meter().leadOhms().orElse(0);
  }
}

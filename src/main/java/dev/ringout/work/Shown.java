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
    return reading.measured().match(new ByWhatWasMeasured(reading));
  }

  private record ByWhatWasMeasured(Reading reading) implements Measured.Cases<Shown> {
    private boolean isContinuity() {
      return reading.kind() == Reading.Kind.CONTINUITY;
    }

    @Override
    public Shown value(Measured.Value measured) {
      return by(measured, reading);
    }

    @Override
    public Shown belowZero(Measured.BelowZero measured) {
      return NOTHING;
    }

    @Override
    public Shown takenBack(Measured.TakenBack measured) {
      return NOTHING;
    }

    @Override
    public Shown moreThan(Measured.MoreThan measured) {
      return measured.ohms() >= Limits.OPEN_MIN_OHMS ? APART : NOTHING;
    }

    @Override
    public Shown lessThan(Measured.LessThan measured) {
      return measured.ohms() <= closedMaxOhms(reading) ? JOINED : NOTHING;
    }

    @Override
    public Shown overRange(Measured.OverRange measured) {
      boolean enough = measured.rangeOhms().orElse(Limits.OPEN_MIN_OHMS) >= Limits.OPEN_MIN_OHMS;
      return isContinuity() && enough ? APART : NOTHING;
    }

    @Override
    public Shown word(Measured.Word measured) {
      return isContinuity() && measured.meaning() != Measured.Meaning.FAIL ? JOINED : NOTHING;
    }

    @Override
    public Shown notTested(Measured.NotTested measured) {
      return NOTHING;
    }
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

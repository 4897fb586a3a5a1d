package dev.ringout.circuit;

import dev.ringout.readings.Measured.Value;
import dev.ringout.readings.Meter;

/**
 * What ohms between two points show by themselves, whatever is listed of the points: the one place
 * where a value becomes joined or apart.
 */
public enum ShownByOhms {
  /** No more than a joint may have: a coarse meter is no fault of the joint. */
  JOINED,
  /** More than a joint may have, and less than counts as open. */
  BETWEEN,
  /** At least what counts as open. */
  APART;

  /** Half a digit of a meter that shows whole ohms. */
  private static final double COARSEST_OHMS = 0.5;

  /**
   * What a value shows: one written 0.1 was anything from 0.05 on.
   *
   * @param closedMaxOhms the highest reading that counts as joined, the leads in it
   * @param openMinOhms the lowest reading that counts as not joined
   */
  public static ShownByOhms of(Value value, Meter meter, double closedMaxOhms, double openMinOhms) {
    double off = meter.uncertaintyOhms(value) + meter.benefitOfTheDoubtOhms(value);
    if (value.ohms() - off <= closedMaxOhms) {
      return JOINED;
    }
    return value.ohms() >= openMinOhms ? APART : BETWEEN;
  }

  /**
   * Whether a value may be off by more than a limit, and by more than that of a meter that shows
   * whole ohms: {@code 0 kΩ} was anything below 500 Ω.
   */
  public static boolean isTooCoarse(Value value, Meter meter, double limitOhms) {
    return meter.uncertaintyOhms(value) > Math.max(limitOhms, COARSEST_OHMS);
  }
}

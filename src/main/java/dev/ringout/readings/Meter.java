package dev.ringout.readings;

import java.util.OptionalDouble;

/**
 * What the job sheet says of the meter and of the wires while it was used.
 *
 * @param leadOhms what it read with its leads together, which is still in the readings; zero where
 *     the leads were nulled; absent where nothing is said
 * @param celsius the temperature of the wires; absent where nothing is said
 * @param accuracyShare of the reading
 * @param accuracyDigits so many of the last digit
 * @param accuracyOhms a fixed amount
 * @param resolutionOhms one step of the last digit; absent: as the readings are written
 */
public record Meter(
    OptionalDouble leadOhms,
    OptionalDouble celsius,
    double accuracyShare,
    double accuracyDigits,
    double accuracyOhms,
    OptionalDouble resolutionOhms) {

  /** A meter of which nothing is said. */
  public static final Meter UNKNOWN =
      new Meter(OptionalDouble.empty(), OptionalDouble.empty(), 0, 0, 0, OptionalDouble.empty());

  /**
   * How far the truth may be from a value: half of the last digit, and the meter's own error.
   *
   * @return ohms to either side
   */
  public double uncertaintyOhms(Measured.Value value) {
    double digit = Math.max(2 * value.halfDigitOhms(), resolutionOhms.orElse(0));
    return digit / 2
        + accuracyShare * Math.abs(value.ohms())
        + accuracyDigits * digit
        + accuracyOhms;
  }
}

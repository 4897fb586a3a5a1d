package dev.ringout.readings;

import java.util.OptionalDouble;

/**
 * What the job sheet says of the meter and of the wires while it was used.
 *
 * @param leadOhms what it read with its leads together, which is still in the readings; zero where
 *     the leads were nulled; absent where nothing is said
 * @param leadsOffOhms how far what is said of the leads may be from the truth: half of its last
 *     digit
 * @param celsius the temperature of the wires; absent where nothing is said
 * @param accuracyShare of the reading
 * @param accuracyDigits so many of the last digit
 * @param accuracyOhms a fixed amount
 * @param resolutionOhms one step of the last digit; absent: as the readings are written
 */
public record Meter(
    OptionalDouble leadOhms,
    double leadsOffOhms,
    OptionalDouble celsius,
    double accuracyShare,
    double accuracyDigits,
    double accuracyOhms,
    OptionalDouble resolutionOhms) {

  /** A meter of which nothing is said. */
  public static final Meter UNKNOWN =
      new Meter(OptionalDouble.empty(), 0, OptionalDouble.empty(), 0, 0, 0, OptionalDouble.empty());

  /** The coarsest display that tells joints: a whole ohm written is a word, and no display. */
  private static final double COARSEST_DISPLAY_OHMS = 0.1;

  /**
   * How far the truth may be from a value: half of the last digit, and the meter's own error.
   *
   * @return ohms to either side
   */
  public double uncertaintyOhms(Measured.Value value) {
    double digit = digitOhms(value);
    return digit / 2
        + accuracyShare * Math.abs(value.ohms())
        + accuracyDigits * digit
        + accuracyOhms;
  }

  /**
   * How much farther it may be before anything is blamed for it, where nothing is said of the
   * meter's accuracy: any display may be a digit off besides what it rounds (common practice, no
   * source). It excuses a value; it proves nothing.
   */
  public double benefitOfTheDoubtOhms(Measured.Value value) {
    boolean told = accuracyShare > 0 || accuracyDigits > 0 || accuracyOhms > 0;
    return told ? 0 : Math.min(digitOhms(value), COARSEST_DISPLAY_OHMS);
  }

  /** What is said of the display holds: a spreadsheet makes 0.2 of 0.200. */
  private double digitOhms(Measured.Value value) {
    return resolutionOhms.orElse(2 * value.halfDigitOhms());
  }
}

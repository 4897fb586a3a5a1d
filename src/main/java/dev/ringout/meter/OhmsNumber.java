package dev.ringout.meter;

import dev.ringout.readings.Measured;
import dev.ringout.units.Ohms;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** A number as meters write it: NR1, NR2 or NR3 of IEEE 488.2, or the digits of a display. */
final class OhmsNumber {
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d{1,20}(\\.\\d{0,20})?|\\.\\d{1,20})([eE][+-]?\\d{1,3})?");

  private OhmsNumber() {}

  /** The number that a text is; absent where it is none. */
  static Optional<BigDecimal> of(String text) {
    return NUMBER.matcher(text).matches() ? Optional.of(new BigDecimal(text)) : Optional.empty();
  }

  /** Above the meter's range. */
  static Measured overRange() {
    return new Measured.OverRange(OptionalDouble.empty());
  }

  /** What is below every number is no open: something else drives the meter. */
  static Measured belowRange() {
    return new Measured.BelowZero(Double.NEGATIVE_INFINITY, "-OL");
  }

  /** So many ohms: a value with the half of its last digit, or below zero. */
  static Measured measured(BigDecimal number, double factor) {
    double ohms = number.doubleValue() * factor;
    double halfDigit = 0.5 * Math.pow(10, -number.scale()) * factor;
    return ohms < 0
        ? new Measured.BelowZero(ohms, Ohms.text(ohms))
        : new Measured.Value(ohms, halfDigit);
  }
}

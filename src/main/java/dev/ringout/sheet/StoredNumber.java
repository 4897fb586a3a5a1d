package dev.ringout.sheet;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * A number as files of spreadsheets store it (W3C XML Schema part 2, 3.2.5: {@code xsd:double}),
 * less what no cell can hold: no number, and what is beyond all numbers. Java reads more, such as
 * {@code 12d} and {@code 0x1p3}.
 */
final class StoredNumber {
  private static final Pattern DECIMAL =
      Pattern.compile("[+-]?([0-9]+(\\.[0-9]*)?|\\.[0-9]+)([eE][+-]?[0-9]+)?");

  private StoredNumber() {}

  /** The number; absent where it is none. */
  static OptionalDouble of(String stored) {
    String text = stored.strip();
    if (!DECIMAL.matcher(text).matches()) {
      return OptionalDouble.empty();
    }
    double number = Double.parseDouble(text);
    return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
  }
}

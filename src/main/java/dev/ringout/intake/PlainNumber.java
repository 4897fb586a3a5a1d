package dev.ringout.intake;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * A number as people write it, with a point or a comma. Java reads more: {@code NaN}, {@code 12d}
 * and {@code 0x1p3} are typing errors on a sheet.
 */
final class PlainNumber {
  private static final Pattern DECIMAL =
      Pattern.compile("[+-]?([0-9]{1,15}([.,][0-9]{0,15})?|[.,][0-9]{1,15})([eE][+-]?[0-9]{1,2})?");

  private PlainNumber() {}

  /** The number; absent where it is none. */
  static OptionalDouble of(String text) {
    return DECIMAL.matcher(text).matches()
        ? OptionalDouble.of(Double.parseDouble(text.replace(',', '.')))
        : OptionalDouble.empty();
  }

  /** The number of a cell; what is none is reported there. */
  static OptionalDouble of(String text, Entry entry, Column column) {
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    OptionalDouble number = of(text);
    if (number.isEmpty()) {
      entry.error(column.name(), "\"" + text + "\" is no number", LookAlikes.asNumber(text));
    }
    return number;
  }
}

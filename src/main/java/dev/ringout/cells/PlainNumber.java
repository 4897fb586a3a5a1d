package dev.ringout.cells;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * A number as people write it, with a point or a comma. Java reads more: {@code NaN}, {@code 12d}
 * and {@code 0x1p3} are typing errors on a sheet.
 */
public final class PlainNumber {
  private static final Pattern DECIMAL =
      Pattern.compile("[+-]?([0-9]{1,15}([.,][0-9]{0,15})?|[.,][0-9]{1,15})([eE][+-]?[0-9]{1,2})?");

  private PlainNumber() {}

  /** The number; absent where it is none. */
  public static OptionalDouble of(String text) {
    return DECIMAL.matcher(text).matches()
        ? OptionalDouble.of(Double.parseDouble(text.replace(',', '.')))
        : OptionalDouble.empty();
  }
}

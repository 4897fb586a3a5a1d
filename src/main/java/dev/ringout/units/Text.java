package dev.ringout.units;

import java.util.Locale;

/** Sentences put together the same in every locale: some would write their own digits. */
public final class Text {
  private Text() {}

  /** A sentence with its blanks filled, as {@link String#format}. */
  public static String of(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}

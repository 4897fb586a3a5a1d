package dev.ringout.cells;

import java.util.Locale;

/**
 * Names of sheets, columns and settings are the same whatever their case, blanks and punctuation.
 */
public final class Names {
  private Names() {}

  /** A name reduced to its letters and digits in lower case. */
  public static String key(String name) {
    StringBuilder key = new StringBuilder();
    name.codePoints().filter(Character::isLetterOrDigit).forEach(key::appendCodePoint);
    return key.toString().toLowerCase(Locale.ROOT);
  }
}

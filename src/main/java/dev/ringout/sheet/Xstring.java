package dev.ringout.sheet;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Texts of workbooks, in which {@code _x000D_} stands for a character that XML can't hold, or that
 * is not written as it is (ECMA-376 part 1, 22.9.2.19: ST_Xstring).
 */
final class Xstring {
  private static final Pattern ESCAPED = Pattern.compile("_x([0-9A-Fa-f]{4})_");
  private static final Pattern LOOKS_ESCAPED = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

  private Xstring() {}

  /** The text that is meant. */
  static String decoded(String stored) {
    return stored.contains("_x")
        ? ESCAPED
            .matcher(stored)
            .replaceAll(
                found ->
                    Matcher.quoteReplacement(
                        String.valueOf((char) Integer.parseInt(found.group(1), 16))))
        : stored;
  }

  /** A text as it is stored, so that it is read as it is. */
  static String encoded(String text) {
    return text.contains("_x") ? LOOKS_ESCAPED.matcher(text).replaceAll("_x005F_") : text;
  }
}

package dev.ringout.cells;

/** Blanks that can't be seen: spaces, non-breaking and zero-width ones, byte-order marks. */
public final class Blanks {
  private Blanks() {}

  /** A text without blanks around it. */
  public static String strip(String text) {
    int start = 0;
    int end = text.length();
    while (start < end && isBlank(text.charAt(start))) {
      start++;
    }
    while (end > start && isBlank(text.charAt(end - 1))) {
      end--;
    }
    return text.substring(start, end);
  }

  static boolean isBlank(char c) {
    return Character.isWhitespace(c)
        || Character.isSpaceChar(c)
        || c == '\u200B'
        || c == '\u200C'
        || c == '\u200D'
        || c == '\uFEFF';
  }
}

package dev.ringout.imports;

import java.util.Locale;

/** Texts as they are compared: with one kind of blank, dash, quote, omega and micro. */
final class CellText {
  private CellText() {}

  /** A text without blanks around it and with one kind of blank and dash within. */
  static String clean(String text) {
    int length = text.length();
    if (isPlain(text)) {
      return text;
    }
    StringBuilder clean = new StringBuilder(length);
    for (int i = 0; i < length; i++) {
      char c = text.charAt(i);
      char one = plain(c);
      boolean blank = one == ' ';
      if (one != 0 && !(blank && (clean.length() == 0 || last(clean) == ' '))) {
        clean.append(one);
      }
    }
    return clean.toString().strip();
  }

  /**
   * Whether there is nothing to clean: printable ASCII without blanks around it or two together.
   */
  static boolean isPlain(String text) {
    int length = text.length();
    char previous = ' ';
    for (int i = 0; i < length; i++) {
      char c = text.charAt(i);
      if (c >= 0x7f || c < ' ' || (c == ' ' && previous == ' ')) {
        return false;
      }
      previous = c;
    }
    return length == 0 || previous != ' ';
  }

  private static char last(StringBuilder text) {
    return text.charAt(text.length() - 1);
  }

  private static char plain(char c) {
    return switch (c) {
      case '\u200B', '\u200C', '\u200D', '\uFEFF', '\u00AD' -> 0;
      case '\u2010',
          '\u2011',
          '\u2012',
          '\u2013',
          '\u2014',
          '\u2015',
          '\u2212',
          '\uFE58',
          '\uFE63',
          '\uFF0D' ->
          '-';
      case '\u2126' -> '\u03A9';
      case '\u00B5' -> '\u03BC';
      case '\u2018', '\u2019', '\u02BC' -> '\'';
      case '\u201C', '\u201D', '\u201E' -> '"';
      default -> Character.isWhitespace(c) || Character.isSpaceChar(c) ? ' ' : c;
    };
  }

  /** Whether blanks that can't be seen, or more than one kind, were cleaned away. */
  static boolean hasOddBlanks(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c != ' ' && c != '\n' && plain(c) != c && (plain(c) == ' ' || plain(c) == 0)) {
        return true;
      }
    }
    return !text.isEmpty() && (text.charAt(0) == ' ' || text.charAt(text.length() - 1) == ' ');
  }

  /** Whether a dash or a quote of another kind was cleaned. */
  static boolean hasOddDash(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      char one = plain(c);
      if (one != c && (one == '-' || one == '\'' || one == '"')) {
        return true;
      }
    }
    return false;
  }

  /** A mark for "as above". */
  static boolean isDitto(String clean, Words words) {
    return switch (clean) {
      case "\"", "''", "\u2033", "\u3003", "\u2193", "\"\"", "-\"-", "--\"--", "|", "\u2502" ->
          true;
      default -> clean.length() < 16 && !clean.isEmpty() && words.is("ditto", clean);
    };
  }

  /** A word or a dash that says: nothing here. */
  static boolean isNothing(String clean, Words words) {
    if (clean.isEmpty() || clean.length() > 24) {
      return clean.isEmpty();
    }
    boolean dashes = clean.chars().allMatch(c -> c == '-' || c == '.' || c == '_' || c == '*');
    return dashes || words.is("spare", clean);
  }

  /** Designators are compared without case, and without zeros before a number. */
  static String refKey(String ref) {
    StringBuilder key = new StringBuilder(ref.length());
    String upper = ref.toUpperCase(Locale.ROOT);
    for (int i = 0; i < upper.length(); i++) {
      char c = upper.charAt(i);
      boolean leadingZero =
          c == '0'
              && (i == 0 || !isDigit(upper.charAt(i - 1)))
              && i + 1 < upper.length()
              && isDigit(upper.charAt(i + 1));
      if (!leadingZero && c != ' ') {
        key.append(c);
      }
    }
    return key.toString();
  }

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** Whether a text is a number of digits alone. */
  static boolean isDigits(String text) {
    return !text.isEmpty() && text.chars().allMatch(c -> c >= '0' && c <= '9');
  }
}

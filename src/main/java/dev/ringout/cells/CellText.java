package dev.ringout.cells;

import java.util.Locale;

/** Texts as they are compared: with one kind of blank, dash, quote, omega and micro. */
public final class CellText {
  private CellText() {}

  /** A text without blanks around it and with one kind of blank and dash within. */
  public static String clean(String text) {
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
  public static boolean isPlain(String text) {
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
  public static boolean hasOddBlanks(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c != ' ' && c != '\n' && plain(c) != c && (plain(c) == ' ' || plain(c) == 0)) {
        return true;
      }
    }
    return !text.isEmpty() && (text.charAt(0) == ' ' || text.charAt(text.length() - 1) == ' ');
  }

  /** Whether a dash or a quote of another kind was cleaned. */
  public static boolean hasOddDash(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      char one = plain(c);
      if (one != c && (one == '-' || one == '\'' || one == '"')) {
        return true;
      }
    }
    return false;
  }

  /**
   * Designators are compared without case, without zeros before a number, and without blanks but
   * between two numbers.
   */
  public static String refKey(String ref) {
    StringBuilder key = new StringBuilder(ref.length());
    String upper = ref.toUpperCase(Locale.ROOT);
    boolean inNumber = false;
    for (int i = 0; i < upper.length(); i++) {
      char c = upper.charAt(i);
      boolean more = i + 1 < upper.length() && isDigit(upper.charAt(i + 1));
      boolean joins = c == ' ' && !(inNumber && more);
      if (joins || (c == '0' && !inNumber && more)) {
        continue;
      }
      inNumber = isDigit(c);
      key.append(c);
    }
    return key.toString();
  }

  /** Whether it is one of the ten digits that people type; others are text. */
  public static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** Whether a text is a number of digits alone. */
  public static boolean isDigits(String text) {
    return !text.isEmpty() && text.chars().allMatch(c -> c >= '0' && c <= '9');
  }

  /** A heading as headings are compared: without case, and with one kind of blank. */
  public static String headingKey(String heading) {
    return heading.toLowerCase(Locale.ROOT).replaceAll("[\\s\\u00A0]+", " ").strip();
  }

  /** Whether any digit stands in a text. */
  public static boolean hasDigit(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (isDigit(text.charAt(i))) {
        return true;
      }
    }
    return false;
  }

  /** A whole number as it was typed: a spreadsheet makes {@code 7.0} of 7. */
  public static String wholeNumber(String text) {
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}

package dev.ringout.sheet;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number as a spreadsheet has shown it, in whatever language, against the one that it stores. */
final class ShownText {
  private static final Pattern DIGITS =
      Pattern.compile("[^0-9.,]*([0-9.,'\\s\\p{Zs}]*[0-9.,])(?:E([+-]?[0-9]{1,3}))?[^0-9]*");

  private static final String MINUS = "-(\u2212";

  private ShownText() {}

  /**
   * Whether a text may show a number: rounded as the text is, with a decimal point or comma, with
   * the digits in groups or not.
   */
  static boolean mayBe(String text, double number) {
    Matcher digits = DIGITS.matcher(text);
    if (!digits.matches()) {
      return false;
    }
    boolean minus = text.chars().limit(digits.start(1)).anyMatch(c -> MINUS.indexOf(c) >= 0);
    double shift = digits.group(2) == null ? 0 : Double.parseDouble(digits.group(2));
    double scale = Math.pow(10, shift) * (text.indexOf('%') >= 0 ? 0.01 : 1);
    String plain = digits.group(1).replaceAll("['\\s\\p{Zs}]", "");
    return isNear(plain, '.', minus, scale, number) || isNear(plain, ',', minus, scale, number);
  }

  private static boolean isNear(
      String plain, char point, boolean minus, double scale, double number) {
    char group = point == '.' ? ',' : '.';
    String ungrouped = plain.replace(String.valueOf(group), "").replace(point, '.');
    OptionalDouble shown = StoredNumber.of(ungrouped);
    boolean groupsInFraction =
        plain.indexOf(point) >= 0 && plain.lastIndexOf(group) > plain.indexOf(point);
    if (shown.isEmpty() || groupsInFraction) {
      return false;
    }
    int at = ungrouped.indexOf('.');
    int decimals = at < 0 ? 0 : ungrouped.length() - at - 1;
    double value = shown.getAsDouble() * scale * (minus ? -1 : 1);
    // Half of the last digit shown, and what binary fractions lose.
    double most = 0.5 * Math.pow(10, -decimals) * scale * (1 + 1e-9) + Math.abs(number) * 1e-12;
    boolean sameSign = value == 0 || number == 0 || Math.signum(value) == Math.signum(number);
    return sameSign && Math.abs(value - number) <= most;
  }
}

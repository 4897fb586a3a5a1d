package dev.ringout.cells;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is said of a cell that is no reading, with what was probably meant. What can be meant in one
 * way only is understood elsewhere; here nothing is repaired, for a digit guessed wrong passes.
 */
final class DoubtfulReading {
  /** Nobody types more into such a cell and means a number. */
  private static final int LONGEST = 40;

  private static final int SHORTEST_WORD = 3;

  private static final Pattern IN_DOUBT = Pattern.compile("(.*?)\\s*[?]+");
  private static final Pattern ABOUT =
      Pattern.compile("(?:[~≈=±]|approx\\.?|about|ca\\.?)\\s*([.\\d].*)", Pattern.CASE_INSENSITIVE);
  private static final Pattern BETWEEN_TWO =
      Pattern.compile("\\s*(?:[/;\u2013-]|\\bto\\b|\\bor\\b)\\s*", Pattern.CASE_INSENSITIVE);
  private static final Pattern TWO_POINTS =
      Pattern.compile("([+-]?\\d*)[.,](\\d*)[.,](\\d*)(\\D*)");
  private static final Pattern LETTERS_AMONG_DIGITS =
      Pattern.compile("([OoQDIlSZB\\d.,]+)(\\s*\\D*)");
  private static final Pattern NUMBER_AND_MORE =
      Pattern.compile("([<>]?\\s*[+-]?\\d+(?:[.,]\\d+)?)(\\s*)(\\D+)");

  /** Volts, amperes, watts, farads, henries, seconds, degrees, a minus: no slip of the key. */
  private static final String OTHER_UNITS = "VAWFHSC°%-\u2013\u2212";

  private static final List<String> UNIT_WORDS =
      List.of("ohm", "ohms", "mohm", "kohm", "milliohm", "kilohm", "megohm", "gigohm");

  private DoubtfulReading() {}

  /** Why a text is no reading. */
  static <T> Understood<T> understood(String text) {
    if (text.length() <= LONGEST) {
      Matcher doubt = IN_DOUBT.matcher(text);
      if (doubt.matches()) {
        return Understood.not(
            quoted(text) + " is in doubt; read it again, or write it without the question mark",
            doubt.group(1));
      }
      Matcher about = ABOUT.matcher(text);
      if (about.matches()) {
        return Understood.not(
            quoted(text) + " is not a value that a meter shows; write what it showed",
            about.group(1));
      }
      String[] two = BETWEEN_TWO.split(text, -1);
      if (two.length == 2 && OhmsCell.isValue(two[0]) && OhmsCell.isValue(two[1])) {
        return Understood.not(
            quoted(text) + " is two values; write one, or give each a row of its own",
            two[0] + " or " + two[1]);
      }
      Matcher points = TWO_POINTS.matcher(text);
      if (points.matches()) {
        return Understood.not(quoted(text) + " has two decimal points", oneOf(points));
      }
    }
    Matcher number = NUMBER_AND_MORE.matcher(text);
    String digits = number.matches() ? number.group(1) : text;
    if (OhmsCell.COMMA_AND_THREE_DIGITS.matcher(digits).matches()) {
      return Understood.not(
          quoted(text) + " can be read in two ways; write it without a comma",
          digits.replace(",", "") + " or " + digits.replace(',', '.'));
    }
    return Understood.not(
        quoted(text) + " is not a reading; write one such as 0.3, 300 mΩ, 2k2, OL, >200 M, PASS",
        text.length() <= LONGEST ? meant(text) : "");
  }

  private static String quoted(String text) {
    return "\"" + text + "\"";
  }

  /** The point stands in one of the two places. */
  private static String oneOf(Matcher points) {
    String first = points.group(1) + "." + points.group(2) + points.group(3);
    String second = points.group(1) + points.group(2) + "." + points.group(3);
    String unit = points.group(4);
    if (points.group(2).isEmpty() || points.group(3).isEmpty()) {
      return OhmsCell.isValue(first) ? first + unit : "";
    }
    return OhmsCell.isValue(first) && OhmsCell.isValue(second)
        ? first + unit + " or " + second + unit
        : "";
  }

  private static String meant(String text) {
    String number = LikelyMeant.asNumber(text);
    if (!number.isEmpty()) {
      return number;
    }
    Matcher letters = LETTERS_AMONG_DIGITS.matcher(text);
    if (letters.matches() && text.chars().anyMatch(Character::isDigit)) {
      String repaired = LikelyMeant.asNumber(letters.group(1)) + letters.group(2);
      if (!repaired.equals(letters.group(2)) && OhmsCell.isValue(repaired)) {
        return repaired;
      }
    }
    String together = text.replace(" ", "");
    if (!together.equals(text) && OhmsCell.isValue(together)) {
      return together;
    }
    Matcher more = NUMBER_AND_MORE.matcher(text);
    if (more.matches()) {
      return withUnit(more);
    }
    return text.length() >= SHORTEST_WORD
        ? LikelyMeant.nearest(text.toUpperCase(Locale.ROOT), OhmsCell.words())
        : "";
  }

  /** {@code 0.3x} is a slip of the key, {@code 0.3 onm} another; {@code 0.3 V} is volts. */
  private static String withUnit(Matcher number) {
    String unit = Blanks.strip(number.group(3));
    if (unit.codePointCount(0, unit.length()) == 1) {
      return OTHER_UNITS.contains(unit.toUpperCase(Locale.ROOT)) ? "" : number.group(1);
    }
    String near = unit.length() < SHORTEST_WORD ? "" : LikelyMeant.nearest(unit, UNIT_WORDS);
    return near.isEmpty() ? "" : number.group(1) + number.group(2) + near;
  }
}

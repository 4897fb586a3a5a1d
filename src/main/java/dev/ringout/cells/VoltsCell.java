package dev.ringout.cells;

import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Volts as people write them. Insulation is tested with direct current; what says alternating
 * current, or millivolts, is another test or another number.
 */
public final class VoltsCell {
  private static final Pattern VOLTS = Pattern.compile("([+-]?[\\d.,]+(?:[eE][+-]?\\d+)?)\\s*(.*)");

  private static final Pattern LETTERS = Pattern.compile("[\\p{L}\\s.()-]*");

  /** The largest hand-held insulation testers give 15 kV (common practice, no source). */
  private static final double MOST_VOLTS = 15_000;

  private VoltsCell() {}

  /**
   * Volts above 0.
   *
   * @param otherUnit the unit of a bare number: of the heading or of the column Unit, or empty
   */
  public static Understood<Double> volts(String text, String otherUnit) {
    Matcher match = VOLTS.matcher(text);
    OptionalDouble number =
        match.matches() ? PlainNumber.of(match.group(1)) : OptionalDouble.empty();
    if (number.isEmpty()) {
      return Understood.not(
          "\"" + text + "\" is not a number of volts; write one such as 500, 500 V, 0.5 kV",
          LikelyMeant.asNumber(text));
    }
    String written = Blanks.strip(match.group(2));
    String unit = written.isEmpty() ? otherUnit : written;
    OptionalDouble factor = factor(unit);
    if (factor.isEmpty()) {
      return Understood.not("\"" + unit + "\" is not a unit of test voltage; write V or kV (DC)");
    }
    double volts = number.getAsDouble() * factor.getAsDouble();
    if (volts <= 0) {
      return Understood.not("\"" + text + "\" is not a test voltage: it must be above 0");
    }
    if (volts > MOST_VOLTS) {
      return Understood.not(
          Text.of(
              "\"%s\"%s is %s V: no insulation tester gives so much; look at the unit",
              text, written.isEmpty() ? " in " + otherUnit : "", Numbers.rounded(volts, 6)));
    }
    return Understood.as(volts);
  }

  /** A question mark, or the sign of alternating current, is no part of a unit. */
  private static OptionalDouble factor(String unit) {
    if (!LETTERS.matcher(unit).matches()) {
      return OptionalDouble.empty();
    }
    return switch (Names.key(unit).toLowerCase(Locale.ROOT)) {
      case "", "v", "vdc", "dcv", "dc", "volt", "volts", "voltsdc" -> OptionalDouble.of(1);
      case "kv", "kvdc", "kilovolt", "kilovolts" -> OptionalDouble.of(1000);
      default -> OptionalDouble.empty();
    };
  }
}

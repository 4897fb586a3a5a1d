package dev.ringout.cells;

import dev.ringout.units.Length;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths as people write them. A length without a unit is not understood. */
public final class LengthCell {
  private static final Pattern LENGTH = Pattern.compile("(\\d+(?:[.,]\\d+)?|[.,]\\d+)\\s*(.*)");

  private static final Map<String, Double> METRES =
      Map.ofEntries(
          Map.entry("mm", 0.001),
          Map.entry("cm", 0.01),
          Map.entry("m", 1.0),
          Map.entry("metre", 1.0),
          Map.entry("metres", 1.0),
          Map.entry("meter", 1.0),
          Map.entry("meters", 1.0),
          Map.entry("ft", Length.METRES_PER_FOOT),
          Map.entry("feet", Length.METRES_PER_FOOT),
          Map.entry("foot", Length.METRES_PER_FOOT),
          Map.entry("'", Length.METRES_PER_FOOT),
          Map.entry("′", Length.METRES_PER_FOOT),
          Map.entry("in", Length.METRES_PER_FOOT / 12),
          Map.entry("inch", Length.METRES_PER_FOOT / 12),
          Map.entry("inches", Length.METRES_PER_FOOT / 12),
          Map.entry("\"", Length.METRES_PER_FOOT / 12),
          Map.entry("″", Length.METRES_PER_FOOT / 12),
          Map.entry("”", Length.METRES_PER_FOOT / 12));

  private LengthCell() {}

  /**
   * A length.
   *
   * @param headingUnit the unit in the column's heading, or empty
   */
  public static Understood<Length> length(String text, String headingUnit) {
    Matcher match = LENGTH.matcher(text);
    if (!match.matches()) {
      return notUnderstood(text);
    }
    String unit = match.group(2).isEmpty() ? headingUnit : match.group(2);
    if (unit.isEmpty()) {
      return Understood.not(
          "\"" + text + "\" has no unit; write it in the cell or in the heading: Length (ft)");
    }
    Double metres =
        METRES.get(Blanks.strip(unit).toLowerCase(Locale.ROOT).replaceFirst("\\.$", ""));
    if (metres == null) {
      return notUnderstood(text + (match.group(2).isEmpty() ? " " + unit : ""));
    }
    double length = Double.parseDouble(match.group(1).replace(',', '.')) * metres;
    return Double.isFinite(length) ? Understood.as(new Length(length)) : notUnderstood(text);
  }

  /** Whether it is a number that does not say of what. */
  public static boolean isNumber(String text) {
    Matcher match = LENGTH.matcher(text);
    return match.matches() && match.group(2).isEmpty();
  }

  private static Understood<Length> notUnderstood(String text) {
    return Understood.not(
        "\"" + text + "\" is not a length; write one such as 4 ft, 18 in, 250 mm");
  }
}

package dev.ringout.cells;

import dev.ringout.units.Gauge;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Gauges as people write them. */
public final class GaugeCell {
  private static final Pattern METRIC =
      Pattern.compile(
          "(\\d+(?:[.,]\\d+)?)\\s*(?:mm²|mm2|mm\\^2|sq\\.?\\s*mm)", Pattern.CASE_INSENSITIVE);
  private static final Pattern AWG =
      Pattern.compile(
          "(?:AWG|#)?\\s*(\\d{1,2}|[1-4]/0|0{1,4})\\s*(?:AWG|ga\\.?|gauge)?",
          Pattern.CASE_INSENSITIVE);
  private static final int FINEST_AWG = 50;

  private GaugeCell() {}

  /**
   * A gauge.
   *
   * @param headingUnit the unit in the column's heading, or empty
   */
  public static Understood<Gauge> gauge(String text, String headingUnit) {
    Matcher metric = METRIC.matcher(text);
    if (metric.matches()) {
      return millimetres(metric.group(1));
    }
    if (headingUnit.toLowerCase(Locale.ROOT).contains("mm") && isNumber(text)) {
      return millimetres(text);
    }
    Matcher awg = AWG.matcher(text);
    if (awg.matches()) {
      String size = awg.group(1);
      if (size.endsWith("/0")) {
        return Understood.as(new Gauge.Awg(1 - (size.charAt(0) - '0')));
      }
      if (size.matches("0{1,4}")) {
        return Understood.as(new Gauge.Awg(1 - size.length()));
      }
      int number = Integer.parseInt(size);
      if (number >= 1 && number <= FINEST_AWG) {
        return Understood.as(new Gauge.Awg(number));
      }
    }
    return Understood.not(
        "\"" + text + "\" is not a gauge; write one such as 20, AWG 20, 4/0, 0.75 mm²",
        maybe(text));
  }

  /** Whether it is a number that does not say of what. */
  public static boolean isNumber(String text) {
    return text.matches("\\d+(?:[.,]\\d+)?");
  }

  private static Understood<Gauge> millimetres(String digits) {
    double size = Double.parseDouble(digits.replace(',', '.'));
    if (!Double.isFinite(size)) {
      return Understood.not("\"" + digits + "\" is not a gauge");
    }
    return size > 0
        ? Understood.as(new Gauge.SquareMillimetres(size))
        : Understood.not("a gauge of 0");
  }

  private static String maybe(String text) {
    if (text.matches("\\d+[.,]\\d+")) {
      return text + " mm²";
    }
    return LikelyMeant.asNumber(text);
  }
}

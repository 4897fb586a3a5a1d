package dev.ringout.meter;

import dev.ringout.readings.Measured;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The answer to a query for a value, by SCPI-99 (volume 1, 7.2): infinity is 9.9E37, its negative
 * −9.9E37, not a number 9.91E37; a unit or a second field may follow.
 */
public final class ScpiAnswer {
  private static final double INFINITE = 9.9e37;
  private static final double NOT_A_NUMBER = 9.91e37;

  /** IEEE 488.2 takes M as mega before OHM; in small letters it could be milli, and is refused. */
  private static final Map<String, Double> UNITS =
      Map.of(
          "OHM", 1.0, "OHMS", 1.0, "OHM4W", 1.0, "KOHM", 1e3, "MOHM", 1e6, "GOHM", 1e9, "UOHM",
          1e-6);

  private static final Pattern VALUE =
      Pattern.compile("([+-]?[0-9.]+(?:[eE][+-]?[0-9]+)?)\\s*([A-Za-z][A-Za-z0-9]*)?");

  private ScpiAnswer() {}

  /**
   * What an answer says.
   *
   * @param overFloorOhms from where on a value means over range, for meters that say 1E9
   * @param secondIsVolts whether the second field gives the volts of an insulation tester
   */
  public static Shown read(String line, double overFloorOhms, boolean secondIsVolts) {
    if (line.indexOf('"') >= 0) {
      // The error queue answers so: +0,"No error" is no joint of nothing.
      return new Shown.Unreadable();
    }
    String[] fields = line.strip().split(",", -1);
    Shown first = value(fields[0].strip(), overFloorOhms, fields.length > 1 ? fields[1] : "");
    if (!secondIsVolts || first.resistance().isEmpty()) {
      return first;
    }
    Optional<BigDecimal> volts =
        fields.length > 1
            ? OhmsNumber.of(fields[1].strip().replaceFirst("(?i)\\s*V(OLTS?)?$", ""))
            : Optional.empty();
    return volts.isEmpty()
        ? new Shown.Unreadable()
        : new Shown.Resistance(
            first.resistance().get().measured(), OptionalDouble.of(volts.get().doubleValue()));
  }

  private static Shown value(String field, double overFloorOhms, String second) {
    Matcher written = VALUE.matcher(field);
    if (!written.matches()) {
      return word(field);
    }
    String unit = unit(written.group(2), second);
    Optional<BigDecimal> number = OhmsNumber.of(written.group(1));
    if (number.isEmpty()) {
      return new Shown.Unreadable();
    }
    double value = number.get().doubleValue();
    if (Math.abs(value) >= INFINITE) {
      return outside(value);
    }
    Double factor = unit.isEmpty() ? Double.valueOf(1) : UNITS.get(unit);
    if (factor == null) {
      return isOtherUnit(unit) ? new Shown.OtherQuantity(unit) : new Shown.Unreadable();
    }
    if (value * factor >= overFloorOhms) {
      return overRange();
    }
    return new Shown.Resistance(OhmsNumber.measured(number.get(), factor));
  }

  /** The unit behind the number, or in the second field; a small m is kept, and is no unit. */
  private static String unit(@Nullable String behind, String second) {
    String written = behind == null ? second.strip() : behind;
    if (!written.matches("[A-Za-z][A-Za-z0-9]*")) {
      return "";
    }
    return written.matches("m[oO].*") ? "m" : written.toUpperCase(Locale.ROOT);
  }

  private static boolean isOtherUnit(String unit) {
    return unit.matches("[UMK]?(V|VOLT|VOLTS|A|AMP|AMPS|HZ|F|S)|VDC|VAC|ADC|AAC|CEL|DEG|C|K|W|DB");
  }

  private static Shown word(String word) {
    return switch (word.toUpperCase(Locale.ROOT)) {
      case "INF", "+INF", "INFINITY", "+INFINITY" -> overRange();
      case "-INF", "NINF", "-INFINITY" -> outside(-INFINITE);
      case "NAN" -> new Shown.NoValue();
      default -> new Shown.Unreadable();
    };
  }

  /** What is below every number is no open: something else drives the meter. */
  private static Shown outside(double value) {
    if (value < 0) {
      return new Shown.Resistance(new Measured.BelowZero(Double.NEGATIVE_INFINITY, "-OL"));
    }
    return value >= NOT_A_NUMBER ? new Shown.NoValue() : overRange();
  }

  private static Shown overRange() {
    return new Shown.Resistance(new Measured.OverRange(OptionalDouble.empty()));
  }
}

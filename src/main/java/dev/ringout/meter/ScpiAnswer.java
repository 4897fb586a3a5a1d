package dev.ringout.meter;

import java.math.BigDecimal;
import java.util.Arrays;
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
      Map.of("OHM", 1.0, "OHM4W", 1.0, "KOHM", 1e3, "MOHM", 1e6, "GOHM", 1e9, "UOHM", 1e-6);

  private static final String WORD = "[A-Za-zΩ][A-Za-z0-9Ω]*";

  private static final Pattern VALUE =
      Pattern.compile("([+-]?[0-9.]+(?:[eE][+-]?[0-9]+)?)\\s*(" + WORD + ")?");

  /** A number that is a field of its own: with its sign, or with its unit behind. */
  private static final Pattern OWN_FIELD =
      Pattern.compile(
          "[+-][0-9.]+(?:[eE][+-]?[0-9]+)?\\s*[A-Za-z#]*|[0-9.]+(?:[eE][+-]?[0-9]+)?\\s*[A-DF-Za-df-z#][A-Za-z#]*");

  private ScpiAnswer() {}

  /**
   * What an answer says.
   *
   * @param overFloorOhms from where on a value means over range, for meters that say 1E9
   * @param secondIsVolts whether the second field gives the volts of an insulation tester
   */
  public static Shown read(String line, double overFloorOhms, boolean secondIsVolts) {
    return of(line.replace('\u2126', 'Ω'), overFloorOhms, secondIsVolts);
  }

  private static Shown of(String line, double overFloorOhms, boolean secondIsVolts) {
    if (line.indexOf('"') >= 0) {
      // The error queue answers so: +0,"No error" is no joint of nothing.
      return new Shown.Unreadable();
    }
    String said = line.strip();
    String[] fields = said.split(",", -1);
    if (said.length() > Shown.MOST_LETTERS || !isPlain(fields, secondIsVolts)) {
      return new Shown.Unreadable();
    }
    Shown first = value(fields[0].strip(), overFloorOhms, fields.length > 1 ? fields[1] : "");
    if (!secondIsVolts || first.resistance().isEmpty()) {
      return first;
    }
    if (fields.length == 1) {
      return new Shown.WithoutVolts();
    }
    Optional<BigDecimal> volts =
        OhmsNumber.of(fields[1].strip().replaceFirst("(?i)\\s*V(OLTS?)?$", ""));
    if (volts.isEmpty()
        || volts.get().signum() < 0
        || volts.get().doubleValue() > Shown.MOST_VOLTS) {
      return new Shown.Unreadable();
    }
    return volts.get().signum() == 0
        ? new Shown.WithoutVolts()
        : new Shown.Resistance(
            first.resistance().get().measured(), OptionalDouble.of(volts.get().doubleValue()));
  }

  /**
   * Whether nothing behind the first number may change what it is: a unit, or numbers that say by
   * their sign or their unit that they are fields of their own.
   */
  private static boolean isPlain(String[] fields, boolean secondIsVolts) {
    if (isDecimalComma(fields) || isListOfValues(fields)) {
      return false;
    }
    for (int i = 1; i < fields.length; i++) {
      String field = fields[i].strip();
      boolean isUnit = i == 1 && field.matches(WORD);
      boolean hasUnit = fields[0].matches(".*[A-DF-Za-df-zΩ].*");
      boolean isVolts = i == 1 && secondIsVolts;
      if (isUnit ? hasUnit : !isVolts && !field.isEmpty() && !OWN_FIELD.matcher(field).matches()) {
        return false;
      }
    }
    return true;
  }

  /**
   * {@code 0,+9.9E+37}: a state goes before the value; {@code 12.3,+9.9E+37}: another value stands
   * behind it.
   */
  private static boolean isListOfValues(String[] fields) {
    if (fields.length == 1) {
      return false;
    }
    boolean isWhole = fields[0].strip().matches("[+-]?[0-9]+");
    boolean isNumber = fields[1].strip().matches("[+-].*");
    boolean isOver =
        Arrays.stream(fields)
            .skip(1)
            .flatMap(field -> OhmsNumber.of(field.strip()).stream())
            .anyMatch(number -> Math.abs(number.doubleValue()) >= INFINITE);
    return (isWhole && isNumber) || isOver;
  }

  /** {@code 0,21} and {@code +9,90000000E+37}: a whole number and digits behind a comma. */
  private static boolean isDecimalComma(String[] fields) {
    return fields.length > 1
        && fields[0].strip().matches("[+-]?[0-9]+")
        && fields[1].matches("[0-9]+([eE][+-]?[0-9]+)?.*");
  }

  private static Shown value(String field, double overFloorOhms, String second) {
    Matcher written = VALUE.matcher(field);
    if (!written.matches()) {
      String behind = unit(null, second);
      return isOtherUnit(behind) ? new Shown.OtherQuantity(behind) : word(field);
    }
    String unit = unit(written.group(2), second);
    Optional<BigDecimal> number = OhmsNumber.of(written.group(1));
    if (number.isEmpty()) {
      return new Shown.Unreadable();
    }
    double value = number.get().doubleValue();
    if (isOtherUnit(unit)) {
      return new Shown.OtherQuantity(unit);
    }
    if (Math.abs(value) >= INFINITE) {
      return outside(value);
    }
    Double factor = unit.isEmpty() ? Double.valueOf(1) : UNITS.get(unit);
    if (factor == null) {
      return new Shown.Unreadable();
    }
    if (value * factor >= overFloorOhms) {
      return new Shown.Resistance(OhmsNumber.overRange());
    }
    return new Shown.Resistance(OhmsNumber.measured(number.get(), factor));
  }

  /** The unit behind the number, or in the second field; a small m is kept, and is no unit. */
  private static String unit(@Nullable String behind, String second) {
    String written = behind == null ? second.strip() : behind;
    if (!written.matches(WORD)) {
      return "";
    }
    if (written.matches("m[oOΩ].*")) {
      return "m";
    }
    return written.toUpperCase(Locale.ROOT).replaceFirst("Ω$", "OHM").replaceFirst("OHMS$", "OHM");
  }

  private static boolean isOtherUnit(String unit) {
    return unit.matches("[UMK]?(V|VOLT|VOLTS|A|AMP|AMPS|HZ|F|S)|VDC|VAC|ADC|AAC|CEL|DEG|C|K|W|DB");
  }

  private static Shown word(String word) {
    return switch (word.toUpperCase(Locale.ROOT)) {
      case "INF", "+INF", "INFINITY", "+INFINITY", "OL", "+OL", "OVLD", "OVERLOAD" ->
          new Shown.Resistance(OhmsNumber.overRange());
      case "-INF", "NINF", "-INFINITY", "-OL" -> new Shown.Resistance(OhmsNumber.belowRange());
      case "NAN" -> new Shown.NoValue();
      default -> new Shown.Unreadable();
    };
  }

  private static Shown outside(double value) {
    if (value >= NOT_A_NUMBER) {
      return new Shown.NoValue();
    }
    return new Shown.Resistance(value < 0 ? OhmsNumber.belowRange() : OhmsNumber.overRange());
  }
}

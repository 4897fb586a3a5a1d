package dev.ringout.benchmarks.weaken;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Ohms, dates and words as this bench writes them, and reads them back. */
final class Values {
  static final List<String> WORDS = List.of("OK", "PASS", "beep", "✓");
  private static final Set<String> BEYOND = Set.of("OL", "O.L", "∞");
  private static final Set<String> BLANK = Set.of("", "N/T", "N/A");
  private static final Map<String, Double> UNITS =
      Map.of("mΩ", 1e-3, "Ω", 1.0, "kΩ", 1e3, "MΩ", 1e6, "GΩ", 1e9);
  private static final Pattern NUMBER = Pattern.compile("(>?)\\s*([0-9.]+)\\s*(\\S*)");

  private Values() {}

  /** What a cell of readings says. */
  sealed interface Value {}

  /** Nothing. */
  record Blank() implements Value {}

  /** A number. */
  record Ohms(double ohms) implements Value {}

  /** More than a number; of {@code OL} more than the range, which the job sheet gives or not. */
  record Above(OptionalDouble ohms) implements Value {}

  /** A word: good, or not. */
  record Word(boolean good) implements Value {}

  /** A reading's cell; absent where it can't be read. */
  static Optional<Value> read(String text, String unit) {
    String upper = text.toUpperCase(Locale.ROOT);
    if (BLANK.contains(upper)) {
      return Optional.of(new Blank());
    }
    if (BEYOND.contains(upper)) {
      return Optional.of(new Above(OptionalDouble.empty()));
    }
    if (WORDS.stream().anyMatch(word -> word.equalsIgnoreCase(text)) || upper.equals("FAIL")) {
      return Optional.of(new Word(!upper.equals("FAIL")));
    }
    Matcher number = NUMBER.matcher(text);
    if (!number.matches()) {
      return Optional.empty();
    }
    Double factor = UNITS.get(number.group(3).isEmpty() ? unit : number.group(3));
    if (factor == null) {
      return Optional.empty();
    }
    double ohms = Double.parseDouble(number.group(2)) * factor;
    return Optional.of(
        number.group(1).isEmpty() ? new Ohms(ohms) : new Above(OptionalDouble.of(ohms)));
  }

  /** Ohms such as {@code 40 MΩ}; absent where the text gives none. */
  static OptionalDouble ohms(String text) {
    return read(text, "").orElse(new Blank()) instanceof Ohms number
        ? OptionalDouble.of(number.ohms())
        : OptionalDouble.empty();
  }

  /** A plain number with or without a unit after it. */
  static OptionalDouble number(String text) {
    Matcher number = NUMBER.matcher(text);
    return number.matches()
        ? OptionalDouble.of(Double.parseDouble(number.group(2)))
        : OptionalDouble.empty();
  }

  /** Ohms in a unit: to a thousandth of an ohm below 100 Ω, else to four digits or more. */
  static String text(double ohms, String unit) {
    int digits = ohms < 100 ? 3 : ohms < 1e4 ? 1 : -3;
    BigDecimal rounded = new BigDecimal(ohms).setScale(digits, RoundingMode.HALF_UP);
    BigDecimal factor = new BigDecimal("" + UNITS.getOrDefault(unit, 1.0));
    return rounded.divide(factor, 12, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
  }

  static double factor(String unit) {
    return UNITS.getOrDefault(unit, 1.0);
  }
}

package dev.ringout.cells;

import dev.ringout.readings.Measured;
import dev.ringout.readings.Measured.BelowZero;
import dev.ringout.readings.Measured.LessThan;
import dev.ringout.readings.Measured.Meaning;
import dev.ringout.readings.Measured.MoreThan;
import dev.ringout.readings.Measured.NotTested;
import dev.ringout.readings.Measured.OverRange;
import dev.ringout.readings.Measured.TakenBack;
import dev.ringout.readings.Measured.Value;
import dev.ringout.readings.Measured.Word;
import dev.ringout.units.Ohms;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Readings and resistances as people write them. */
public final class OhmsCell {
  private static final Set<String> NOT_TESTED =
      Set.of(
          "",
          "N/T",
          "NT",
          "N.T.",
          "NOT TESTED",
          "NOT DONE",
          "NOT MEASURED",
          "NOT READ",
          "SKIPPED",
          "N/A",
          "N.A.",
          "-",
          "--",
          "---",
          "\u2013",
          "\u2014");

  /** {@code taken back: 0.31} says what it was. */
  private static final Pattern TAKEN_BACK =
      Pattern.compile(Measured.TakenBack.WORDS.toUpperCase(Locale.ROOT) + "(\\s*:.*)?");

  private static final Set<String> OVER_RANGE =
      Set.of(
          "OL",
          "O.L",
          "O.L.",
          "O/L",
          "O L",
          "0L",
          "0.L",
          "0.L.",
          "0/L",
          "0 L",
          "OVLD",
          "OVER",
          "OVERLOAD",
          "OVER RANGE",
          "OVERRANGE",
          "∞",
          "INF",
          "INF.",
          "INFINITE",
          "INFINITY",
          "OPEN");

  private static final Set<String> BEEP = Set.of("BEEP", "BEEPS", "TONE");
  private static final Set<String> PASS = Set.of("PASS", "OK", "✓", "✔", "SAT", "GOOD");
  private static final Set<String> FAIL = Set.of("FAIL", "UNSAT", "✗", "✘", "BAD", "NOT OK");

  private static final Pattern NUMBER =
      Pattern.compile("([<>≤≥]=?)?\\s*([+-]?(?:\\d+(?:[.,]\\d*)?|[.,]\\d+)(?:[eE][+-]?\\d+)?)(.*)");

  /** Minus as programs and people write it, where a number follows; a hyphen too that is soft. */
  private static final Pattern MINUS =
      Pattern.compile(
          "^([<>≤≥]=?)?\\s*[\u00ad\u2010-\u2015\u2212\ufe63\uff0d-]\\s*(?=[.,]?\\d|[RrkKmMG]\\d)");

  private static final Pattern NOT_ZERO = Pattern.compile("[+-]?[0.,]*[1-9]");

  /** {@code 2k2}, {@code 4R7}, {@code R47}: the letter stands for the point. */
  private static final Pattern LETTER_FOR_POINT = Pattern.compile("(-?)(\\d*)([RrkKmMG])(\\d+)");

  /** {@code 1,000} could be one or a thousand. */
  static final Pattern COMMA_AND_THREE_DIGITS = Pattern.compile("[+-]?[1-9]\\d*,\\d{3}");

  private static final Pattern OHM_AT_END =
      Pattern.compile("(Ω|ohms?)$", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  private static final Map<String, Double> UNITS =
      Map.ofEntries(
          Map.entry("µ", 1e-6),
          Map.entry("micro", 1e-6),
          Map.entry("m", 1e-3),
          Map.entry("milli", 1e-3),
          Map.entry("", 1.0),
          Map.entry("R", 1.0),
          Map.entry("r", 1.0),
          Map.entry("k", 1e3),
          Map.entry("K", 1e3),
          Map.entry("kilo", 1e3),
          Map.entry("kil", 1e3),
          Map.entry("M", 1e6),
          Map.entry("meg", 1e6),
          Map.entry("mega", 1e6),
          Map.entry("G", 1e9),
          Map.entry("gig", 1e9),
          Map.entry("giga", 1e9),
          Map.entry("T", 1e12),
          Map.entry("tera", 1e12));

  private OhmsCell() {}

  /**
   * The factor of a unit such as {@code mΩ}, {@code kohm}, {@code MEG}; absent where it is none.
   */
  public static OptionalDouble unit(String text) {
    String written = Blanks.strip(text).replace('\u2126', 'Ω').replace('\u03BC', 'µ');
    String unit = Blanks.strip(OHM_AT_END.matcher(written).replaceFirst(""));
    // A hyphen stands before ohm; by itself it may be a minus behind the number.
    if (unit.endsWith("-") && unit.length() > 1 && !unit.equals(written)) {
      unit = unit.substring(0, unit.length() - 1);
    }
    Double factor = UNITS.get(unit);
    if (factor == null) {
      String word = unit.toLowerCase(Locale.ROOT);
      factor = UNITS.get(word.endsWith("s") ? word.substring(0, word.length() - 1) : word);
      if (factor != null && unit.length() < 3) {
        factor = null;
      }
    }
    return factor == null ? OptionalDouble.empty() : OptionalDouble.of(factor);
  }

  /**
   * A reading.
   *
   * @param unit the unit of a bare number, already known to be one
   */
  public static Understood<Measured> reading(String text, String unit) {
    String word = text.toUpperCase(Locale.ROOT);
    if (NOT_TESTED.contains(word)) {
      return Understood.as(new NotTested());
    }
    if (TAKEN_BACK.matcher(word).matches()) {
      return Understood.as(new TakenBack(text));
    }
    if (OVER_RANGE.contains(word)) {
      return Understood.as(new OverRange(OptionalDouble.empty(), text));
    }
    if (BEEP.contains(word)) {
      return Understood.as(new Word(Meaning.BEEP, text));
    }
    if (PASS.contains(word)) {
      return Understood.as(new Word(Meaning.PASS, text));
    }
    if (FAIL.contains(word)) {
      return Understood.as(new Word(Meaning.FAIL, text));
    }
    return numeric(text, unit);
  }

  /** A resistance that is a plain number, such as a limit. */
  public static Understood<Double> ohms(String text, String unit) {
    return number(text, unit)
        .filter(written -> !written.isBound())
        .map(written -> Understood.as(written.value().ohms()))
        .orElseGet(
            () -> Understood.not("\"" + text + "\" is not a resistance; write one such as 0.5 Ω"));
  }

  private static Understood<Measured> numeric(String text, String unit) {
    Optional<Measured> measured = number(text, unit).map(Written::measured);
    return measured.isPresent()
        ? new Understood<>(measured, "", "")
        : DoubtfulReading.understood(text);
  }

  /** Whether a text is one value, whatever its unit may be. */
  static boolean isValue(String text) {
    return number(text, "").filter(written -> !written.isBound()).isPresent();
  }

  /**
   * A number as it stands in a cell.
   *
   * @param bound {@code <} or {@code >} where it is only a bound, else empty
   */
  private record Written(String bound, Value value) {
    boolean isBound() {
      return !bound.isEmpty();
    }

    /** Neither beyond all numbers nor so small that it would become nothing. */
    boolean isNumber(String digits) {
      boolean vanished = value.ohms() == 0 && NOT_ZERO.matcher(digits).lookingAt();
      return Double.isFinite(value.ohms()) && Double.isFinite(value.halfDigitOhms()) && !vanished;
    }

    /** No resistance is below zero, or less than nothing. */
    Measured measured() {
      boolean less = bound.equals("<");
      if (value.ohms() < 0 || (less && value.ohms() <= 0)) {
        String text = Ohms.text(value.ohms());
        return new BelowZero(value.ohms(), isBound() ? bound + " " + text : text);
      }
      if (!isBound()) {
        return value;
      }
      return less ? new LessThan(value.ohms()) : new MoreThan(value.ohms());
    }
  }

  private static Optional<Written> number(String typed, String unit) {
    String text = MINUS.matcher(typed).replaceFirst("$1-");
    Matcher letter = LETTER_FOR_POINT.matcher(text);
    if (letter.matches()) {
      double factor = UNITS.getOrDefault(letter.group(3), 1.0);
      String whole = letter.group(2).isEmpty() ? "0" : letter.group(2);
      String digits = letter.group(1) + whole + "." + letter.group(4);
      return Optional.of(new Written("", value(digits, factor)))
          .filter(written -> written.isNumber(digits));
    }
    Matcher number = NUMBER.matcher(text);
    if (!number.matches() || COMMA_AND_THREE_DIGITS.matcher(number.group(2)).matches()) {
      return Optional.empty();
    }
    String sign = number.group(1) == null ? "" : number.group(1);
    String digits = number.group(2);
    String written = Blanks.strip(number.group(3));
    boolean andMore = written.startsWith("+") || written.endsWith("+");
    if (andMore) {
      written = Blanks.strip(withoutPlus(written));
    }
    OptionalDouble factor = unit(written.isEmpty() ? unit : written);
    boolean less = sign.startsWith("<") || sign.startsWith("≤");
    if (factor.isEmpty() || (andMore && (less || digits.startsWith("-")))) {
      return Optional.empty();
    }
    String bound = less ? "<" : sign.isEmpty() && !andMore ? "" : ">";
    return Optional.of(new Written(bound, value(digits.replace(',', '.'), factor.getAsDouble())))
        .filter(one -> one.isNumber(digits));
  }

  /** {@code 200+ MΩ} and {@code 200 MΩ+} are more than 200 MΩ. */
  private static String withoutPlus(String unit) {
    return unit.startsWith("+") ? unit.substring(1) : unit.substring(0, unit.length() - 1);
  }

  /** Whether a text is blank, or says that there is nothing. */
  public static boolean isNotTested(String text) {
    return NOT_TESTED.contains(text.toUpperCase(Locale.ROOT));
  }

  /** Whether a word, in capitals, says that something is open or not as it should be. */
  public static boolean isFailing(String word) {
    return FAIL.contains(word) || OVER_RANGE.contains(word);
  }

  /** Every word that is understood, for what was probably meant. */
  static List<String> words() {
    return Stream.of(NOT_TESTED, OVER_RANGE, BEEP, PASS, FAIL)
        .flatMap(Set::stream)
        .sorted()
        .toList();
  }

  private static Value value(String digits, double factor) {
    int exponentAt = digits.toLowerCase(Locale.ROOT).indexOf('e');
    String mantissa = exponentAt < 0 ? digits : digits.substring(0, exponentAt);
    int point = mantissa.indexOf('.');
    int decimals = point < 0 ? 0 : mantissa.length() - point - 1;
    double scale = exponentAt < 0 ? 1 : Math.pow(10, exponent(digits.substring(exponentAt + 1)));
    double halfDigit = 0.5 * Math.pow(10, -decimals) * scale * factor;
    return new Value(Double.parseDouble(digits) * factor, halfDigit);
  }

  /** Zeros before it say nothing; what then has more digits is beyond all numbers. */
  private static int exponent(String digits) {
    String number = digits.replaceFirst("^([+-]?)0+(?=\\d)", "$1");
    return number.length() > 4 ? 0 : Integer.parseInt(number);
  }
}

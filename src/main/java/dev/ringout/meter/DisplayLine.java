package dev.ringout.meter;

import dev.ringout.readings.Measured;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A line of a meter that only talks: sign, number, prefix and unit, words of its function before or
 * behind, {@code OL} with its point wherever the display had it, {@code > 1.00 GΩ}.
 */
public final class DisplayLine {
  /** As single letters, and as words, which alone leave no doubt which case they are in. */
  private static final String PREFIXES = "[nuµmkKMGT]|(?i:meg|mega|kilo?|giga|milli|micro)";

  private static final String UNIT_OF_OHMS = "(?:" + PREFIXES + ")?(?:Ω|[Oo]hms?|OHMS?)";

  private static final Pattern TOKEN =
      Pattern.compile(
          "(?<wires>\\s*(?<![^\\s,;])[24]-?(?i:W|WIRE)(?![^\\s,;]))"
              + "|(?<over>(?<![\\d.A-Za-z])(?:(?:>=?|≥)\\s*)?[+-]?\\s*"
              + "(?:\\.[O0]L|[O0]\\.?L\\.?|O L|ol|OVLD|OVL|OFL|O/L|(?i:OVER(?:LOAD|FLOW|RANGE)?"
              + "|OPEN|INF(?:INITY)?)|∞)(?:(?![A-Za-z\\d])|(?="
              + UNIT_OF_OHMS
              + "(?![A-Za-z\\d]))))"
              + "|(?<bound>[<>]=?|[≥≤])?\\s*(?<number>[+-]?\\s*(?:\\d+(?:[.,]\\d*)?|\\.\\d+"
              + "|(?<![^\\s+-]),\\d+)"
              + "(?:[eE][+-]?\\d+)?)"
              + "|(?<dashes>-{2,})"
              + "|(?<word>[A-Za-zΩµ°%~][A-Za-zΩµ°%~0-9/_]*)"
              + "|(?<between>[\\s,;:=]+)");

  /** {@code 1,234} could be one or a thousand. */
  private static final Pattern COMMA_AND_THREE_DIGITS = Pattern.compile("[+-]?\\d+,\\d{3}");

  private static final Pattern OHM =
      Pattern.compile("(|" + PREFIXES + ")(?:Ω|[Oo]hms?|OHMS?)(?:[24]W)?");
  private static final Pattern BARE_OHM = Pattern.compile("Ω|[Oo]hms?|OHMS?");
  private static final Pattern OTHER_UNIT =
      Pattern.compile(
          "[nuµmkM]?(?:V|A|F|Hz|HZ|W|S)(?:dc|ac|DC|AC)?|°[CF]|%|dB[Vm]?|hFE|(?i:VOLTS?|AMPS?)");
  private static final Pattern PREFIX = Pattern.compile(PREFIXES);

  /** Those of an insulation tester; alternating ones are on the circuit. */
  private static final Pattern VOLTS = Pattern.compile("([mk]?)(?:V|VOLTS?)(?:dc|DC)?");

  /** What the display shows then is not what the probes touch, or not that alone. */
  private static final Set<String> HELD =
      Set.of(
          "HOLD",
          "AHOLD",
          "AUTOHOLD",
          "PHOLD",
          "HLD",
          "DH",
          "H",
          "MAX",
          "MIN",
          "AVG",
          "AVE",
          "AVERAGE",
          "PEAK",
          "MEM",
          "RECALL",
          "STORE",
          "REC",
          "LOG",
          "REL",
          "DELTA",
          "ZERO",
          "NULL");

  /** Words that say that it is about ohms; prefix and number may then stand without a unit. */
  private static final Set<String> OF_OHMS = Set.of("RES", "RESISTANCE", "CONT", "CONTINUITY");

  /** Words that displays show beside a value and that say nothing of it; any other may. */
  private static final Set<String> HARMLESS =
      Set.of(
          "R", "AUTO", "MAN", "MANU", "MANUAL", "APO", "RS", "RS232", "BEEP", "OK", "PASS", "SLOW",
          "MED", "FAST");

  private static final Set<String> OF_OTHERS = Set.of("DIODE", "DIO", "CAP", "FREQ", "TEMP");

  private final List<Value> values = new ArrayList<>();
  private String held = "";
  private String other = "";
  private boolean ofOhms;
  private boolean dashes;
  private boolean readable = true;
  private boolean decimalComma;
  private boolean commaBetween;
  private Optional<String> unitBefore = Optional.empty();

  private DisplayLine() {}

  /** One number of the line; its unit may stand behind. */
  private static final class Value {
    private final String bound;
    private final Optional<BigDecimal> number;
    private final boolean negative;
    private String unit = "";

    Value(String bound, Optional<BigDecimal> number, boolean negative) {
      this.bound = bound;
      this.number = number;
      this.negative = negative;
    }
  }

  /** What a line of a meter that talks so says. */
  public static Shown read(String line, MeterProfile.Talk words) {
    Shown shown = read(line, words.bareIsOhms());
    Optional<Shown.Resistance> ohms = shown.resistance();
    if (ohms.isEmpty()) {
      return shown;
    }
    if (words.withVolts()) {
      return ohms.get().volts().orElse(0) > 0 ? shown : new Shown.WithoutVolts();
    }
    // Volts beside ohms are on the circuit, where no tester puts them there.
    return ohms.get().volts().isEmpty() ? shown : new Shown.OtherQuantity("V");
  }

  /**
   * What a line says.
   *
   * @param bareIsOhms whether a number without any unit is ohms
   */
  public static Shown read(String line, boolean bareIsOhms) {
    String shown = line.strip();
    if (shown.length() > Shown.MOST_LETTERS) {
      return new Shown.Unreadable();
    }
    DisplayLine read = new DisplayLine();
    read.take(
        shown
            .replace('\u2126', 'Ω')
            .replace('\u03bc', 'µ')
            .replace('\u2212', '-')
            // The sign as code page 437 and the usual display controllers have it.
            .replace('\u00ea', 'Ω')
            .replace('\u00f4', 'Ω')
            // And as the double bytes of GBK and Shift JIS.
            .replace("\u00a6\u00b8", "Ω")
            .replace("\u0083\u00b6", "Ω")
            // And as Greek code pages have it.
            .replace('\u00d9', 'Ω'));
    return read.shown(bareIsOhms);
  }

  private void take(String line) {
    Matcher token = TOKEN.matcher(line);
    int at = 0;
    while (at < line.length()) {
      token.region(at, line.length());
      token.useTransparentBounds(true);
      if (!token.lookingAt()) {
        readable = false;
        return;
      }
      if (token.group("over") != null) {
        values.add(new Value("", Optional.empty(), token.group("over").contains("-")));
      } else if (token.group("number") != null) {
        number(token.group("bound"), token.group("number").replaceAll("\\s", ""));
      } else if (token.group("word") != null) {
        word(token.group("word"), isTouching(line, token.start()));
      } else if (token.group("between") != null) {
        between(token.group("between"), line.substring(token.end()));
      } else if (token.group("dashes") != null) {
        dashes = true;
        readable &= token.end() == line.length() || !Character.isDigit(line.charAt(token.end()));
      }
      at = token.end();
    }
  }

  /** A comma right before a number may be its point, unless the number has one. */
  private void between(String signs, String rest) {
    commaBetween |= signs.contains(",");
    readable &= !signs.endsWith(",") || !rest.matches("\\d.*") || rest.matches("\\d+\\.\\d.*");
  }

  private void number(@Nullable String bound, String digits) {
    Optional<BigDecimal> number =
        COMMA_AND_THREE_DIGITS.matcher(digits).matches()
            ? Optional.empty()
            : OhmsNumber.of(digits.replace(',', '.'));
    readable &= number.isPresent();
    decimalComma |= digits.contains(",") && !digits.endsWith(",");
    values.add(new Value(bound == null ? "" : bound, number, digits.startsWith("-")));
  }

  /** Whether a word stands right behind a number: then it is part of it, or the line is damaged. */
  private static boolean isTouching(String line, int start) {
    return line.substring(0, start).matches(".*(?:\\d[.,]?|\\.)");
  }

  private void word(String word, boolean touching) {
    String upper = word.toUpperCase(Locale.ROOT);
    boolean isUnit = OHM.matcher(word).matches() || OTHER_UNIT.matcher(word).matches();
    Value last = values.isEmpty() ? new Value("", Optional.empty(), false) : lastValue();
    boolean follows = !values.isEmpty() && last.unit.isEmpty();
    if (HELD.contains(upper)) {
      held = word;
    } else if (PREFIX.matcher(last.unit).matches() && BARE_OHM.matcher(word).matches()) {
      last.unit += word;
    } else if (follows && (isUnit || PREFIX.matcher(word).matches())) {
      last.unit = word;
    } else if (OF_OHMS.contains(upper) || (word.equals("OH") && values.isEmpty())) {
      ofOhms = true;
    } else if (OF_OTHERS.contains(upper)) {
      other = word;
    } else if (upper.equals("DC") || upper.equals("AC")) {
      other = VOLTS.matcher(last.unit).matches() ? other : "V";
    } else if (isUnit && values.isEmpty()) {
      unitBefore = Optional.of(word);
    } else if (touching || !HARMLESS.contains(upper)) {
      // A second unit, the rest of a number that is none, or a word nobody knows.
      readable = false;
    }
  }

  private Value lastValue() {
    return values.get(values.size() - 1);
  }

  private Shown shown(boolean bareIsOhms) {
    // One comma separates fields: then the other may do so too.
    if (!readable || (decimalComma && commaBetween)) {
      return new Shown.Unreadable();
    }
    if (!held.isEmpty()) {
      return new Shown.Held(held);
    }
    if (values.isEmpty()) {
      return dashes ? new Shown.NoValue() : new Shown.Unreadable();
    }
    if (!other.isEmpty()) {
      return new Shown.OtherQuantity(other);
    }
    List<Measured> ohms = new ArrayList<>();
    List<Double> volts = new ArrayList<>();
    for (Value value : values) {
      if (!value.unit.isEmpty() && unitBefore.filter(one -> isAnother(one, value)).isPresent()) {
        return new Shown.Unreadable();
      }
      String unit = value.unit.isEmpty() ? unitBefore.orElse("") : value.unit;
      Optional<Double> factor = ohmFactor(unit, bareIsOhms || ofOhms || value.number.isEmpty());
      Matcher asVolts = VOLTS.matcher(unit);
      if (factor.isPresent()) {
        ohms.add(measured(value, factor.get()));
      } else if (asVolts.matches() && value.number.isPresent() && value.bound.isEmpty()) {
        volts.add(value.number.get().doubleValue() * prefix(asVolts.group(1)));
      } else {
        return unit.isEmpty() || PREFIX.matcher(unit).matches()
            ? new Shown.Unreadable()
            : new Shown.OtherQuantity(unit);
      }
    }
    return shown(ohms, volts);
  }

  /** {@code OHM 1.2 kOhm}: without a prefix it is the name of the function. */
  private static boolean isAnother(String before, Value value) {
    boolean isFunction = BARE_OHM.matcher(before).matches() && OHM.matcher(value.unit).matches();
    return !isFunction && !before.equals(value.unit);
  }

  private static Shown shown(List<Measured> ohms, List<Double> volts) {
    if (ohms.isEmpty()) {
      return new Shown.OtherQuantity("V");
    }
    boolean areVolts = volts.stream().allMatch(one -> one >= 0 && one <= Shown.MOST_VOLTS);
    if (ohms.size() > 1 || volts.size() > 1 || !areVolts) {
      return new Shown.Unreadable();
    }
    return new Shown.Resistance(
        ohms.get(0), volts.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(volts.get(0)));
  }

  private static Measured measured(Value value, double factor) {
    if (value.number.isEmpty()) {
      return value.negative ? OhmsNumber.belowRange() : OhmsNumber.overRange();
    }
    Measured measured = OhmsNumber.measured(value.number.get(), factor);
    double ohms = value.number.get().doubleValue() * factor;
    if (value.bound.isEmpty() || measured.isBelowZero()) {
      return measured;
    }
    return value.bound.matches("[>≥].*")
        ? new Measured.MoreThan(ohms)
        : new Measured.LessThan(ohms);
  }

  private static Optional<Double> ohmFactor(String unit, boolean bareIsOhms) {
    Matcher ohm = OHM.matcher(unit);
    if (ohm.matches()) {
      return Optional.of(prefix(ohm.group(1)));
    }
    boolean bare = unit.isEmpty() || PREFIX.matcher(unit).matches();
    return bare && bareIsOhms ? Optional.of(prefix(unit)) : Optional.empty();
  }

  private static double prefix(String prefix) {
    return switch (prefix.length() > 1 ? prefix.toLowerCase(Locale.ROOT) : prefix) {
      case "n" -> 1e-9;
      case "u", "µ", "micro" -> 1e-6;
      case "m", "milli" -> 1e-3;
      case "k", "K", "kil", "kilo" -> 1e3;
      case "M", "meg", "mega" -> 1e6;
      case "G", "giga" -> 1e9;
      case "T" -> 1e12;
      default -> 1;
    };
  }
}

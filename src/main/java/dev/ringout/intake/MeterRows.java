package dev.ringout.intake;

import dev.ringout.cells.Blanks;
import dev.ringout.cells.OhmsCell;
import dev.ringout.intake.Settings.Setting;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Meter;
import dev.ringout.units.Text;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The rows of a job sheet about the meter: {@code lead null}, {@code meter accuracy}, {@code meter
 * resolution}, and the {@code temperature} of the wires.
 */
final class MeterRows {
  private static final List<String> NULLED = List.of("nulled", "zeroed", "yes", "done");
  private static final Pattern PERCENT = Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*%");
  private static final Pattern DIGITS =
      Pattern.compile(
          "(\\d+(?:[.,]\\d+)?)\\s*(?:digits?|dgts?|counts?|d)\\b", Pattern.CASE_INSENSITIVE);
  private static final Pattern OHMS =
      Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*([mµμkM]?\\s*(?:Ω|\u2126|ohms?))");
  private static final Pattern DEGREES =
      Pattern.compile(
          "([+-]?\\d+(?:[.,]\\d+)?)\\s*(?:°|deg\\.?)?\\s*([CF]?)", Pattern.CASE_INSENSITIVE);

  private static final Pattern MINUS = Pattern.compile("[-\u2212\u2013]\\s*[.,]?\\d");

  /** Beyond these a sound joint and a bad one read alike (common practice, no source). */
  private static final double WORST_SHARE = 0.2;

  private static final double MOST_DIGITS = 100;
  private static final double COARSEST_OHMS = 1;

  private static final double COLDEST_CELSIUS = -60;
  private static final double HOTTEST_CELSIUS = 200;

  private final Settings settings;

  private MeterRows(Settings settings) {
    this.settings = settings;
  }

  static Meter read(Settings settings) {
    return new MeterRows(settings).read();
  }

  private Meter read() {
    Optional<Setting> accuracy = given("meter accuracy");
    double share = accuracy.map(one -> amount(PERCENT, one.value())).orElse(0.0) / 100;
    double digits = accuracy.map(one -> amount(DIGITS, one.value())).orElse(0.0);
    double ohms = accuracy.map(MeterRows::ohms).orElse(0.0);
    if (accuracy.isPresent() && MINUS.matcher(accuracy.get().value()).find()) {
      tellsNothing(accuracy.get());
    } else if (share > WORST_SHARE || digits > MOST_DIGITS || ohms > COARSEST_OHMS) {
      tellsNothing(accuracy.orElseThrow());
    } else if (share + digits + ohms == 0) {
      accuracy.ifPresent(
          one ->
              one.entry()
                  .error(
                      Settings.VALUE.name(),
                      "\""
                          + one.value()
                          + "\" is not an accuracy; write one such as 0.5 % + 2 digits, or 1 % + 3 mΩ",
                      ""));
    }
    OptionalDouble resolution = settings.ohms("meter resolution");
    if (resolution.orElse(0) > COARSEST_OHMS) {
      given("meter resolution").ifPresent(MeterRows::tellsNothing);
    }
    return new Meter(leads(), leadsOff(), celsius(), share, digits, ohms, resolution);
  }

  /** The coarser the meter, the more would pass. */
  private static void tellsNothing(Setting setting) {
    setting
        .entry()
        .error(
            Settings.VALUE.name(),
            Text.of(
                "\"%s\" as %s: that is too much; at most 20 %%, 100 digits and 1 Ω",
                setting.value(), setting.name()),
            "");
  }

  private Optional<Setting> given(String name) {
    return settings.find(name).filter(one -> !one.value().isEmpty());
  }

  private OptionalDouble leads() {
    Optional<Setting> leads = given("lead null");
    boolean nulled =
        leads.isPresent() && NULLED.contains(leads.get().value().toLowerCase(Locale.ROOT));
    return nulled ? OptionalDouble.of(0) : settings.ohms("lead null");
  }

  /** Half of the last digit to which the leads are noted; {@code 0 Ω} is nulled. */
  private double leadsOff() {
    return given("lead null")
        .flatMap(one -> OhmsCell.reading(one.value(), one.unit()).value())
        .flatMap(Measured::value)
        .map(leads -> Math.min(leads.halfDigitOhms(), leads.ohms() / 2))
        .orElse(0.0);
  }

  private static double amount(Pattern pattern, String text) {
    Matcher found = pattern.matcher(text);
    return found.find() ? Double.parseDouble(found.group(1).replace(',', '.')) : 0;
  }

  private static double ohms(Setting accuracy) {
    Matcher found = OHMS.matcher(accuracy.value());
    if (!found.find()) {
      return 0;
    }
    return OhmsCell.ohms(found.group(1), found.group(2)).value().orElse(0.0);
  }

  /** A temperature that can't be understood is a remark of the operator's, not an error. */
  private OptionalDouble celsius() {
    Optional<Setting> temperature = given("temperature");
    if (temperature.isEmpty()) {
      return OptionalDouble.empty();
    }
    String text = Blanks.strip(temperature.get().value() + " " + temperature.get().unit());
    Matcher degrees = DEGREES.matcher(text);
    if (degrees.matches()) {
      double number = Double.parseDouble(degrees.group(1).replace(',', '.'));
      double celsius = degrees.group(2).equalsIgnoreCase("F") ? (number - 32) * 5 / 9 : number;
      if (celsius >= COLDEST_CELSIUS && celsius <= HOTTEST_CELSIUS) {
        return OptionalDouble.of(celsius);
      }
    }
    temperature
        .get()
        .entry()
        .warning(
            Settings.VALUE.name(),
            "\""
                + text
                + "\" is not a temperature (20 °C, 68 °F); that of the harness file"
                + " stands",
            "");
    return OptionalDouble.empty();
  }
}

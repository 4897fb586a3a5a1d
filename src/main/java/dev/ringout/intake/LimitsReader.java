package dev.ringout.intake;

import dev.ringout.harness.Limits;
import dev.ringout.intake.Settings.Setting;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** The limits sheet. Defaults are the contract's own; no resistance is taken without its unit. */
final class LimitsReader {
  private static final List<String> NAMES =
      List.of(
          "closed max",
          "open min",
          "contact",
          "meter",
          "tolerance",
          "temperature",
          "insulation min",
          "insulation volts");

  private final Settings settings;

  private LimitsReader(Settings settings) {
    this.settings = settings;
  }

  static Limits read(Settings settings) {
    return new LimitsReader(settings).read();
  }

  private Limits read() {
    for (Setting setting : settings.all()) {
      if (NAMES.stream().noneMatch(name -> Names.key(name).equals(Names.key(setting.name())))) {
        setting
            .entry()
            .warning(
                Settings.NAME.name(),
                "\""
                    + setting.name()
                    + "\" is no limit that is used here; the names are "
                    + String.join(", ", NAMES),
                LookAlikes.nearest(setting.name(), NAMES));
      }
    }
    Limits limits =
        new Limits(
            ohms("closed max"),
            1,
            ohms("open min").orElse(100e3),
            ohms("contact").orElse(0.005),
            ohms("meter").orElse(0),
            number("tolerance", "%").orElse(10),
            number("temperature", "°C", "C", "degC", "deg C").orElse(20),
            ohms("insulation min").orElse(100e6),
            number("insulation volts", "V", "V dc", "Vdc", "volts", "V DC").orElse(500));
    if (limits.closedMaxOhms().orElse(limits.fixedClosedMaxOhms()) >= limits.openMinOhms()) {
      settings
          .find("open min")
          .or(() -> settings.find("closed max"))
          .ifPresent(
              setting ->
                  setting
                      .entry()
                      .error(
                          Settings.VALUE.name(), "\"open min\" must be above \"closed max\"", ""));
    }
    return limits;
  }

  private OptionalDouble ohms(String name) {
    Setting setting = settings.find(name).orElse(null);
    if (setting == null || setting.value().isEmpty()) {
      return OptionalDouble.empty();
    }
    Entry entry = setting.entry();
    boolean bare = setting.value().matches("[+-]?[\\d.,]+(?:[eE][+-]?\\d+)?");
    if (bare && setting.unit().isEmpty()) {
      entry.error(
          Settings.VALUE.name(), "\"" + name + "\" needs its unit, such as mΩ, Ω, kΩ, MΩ", "");
      return OptionalDouble.empty();
    }
    if (OhmsCell.unit(setting.unit()).isEmpty()) {
      entry.error(Settings.UNIT.name(), "\"" + setting.unit() + "\" is no unit of resistance", "");
      return OptionalDouble.empty();
    }
    Double ohms =
        entry
            .take(Settings.VALUE.name(), OhmsCell.ohms(setting.value(), setting.unit()))
            .orElse(null);
    if (ohms == null) {
      return OptionalDouble.empty();
    }
    if (ohms < 0) {
      entry.error(Settings.VALUE.name(), "\"" + name + "\" can't be negative", "");
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(ohms);
  }

  private OptionalDouble number(String name, String... units) {
    Setting setting = settings.find(name).orElse(null);
    if (setting == null || setting.value().isEmpty()) {
      return OptionalDouble.empty();
    }
    String value = setting.value();
    String unit = setting.unit();
    int end = 0;
    while (end < value.length() && "+-.,0123456789".indexOf(value.charAt(end)) >= 0) {
      end++;
    }
    String written = Blanks.strip(value.substring(end));
    String given = written.isEmpty() ? unit : written;
    boolean unitFits =
        given.isEmpty()
            || Arrays.stream(units)
                .anyMatch(
                    one -> one.toLowerCase(Locale.ROOT).equals(given.toLowerCase(Locale.ROOT)));
    if (!unitFits) {
      setting
          .entry()
          .error(Settings.UNIT.name(), "\"" + name + "\" is given in " + units[0] + " here", "");
      return OptionalDouble.empty();
    }
    try {
      return OptionalDouble.of(Double.parseDouble(value.substring(0, end).replace(',', '.')));
    } catch (NumberFormatException e) {
      setting
          .entry()
          .error(Settings.VALUE.name(), "\"" + value + "\" is no number of " + units[0], "");
      return OptionalDouble.empty();
    }
  }
}

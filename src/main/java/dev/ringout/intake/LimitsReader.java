package dev.ringout.intake;

import dev.ringout.harness.Limits;
import dev.ringout.intake.Settings.Setting;
import dev.ringout.standards.SwitchContacts;
import java.util.List;

/** The limits sheet. Defaults are the contract's own; no resistance is taken without its unit. */
final class LimitsReader {
  private static final List<String> NAMES =
      List.of(
          "closed max",
          "open min",
          "contact",
          "switch contact",
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
            settings.ohms("closed max"),
            1,
            settings.ohms("open min").orElse(100e3),
            settings.ohms("contact").orElse(0.005),
            settings.ohms("switch contact").orElseGet(SwitchContacts::mostOhmsWhenNew),
            settings.ohms("meter").orElse(0),
            settings.number("tolerance", "%").orElse(10),
            settings.number("temperature", "°C", "C", "degC", "deg C").orElse(20),
            settings.ohms("insulation min").orElse(100e6),
            settings.number("insulation volts", "V", "V dc", "Vdc", "volts", "V DC").orElse(500));
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
}

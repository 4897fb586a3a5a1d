package dev.ringout.intake;

import dev.ringout.cells.LikelyMeant;
import dev.ringout.cells.Names;
import dev.ringout.sheet.Sheet;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import dev.ringout.source.UnusableInput;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The rows of the sheet {@code Job} that are known. A name that nobody knows would be ignored in
 * silence, and with it what it says of the test; so it is a warning.
 */
final class JobRows {
  /** As many letters in front make a name likely to be meant. */
  private static final int LIKELY_LETTERS = 4;

  /** Each name, and what else it is called. */
  static final Map<String, List<String>> KNOWN = known();

  /** Whatever it is called: until when a meter is calibrated. */
  private static final Pattern END_OF_CALIBRATION =
      Pattern.compile("\\bcal.*(due|expir|until|valid|next)|(due|expir|until|valid|next).*\\bcal");

  private JobRows() {}

  private static Map<String, List<String>> known() {
    Map<String, List<String>> names = new LinkedHashMap<>();
    names.put("serial number", List.of("serial", "serial no", "s/n"));
    names.put("date", List.of("date of test", "date of the test", "test date", "test day"));
    names.put("procedure", List.of());
    names.put("revision", List.of());
    names.put("drawing", List.of());
    names.put("title", List.of());
    names.put("unit", List.of());
    names.put("work order", List.of());
    names.put("operator", List.of("tester"));
    names.put("inspector", List.of());
    names.put("stamp", List.of());
    names.put("instrument", List.of());
    names.put("instrument number", List.of());
    names.put(
        "calibration due",
        List.of("calibration due date", "cal due", "cal due date", "calibration expires"));
    names.put("continuity range", List.of());
    names.put("lead null", List.of());
    names.put("meter accuracy", List.of());
    names.put("meter resolution", List.of());
    names.put("insulation instrument", List.of());
    names.put("insulation instrument number", List.of());
    names.put("insulation calibration due", List.of("insulation calibration due date"));
    names.put("insulation range", List.of());
    names.put("insulation volts", List.of());
    names.put("temperature", List.of());
    names.put("humidity", List.of());
    names.put("location", List.of());
    names.put("station", List.of());
    names.put("crimp tool", List.of());
    names.put("note", List.of());
    names.put("remark", List.of());
    names.put("remarks", List.of());
    return Collections.unmodifiableMap(names);
  }

  /** The job sheet, with every name in the spelling that is known. */
  static Settings read(Optional<Sheet> sheet, Problems problems) throws UnusableInput {
    Settings settings = Settings.readNamed(sheet, JobRows::listed, problems);
    for (Settings.Setting setting : settings.all()) {
      if (!KNOWN.containsKey(setting.name())) {
        unknown(setting);
      }
    }
    return settings;
  }

  /** What would keep a unit from conforming, were it read, is not passed over. */
  private static void unknown(Settings.Setting setting) {
    boolean isOfCalibration =
        END_OF_CALIBRATION.matcher(setting.name().toLowerCase(Locale.ROOT)).find();
    setting
        .entry()
        .report(
            Settings.NAME.name(),
            isOfCalibration || OwnColumns.isFailing(setting.value())
                ? Severity.ERROR
                : Severity.WARNING,
            "\"" + setting.name() + "\" is not a name that the sheet Job knows",
            meant(setting.name()));
  }

  /** The listed spelling of a name, whatever its case, blanks and punctuation. */
  private static String listed(String written) {
    String key = Names.key(written);
    return KNOWN.entrySet().stream()
        .filter(
            row ->
                Names.key(row.getKey()).equals(key)
                    || row.getValue().stream().anyMatch(alias -> Names.key(alias).equals(key)))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(written);
  }

  /** One slip away; else what begins alike: {@code leads} is likely {@code lead null}. */
  private static String meant(String written) {
    String near = LikelyMeant.nearest(written, KNOWN.keySet());
    if (!near.isEmpty()) {
      return near;
    }
    String key = Names.key(written);
    return KNOWN.keySet().stream()
        .filter(name -> lettersAlike(key, Names.key(name)) >= LIKELY_LETTERS)
        .min(
            Comparator.<String>comparingInt(name -> -lettersAlike(key, Names.key(name)))
                .thenComparingInt(String::length))
        .orElse("");
  }

  private static int lettersAlike(String one, String other) {
    int alike = 0;
    while (alike < Math.min(one.length(), other.length())
        && one.charAt(alike) == other.charAt(alike)) {
      alike++;
    }
    return alike;
  }
}

package dev.ringout.intake;

import dev.ringout.readings.JobTemplate;
import dev.ringout.sheet.Sheet;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Problems;
import dev.ringout.source.UnusableInput;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads what a station carries into every test: a sheet Job, or a CSV file that is one. */
public final class JobTemplateReader {
  private static final String OF_THE_UNIT =
      "belongs to one unit or its list; leave it out of a station's sheet";
  private static final String AT_THE_BENCH =
      "is new at each test; leave it out of a station's sheet";

  /** What a sheet must not say before the test. */
  private static final Map<String, String> NEVER =
      Map.of(
          "serial number", OF_THE_UNIT,
          "revision", OF_THE_UNIT,
          "drawing", OF_THE_UNIT,
          "title", OF_THE_UNIT,
          "unit", OF_THE_UNIT,
          "date", AT_THE_BENCH,
          "lead null", AT_THE_BENCH,
          "stamp", AT_THE_BENCH);

  private JobTemplateReader() {}

  /**
   * The rows of a file.
   *
   * @throws UnusableInput where the file as a whole is no table
   */
  public static JobTemplate read(TabularFile file, String shownName, Problems problems)
      throws UnusableInput {
    SheetsByName sheets = new SheetsByName(file, List.of("Job"), "Job", problems);
    Optional<Sheet> sheet = sheets.find("Job");
    if (sheet.isEmpty()) {
      sheets.reportMissing("Job", shownName, problems);
    }
    Settings settings = JobRows.read(sheet, problems);
    // Read as a sheet's rows are, so that what is wrong is told before it stands in a hundred
    // sheets.
    MeterRows.read(settings);
    settings.ohms("continuity range");
    settings.ohms("insulation range");
    settings.volts("insulation volts");
    Map<String, String> rows = new LinkedHashMap<>();
    for (Settings.Setting setting : settings.all()) {
      String never = NEVER.get(setting.name());
      if (never != null && !setting.value().isEmpty()) {
        setting.entry().error(Settings.NAME.name(), "\"" + setting.name() + "\" " + never, "");
      } else if (!setting.value().isEmpty()) {
        String unit = setting.unit().isEmpty() ? "" : " " + setting.unit();
        rows.put(setting.name(), setting.value() + unit);
      }
    }
    return new JobTemplate(rows);
  }
}

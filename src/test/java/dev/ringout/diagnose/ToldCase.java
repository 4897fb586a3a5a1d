package dev.ringout.diagnose;

import dev.ringout.check.CheckResult;
import dev.ringout.support.ReadUnit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * A unit, its readings and what is told of them, as a file of src/test/resources/diagnoses writes
 * them: {@code == } and the name; sheets as CSV, each below its name in brackets; last {@code
 * [Told]}, the parts of the report that the diagnosis makes.
 */
record ToldCase(Path file, String name, Map<String, String> sheets, String told) {
  private static final Set<String> READINGS = Set.of("continuity", "insulation", "job");

  static List<ToldCase> read(Path file) {
    List<ToldCase> cases = new ArrayList<>();
    String sheet = "";
    try {
      for (String line : Files.readAllLines(file)) {
        if (line.startsWith("== ")) {
          cases.add(new ToldCase(file, line.substring(3), new LinkedHashMap<>(), ""));
        } else if (line.startsWith("[")) {
          sheet = line.substring(1, line.length() - 1).toLowerCase(Locale.ROOT);
        } else {
          cases.get(cases.size() - 1).sheets.merge(sheet, line + "\n", String::concat);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return cases.stream().map(ToldCase::apart).toList();
  }

  /** What is told apart from the sheets. */
  private ToldCase apart() {
    String told = sheets.getOrDefault("told", "");
    sheets.remove("told");
    return new ToldCase(file, name, sheets, told);
  }

  /** Checks the unit as a user would: from files. */
  CheckResult check(Path folder) {
    try {
      for (Map.Entry<String, String> sheet : sheets.entrySet()) {
        Path parent = folder.resolve(READINGS.contains(sheet.getKey()) ? "readings" : "harness");
        Files.createDirectories(parent);
        Files.writeString(parent.resolve(sheet.getKey() + ".csv"), sheet.getValue());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return ReadUnit.check(folder.resolve("harness"), folder.resolve("readings"));
  }

  /** The case as its file writes it, with what is told now. */
  String written(String now) {
    StringBuilder text = new StringBuilder("== " + name + "\n");
    sheets.forEach((sheet, rows) -> text.append(heading(sheet)).append(rows));
    return text + heading("told") + now;
  }

  private static String heading(String sheet) {
    return "[" + sheet.substring(0, 1).toUpperCase(Locale.ROOT) + sheet.substring(1) + "]\n";
  }

  @Override
  public String toString() {
    return file.getFileName() + ": " + name;
  }
}

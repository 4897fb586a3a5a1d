package dev.ringout.review;

import dev.ringout.circuit.Circuit;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Waiver;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.Tables;
import dev.ringout.support.ReadUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A unit of src/test/resources/checks: {@code == fires} and what the check must say of it, or
 * {@code == quiet}; then sheets as CSV, each below its name in brackets.
 */
record CheckCase(boolean fires, String says, Map<String, String> sheets) {

  static List<CheckCase> read(Path file) throws IOException {
    List<CheckCase> cases = new ArrayList<>();
    String sheet = "";
    for (String line : Files.readAllLines(file)) {
      if (line.startsWith("== ")) {
        boolean fires = line.startsWith("== fires ");
        String says = fires ? line.substring("== fires ".length()) : "";
        cases.add(new CheckCase(fires, says, new LinkedHashMap<>()));
      } else if (line.startsWith("[")) {
        sheet = line.substring(1, line.length() - 1).toLowerCase(java.util.Locale.ROOT);
      } else {
        cases.get(cases.size() - 1).sheets().merge(sheet, line + "\n", String::concat);
      }
    }
    return cases;
  }

  Harness harness(Path folder) throws Exception {
    Path unit = Files.createTempDirectory(folder, "unit");
    for (Map.Entry<String, String> one : sheets.entrySet()) {
      Files.writeString(unit.resolve(one.getKey() + ".csv"), one.getValue());
    }
    return ReadUnit.of(unit);
  }

  Paper paper(Path folder) throws Exception {
    return new Paper(Circuit.of(harness(folder)), Tables.published(), CopperWire.published());
  }

  Review review(Path folder, List<Waiver> waivers, LocalDate today) throws Exception {
    return Review.of(
        Circuit.of(harness(folder)),
        Tables.published(),
        CopperWire.published(),
        waivers,
        Optional.of(today));
  }
}

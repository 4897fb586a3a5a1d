package dev.ringout.intake;

import dev.ringout.cells.Names;
import java.util.Collection;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Whether a file is the other one of the two that a check takes: they are easily typed in the wrong
 * order, and a list that was read as readings, or readings as a list, would be judged.
 */
final class WhichFile {
  private static final Set<String> SHEETS_OF_READINGS = Set.of("continuity", "insulation");
  private static final Set<String> SHEETS_OF_LISTS = Set.of("wires", "links");
  private static final String READINGS =
      "this looks like readings; the harness file comes first, the readings after it";
  private static final String LIST =
      "this looks like a harness file; it comes first, the readings after it";
  private static final String READING = "reading";
  private static final String WIRE = "wire";

  private WhichFile() {}

  /** Of a file without the sheets that it should have; empty where nothing is known. */
  static String bySheets(Collection<String> names) {
    Set<String> keys = keys(names);
    if (keys.stream().anyMatch(SHEETS_OF_READINGS::contains)) {
      return READINGS;
    }
    return keys.stream().anyMatch(SHEETS_OF_LISTS::contains) ? LIST : "";
  }

  /** Of a table that should list wires; empty where it may. */
  static String insteadOfWires(Collection<String> headings) {
    Set<String> keys = keys(headings);
    return keys.contains(READING) && !keys.contains(WIRE) ? READINGS : "";
  }

  /** Of a table that should hold readings; empty where it may. */
  static String insteadOfReadings(Collection<String> headings) {
    Set<String> keys = keys(headings);
    return keys.contains(WIRE) && !keys.contains(READING) ? LIST : "";
  }

  private static Set<String> keys(Collection<String> names) {
    return names.stream().map(Names::key).collect(Collectors.toSet());
  }
}

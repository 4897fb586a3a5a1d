package dev.ringout.imports;

import dev.ringout.cells.CellText;
import dev.ringout.cells.Names;
import dev.ringout.imports.list.Grid;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import dev.ringout.source.UnusableInput;
import dev.ringout.source.UnusableInput.Reason;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Files that the other commands read as they are: an import would lose half of what they say. */
final class OwnFiles {
  /** What the sheets of a harness file must have, by their names without case and blanks. */
  private static final Map<String, List<String>> BESIDE_WIRES =
      Map.of(
          "items", List.of("ref"),
          "pins", List.of("ref", "pin"),
          "links", List.of("pin", "topin"),
          "switches", List.of("ref", "state", "pin", "topin"),
          "parts", List.of("ref", "pin", "topin"),
          "loads", List.of("from", "to", "amps"),
          "crimps", List.of("wire", "tool"),
          "limits", List.of("name", "value"),
          "header", List.of("name", "value"),
          "notread", List.of("row", "why"));

  private static final List<String> WIRES = List.of("from", "to");
  private static final List<String> READINGS = List.of("from", "to", "reading");

  private OwnFiles() {}

  /**
   * Refuses a harness file and a filled test sheet, naming what reads them.
   *
   * @param single whether the file is a single table, whose sheet has no name
   * @throws UnusableInput where the file is one of these
   */
  static void refuse(List<Grid> sheets, boolean single, String shownName) throws UnusableInput {
    boolean wires = false;
    boolean links = false;
    boolean beside = false;
    for (Grid sheet : sheets) {
      String key = single ? "" : Names.key(sheet.name());
      Set<String> headings = sheet.rows().isEmpty() ? Set.of() : keys(sheet.rows().get(0));
      if (isReadings(headings, key)) {
        throw new UnusableInput(
            shownName,
            Reason.NOT_UNDERSTOOD,
            "is a test sheet, not a wire list; its readings are judged by: ringout check HARNESS "
                + shownName);
      }
      wires |= key.equals("wires") && headings.containsAll(WIRES);
      boolean own =
          Optional.ofNullable(BESIDE_WIRES.get(key)).filter(headings::containsAll).isPresent();
      links |= own && key.equals("links");
      beside |= own;
    }
    if ((wires && beside) || links) {
      throw new UnusableInput(
          shownName,
          Reason.NOT_UNDERSTOOD,
          "is a harness file already: the other commands read it as it is, such as: ringout review "
              + shownName);
    }
  }

  private static boolean isReadings(Set<String> headings, String key) {
    if (key.equals("continuity") || key.equals("insulation")) {
      return headings.containsAll(READINGS);
    }
    // A single table has no name to go by; a list of wires has no steps or states of switches.
    return key.isEmpty()
        && headings.containsAll(READINGS)
        && (headings.contains("step") || headings.contains("state"));
  }

  private static Set<String> keys(Row row) {
    Set<String> keys = new HashSet<>();
    for (Cell cell : row.cells()) {
      keys.add(Names.key(CellText.clean(cell.text())));
    }
    return keys;
  }
}

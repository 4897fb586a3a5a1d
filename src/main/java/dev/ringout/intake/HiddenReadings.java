package dev.ringout.intake;

import dev.ringout.sheet.Surroundings;
import dev.ringout.source.Place;
import dev.ringout.source.Problems;
import dev.ringout.units.Text;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Readings that the spreadsheet hides are read as all others; who looks at the sheet is told that
 * they are there.
 */
final class HiddenReadings {
  private static final int MOST_NAMED = 40;

  private final List<Column> columns;
  private final BitSet measured = new BitSet();

  /** Looks for values in some columns. */
  HiddenReadings(List<Column> columns) {
    this.columns = columns;
  }

  /** Keeps in mind that a row holds a value. */
  void row(Entry entry) {
    if (columns.stream().anyMatch(column -> !entry.asTyped(column.name()).isEmpty())) {
      measured.set(entry.number());
    }
  }

  /** Names what is hidden, once the sheet has been read. */
  void report(Table table, Problems problems) {
    Surroundings around = table.surroundings();
    Place sheet = table.placeOf(0, 0);
    if (around.hidden() && !measured.isEmpty()) {
      problems.warning(sheet, "the sheet is hidden in the spreadsheet; its readings are read");
    }
    List<String> rows =
        around.hiddenRows().stream().filter(measured::get).map(row -> "" + row).toList();
    if (!rows.isEmpty()) {
      problems.warning(
          sheet,
          (rows.size() == 1 ? "row " : "rows ")
              + Text.first(rows, MOST_NAMED)
              + (rows.size() == 1
                  ? " is hidden in the spreadsheet; its reading is read"
                  : " are hidden in the spreadsheet; their readings are read"));
    }
    String hidden =
        columns.stream()
            .map(column -> table.columnOf(column.name()))
            .filter(column -> column > 0 && around.hiddenColumns().contains(column))
            .map(column -> Place.columnLetters(column) + " (" + table.heading(column) + ")")
            .collect(Collectors.joining(", "));
    if (!hidden.isEmpty() && !measured.isEmpty()) {
      problems.warning(
          sheet, "column " + hidden + " is hidden in the spreadsheet; its readings are read");
    }
  }
}

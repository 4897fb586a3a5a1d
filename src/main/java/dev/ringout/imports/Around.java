package dev.ringout.imports;

import dev.ringout.imports.list.Grid;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.SheetOddity;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import dev.ringout.sheet.Surroundings;
import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Says what stands around a sheet's cells: hidden and merged ones, filters, comments, red ink. */
final class Around {
  private static final int RED_CELLS_NAMED = 40;

  private final ListFindings findings;
  private final Map<Place, String> comments;

  /** Comments are kept by the rows in which they stand. */
  Around(ListFindings findings, Map<Place, String> comments) {
    this.findings = findings;
    this.comments = comments;
  }

  void report(Grid grid) {
    Surroundings around = grid.around();
    reportHidden(grid, around);
    if (around.filtered()) {
      findings.warning(grid.place(0, 0), new SheetOddity.FilteredRows());
    }
    long tall = around.merges().stream().filter(m -> m.lastRow() > m.firstRow()).count();
    if (tall > 0) {
      findings.note(grid.place(0, 0), new SheetOddity.MergedCells((int) tall));
    }
    reportComments(grid, around);
    reportRed(grid);
  }

  private void reportHidden(Grid grid, Surroundings around) {
    if (around.hidden()) {
      findings.warning(grid.place(0, 0), new SheetOddity.HiddenSheet());
    }
    List<Integer> rows = around.hiddenRows().stream().filter(row -> row <= grid.lastRow()).toList();
    if (!rows.isEmpty()) {
      findings.warning(grid.place(rows.get(0), 0), new SheetOddity.HiddenRows(rows));
    }
    List<Integer> columns =
        around.hiddenColumns().stream().filter(column -> column <= grid.width()).toList();
    if (!columns.isEmpty()) {
      findings.warning(
          grid.place(0, columns.get(0)),
          new SheetOddity.HiddenColumns(columns.stream().map(Place::columnLetters).toList()));
    }
  }

  private void reportComments(Grid grid, Surroundings around) {
    around
        .comments()
        .forEach(
            (spot, written) -> {
              String text = written.replaceAll("\\s+", " ");
              findings.warning(
                  grid.place(spot.row(), spot.column()), new SheetOddity.CellComment(text));
              comments.merge(grid.place(spot.row(), 0), text, (one, other) -> one + "; " + other);
            });
  }

  private record RedCell(Place place, String text) {}

  private void reportRed(Grid grid) {
    List<RedCell> red = new ArrayList<>();
    for (Row row : grid.rows()) {
      for (int column = 1; column <= row.cells().size(); column++) {
        Cell cell = row.cell(column);
        if (cell.ink().red() && !cell.isBlank()) {
          red.add(new RedCell(grid.place(row.number(), column), cell.text()));
        }
      }
    }
    if (red.size() > RED_CELLS_NAMED) {
      findings.warning(red.get(0).place(), new SheetOddity.MuchRedText(red.size()));
      return;
    }
    red.forEach(cell -> findings.warning(cell.place(), new SheetOddity.RedText(cell.text())));
  }
}

package dev.ringout.imports.list;

import dev.ringout.sheet.Row;
import dev.ringout.source.Place;
import java.util.List;
import java.util.Optional;

/**
 * A table within a sheet.
 *
 * @param headingRow the first heading row, or 0 where there is none
 * @param sheetItem the designator in the sheet's name, or empty
 * @param body the rows below the heading, repeated headings and notes among them
 */
public record ListTable(
    Grid grid,
    int headingRow,
    int firstColumn,
    int lastColumn,
    List<ListColumn> columns,
    Layout layout,
    String sheetItem,
    List<Row> body) {

  /**
   * Whether blanks stand below most texts of a column, as where a text holds for the rows below.
   */
  public boolean isSparse(Role role) {
    for (ListColumn column : columns) {
      if (column.role() == role) {
        long filled = body.stream().filter(row -> !row.cell(column.index()).isBlank()).count();
        return filled * 2 <= body.size();
      }
    }
    return false;
  }

  /** The first column of a role. */
  public Optional<ListColumn> column(Role role) {
    return columns.stream().filter(column -> column.role() == role).findFirst();
  }

  /** All columns of a role, from the left. */
  public List<ListColumn> columns(Role role) {
    return columns.stream().filter(column -> column.role() == role).toList();
  }

  /** A cell of the table. */
  public Place place(Row row, ListColumn column) {
    return grid.place(row.number(), column.index());
  }

  /** A row of the table. */
  public Place place(Row row) {
    return grid.place(row.number(), 0);
  }
}

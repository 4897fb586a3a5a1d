package dev.ringout.imports.list;

import dev.ringout.sheet.Row;
import dev.ringout.source.Place;
import java.util.List;

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

  /** A cell of the table. */
  public Place place(Row row, ListColumn column) {
    return grid.place(row.number(), column.index());
  }

  /** A row of the table. */
  public Place place(Row row) {
    return grid.place(row.number(), 0);
  }
}

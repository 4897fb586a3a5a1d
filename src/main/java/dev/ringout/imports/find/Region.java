package dev.ringout.imports.find;

import dev.ringout.imports.list.Grid;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.sheet.Row;
import dev.ringout.source.Place;
import java.util.List;

/**
 * Where a table stands on its sheet, before it is known how it tells wires.
 *
 * @param headingRow the first heading row, or 0 where there is none
 * @param columns what their headings say
 * @param item the connector that a title or the sheet's name gives, or empty
 * @param body the rows below the headings
 * @param outside how many rows above the headings look like the rows below
 */
public record Region(
    Grid grid,
    int headingRow,
    int firstColumn,
    int lastColumn,
    List<ListColumn> columns,
    String item,
    List<Row> body,
    int outside) {

  /** Keeps a copy of the columns. */
  public Region {
    columns = List.copyOf(columns);
  }

  /** The cell by which the table is called. */
  public String firstCell() {
    int row = headingRow > 0 ? headingRow : body.isEmpty() ? 1 : body.get(0).number();
    return Place.columnLetters(firstColumn) + row;
  }

  /** Headings once more, as on the next page, say nothing of what stands below them. */
  public boolean isHeadingAgain(Row row) {
    int filled = 0;
    int same = 0;
    for (ListColumn column : columns) {
      String text = column.textIn(row);
      filled += text.isEmpty() ? 0 : 1;
      same += !text.isEmpty() && text.equalsIgnoreCase(column.heading()) ? 1 : 0;
    }
    return filled > 1 && same == filled;
  }

  /** The same table with its columns read otherwise. */
  public Region with(List<ListColumn> otherColumns) {
    return new Region(grid, headingRow, firstColumn, lastColumn, otherColumns, item, body, outside);
  }

  /** The table, its columns settled. */
  ListTable settled(List<ListColumn> settledColumns, Layout layout) {
    return new ListTable(
        grid, headingRow, firstColumn, lastColumn, settledColumns, layout, item, body);
  }
}

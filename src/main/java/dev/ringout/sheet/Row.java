package dev.ringout.sheet;

import java.util.List;

/**
 * A row of cells.
 *
 * @param number counted from 1, as a spreadsheet shows it
 * @param cells from column A on; shorter where the rest is empty
 */
public record Row(int number, List<Cell> cells) {

  /** The cell of a column counted from 1; empty beyond the row's end. */
  public Cell cell(int column) {
    return column >= 1 && column <= cells.size() ? cells.get(column - 1) : Cell.EMPTY;
  }

  /** Whether every cell is blank. */
  public boolean isBlank() {
    return cells.stream().allMatch(Cell::isBlank);
  }
}

package dev.ringout.imports.list;

/**
 * Rows of a sheet, both ends among them.
 *
 * @param first counted from 1
 */
public record RowRange(int first, int last) {

  /** Whether a row is one of them. */
  public boolean holds(int row) {
    return row >= first && row <= last;
  }

  @Override
  public String toString() {
    return first + "-" + last;
  }
}

package dev.ringout.sheet;

import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What stands around the cells of a sheet.
 *
 * @param hidden whether the sheet as a whole is hidden
 * @param filtered whether a filter may hide rows
 * @param hiddenRows rows counted from 1
 * @param hiddenColumns columns counted from 1
 * @param merges cells that are shown as one
 * @param comments texts pinned to cells, in the order of rows
 */
public record Surroundings(
    boolean hidden,
    boolean filtered,
    SortedSet<Integer> hiddenRows,
    SortedSet<Integer> hiddenColumns,
    List<Merge> merges,
    Map<Spot, String> comments) {

  /** A sheet of cells and nothing else. */
  public static Surroundings none() {
    return new Surroundings(false, false, new TreeSet<>(), new TreeSet<>(), List.of(), Map.of());
  }

  /** A cell's address: row and column counted from 1. */
  public record Spot(int row, int column) {}

  /** A block of cells shown as one; its text stands in the first. */
  public record Merge(int firstRow, int firstColumn, int lastRow, int lastColumn) {}
}

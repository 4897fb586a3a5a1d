package dev.ringout.imports.list;

import java.util.List;

/**
 * What became of every filled cell of a sheet: the counts add up to all of them. A merged cell
 * counts in every row that it spans.
 *
 * @param filled all cells of the sheet that hold something
 * @param wires cells that are part of a wire or of a link
 * @param pins cells that are part of a pin without a wire
 * @param notes cells that go along as a note of their wire
 * @param headings cells of heading rows
 * @param notRead cells of rows that could not be read
 * @param notUsed cells of which nothing is made
 * @param unused where these stand, cells beside each other as one range
 */
public record CellBalance(
    String sheet,
    int filled,
    int wires,
    int pins,
    int notes,
    int headings,
    int notRead,
    int notUsed,
    List<String> unused) {

  /** Keeps a copy of what is listed. */
  public CellBalance {
    unused = List.copyOf(unused);
  }
}

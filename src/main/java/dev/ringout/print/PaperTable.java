package dev.ringout.print;

import java.util.List;
import java.util.Set;

/**
 * A table of thousands of rows on paper of its own.
 *
 * @param title above each page
 * @param which unit it is of, beside it
 * @param foot below each page, on the left
 * @param failing the rows that stand out, from 0
 */
public record PaperTable(
    String title,
    String which,
    String foot,
    double widthMm,
    double heightMm,
    List<String> headings,
    List<List<String>> rows,
    Set<Integer> failing) {
  /** What is given can't be changed afterwards. */
  public PaperTable {
    headings = List.copyOf(headings);
    rows = List.copyOf(rows);
    failing = Set.copyOf(failing);
  }
}

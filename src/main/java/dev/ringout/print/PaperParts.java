package dev.ringout.print;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * What a PDF is set from: one page of HTML, or many for a long document, each made when it is its
 * turn. A row takes some hundred thousand bytes while its page is set.
 *
 * @param parts in their order; each begins a new page
 * @param numbers where the pages' numbers stand
 */
public record PaperParts(List<Supplier<String>> parts, Numbers numbers) {
  /** Rows that are set at once. */
  static final int MOST_ROWS = 1000;

  /** Where pages are numbered, in the lower margin. */
  public enum Numbers {
    MIDDLE,
    RIGHT
  }

  /** What is given can't be changed afterwards. */
  public PaperParts {
    parts = List.copyOf(parts);
  }

  /** Rows in pieces that can be set at once. */
  static <T> List<List<T>> pieces(List<T> rows) {
    List<List<T>> pieces = new ArrayList<>();
    for (int from = 0; from == 0 || from < rows.size(); from += MOST_ROWS) {
      pieces.add(rows.subList(from, Math.min(rows.size(), from + MOST_ROWS)));
    }
    return pieces;
  }
}

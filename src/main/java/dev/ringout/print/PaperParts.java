package dev.ringout.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What a PDF is set from: one page of HTML, or many for a long document, each made when it is its
 * turn. A row takes some hundred thousand bytes while its page is set.
 *
 * @param parts in their order; each begins a new page
 * @param numbers where the pages' numbers stand
 */
public record PaperParts(List<Part> parts, Numbers numbers) {
  /**
   * A part: one of the two.
   *
   * @param page of HTML, made when it is its turn
   * @param table of thousands of rows, which needs no HTML
   */
  public record Part(Optional<Supplier<String>> page, Optional<PaperTable> table) {
    static Part html(Supplier<String> page) {
      return new Part(Optional.of(page), Optional.empty());
    }

    static Part longTable(PaperTable table) {
      return new Part(Optional.empty(), Optional.of(table));
    }
  }

  /** Rows that are set at once. */
  static final int MOST_ROWS = 1000;

  /** Rows of one table beyond which no page of HTML is made of it: it would take minutes. */
  static final int LONG_ROWS = 2000;

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

  /** The pages of HTML among the parts. */
  List<Supplier<String>> pages() {
    return parts.stream().flatMap(part -> part.page().stream()).toList();
  }

  /** Whether a part is a long table. */
  boolean hasLongTable() {
    return parts.stream().anyMatch(part -> part.table().isPresent());
  }
}

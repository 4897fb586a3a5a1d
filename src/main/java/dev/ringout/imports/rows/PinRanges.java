package dev.ringout.imports.rows;

import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whether {@code 1-8} under pins is a range in this table or a pin's own name. Ranges count as many
 * at both ends, and those of one item do not overlap; names such as 1-1, 1-2, 1-3 do.
 */
record PinRanges(boolean areRanges, boolean areNames) {
  private static final Pattern NUMBERS = Pattern.compile("(\\d{1,3})\\s?-\\s?(\\d{1,3})");
  private static final int ROWS_NEEDED = 2;

  private record Span(int first, int last) {
    int size() {
      return Math.abs(last - first);
    }

    boolean overlaps(Span other) {
      int low = Math.max(Math.min(first, last), Math.min(other.first, other.last));
      int high = Math.min(Math.max(first, last), Math.max(other.first, other.last));
      return low <= high;
    }
  }

  /** Judged by all rows in which both ends are written so. */
  static PinRanges of(ListTable table) {
    Optional<ListColumn> from = table.column(Role.FROM_PIN);
    Optional<ListColumn> to = table.column(Role.TO_PIN);
    if (from.isEmpty() || to.isEmpty()) {
      return new PinRanges(false, true);
    }
    Map<String, List<Span>> spans = new HashMap<>();
    int rows = 0;
    boolean counts = true;
    for (Row row : table.body()) {
      Optional<Span> one = span(row, from.get());
      Optional<Span> other = span(row, to.get());
      if (one.isEmpty() || other.isEmpty()) {
        continue;
      }
      rows++;
      boolean alike = one.get().size() == other.get().size() && one.get().size() > 0;
      counts &= alike;
      if (!add(spans, item(table, row, Role.FROM), one.get())
          || !add(spans, item(table, row, Role.TO), other.get())) {
        return new PinRanges(false, true);
      }
    }
    return new PinRanges(counts && rows >= ROWS_NEEDED, rows == 0);
  }

  /** Whether nobody can tell: {@code 1-8} may be a range as well as a name. */
  boolean isOpen(String text) {
    return !areRanges && !areNames && NUMBERS.matcher(text).matches();
  }

  /** Whether a text under pins is a range here. */
  boolean isRange(String text) {
    return areRanges && NUMBERS.matcher(text).matches();
  }

  private static boolean add(Map<String, List<Span>> spans, String item, Span span) {
    List<Span> own = spans.computeIfAbsent(item, key -> new ArrayList<>());
    boolean apart = own.stream().noneMatch(span::overlaps);
    own.add(span);
    return apart;
  }

  private static Optional<Span> span(Row row, ListColumn column) {
    Matcher numbers = NUMBERS.matcher(column.textIn(row));
    return numbers.matches()
        ? Optional.of(
            new Span(Integer.parseInt(numbers.group(1)), Integer.parseInt(numbers.group(2))))
        : Optional.empty();
  }

  private static String item(ListTable table, Row row, Role role) {
    return table.column(role).map(column -> column.textIn(row)).orElse(role.title());
  }
}

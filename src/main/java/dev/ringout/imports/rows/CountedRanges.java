package dev.ringout.imports.rows;

import dev.ringout.cells.PinList;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Row;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * {@code X8:1-4} to {@code X9:1-4} with 4 or 1-4 under the heading of the cores: as many wires as
 * are counted, from pin to pin in their order. Without the count nobody can tell.
 */
final class CountedRanges {
  private static final Pattern RANGE =
      Pattern.compile("([-+=]?[A-Z]{1,4}\\d{1,4}[:.])(\\d{1,3})\\s?(?:-|\\.{2,3})\\s?(\\d{1,3})");

  private static final Pattern NUMBERS =
      Pattern.compile("(\\d{1,3})\\s?(?:-|\\.{2,3})\\s?(\\d{1,3})");

  /** Short names with blanks between. */
  static final Pattern APART = Pattern.compile("[\\w+-]{1,3}(?: +[\\w+-]{1,3})+");

  private final ListTable table;
  private final List<ListColumn> counts;

  CountedRanges(ListTable table, Words words) {
    this.table = table;
    this.counts =
        table.columns().stream()
            .filter(column -> column.role() == Role.KEEP || column.role() == Role.WIRE)
            .filter(
                column ->
                    words.mentions("conductors", column.heading())
                        || words.mentions("core", column.heading()))
            .toList();
  }

  /** Whether both ends of a row are ranges of as many pins as it counts cores. */
  boolean are(Row row) {
    if (counts.isEmpty() || table.layout() != Layout.FROM_TO) {
      return false;
    }
    int from = size(row, Role.FROM);
    return from > 1
        && from == size(row, Role.TO)
        && counts.stream().anyMatch(column -> counts(column.textIn(row), from));
  }

  /** {@code 4} or {@code 1-4}, of four cores. */
  private static boolean counts(String text, int cores) {
    return text.equals(Integer.toString(cores)) || size(NUMBERS.matcher(text), 1) == cores;
  }

  private int size(Row row, Role end) {
    Optional<String> pins = table.column(end.pinOfEnd()).map(column -> column.textIn(row));
    return pins.isPresent()
        ? Math.max(size(NUMBERS.matcher(pins.get()), 1), apart(pins.get()).size())
        : size(RANGE.matcher(table.column(end).map(one -> one.textIn(row)).orElse("")), 2);
  }

  private static int size(Matcher range, int first) {
    return range.matches()
        ? Integer.parseInt(range.group(first + 1)) - Integer.parseInt(range.group(first)) + 1
        : 0;
  }

  /** {@code U V W PE}: pins with nothing but blanks between; none where it is one pin. */
  static List<String> apart(String text) {
    return APART.matcher(text).matches() ? List.of(text.split(" +", -1)) : List.of();
  }

  /** The names of the cores where a range of them is counted; else none. */
  static List<String> names(String text) {
    return NUMBERS.matcher(text).matches() ? PinList.range(dottedPins(text)) : List.of();
  }

  /** The pins with two dots between. */
  static String dottedPins(String text) {
    return NUMBERS.matcher(text).replaceFirst("$1..$2");
  }

  /** The range with two dots between, as it is written where no count is needed. */
  static String dotted(String text) {
    return RANGE.matcher(text).replaceFirst("$1$2..$3");
  }
}

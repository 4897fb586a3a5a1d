package dev.ringout.imports.find;

import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.Role;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.List;

/**
 * Parts a row of headings into tables that stand beside each other: the same headings once more, or
 * mirrored, with or without a blank column between them.
 */
final class Groups {
  /** The columns of one table, counted from 1, both among them. */
  record Span(int first, int last) {}

  private final List<ListColumn> columns;
  private final List<Row> body;

  private Groups(List<ListColumn> columns, List<Row> body) {
    this.columns = columns;
    this.body = body;
  }

  static List<Span> of(List<ListColumn> columns, List<Row> body) {
    Groups groups = new Groups(columns, body);
    List<Span> apart = groups.byBlankColumn();
    if (apart.size() > 1) {
      return apart;
    }
    List<Span> byGaps = groups.byGaps();
    if (byGaps.size() > 1) {
      return byGaps;
    }
    List<Span> whole = groups.withoutGaps();
    return whole.size() > 1 ? whole : groups.mirroredPairs(whole);
  }

  /**
   * {@code Box pin | Bridge pin | Bridge pin | Box pin}, with or without names and blanks between:
   * pins of two items, and the same once more on the other side of the middle.
   */
  private List<Span> mirroredPairs(List<Span> whole) {
    List<ListColumn> headed =
        columns.stream().filter(column -> !column.heading().isEmpty()).toList();
    int half = headed.size() / 2;
    boolean mirrored = headed.size() % 2 == 0;
    for (int i = 0; i < half && mirrored; i++) {
      mirrored = headed.get(i).key().equals(headed.get(headed.size() - 1 - i).key());
    }
    boolean said = columns.stream().anyMatch(ListColumn::isSaid);
    if (!mirrored || Columns.itemsOfPins(headed.subList(0, half)) != 2 || said) {
      return whole;
    }
    int middle = columns.indexOf(headed.get(half));
    return List.of(new Span(1, middle), new Span(middle + 1, columns.size()));
  }

  /** Beside a table of wires, after a blank column, something else: a list of parts. */
  private List<Span> byBlankColumn() {
    for (int column = 2; column < columns.size(); column++) {
      ListColumn gap = columns.get(column);
      boolean blank =
          gap.heading().isEmpty() && body.stream().allMatch(row -> row.cell(gap.index()).isBlank());
      int left = column;
      int right = columns.size() - column - 1;
      long headed =
          columns.subList(column + 1, columns.size()).stream()
              .filter(one -> !one.heading().isEmpty())
              .count();
      if (blank && right >= 2 && headed >= 2 && isTable(0, left) && !namesEnds(column + 1)) {
        return List.of(new Span(1, column), new Span(column + 2, columns.size()));
      }
    }
    return List.of();
  }

  private boolean namesEnds(int first) {
    return columns.subList(first, columns.size()).stream()
        .anyMatch(column -> column.role().isEnd() || column.role() == Role.PIN);
  }

  private List<Span> byGaps() {
    List<Span> spans = new ArrayList<>();
    int start = 1;
    for (int column = 2; column < columns.size(); column++) {
      boolean gap = columns.get(column - 1).heading().isEmpty();
      if (gap && repeatsFrom(column, start)) {
        spans.add(new Span(start, column - 1));
        start = column + 1;
      }
    }
    spans.add(new Span(start, columns.size()));
    return spans;
  }

  private boolean repeatsFrom(int index, int start) {
    int first = start - 1;
    while (first < columns.size() && columns.get(first).heading().isEmpty()) {
      first++;
    }
    int same = 0;
    int known = 0;
    while (index + same < columns.size()
        && first + same < index
        && !columns.get(index + same).heading().isEmpty()
        && (isSame(columns.get(index + same), columns.get(first + same))
            || areBothItems(columns.get(index + same), columns.get(first + same)))) {
      known += isSame(columns.get(index + same), columns.get(first + same)) ? 1 : 0;
      same++;
    }
    return same >= 2 && known >= 1;
  }

  /**
   * {@code Core | X1 | M1} beside {@code Core | X2 | B1}: pins of other items under like headings.
   */
  private static boolean areBothItems(ListColumn one, ListColumn other) {
    return Ends.isDesignator(one.heading()) && Ends.isDesignator(other.heading());
  }

  private static boolean isSame(ListColumn one, ListColumn other) {
    return one.key().equals(other.key())
        || (one.known() && other.known() && one.role() == other.role() && one.role() != Role.KEEP);
  }

  private List<Span> withoutGaps() {
    int first = 0;
    while (first < columns.size() && columns.get(first).heading().isEmpty()) {
      first++;
    }
    int end = first;
    while (end < columns.size() && !columns.get(end).heading().isEmpty()) {
      end++;
    }
    List<Span> whole = List.of(new Span(1, columns.size()));
    for (int length = 2; length * 2 <= end - first; length++) {
      if (repeats(first, end, length)) {
        boolean parts = isTable(first, length) || areSeparateLists(first, length);
        return parts ? parted(first, end, length) : whole;
      }
    }
    int half = (end - first) / 2;
    boolean mirrored = (end - first) % 2 == 0 && half >= 2 && mirrors(first, end);
    if (mirrored && (isTable(first, half) || areMirroredLists(first, half))) {
      return List.of(new Span(1, first + half), new Span(first + half + 1, columns.size()));
    }
    return whole;
  }

  private boolean repeats(int first, int end, int length) {
    if ((end - first) % length != 0) {
      return false;
    }
    for (int i = first; i + length < end; i++) {
      if (!isSame(columns.get(i), columns.get(i + length))) {
        return false;
      }
    }
    return true;
  }

  private boolean mirrors(int first, int end) {
    for (int i = 0; first + i < end - 1 - i; i++) {
      if (!isSame(columns.get(first + i), columns.get(end - 1 - i))) {
        return false;
      }
    }
    return true;
  }

  private List<Span> parted(int first, int end, int length) {
    List<Span> spans = new ArrayList<>();
    for (int start = first; start < end; start += length) {
      boolean last = start + length >= end;
      spans.add(new Span(start == first ? 1 : start + 1, last ? columns.size() : start + length));
    }
    return spans;
  }

  /** Whether the headings tell wires by themselves: pins and their far ends, or both ends. */
  private boolean isTable(int first, int length) {
    boolean own = false;
    boolean far = false;
    boolean from = false;
    boolean to = false;
    for (ListColumn column : columns.subList(first, first + length)) {
      own |= column.role() == Role.PIN || column.role() == Role.ITEM;
      far |= column.role() == Role.FAR || column.role() == Role.FAR_PIN;
      from |= column.role() == Role.FROM || column.role() == Role.FROM_PIN;
      to |= column.role() == Role.TO || column.role() == Role.TO_PIN;
    }
    return (from && to) || (own && (far || from || to));
  }

  /** Whether the headings are of pins and their names, and the names of a row differ. */
  private boolean areSeparateLists(int first, int length) {
    for (int i = 0; i < length; i++) {
      if (columns.get(first + i).role() == Role.SIGNAL) {
        return hasPin(first, length)
            && !hasItem(first, length)
            && columns.get(first + i).key().equals(columns.get(first + length + i).key())
            && differ(columns.get(first + i), columns.get(first + length + i));
      }
    }
    return false;
  }

  private boolean areMirroredLists(int first, int half) {
    for (int i = 0; i < half; i++) {
      if (columns.get(first + i).role() == Role.SIGNAL) {
        ListColumn other = columns.get(first + 2 * half - 1 - i);
        return hasPin(first, half)
            && !hasItem(first, half)
            && columns.get(first + i).key().equals(other.key())
            && differ(columns.get(first + i), other);
      }
    }
    return false;
  }

  private boolean hasPin(int first, int length) {
    return columns.subList(first, first + length).stream()
        .anyMatch(column -> column.role() == Role.PIN);
  }

  private boolean hasItem(int first, int length) {
    return columns.subList(first, first + length).stream()
        .anyMatch(column -> column.role() == Role.ITEM);
  }

  /** Whether two columns hold other texts in most rows. */
  private boolean differ(ListColumn left, ListColumn right) {
    int both = 0;
    int same = 0;
    for (Row row : body) {
      String one = left.textIn(row);
      String other = right.textIn(row);
      if (!one.isEmpty() && !other.isEmpty()) {
        both++;
        same += one.equalsIgnoreCase(other) ? 1 : 0;
      }
    }
    return same * 2 < both;
  }
}

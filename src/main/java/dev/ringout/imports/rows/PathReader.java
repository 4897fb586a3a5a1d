package dev.ringout.imports.rows;

import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.End;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.RowOddity;
import dev.ringout.imports.list.SkipReason;
import dev.ringout.imports.list.SparePin;
import dev.ringout.imports.list.Understanding;
import dev.ringout.imports.list.Words;
import dev.ringout.imports.rows.Tally.RowKind;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Rows that are paths: a wire from each point to the next. */
final class PathReader extends TableReader {
  /** A wire's number before its points: one word, or two such as "Wire 5". */
  private static final Pattern NAME = Pattern.compile("(\\p{L}+ )?[\\p{L}\\d._/-]{1,12}:?");

  /** The items above, by column: a list writes them once. */
  private final Map<Integer, String> carried = new HashMap<>();

  PathReader(ListTable table, Words words, Ends ends, ListFindings findings, Understanding into) {
    super(table, words, ends, findings, into);
  }

  @Override
  void readRow(Row row) {
    if (cells.column(Role.PATH).isEmpty()) {
      chain(row);
      return;
    }
    String text = cells.text(row, Role.PATH);
    String name = cells.text(row, Role.WIRE);
    if (cells.rowIsLost()) {
      lose(row);
      return;
    }
    if (isNothing(text)) {
      tally.count(RowKind.NOTE);
      return;
    }
    Optional<Ends.Path> path = ends.path(text);
    boolean speaks = Ends.holdsPoint(text);
    if (path.isEmpty() && !speaks) {
      tally.count(RowKind.NOTE);
      return;
    }
    List<End> points = new ArrayList<>();
    for (String piece : path.map(Ends.Path::points).orElse(List.of())) {
      Ends.Text point = ends.parse(piece, grammar(Role.PATH));
      points.add(new End(point.item(), point.pin(), cells.place(row, Role.PATH), false));
    }
    if (path.isPresent() && leavesSomethingOut(path.get())) {
      lose(row, Role.PATH, new RowOddity.EndInDoubt(text), SkipReason.END_IN_DOUBT);
      return;
    }
    boolean ofOneWire = !name.isEmpty() && !attributes(row).isEmpty();
    if (path.isPresent() && !ofOneWire && isRange(text, points)) {
      lose(row, Role.PATH, new RowOddity.EndInDoubt(text), SkipReason.END_IN_DOUBT);
      return;
    }
    String number = name.isEmpty() ? path.map(Ends.Path::name).orElse("") : name;
    if (points.size() < 2) {
      lose(row, Role.PATH, new RowOddity.NoOtherEnd(), SkipReason.NO_OTHER_END);
      return;
    }
    tally.count(RowKind.WIRE);
    addFromEachToNext(row, number, points);
  }

  private void addFromEachToNext(Row row, String name, List<End> points) {
    for (int i = 0; i + 1 < points.size(); i++) {
      add(row, Draft.numbered(name, i), points.get(i), points.get(i + 1), List.of());
    }
  }

  /** J1-1 to J1-4, with a word or a dash between, may be four pins as well as a jumper. */
  private static boolean isRange(String text, List<End> points) {
    boolean arrow = text.indexOf('>') >= 0 || text.chars().anyMatch(c -> c >= 0x2190 && c < 0x2800);
    return !arrow && points.size() == 2 && points.get(0).item().equals(points.get(1).item());
  }

  /** A row through several columns of points: a wire from each to the next that is there. */
  private void chain(Row row) {
    String name = cells.text(row, Role.WIRE);
    List<End> points = new ArrayList<>();
    Optional<ListColumn> item = Optional.empty();
    boolean without = false;
    for (ListColumn column : table.columns()) {
      if (column.role() == Role.ITEM) {
        item = Optional.of(column);
      } else if (column.role() == Role.POINTS) {
        Optional<End> point = point(row, item, column);
        point.ifPresent(points::add);
        without |= point.isEmpty();
        item = Optional.empty();
      }
    }
    if (cells.rowIsLost()) {
      lose(row);
      return;
    }
    if (points.size() < 2) {
      if (points.size() == 1 && isAlone(row)) {
        findings.warning(table.place(row), new RowOddity.NoOtherEnd());
      }
      tally.count(points.isEmpty() ? RowKind.NOTE : RowKind.SPARE);
      points.forEach(end -> into.add(new SparePin(end, cells.text(row, Role.SIGNAL))));
      return;
    }
    tally.count(RowKind.WIRE);
    if (without) {
      findings.warning(table.place(row), new RowOddity.PointsLeftOut(points.size()));
    }
    addFromEachToNext(row, name, points);
  }

  /** Whether the one point of a row is no terminal in the middle, which may be spare. */
  private boolean isAlone(Row row) {
    List<ListColumn> points = table.columns(Role.POINTS);
    return !row.cell(points.get(0).index()).isBlank()
        || !row.cell(points.get(points.size() - 1).index()).isBlank();
  }

  /** A point of the row; none where its pin is blank or says that nothing is there. */
  private Optional<End> point(Row row, Optional<ListColumn> itemColumn, ListColumn pinColumn) {
    String pin = cells.text(row, pinColumn);
    if (itemColumn.isEmpty()) {
      Ends.Text whole = ends.parse(pin, pinColumn.grammar());
      return isNothing(pin)
          ? Optional.empty()
          : Optional.of(new End(whole.item(), whole.pin(), table.place(row, pinColumn), false));
    }
    String item = cells.text(row, itemColumn.get());
    item =
        item.isEmpty() && !isNothing(pin)
            ? carried.getOrDefault(itemColumn.get().index(), "")
            : item;
    if (isNothing(item)) {
      return Optional.empty();
    }
    carried.put(itemColumn.get().index(), item);
    return isNoPin(item, pin)
        ? Optional.empty()
        : Optional.of(new End(item, ends.shell(pin), table.place(row, pinColumn), false));
  }

  /** Another point before or behind, or a word that the wire is none: "J1-3 and J1-4 to P2-5". */
  private boolean leavesSomethingOut(Ends.Path path) {
    boolean name = path.name().isEmpty() || NAME.matcher(path.name()).matches();
    String beside = path.name() + " " + path.rest();
    boolean asked =
        path.points().stream()
            .anyMatch(
                point ->
                    point.indexOf('?') >= 0
                        || point.indexOf('\u00bf') >= 0
                        || words.is("doubt", point));
    return !name
        || asked
        || Ends.holdsPoint(beside)
        || words.mentions("deleted", beside)
        || words.mentions("changes wire", beside)
        || words.mentions("spare", beside)
        || words.mentions("and", path.rest())
        || path.rest().matches("[&+/,].*");
  }
}

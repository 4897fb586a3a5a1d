package dev.ringout.imports.find;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.ColumnCertainty;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Grid;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Titles;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Finds the tables of a sheet: where the headings are, what stands above, what stands beside. */
public final class TableFinder {
  private static final int ROWS_OF_TITLES = 3;

  private final Grid grid;
  private final Words words;
  private final HeadingReader headings;
  private final HeadingRows headingRows;
  private final List<Region> tables = new ArrayList<>();
  private final Said said;
  private final List<Row> above = new ArrayList<>();

  /**
   * What the user says of the sheet.
   *
   * @param headingRow where the headings stand; 0 where there are none
   * @param items the connectors whose pins are listed
   */
  public record Said(OptionalInt headingRow, List<dev.ringout.imports.list.Said<String>> items) {
    /** Nothing said. */
    public static final Said NOTHING = new Said(OptionalInt.empty(), List.of());
  }

  private TableFinder(Grid grid, Words words, HeadingReader headings, Said said) {
    this.said = said;
    this.grid = grid;
    this.words = words;
    this.headings = headings;
    this.headingRows = new HeadingRows(grid, words, headings);
  }

  /**
   * What was found.
   *
   * @param above rows that stand above the first table
   */
  public record Found(List<Region> tables, List<Row> above) {}

  /** The tables of a sheet. */
  public static Found find(Grid grid, Words words, HeadingReader headings, Said said) {
    TableFinder finder = new TableFinder(grid, words, headings, said);
    finder.find();
    return new Found(List.copyOf(finder.tables), List.copyOf(finder.above));
  }

  private void find() {
    List<Row> rows = grid.rows();
    boolean forced = said.headingRow().isPresent();
    int heading = forced ? saidHeading(said.headingRow().getAsInt()) : headingRows.first();
    if (heading == rows.size()) {
      withoutHeading();
      return;
    }
    above.addAll(rows.subList(0, heading));
    while (heading < rows.size()) {
      int bodyStart = heading + 1;
      List<ListColumn> columns = withCorner(heading, columns(rows.get(heading)));
      Row last = rows.get(heading);
      if (bodyStart < rows.size() && headingRows.isSecond(rows.get(heading), rows.get(bodyStart))) {
        List<ListColumn> both = columns(rows.get(heading), rows.get(bodyStart));
        List<ListColumn> second = columns(rows.get(bodyStart));
        List<Row> some = rows.subList(bodyStart + 1, rows.size());
        boolean titles =
            second.stream().anyMatch(column -> column.role().isEnd())
                && Groups.of(second, some).size() > 1
                && Groups.of(both, some).size() == 1;
        // LEFT FIELD and RIGHT FIELD over two halves that tell wires by themselves are titles.
        last = titles ? rows.get(bodyStart) : last;
        columns = titles ? second : both;
        bodyStart++;
      }
      int end = forced ? rows.size() : headingRows.nextOther(bodyStart, last);
      columns = withItemsAbove(rows.get(heading), columns);
      int bodyEnd = end > bodyStart && headingRows.isUnderItems(end) ? end - 1 : end;
      add(last, columns, rows.subList(bodyStart, bodyEnd));
      heading = end;
    }
  }

  /**
   * Columns of pins under the names of their items, one each, in the row above the headings: {@code
   * DESK C1 | | WINCH W1} over {@code Pin | Colour | Pin}.
   */
  private List<ListColumn> withItemsAbove(Row heading, List<ListColumn> columns) {
    List<Row> rows = grid.rows();
    int at = rows.indexOf(heading);
    List<ListColumn> pins =
        columns.stream()
            .filter(column -> column.role() == Role.PIN && column.known() && !column.isSaid())
            .filter(column -> column.item().isEmpty())
            .toList();
    if (pins.size() < 2 || at == 0 || rows.get(at - 1).number() + 1 != heading.number()) {
      return columns;
    }
    Row above = rows.get(at - 1);
    Map<Integer, String> items = new HashMap<>();
    for (ListColumn pin : pins) {
      String text = oneLine(above.cell(pin.index()));
      String named = Titles.item(above.cell(pin.index()).text(), words);
      String item = named.isEmpty() ? Titles.name(text, words) : named;
      if (item.isEmpty() || items.containsValue(item)) {
        return columns;
      }
      items.put(pin.index(), item);
    }
    boolean others = HeadingRows.filled(above) > pins.size();
    return others
        ? columns
        : columns.stream()
            .map(
                column ->
                    items.containsKey(column.index())
                        ? column.of(items.getOrDefault(column.index(), ""))
                        : column)
            .toList();
  }

  /** {@code PL1 | SK1} above a blank corner: the items down and across. */
  private List<ListColumn> withCorner(int heading, List<ListColumn> columns) {
    boolean numbered =
        columns.stream().skip(1).allMatch(column -> CellText.isDigits(column.heading()));
    List<Row> rows = grid.rows();
    if (heading == 0 || !numbered || columns.size() < 3 || !columns.get(0).heading().isEmpty()) {
      return columns;
    }
    Row above = rows.get(heading - 1);
    String down = oneLine(above.cell(1));
    String across = oneLine(above.cell(2));
    boolean items = Ends.isDesignator(down) && Ends.isDesignator(across);
    if (!items || HeadingRows.filled(above) != 2) {
      return columns;
    }
    List<ListColumn> cornered = new ArrayList<>(columns);
    cornered.set(0, headings.understand(1, down + " \\ " + across));
    return cornered;
  }

  /** The row of headings that the user names; past the end where there are none. */
  private int saidHeading(int number) {
    List<Row> rows = grid.rows();
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).number() == number) {
        return i;
      }
    }
    return rows.size();
  }

  private List<ListColumn> columns(Row row) {
    HeadingReader own = headings.ofRow(row.number());
    List<ListColumn> columns = new ArrayList<>();
    int width = Math.max(row.cells().size(), grid.width());
    for (int column = 1; column <= width; column++) {
      columns.add(own.understand(column, oneLine(row.cell(column))));
    }
    return withoutOld(PairedHeadings.in(columns, words, own));
  }

  /**
   * What a hidden column says is old where a visible one says the same; and so are the pins beside
   * an old end.
   */
  private List<ListColumn> withoutOld(List<ListColumn> columns) {
    Set<Integer> hidden = grid.around().hiddenColumns();
    List<ListColumn> without = new ArrayList<>();
    boolean afterOld = false;
    for (ListColumn column : columns) {
      boolean twice =
          columns.stream()
              .anyMatch(
                  other ->
                      other.role() == column.role()
                          && other.index() != column.index()
                          && !hidden.contains(other.index()));
      boolean old = hidden.contains(column.index()) && twice && column.role() != Role.KEEP;
      boolean pinOfOld = afterOld && column.role() == Role.PIN && twice;
      boolean drop = (old || pinOfOld) && !column.isSaid();
      without.add(drop ? column.as(Role.KEEP, ColumnCertainty.CERTAIN) : column);
      afterOld = drop && !pinOfOld;
    }
    return without;
  }

  private List<ListColumn> columns(Row first, Row second) {
    HeadingReader own = headings.ofRow(first.number());
    List<ListColumn> columns = new ArrayList<>();
    String last = "";
    boolean next = true;
    for (int column = 1; column <= grid.width(); column++) {
      String top = oneLine(first.cell(column));
      String below = oneLine(second.cell(column));
      last = top.isEmpty() ? last : top;
      next = !top.isEmpty() || reaches(first, column, below, last, next);
      String over = next ? last : "";
      if (isNumberOf(over, below)) {
        columns.add(
            new ListColumn(
                column, over + " " + below, Role.PIN, "", over, true, ColumnCertainty.LIKELY));
        continue;
      }
      boolean alone = over.isEmpty() || below.isEmpty() || below.equals(over);
      columns.add(own.understand(column, alone ? top + below : over + " " + below));
    }
    return withoutOld(PairedHeadings.in(columns, words, own));
  }

  /** Whether the heading on the left also stands over this column: merged, or an end's name. */
  private boolean reaches(Row first, int column, String below, String over, boolean next) {
    int left = column;
    while (left > 1 && first.cell(left).isBlank()) {
      left--;
    }
    if (grid.isWide(first.number(), left)) {
      return grid.reach(first.number(), left) >= column;
    }
    Role role = headings.role(over);
    Role own = headings.role(below);
    boolean end = role == Role.FROM || role == Role.TO || role == Role.FAR;
    return end && (own == Role.ITEM || own == Role.PIN || (own == Role.KEEP && next));
  }

  /** {@code No.} below the designator of a strip: its terminals. */
  private boolean isNumberOf(String over, String below) {
    return Ends.isDesignator(over)
        && headings.role(below) == Role.KEEP
        && words.is("filler", below);
  }

  private static String oneLine(Cell cell) {
    return CellText.clean(cell.text()).replaceAll("\\s+", " ");
  }

  /** A list without headings: columns by their cells, in the order in which lists are written. */
  private void withoutHeading() {
    List<Row> rows = grid.rows();
    int first = rows.isEmpty() ? 1 : rows.get(0).number();
    HeadingReader own = headings.ofRow(first);
    List<ListColumn> columns = HeadingLess.columns(rows, grid.width(), words, own);
    if (columns.isEmpty()) {
      columns = HeadingLess.paths(rows, grid.width(), words, own);
    }
    if (columns.isEmpty()) {
      columns = HeadingLess.open(rows, grid.width(), words, own);
    }
    if (columns.isEmpty()) {
      above.addAll(rows);
      return;
    }
    String item = itemSaid(1, first).orElse(sheetItem());
    tables.add(new Region(grid, 0, 1, grid.width(), columns, item, List.copyOf(rows), 0));
  }

  /** Tables side by side have the same headings again. */
  private void add(Row heading, List<ListColumn> columns, List<Row> body) {
    List<Groups.Span> spans = Groups.of(columns, body);
    List<Row> alike = tables.isEmpty() ? headingRows.alikeAbove(heading, body) : List.<Row>of();
    boolean read = spans.size() == 1 && areRows(alike, heading, columns, body);
    List<Row> rows = new ArrayList<>(read ? alike : List.of());
    rows.addAll(body);
    above.removeAll(read ? alike : List.of());
    int outside = read ? 0 : alike.size();
    for (Groups.Span span : spans) {
      List<ListColumn> own = columns.subList(span.first() - 1, span.last());
      Optional<String> saidItem = itemSaid(span.first(), heading.number());
      tables.add(
          new Region(
              grid,
              heading.number(),
              span.first(),
              span.last(),
              saidItem.isPresent() ? withoutItems(own) : own,
              saidItem.orElse(spans.size() > 1 ? groupItem(heading, span, own) : item(heading)),
              List.copyOf(rows),
              outside));
    }
  }

  /**
   * Whether rows above the headings are rows of the list: they stand just above them, and where the
   * rows below have points, they have points.
   */
  private boolean areRows(List<Row> alike, Row heading, List<ListColumn> columns, List<Row> body) {
    if (alike.isEmpty()) {
      return false;
    }
    int at = grid.rows().indexOf(heading);
    List<Row> just = grid.rows().subList(Math.max(0, at - alike.size()), at);
    int ends = 0;
    for (ListColumn column : columns) {
      boolean points = column.role().isEnd() && arePoints(body, column);
      ends += points ? 1 : 0;
      if (points && !arePoints(alike, column)) {
        return false;
      }
    }
    return ends >= 2 && just.equals(alike);
  }

  private static boolean arePoints(List<Row> rows, ListColumn column) {
    int filled = 0;
    int points = 0;
    for (Row row : rows) {
      String text = column.textIn(row);
      filled += text.isEmpty() ? 0 : 1;
      points += Ends.looksLikePoint(text) || Ends.isDesignator(text) ? 1 : 0;
    }
    return points > 0 && points * 10 >= filled * 8;
  }

  /** The connector that the user names for a table, told by its first cell. */
  private Optional<String> itemSaid(int column, int row) {
    return dev.ringout.imports.list.Said.of(
        said.items(), grid.name(), Place.columnLetters(column) + row);
  }

  /** Where the user says whose pins they are, no column does. */
  private static List<ListColumn> withoutItems(List<ListColumn> columns) {
    return columns.stream()
        .map(
            column ->
                column.role() == Role.ITEM && !column.isSaid()
                    ? column.as(Role.KEEP, ColumnCertainty.CERTAIN)
                    : column)
        .toList();
  }

  private String item(Row heading) {
    return sheetItem().isEmpty() ? titleAbove(heading) : sheetItem();
  }

  /** The item of one of several tables side by side: in its heading, or in a title above it. */
  private String groupItem(Row heading, Groups.Span span, List<ListColumn> columns) {
    Optional<String> headed =
        columns.stream()
            .filter(column -> column.role() == Role.PIN && !column.item().isEmpty())
            .map(ListColumn::item)
            .findFirst();
    if (headed.isPresent()) {
      return headed.get();
    }
    boolean named = columns.stream().anyMatch(column -> column.role() == Role.ITEM);
    List<Row> rows = grid.rows();
    int at = rows.indexOf(heading);
    for (int i = at - 1; i >= Math.max(0, at - ROWS_OF_TITLES); i--) {
      List<String> own = texts(rows.get(i), span.first(), span.last());
      if (own.size() == 1) {
        String item = Titles.item(own.get(0), words);
        boolean oneEach = texts(rows.get(i), 1, grid.width()).size() > 1;
        if (!item.isEmpty() || (oneEach && !named)) {
          return item.isEmpty() ? Titles.first(own.get(0)) : item;
        }
      }
    }
    return item(heading);
  }

  /** The different texts of a row between two columns; a merged title is one. */
  private static List<String> texts(Row row, int first, int last) {
    List<String> texts = new ArrayList<>();
    for (int column = first; column <= last; column++) {
      String text = CellText.clean(row.cell(column).text());
      if (!text.isEmpty() && !texts.contains(text)) {
        texts.add(text);
      }
    }
    return texts;
  }

  /** The item that a title just above the headings names: {@code CONNECTOR: J1 (POWER)}. */
  private String titleAbove(Row heading) {
    List<Row> rows = grid.rows();
    int at = rows.indexOf(heading);
    for (int i = at - 1; i >= Math.max(0, at - ROWS_OF_TITLES); i--) {
      List<String> texts = texts(rows.get(i), 1, grid.width());
      if (texts.size() == 1 || texts.size() == 2) {
        String item = Titles.item(String.join(" ", texts), words);
        if (!item.isEmpty()) {
          return item;
        }
      }
    }
    return at > 0 ? nameAbove(rows.get(at - 1), heading.number()) : "";
  }

  /** A short text that stands alone just above the headings: the name of what is listed. */
  private String nameAbove(Row above, int headingRow) {
    List<String> texts = texts(above, 1, grid.width());
    boolean alone = texts.size() == 1 && headingRow - above.number() <= 2;
    return alone ? Titles.name(texts.get(0), words) : "";
  }

  /** The designator that a sheet's name holds: {@code J1} of "J1 - Power". */
  private String sheetItem() {
    String[] parts = CellText.clean(grid.name()).split("[\\s_,:-]+", -1);
    for (String part : parts) {
      if (Ends.isDesignator(part) && !words.isAny("furniture", part.replaceAll("\\d", ""))) {
        return part;
      }
    }
    return "";
  }
}

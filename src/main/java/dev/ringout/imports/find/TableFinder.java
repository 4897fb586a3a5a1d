package dev.ringout.imports.find;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Grid;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** Finds the tables of a sheet: where the headings are, what stands above, what stands beside. */
public final class TableFinder {
  private static final int ROWS_NEEDED_TO_CONTRAST = 3;
  private static final int ROWS_ABOVE = 60;
  private static final int ROWS_OF_TITLES = 3;

  private final Grid grid;
  private final Words words;
  private final HeadingReader headings;
  private final Ends ends;
  private final List<ListTable> tables = new ArrayList<>();
  private final List<Row> above = new ArrayList<>();

  private TableFinder(Grid grid, Words words, HeadingReader headings) {
    this.ends = new Ends(words);
    this.grid = grid;
    this.words = words;
    this.headings = headings;
  }

  /**
   * What was found.
   *
   * @param above rows that stand above the first table
   */
  public record Found(List<ListTable> tables, List<Row> above) {}

  /** The tables of a sheet. */
  public static Found find(Grid grid, Words words, HeadingReader headings) {
    TableFinder finder = new TableFinder(grid, words, headings);
    finder.find();
    return new Found(List.copyOf(finder.tables), List.copyOf(finder.above));
  }

  private void find() {
    List<Row> rows = grid.rows();
    int heading = firstHeading();
    if (heading == rows.size()) {
      heading = contrastingHeading();
    }
    if (heading == rows.size()) {
      withoutHeading();
      return;
    }
    above.addAll(rows.subList(0, heading));
    while (heading < rows.size()) {
      int bodyStart = heading + 1;
      List<ListColumn> columns = columns(rows.get(heading));
      if (bodyStart < rows.size() && isSecondHeadingRow(rows.get(heading), rows.get(bodyStart))) {
        columns = columns(rows.get(heading), rows.get(bodyStart));
        bodyStart++;
      }
      int end = nextOtherHeading(bodyStart, rows.get(heading));
      add(rows.get(heading), columns, rows.subList(bodyStart, end));
      heading = end;
    }
  }

  /** The first headings may stand anywhere near the top. */
  private int firstHeading() {
    List<Row> rows = grid.rows();
    for (int i = 0; i < Math.min(ROWS_ABOVE, rows.size()); i++) {
      if (isHeading(rows.get(i)) && isWideEnough(i)) {
        return i;
      }
    }
    return nextHeading(Math.min(ROWS_ABOVE, rows.size()));
  }

  private int nextHeading(int from) {
    List<Row> rows = grid.rows();
    for (int i = from; i < rows.size(); i++) {
      if (mayFollow(i) && isHeading(rows.get(i)) && isWideEnough(i)) {
        return i;
      }
    }
    return rows.size();
  }

  /** The next row of headings that is not the same headings once more. */
  private int nextOtherHeading(int from, Row heading) {
    List<Row> rows = grid.rows();
    for (int i = from; i < rows.size(); i++) {
      Row row = rows.get(i);
      boolean candidate = mayFollow(i) || sameCells(row, heading) >= 2;
      if (candidate && isHeading(row) && isWideEnough(i) && !isRepeat(row, heading)) {
        return i;
      }
    }
    return rows.size();
  }

  private static int sameCells(Row row, Row heading) {
    int same = 0;
    for (int column = 1; column <= heading.cells().size(); column++) {
      String text = heading.cell(column).text();
      same += !text.isEmpty() && text.equalsIgnoreCase(row.cell(column).text()) ? 1 : 0;
    }
    return same;
  }

  /** Headings stand at the top, below a gap, or below a row of one or two cells. */
  private boolean mayFollow(int index) {
    if (index == 0) {
      return true;
    }
    Row row = grid.rows().get(index);
    Row before = grid.rows().get(index - 1);
    return row.number() > before.number() + 1 || filled(before) <= 2;
  }

  /** A title over a wide table is no heading, unless the headings proper follow. */
  private boolean isWideEnough(int index) {
    List<Row> rows = grid.rows();
    if (index + 1 >= rows.size()) {
      return true;
    }
    int below = filled(rows.get(index + 1));
    return below <= 3 * filled(rows.get(index))
        || isSecondHeadingRow(rows.get(index), rows.get(index + 1));
  }

  private static int filled(Row row) {
    int filled = 0;
    for (Cell cell : row.cells()) {
      filled += cell.isBlank() ? 0 : 1;
    }
    return filled;
  }

  /** Whether a row repeats the headings of its table. */
  static boolean isRepeat(Row row, Row heading) {
    int same = 0;
    int headed = 0;
    int filled = 0;
    for (int column = 1; column <= heading.cells().size(); column++) {
      String text = heading.cell(column).text();
      filled += row.cell(column).isBlank() ? 0 : 1;
      if (!text.isBlank()) {
        headed++;
        same +=
            CellText.headingKey(text).equals(CellText.headingKey(row.cell(column).text())) ? 1 : 0;
      }
    }
    // Another item's headings differ in that item's cell alone: that is no repeat.
    return headed >= 2 && same == filled && same * 4 >= headed * 3;
  }

  private boolean isHeading(Row row) {
    Set<Role> roles = new HashSet<>();
    int known = 0;
    int filled = 0;
    int numbers = 0;
    int partsList = 0;
    int designators = 0;
    for (Cell cell : row.cells()) {
      if (cell.isBlank()) {
        continue;
      }
      filled++;
      String text = CellText.clean(cell.text());
      numbers += cell.kind() == Cell.Stored.NUMBER || CellText.isDigits(text) ? 1 : 0;
      partsList += headings.isOfPartsList(text) ? 1 : 0;
      if (Ends.isDesignator(text)) {
        designators++;
      } else if (ends.isPhrase(text)) {
        return false;
      } else if (headings.isHeading(text)) {
        known++;
        if (headings.role(text) != Role.KEEP) {
          roles.add(headings.role(text));
        }
      }
    }
    boolean items = known >= 1 && designators >= 2 && known + designators == filled;
    boolean twoPins = known >= 2 && roles.equals(Set.of(Role.PIN));
    return filled >= 2
        && (roles.size() >= 2 || twoPins || items)
        && (known * 10 >= filled * 3 || items)
        && numbers <= 1
        && partsList < 2;
  }

  /** Headings over headings: FROM and TO over Connector and Pin. */
  private boolean isSecondHeadingRow(Row first, Row second) {
    if (second.number() != first.number() + 1 || isRepeat(second, first)) {
      return false;
    }
    int known = 0;
    int filled = 0;
    int underWide = 0;
    for (int column = 1; column <= second.cells().size(); column++) {
      Cell cell = second.cell(column);
      if (cell.isBlank()) {
        continue;
      }
      if (cell.kind() == Cell.Stored.NUMBER || Ends.looksLikePoint(CellText.clean(cell.text()))) {
        return false;
      }
      filled++;
      known += headings.isHeading(CellText.clean(cell.text())) ? 1 : 0;
      underWide += grid.isWide(first.number(), column) ? 1 : 0;
    }
    boolean refines = filled > filled(first) || hasGap(first, second);
    return (known * 2 >= filled && known >= 2 && refines) || (underWide > 0 && filled <= 4);
  }

  /** Whether the second row fills cells that the first leaves blank. */
  private static boolean hasGap(Row first, Row second) {
    for (int column = 1; column <= second.cells().size(); column++) {
      if (first.cell(column).isBlank() && !second.cell(column).isBlank()) {
        return true;
      }
    }
    return false;
  }

  private List<ListColumn> columns(Row row) {
    List<ListColumn> columns = new ArrayList<>();
    int width = Math.max(row.cells().size(), grid.width());
    for (int column = 1; column <= width; column++) {
      columns.add(headings.understand(column, oneLine(row.cell(column))));
    }
    return columns;
  }

  private List<ListColumn> columns(Row first, Row second) {
    List<ListColumn> columns = new ArrayList<>();
    String over = "";
    for (int column = 1; column <= grid.width(); column++) {
      String top = oneLine(first.cell(column));
      String below = oneLine(second.cell(column));
      over = top.isEmpty() ? (reaches(first, column, below, over) ? over : "") : top;
      boolean alone = over.isEmpty() || below.isEmpty() || below.equals(over);
      columns.add(headings.understand(column, alone ? top + below : over + " " + below));
    }
    return columns;
  }

  /** Whether the heading on the left also stands over this column: merged, or an end's name. */
  private boolean reaches(Row first, int column, String below, String over) {
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
    return end && (own == Role.ITEM || own == Role.PIN || own == Role.KEEP);
  }

  private static String oneLine(Cell cell) {
    return CellText.clean(cell.text()).replaceAll("\\s+", " ");
  }

  /** Headings that no word gives away stand out by not looking like the cells below them. */
  private int contrastingHeading() {
    List<Row> rows = grid.rows();
    int first = 0;
    while (first < rows.size() && filled(rows.get(first)) < 2) {
      first++;
    }
    if (first + ROWS_NEEDED_TO_CONTRAST >= rows.size()) {
      return rows.size();
    }
    return isWideEnough(first) && contrasts(first) ? first : rows.size();
  }

  private boolean contrasts(int first) {
    List<Row> rows = grid.rows();
    Row heading = rows.get(first);
    Map<Integer, ColumnProfile> below =
        ColumnProfile.of(rows.subList(first + 1, rows.size()), 1, grid.width(), words);
    int stands = 0;
    int partsList = 0;
    for (int column = 1; column <= heading.cells().size(); column++) {
      Cell cell = heading.cell(column);
      if (cell.isBlank()) {
        continue;
      }
      String text = CellText.clean(cell.text());
      partsList += headings.isOfPartsList(text) ? 1 : 0;
      ColumnProfile cells = Objects.requireNonNull(below.get(column));
      if (cells.isMarks() || cells.isEmpty()) {
        stands += cells.isMarks() ? 1 : 0;
        continue;
      }
      boolean asBelow =
          Ends.isDesignator(text) && cells.filled() > 0 && isDesignatorBelow(first, column);
      boolean twice = text.equals(CellText.clean(heading.cell(column - 1).text()));
      if (cell.kind() != Cell.Stored.TEXT
          || text.length() > 40
          || asBelow
          || twice
          || Ends.looksLikePoint(text)) {
        return false;
      }
      boolean pinsBelow = cells.canBePins() && cells.filled() * 2 >= cells.rows();
      stands += pinsBelow && text.chars().anyMatch(Character::isLetter) ? 1 : 0;
    }
    return stands >= 2 && partsList < 2;
  }

  private boolean isDesignatorBelow(int first, int column) {
    int alike = 0;
    int filled = 0;
    for (Row row : grid.rows().subList(first + 1, Math.min(first + 100, grid.rows().size()))) {
      String text = CellText.clean(row.cell(column).text());
      filled += text.isEmpty() ? 0 : 1;
      alike += Ends.isDesignator(text) ? 1 : 0;
    }
    return alike * 2 > filled;
  }

  /** A list without headings: columns by their cells, in the order in which lists are written. */
  private void withoutHeading() {
    List<Row> rows = grid.rows();
    List<ListColumn> columns = HeadingLess.columns(rows, grid.width(), words, headings);
    if (columns.isEmpty()) {
      above.addAll(rows);
      return;
    }
    boolean block = columns.stream().anyMatch(column -> column.role() == Role.FAR);
    tables.add(
        new ListTable(
            grid,
            0,
            1,
            grid.width(),
            columns,
            block ? Layout.BLOCK : Layout.FROM_TO,
            sheetItem(),
            List.copyOf(rows)));
  }

  /** Tables side by side have the same headings again after a blank one. */
  private void add(Row heading, List<ListColumn> columns, List<Row> body) {
    int start = 1;
    List<int[]> spans = new ArrayList<>();
    for (int column = 2; column < columns.size(); column++) {
      boolean gap = columns.get(column - 1).heading().isEmpty();
      if (gap && repeatsFrom(columns, column, start)) {
        spans.add(new int[] {start, column - 1});
        start = column + 1;
      }
    }
    spans.add(new int[] {start, columns.size()});
    String item = sheetItem().isEmpty() ? titleAbove(heading) : sheetItem();
    for (int[] span : spans) {
      List<Row> own = body;
      Map<Integer, ColumnProfile> profiles = ColumnProfile.of(own, span[0], span[1], words);
      Columns settled = Columns.settle(columns.subList(span[0] - 1, span[1]), profiles, item);
      tables.add(
          new ListTable(
              grid,
              heading.number(),
              span[0],
              span[1],
              settled.list(),
              settled.layout(),
              item,
              List.copyOf(own)));
    }
  }

  private static boolean repeatsFrom(List<ListColumn> columns, int index, int start) {
    int first = start - 1;
    while (first < columns.size() && columns.get(first).heading().isEmpty()) {
      first++;
    }
    int same = 0;
    while (index + same < columns.size()
        && first + same < index
        && !columns.get(index + same).heading().isEmpty()
        && columns.get(index + same).key().equals(columns.get(first + same).key())) {
      same++;
    }
    return same >= 2;
  }

  /** The item that a title just above the headings begins with: {@code CONNECTOR: J1 (POWER)}. */
  private String titleAbove(Row heading) {
    List<Row> rows = grid.rows();
    int at = rows.indexOf(heading);
    for (int i = at - 1; i >= Math.max(0, at - ROWS_OF_TITLES); i--) {
      String text = "";
      for (Cell cell : rows.get(i).cells()) {
        text = text.isEmpty() ? CellText.clean(cell.text()) : text;
      }
      String[] parts = text.split("[\\s,:;()]+|(?<=\\d)-|-(?=\\D)", -1);
      int first = parts.length > 1 && words.isAny("item", parts[0]) ? 1 : 0;
      if (filled(rows.get(i)) <= 2 && Ends.isDesignator(parts[first])) {
        return parts[first];
      }
    }
    return "";
  }

  /** The designator that a sheet's name begins with: {@code J1} of "J1 - Power". */
  private String sheetItem() {
    String[] parts = CellText.clean(grid.name()).split("[\\s_,:-]+", -1);
    for (String part : parts) {
      if (Ends.isDesignator(part)) {
        return part;
      }
    }
    return "";
  }
}

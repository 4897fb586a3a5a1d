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
import java.util.List;
import java.util.Map;

/** Finds the tables of a sheet: where the headings are, what stands above, what stands beside. */
public final class TableFinder {
  private static final int ROWS_OF_TITLES = 3;

  private final Grid grid;
  private final Words words;
  private final HeadingReader headings;
  private final HeadingRows headingRows;
  private final List<ListTable> tables = new ArrayList<>();
  private final List<Row> above = new ArrayList<>();

  private TableFinder(Grid grid, Words words, HeadingReader headings) {
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
  public record Found(List<ListTable> tables, List<Row> above) {}

  /** The tables of a sheet. */
  public static Found find(Grid grid, Words words, HeadingReader headings) {
    TableFinder finder = new TableFinder(grid, words, headings);
    finder.find();
    return new Found(List.copyOf(finder.tables), List.copyOf(finder.above));
  }

  private void find() {
    List<Row> rows = grid.rows();
    int heading = headingRows.first();
    if (heading == rows.size()) {
      withoutHeading();
      return;
    }
    above.addAll(rows.subList(0, heading));
    while (heading < rows.size()) {
      int bodyStart = heading + 1;
      List<ListColumn> columns = columns(rows.get(heading));
      if (bodyStart < rows.size() && headingRows.isSecond(rows.get(heading), rows.get(bodyStart))) {
        columns = columns(rows.get(heading), rows.get(bodyStart));
        bodyStart++;
      }
      int end = headingRows.nextOther(bodyStart, rows.get(heading));
      add(rows.get(heading), columns, rows.subList(bodyStart, end));
      heading = end;
    }
  }

  private List<ListColumn> columns(Row row) {
    List<ListColumn> columns = new ArrayList<>();
    int width = Math.max(row.cells().size(), grid.width());
    for (int column = 1; column <= width; column++) {
      columns.add(headings.understand(column, oneLine(row.cell(column))));
    }
    return PairedHeadings.in(columns, words, headings);
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
    return PairedHeadings.in(columns, words, headings);
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
      if (HeadingRows.filled(rows.get(i)) <= 2 && Ends.isDesignator(parts[first])) {
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

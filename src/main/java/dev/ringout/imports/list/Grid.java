package dev.ringout.imports.list;

import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import dev.ringout.sheet.Sheet;
import dev.ringout.sheet.Surroundings;
import dev.ringout.sheet.Surroundings.Merge;
import dev.ringout.source.Place;
import dev.ringout.source.UnusableInput;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A sheet as a whole; merged cells hold their value in every row that they span. */
public final class Grid {
  /** {@code **J1**}, {@code `J1`}, {@code <span class="pin">J1</span>}: how a page shows a text. */
  private static final Pattern MARKED =
      Pattern.compile(
          "\\*\\*([^*]+)\\*\\*|`([^`]+)`|</?(?:span|b|i|strong|em|code|kbd)(?: [^<>]*)?>");

  private final Sheet sheet;
  private final Place whole;
  private final List<Row> rows;
  private final Surroundings around;
  private final int width;
  private final List<ColouredText> colouredTexts;
  private final boolean turned;
  private final List<Row> leftOut;
  private final Set<Place> settled;

  private Grid(
      Sheet sheet,
      List<Row> rows,
      List<Row> leftOut,
      Set<Place> settled,
      Surroundings around,
      boolean turned) {
    this.sheet = sheet;
    this.turned = turned;
    this.leftOut = leftOut;
    this.settled = settled;
    this.whole = sheet.place();
    this.rows = rows;
    this.around = around;
    this.width =
        Stream.concat(rows.stream(), leftOut.stream())
            .mapToInt(row -> row.cells().size())
            .max()
            .orElse(0);
    this.colouredTexts = ColouredText.of(rows);
  }

  /** All rows of a sheet, with what is merged in every row that it spans. */
  public static Grid read(Sheet sheet) throws UnusableInput {
    List<Row> rows = new ArrayList<>();
    Surroundings around = sheet.forEachRow(row -> rows.add(withoutEmphasis(row)));
    return new Grid(sheet, fillDown(rows, around.merges()), List.of(), Set.of(), around, false);
  }

  /** The same sheet with some of its rows alone. */
  public Grid only(RowRange range) {
    List<Row> own = rows.stream().filter(row -> range.holds(row.number())).toList();
    return new Grid(sheet, own, leftOut, settled, around, turned);
  }

  /** The same sheet without rows that are no wires; they are kept apart. */
  public Grid without(List<RowRange> ranges) {
    Map<Boolean, List<Row>> parted =
        rows.stream()
            .collect(
                Collectors.partitioningBy(
                    row -> ranges.stream().anyMatch(range -> range.holds(row.number()))));
    return new Grid(
        sheet,
        parted.getOrDefault(false, List.of()),
        parted.getOrDefault(true, List.of()),
        settled,
        around,
        turned);
  }

  /**
   * The same sheet with other texts in its rows.
   *
   * @param settled the cells of which the user says what they mean, which are known once all rows
   *     are amended
   */
  public Grid with(UnaryOperator<Row> amended, Set<Place> settled) {
    return new Grid(sheet, rows.stream().map(amended).toList(), leftOut, settled, around, turned);
  }

  /** Whether the user says what a cell means: it leaves nothing open. */
  public boolean isSettled(int row, int column) {
    return settled.contains(place(row, column));
  }

  /** The same cells with each column as a row; what stands around them is left out. */
  public Grid turned() {
    List<Row> columns = new ArrayList<>();
    for (int column = 1; column <= width; column++) {
      List<Cell> cells = new ArrayList<>();
      for (Row row : rows) {
        while (cells.size() < row.number() - 1) {
          cells.add(Cell.EMPTY);
        }
        cells.add(row.cell(column));
      }
      Row own = new Row(column, List.copyOf(cells));
      if (!own.isBlank()) {
        columns.add(own);
      }
    }
    return new Grid(sheet, columns, List.of(), Set.of(), Surroundings.none(), !turned);
  }

  /** Whether its rows are the columns of the sheet. */
  public boolean isTurned() {
    return turned;
  }

  /** What only shows how a page sets a text is no part of a name. */
  private static Row withoutEmphasis(Row row) {
    boolean any = row.cells().stream().anyMatch(Grid::isMarked);
    return any
        ? new Row(row.number(), row.cells().stream().map(Grid::withoutEmphasis).toList())
        : row;
  }

  private static Cell withoutEmphasis(Cell cell) {
    if (!isMarked(cell)) {
      return cell;
    }
    String text = cell.text();
    for (String before = ""; !before.equals(text); ) {
      before = text;
      text = MARKED.matcher(before).replaceAll(Grid::inside);
    }
    return Cell.text(text).in(cell.ink()).filled(cell.fill());
  }

  private static String inside(MatchResult marked) {
    String bold = marked.group(1) == null ? "" : marked.group(1);
    String code = marked.group(2) == null ? "" : marked.group(2);
    return Matcher.quoteReplacement(bold + code);
  }

  private static boolean isMarked(Cell cell) {
    String text = cell.text();
    boolean may = text.indexOf('*') >= 0 || text.indexOf('`') >= 0 || text.indexOf('<') >= 0;
    return may
        && cell.kind() == Cell.Stored.TEXT
        && !cell.ink().struck()
        && MARKED.matcher(text).find();
  }

  private static List<Row> fillDown(List<Row> rows, List<Merge> merges) {
    if (merges.stream().allMatch(merge -> merge.lastRow() == merge.firstRow())) {
      return rows;
    }
    Map<Integer, Integer> indexOf = new HashMap<>();
    for (int i = 0; i < rows.size(); i++) {
      indexOf.put(rows.get(i).number(), i);
    }
    List<Row> filled = new ArrayList<>(rows);
    for (Merge merge : merges) {
      Integer first = indexOf.get(merge.firstRow());
      if (first == null || merge.lastRow() - merge.firstRow() > rows.size() * 2) {
        continue;
      }
      Cell value = filled.get(first).cell(merge.firstColumn());
      for (int number = merge.firstRow() + 1; number <= merge.lastRow(); number++) {
        Integer index = indexOf.get(number);
        if (index != null) {
          filled.set(index, with(filled.get(index), merge.firstColumn(), value));
        }
      }
    }
    return filled;
  }

  private static Row with(Row row, int column, Cell value) {
    List<Cell> cells = new ArrayList<>(row.cells());
    while (cells.size() < column) {
      cells.add(Cell.EMPTY);
    }
    cells.set(column - 1, value);
    return new Row(row.number(), List.copyOf(cells));
  }

  /** The sheet's name. */
  public String name() {
    return sheet.name();
  }

  /** The rows that hold something. */
  public List<Row> rows() {
    return rows;
  }

  /** The rows that are left out because the user says that they are no wires. */
  public List<Row> leftOut() {
    return leftOut;
  }

  /** What stands around the cells. */
  public Surroundings around() {
    return around;
  }

  /** Texts that may explain what colours mean; none where no cell is filled. */
  public List<ColouredText> colouredTexts() {
    return colouredTexts;
  }

  /** How many columns the widest row has. */
  public int width() {
    return width;
  }

  /** The number of the last row that holds something. */
  public int lastRow() {
    return rows.isEmpty() ? 0 : rows.get(rows.size() - 1).number();
  }

  /** A cell of the sheet; column 0 is the row. */
  public Place place(int row, int column) {
    return new Place(whole.file(), whole.sheet(), row, column);
  }

  /**
   * The last column that the merge beginning in a cell spans; the cell's own where there is none.
   */
  public int reach(int row, int column) {
    return mergesFrom(row, column).mapToInt(Merge::lastColumn).findFirst().orElse(column);
  }

  /** Whether a merge joins a cell with the one above it. */
  public boolean isMergedWithAbove(int row, int column) {
    return mergesFrom(row, column).anyMatch(merge -> merge.firstRow() < row);
  }

  private Stream<Merge> mergesFrom(int row, int column) {
    return around.merges().stream()
        .filter(merge -> merge.firstRow() <= row && merge.lastRow() >= row)
        .filter(merge -> merge.firstColumn() == column);
  }

  /** Whether a merge spans several columns of a row, as a title does. */
  public boolean isWide(int row, int column) {
    return reach(row, column) > column;
  }
}

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

/** A sheet as a whole; merged cells hold their value in every row that they span. */
public final class Grid {
  private final Sheet sheet;
  private final Place whole;
  private final List<Row> rows;
  private final Surroundings around;
  private final int width;
  private final List<ColouredText> colouredTexts;

  private Grid(Sheet sheet, List<Row> rows, Surroundings around) {
    this.sheet = sheet;
    this.whole = sheet.place();
    this.rows = rows;
    this.around = around;
    this.width = rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
    this.colouredTexts = ColouredText.of(rows);
  }

  /** All rows of a sheet, with what is merged in every row that it spans. */
  public static Grid read(Sheet sheet) throws UnusableInput {
    List<Row> rows = new ArrayList<>();
    Surroundings around = sheet.forEachRow(rows::add);
    return new Grid(sheet, fillDown(rows, around.merges()), around);
  }

  /** The same sheet with some of its rows alone. */
  public Grid only(RowRange range) {
    return new Grid(sheet, rows.stream().filter(row -> range.holds(row.number())).toList(), around);
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
    return around.merges().stream()
        .filter(merge -> merge.firstRow() <= row && merge.lastRow() >= row)
        .filter(merge -> merge.firstColumn() == column)
        .mapToInt(Merge::lastColumn)
        .findFirst()
        .orElse(column);
  }

  /** Whether a merge spans several columns of a row, as a title does. */
  public boolean isWide(int row, int column) {
    return reach(row, column) > column;
  }
}

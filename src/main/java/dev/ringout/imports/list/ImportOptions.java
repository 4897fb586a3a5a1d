package dev.ringout.imports.list;

import dev.ringout.cells.CellText;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the user has said about a shop's lists. It is final: no evidence overrules it.
 *
 * @param columns headings, or letters of columns, and what they are; a sheet's name and an
 *     exclamation mark may stand before, and after these the first cell of a table and another
 * @param joinBy headings of columns whose texts name nets: rows with the same text are one net
 * @param marks marks of a matrix that are wires
 * @param onePoint items without pins that are one point, however often they are named
 * @param units of numbers without one
 * @param header facts of the list as a whole by their names, which stand before the page's own
 * @param shape which sheets and rows hold tables, and how these tell their wires
 * @param corrections what the list itself says otherwise
 */
public record ImportOptions(
    Map<String, ColumnChoice> columns,
    Set<String> joinBy,
    Set<String> marks,
    Set<String> onePoint,
    Units units,
    Map<String, String> header,
    Shape shape,
    Corrections corrections) {
  /** {@code A7!B}: a column of the table that begins in a cell. */
  private static final Pattern OF_TABLE = Pattern.compile("[A-Z]{1,3}(\\d{1,7})!(.+)");

  /** In place of an item: every item that is named without a pin. */
  public static final String ALL = "all";

  /**
   * Which sheets and rows hold tables, and how these tell their wires.
   *
   * @param sheets the sheets that are read; none where all are
   * @param rows the rows that are read
   * @param headingRows where the headings stand; 0 where there are none
   * @param layouts how tables tell their wires
   * @param items the connector whose pins a table lists
   * @param separators what stands between item and pin
   * @param modules modules of a harness file that are read; none for all of it
   */
  public record Shape(
      Set<String> sheets,
      List<Said<RowRange>> rows,
      List<Said<Integer>> headingRows,
      List<Said<Layout>> layouts,
      List<Said<String>> items,
      List<Said<Grammar>> separators,
      Set<String> modules) {

    /** Nothing said. */
    public static final Shape UNSAID =
        new Shape(Set.of(), List.of(), List.of(), List.of(), List.of(), List.of(), Set.of());

    /** Whether a sheet is to be read. */
    public boolean reads(String sheet) {
      return sheets.isEmpty()
          || sheets.stream().anyMatch(one -> one.strip().equalsIgnoreCase(sheet.strip()));
    }
  }

  /**
   * What stands in the list and is to be read otherwise.
   *
   * @param leftOut rows that are no wires
   * @param texts what a cell says, or one of several points in a cell, and what it is read as
   */
  public record Corrections(List<Said<RowRange>> leftOut, Map<String, String> texts) {
    /** The list stands as it is. */
    public static final Corrections NONE = new Corrections(List.of(), Map.of());
  }

  /** What is said of columns, names, marks and points alone. */
  public ImportOptions(
      Map<String, ColumnChoice> columns,
      Set<String> joinBy,
      Set<String> marks,
      Set<String> onePoint) {
    this(columns, joinBy, marks, onePoint, Units.UNSAID, Map.of(), Shape.UNSAID, Corrections.NONE);
  }

  /** Nothing said. */
  public static ImportOptions none() {
    return new ImportOptions(Map.of(), Set.of(), Set.of(), Set.of());
  }

  /** What is said of the columns of a sheet as a whole. */
  public Map<String, ColumnChoice> columnsOf(String sheet) {
    Map<String, ColumnChoice> own = new LinkedHashMap<>();
    columns.forEach(
        (name, choice) -> {
          String column = columnOn(sheet, name);
          if (!OF_TABLE.matcher(column).matches()) {
            own.put(column, choice);
          }
        });
    return own;
  }

  /** What is said of the columns of the tables of a sheet whose headings stand in this row. */
  public Map<String, ColumnChoice> columnsOf(String sheet, int headingRow) {
    Map<String, ColumnChoice> own = columnsOf(sheet);
    columns.forEach(
        (name, choice) -> {
          Matcher table = OF_TABLE.matcher(columnOn(sheet, name));
          if (table.matches() && table.group(1).equals(Integer.toString(headingRow))) {
            own.put(table.group(2), choice);
          }
        });
    return own;
  }

  /** The column that a name means on a sheet; the name as it is where it is said of another. */
  private static String columnOn(String sheet, String name) {
    String prefix = sheet + "!";
    return name.startsWith(prefix) ? name.substring(prefix.length()) : name;
  }

  /**
   * The column that a name means in a table; the name as it is where it is said of another.
   *
   * @param firstCell where the table begins
   */
  public static String columnOn(String sheet, String firstCell, String name) {
    String prefix = firstCell + "!";
    String column = columnOn(sheet, name);
    return column.startsWith(prefix) ? column.substring(prefix.length()) : column;
  }

  /** Whether rows with the same text under a heading are one net. */
  public boolean joinsBy(String heading) {
    return joinBy.stream()
        .anyMatch(name -> CellText.headingKey(name).equals(CellText.headingKey(heading)));
  }

  /** Whether the user says that an item without pins is one point, by its name or with all. */
  public boolean isOnePoint(String item) {
    return onePoint.stream()
        .anyMatch(
            name ->
                name.equalsIgnoreCase(ALL) || CellText.refKey(name).equals(CellText.refKey(item)));
  }
}

package dev.ringout.imports.list;

import dev.ringout.cells.CellText;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the user has said about a shop's lists. It is final: no evidence overrules it.
 *
 * @param columns headings, or letters of columns, and what they are; a sheet's name and an
 *     exclamation mark may stand before
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

  /** What is said of a sheet's columns. */
  public Map<String, ColumnChoice> columnsOf(String sheet) {
    Map<String, ColumnChoice> own = new LinkedHashMap<>();
    columns.forEach(
        (name, choice) -> {
          String column = columnOn(sheet, name);
          if (!column.isEmpty()) {
            own.put(column, choice);
          }
        });
    return own;
  }

  /** The column that a name means on a sheet, or empty where it is said of another sheet. */
  public static String columnOn(String sheet, String name) {
    String prefix = sheet + "!";
    if (name.startsWith(prefix)) {
      return name.substring(prefix.length());
    }
    return name;
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

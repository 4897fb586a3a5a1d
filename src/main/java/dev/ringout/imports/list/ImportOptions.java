package dev.ringout.imports.list;

import dev.ringout.cells.CellText;
import java.util.Map;
import java.util.Set;

/**
 * What the user has said about a shop's lists.
 *
 * @param columns headings, or letters of columns without one, and what they are
 * @param joinBy headings of columns whose texts name nets: rows with the same text are one net
 * @param marks marks of a matrix that are wires
 * @param onePoint items without pins that are one point, however often they are named
 * @param modules modules of a harness file that are read; none for all of it
 */
public record ImportOptions(
    Map<String, ColumnChoice> columns,
    Set<String> joinBy,
    Set<String> marks,
    Set<String> onePoint,
    Set<String> modules) {

  /** What is said of a list that has no modules. */
  public ImportOptions(
      Map<String, ColumnChoice> columns,
      Set<String> joinBy,
      Set<String> marks,
      Set<String> onePoint) {
    this(columns, joinBy, marks, onePoint, Set.of());
  }

  /** Nothing said. */
  public static ImportOptions none() {
    return new ImportOptions(Map.of(), Set.of(), Set.of(), Set.of());
  }

  /** Whether rows with the same text under a heading are one net. */
  public boolean joinsBy(String heading) {
    return joinBy.stream()
        .anyMatch(name -> CellText.headingKey(name).equals(CellText.headingKey(heading)));
  }

  /** Whether the user says that an item without pins is one point. */
  public boolean isOnePoint(String item) {
    return onePoint.stream().anyMatch(name -> CellText.refKey(name).equals(CellText.refKey(item)));
  }
}

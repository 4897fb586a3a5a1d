package dev.ringout.imports;

import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Evidence;
import dev.ringout.imports.list.Evidence.Kind;
import dev.ringout.imports.list.Hypothesis;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.SheetOddity;
import dev.ringout.sheet.Row;
import dev.ringout.source.Place;
import java.util.List;
import java.util.Optional;

/**
 * What stays open where the user says how a table is laid out and nothing of its columns: the
 * layout is his word, what each column is remains a guess.
 */
final class LayoutAlone {
  private final ListFindings findings;

  LayoutAlone(ListFindings findings) {
    this.findings = findings;
  }

  void report(Hypothesis way) {
    ListTable table = way.table();
    if (!table.layout().tellsWires() || table.headingRow() == 0) {
      return;
    }
    for (Evidence found : way.evidence()) {
      boolean matters = found.kind() == Kind.COLUMN_MATTERS || found.kind() == Kind.COLUMN_UNUSED;
      Optional<ListColumn> column = matters ? column(table, found.what()) : Optional.empty();
      column.ifPresent(
          one ->
              findings.error(
                  table.grid().place(table.headingRow(), one.index()),
                  new SheetOddity.ColumnLeftOut(one.heading(), Place.columnLetters(one.index()))));
    }
    List<String> guessed =
        table.columns().stream()
            .filter(column -> isEnd(column.role()) && !column.known() && !column.isSaid())
            .filter(column -> !holdsPoints(table, column))
            .map(column -> Place.columnLetters(column.index()) + " (" + column.heading() + ")")
            .toList();
    if (!guessed.isEmpty()) {
      findings.warning(
          table.grid().place(table.headingRow(), table.firstColumn()),
          new SheetOddity.ColumnsGuessed(guessed));
    }
  }

  private static Optional<ListColumn> column(ListTable table, String heading) {
    return table.columns().stream()
        .filter(column -> column.heading().equals(heading) && !heading.isEmpty())
        .filter(column -> !column.isSaid())
        .findFirst();
  }

  /** Full points, {@code J1-1}, are ends whatever stands over them. */
  private static boolean holdsPoints(ListTable table, ListColumn column) {
    int filled = 0;
    int points = 0;
    for (Row row : table.body()) {
      String text = column.textIn(row);
      filled += text.isEmpty() ? 0 : 1;
      points += Ends.looksLikePoint(text) ? 1 : 0;
    }
    return points > 0 && points * 10 >= filled * 8;
  }

  private static boolean isEnd(Role role) {
    return role.isEnd() || role == Role.PIN || role == Role.ITEM || role == Role.POINTS;
  }
}

package dev.ringout.imports.rows;

import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.End;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.RowOddity;
import dev.ringout.imports.list.SkipReason;
import dev.ringout.imports.list.Understanding;
import dev.ringout.imports.list.Words;
import dev.ringout.imports.rows.Tally.RowKind;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Rows that are paths: a wire from each point to the next. */
final class PathReader extends TableReader {
  private static final Pattern ARROW = Pattern.compile("\\s*(?:-+>|=+>|>|\u2192)\\s*");

  PathReader(ListTable table, Words words, Ends ends, ListFindings findings, Understanding into) {
    super(table, words, ends, findings, into);
  }

  @Override
  void readRow(Row row) {
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
    List<End> points = new ArrayList<>();
    for (String piece : ARROW.split(text, -1)) {
      if (!piece.isBlank()) {
        Ends.Text point = ends.parse(piece.strip(), grammar(Role.PATH));
        points.add(new End(point.item(), point.pin(), cells.place(row, Role.PATH), false));
      }
    }
    if (points.size() < 2) {
      lose(row, Role.PATH, new RowOddity.NoOtherEnd(), SkipReason.NO_OTHER_END);
      return;
    }
    tally.count(RowKind.WIRE);
    for (int i = 0; i + 1 < points.size(); i++) {
      add(row, Draft.numbered(name, i), points.get(i), points.get(i + 1), List.of());
    }
  }
}

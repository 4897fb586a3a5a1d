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
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Rows that are paths: a wire from each point to the next. */
final class PathReader extends TableReader {
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
    Optional<Ends.Path> path = ends.path(text);
    boolean speaks =
        Arrays.stream(text.split("[\\s,;()]+", -1)).anyMatch(Ends::looksLikePoint);
    if (path.isEmpty() && !speaks) {
      tally.count(RowKind.NOTE);
      return;
    }
    List<End> points = new ArrayList<>();
    for (String piece : path.map(Ends.Path::points).orElse(List.of())) {
      Ends.Text point = ends.parse(piece, grammar(Role.PATH));
      points.add(new End(point.item(), point.pin(), cells.place(row, Role.PATH), false));
    }
    if (path.isPresent() && isRange(text, points)) {
      lose(row, Role.PATH, new RowOddity.EndInDoubt(text), SkipReason.END_IN_DOUBT);
      return;
    }
    String number = name.isEmpty() ? path.map(Ends.Path::name).orElse("") : name;
    if (points.size() < 2) {
      lose(row, Role.PATH, new RowOddity.NoOtherEnd(), SkipReason.NO_OTHER_END);
      return;
    }
    tally.count(RowKind.WIRE);
    for (int i = 0; i + 1 < points.size(); i++) {
      add(row, Draft.numbered(number, i), points.get(i), points.get(i + 1), List.of());
    }
  }

  /** J1-1 to J1-4, with a word or a dash between, may be four pins as well as a jumper. */
  private static boolean isRange(String text, List<End> points) {
    boolean arrow = text.indexOf('>') >= 0 || text.chars().anyMatch(c -> c >= 0x2190 && c < 0x2800);
    return !arrow && points.size() == 2 && points.get(0).item().equals(points.get(1).item());
  }
}

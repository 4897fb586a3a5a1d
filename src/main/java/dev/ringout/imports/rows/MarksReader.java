package dev.ringout.imports.rows;

import dev.ringout.imports.list.End;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.ListColumn;
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
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Devices down, terminals across, marks where they meet. What a mark means must be asked. */
final class MarksReader extends TableReader {
  private final ImportOptions options;
  private final Map<String, Integer> marks = new TreeMap<>();
  private final Map<String, List<String>> users = new TreeMap<>();

  MarksReader(
      ListTable table,
      Words words,
      Ends ends,
      ImportOptions options,
      ListFindings findings,
      Understanding into) {
    super(table, words, ends, findings, into);
    this.options = options;
  }

  @Override
  void readRow(Row row) {
    Optional<ListColumn> ownPins =
        cells.column(Role.PIN).filter(column -> !column.item().isEmpty());
    String pin = ownPins.isPresent() ? cells.text(row, Role.PIN) : "";
    String device = ownPins.map(ListColumn::item).orElse(cells.text(row, Role.ITEM));
    int wires = 0;
    int marked = 0;
    for (ListColumn column : table.columns()) {
      String mark = column.role() == Role.POINTS ? cells.text(row, column) : "";
      if (mark.isEmpty()) {
        continue;
      }
      marked++;
      marks.merge(mark, 1, Integer::sum);
      End terminal = terminal(row, column);
      users.computeIfAbsent(terminal.toString(), key -> new ArrayList<>()).add(device);
      if (isTaken(mark) && !device.isEmpty()) {
        wires++;
        Ends.Text whole = pin.isEmpty() ? ends.parse(device) : new Ends.Text(device, pin);
        End from = new End(whole.item(), whole.pin(), cells.place(row, Role.ITEM), false);
        add(row, "", from, terminal, List.of());
      }
    }
    if (wires > 0) {
      tally.count(RowKind.WIRE);
    } else if (marked > 0) {
      tally.skip(row.number(), SkipReason.MARKS_NOT_TAKEN);
    } else {
      tally.count(RowKind.NOTE);
    }
  }

  /** Whether the user takes a mark as a wire, whatever its case. */
  private boolean isTaken(String mark) {
    return options.marks().stream().anyMatch(mark::equalsIgnoreCase);
  }

  private End terminal(Row row, ListColumn column) {
    String heading = column.heading().replaceAll("/ ", "/");
    if (!column.item().isEmpty() && !column.item().equals(heading)) {
      return new End(column.item(), heading, table.place(row, column), false);
    }
    Ends.Text text = ends.parse(heading);
    boolean full = !text.pin().isEmpty() && heading.indexOf('/') < 0;
    return full
        ? new End(text.item(), text.pin(), table.place(row, column), false)
        : new End(
            table.sheetItem().isEmpty() ? table.grid().name() : table.sheetItem(),
            heading,
            table.place(row, column),
            false);
  }

  @Override
  void finish() {
    List<RowOddity.Mark> found =
        marks.entrySet().stream()
            .filter(entry -> !isTaken(entry.getKey()))
            .map(entry -> new RowOddity.Mark(entry.getKey(), entry.getValue()))
            .toList();
    int shared = (int) users.values().stream().filter(devices -> devices.size() > 1).count();
    if (!found.isEmpty()) {
      findings.warning(
          table.grid().place(table.headingRow(), 0), new RowOddity.MarksNotTaken(found, shared));
    }
    if (!options.marks().isEmpty() && shared > 0) {
      findings.warning(
          table.grid().place(table.headingRow(), 0), new RowOddity.MarksShareTerminals(shared));
    }
  }
}

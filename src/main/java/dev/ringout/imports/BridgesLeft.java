package dev.ringout.imports;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Row;
import java.util.List;

/** Whether a table of which no wires are read speaks of bridges: what they join would be lost. */
final class BridgesLeft {
  private static final List<String> KINDS = List.of("bridges", "bridge", "jumped");

  /** A title stands so near above its table. */
  private static final int ROWS_OF_TITLES = 3;

  private final ListTable table;
  private final Words words;

  BridgesLeft(ListTable table, Words words) {
    this.table = table;
    this.words = words;
  }

  /** By the sheet's name, a title, a heading or a cell. */
  boolean isSpokenOf() {
    return words.isAny("bridges", table.grid().name())
        || table.columns().stream().anyMatch(this::headsBridges)
        || titled()
        || table.body().stream().anyMatch(this::holdsWord);
  }

  private boolean headsBridges(ListColumn column) {
    boolean joins =
        words.is("joins", column.heading())
            && table.body().stream()
                .anyMatch(row -> CellText.hasDigit(row.cell(column.index()).text()));
    return joins || isWord(column.heading());
  }

  private boolean titled() {
    return table.grid().rows().stream()
        .filter(row -> row.number() < table.headingRow())
        .filter(row -> row.number() >= table.headingRow() - ROWS_OF_TITLES)
        .filter(row -> row.cells().stream().filter(cell -> !cell.isBlank()).count() == 1)
        .anyMatch(this::holdsWord);
  }

  private boolean holdsWord(Row row) {
    return row.cells().stream().anyMatch(cell -> isWord(cell.text()));
  }

  private boolean isWord(String written) {
    String text = CellText.clean(written).replaceFirst("\\s*:$", "");
    return text.length() > 3 && KINDS.stream().anyMatch(kind -> words.is(kind, text));
  }
}

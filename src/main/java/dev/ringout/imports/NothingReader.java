package dev.ringout.imports;

import dev.ringout.imports.Tally.RowKind;
import dev.ringout.sheet.Row;

/** A table that tells no wires: its rows are notes. */
final class NothingReader extends TableReader {
  NothingReader(ListTable table, Words words, Ends ends, Findings findings, Understanding into) {
    super(table, words, ends, findings, into);
  }

  @Override
  void readRow(Row row) {
    tally.count(RowKind.NOTE);
  }
}

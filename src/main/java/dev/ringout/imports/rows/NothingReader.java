package dev.ringout.imports.rows;

import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Understanding;
import dev.ringout.imports.list.Words;
import dev.ringout.imports.rows.Tally.RowKind;
import dev.ringout.sheet.Row;

/** A table that tells no wires: its rows are notes. */
final class NothingReader extends TableReader {
  NothingReader(
      ListTable table, Words words, Ends ends, ListFindings findings, Understanding into) {
    super(table, words, ends, findings, into);
  }

  @Override
  void readRow(Row row) {
    tally.count(RowKind.NOTE);
  }
}

package dev.ringout.record;

import dev.ringout.record.RecordBlock.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Tables without the columns in which no row has anything: paper is narrow. One without a row keeps
 * them all, and says what would stand there.
 */
final class FilledColumns {
  private FilledColumns() {}

  /**
   * A table of the columns that are filled.
   *
   * @param stateColumn the heading of the column by which rows are chosen on the screen, or none's
   */
  static Table of(String name, List<String> headings, List<List<String>> rows, String stateColumn) {
    return of(new Table(name, headings, rows, headings.indexOf(stateColumn)));
  }

  /** The same table without the columns in which no row has anything. */
  static Table of(Table table) {
    List<Integer> kept = new ArrayList<>();
    Set<Integer> numbers = new TreeSet<>();
    int reckoned = 0;
    for (int column = 0; column < table.headings().size(); column++) {
      int one = column;
      if (table.rows().isEmpty()
          || table.rows().stream().anyMatch(row -> !row.get(one).isEmpty())) {
        if (table.numbers().contains(column)) {
          numbers.add(kept.size());
        }
        kept.add(column);
        reckoned += column < table.shown() ? 0 : 1;
      }
    }
    return new Table(
        table.name(),
        kept.stream().map(table.headings()::get).toList(),
        table.rows().stream().map(row -> kept.stream().map(row::get).toList()).toList(),
        kept.indexOf(table.stateColumn()),
        numbers,
        reckoned);
  }
}

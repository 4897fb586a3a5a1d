package dev.ringout.record;

import dev.ringout.record.RecordBlock.Table;
import java.util.ArrayList;
import java.util.List;

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
    List<Integer> kept = new ArrayList<>();
    for (int column = 0; column < headings.size(); column++) {
      int one = column;
      if (rows.isEmpty() || rows.stream().anyMatch(row -> !row.get(one).isEmpty())) {
        kept.add(column);
      }
    }
    List<String> keptHeadings = kept.stream().map(headings::get).toList();
    return new Table(
        name,
        keptHeadings,
        rows.stream().map(row -> kept.stream().map(row::get).toList()).toList(),
        keptHeadings.indexOf(stateColumn));
  }
}

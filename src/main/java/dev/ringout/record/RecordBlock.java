package dev.ringout.record;

import java.util.List;
import java.util.Locale;

/** A piece of a record: the same whether it becomes a page, a PDF or a workbook. */
public sealed interface RecordBlock {

  /** The verdict, as large as it is important. */
  record Verdict(String words, boolean good) implements RecordBlock {}

  /** A heading; those of level 2 begin a part that can be jumped to. */
  record Heading(int level, String text) implements RecordBlock {
    /** Its address within the page. */
    public String id() {
      return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }
  }

  /** A paragraph; one that warns is framed. */
  record Words(String text, boolean warns) implements RecordBlock {}

  /** Names and their values. */
  record Pairs(List<List<String>> rows) implements RecordBlock {}

  /**
   * A table.
   *
   * @param stateColumn the column by which rows are chosen on the screen; none where below zero
   */
  record Table(String name, List<String> headings, List<List<String>> rows, int stateColumn)
      implements RecordBlock {
    /**
     * Every row has a cell for each heading.
     *
     * @throws IllegalArgumentException where one has not: its cells would stand under other heads
     */
    public Table {
      for (List<String> row : rows) {
        if (row.size() != headings.size()) {
          throw new IllegalArgumentException(name + ": " + row + " under " + headings);
        }
      }
    }
  }

  /** A drawing (SVG) with what it shows in words. */
  record Picture(String svg, String caption) implements RecordBlock {}

  /** Places to sign, one for each who does. */
  record Signatures(List<String> who) implements RecordBlock {}

  /** What follows stands on a new page. */
  record NewPage() implements RecordBlock {}
}

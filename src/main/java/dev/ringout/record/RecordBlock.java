package dev.ringout.record;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** A piece of a record: the same whether it becomes a page, a PDF or a workbook. */
public sealed interface RecordBlock {

  /** What is made of it, by its kind: a form that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /** One thing to make of each kind. */
  interface Cases<T> {
    T verdict(Verdict one);

    T heading(Heading one);

    T words(Words one);

    T pairs(Pairs one);

    T table(Table one);

    T picture(Picture one);

    T photograph(Photograph one);

    T signatures(Signatures one);

    T newPage(NewPage one);
  }

  /** The heading, where this piece begins a part of the record that can be jumped to. */
  default Optional<Heading> part() {
    return Optional.empty();
  }

  /**
   * How many rows of a table it takes as much paper as; a heading none, for it begins something.
   */
  default int rowCount() {
    return 1;
  }

  /** The same in pieces of at most so many rows of a table. */
  default List<RecordBlock> inPieces(int mostRows) {
    return List.of(this);
  }

  /** This piece where it is a table. */
  default Optional<Table> asTable() {
    return Optional.empty();
  }

  /** The verdict, as large as it is important. */
  record Verdict(String words, boolean good) implements RecordBlock {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.verdict(this);
    }
  }

  /** A heading; those of level 2 begin a part that can be jumped to. */
  record Heading(int level, String text) implements RecordBlock {
    private static final int PART = 2;

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.heading(this);
    }

    @Override
    public Optional<Heading> part() {
      return level == PART ? Optional.of(this) : Optional.empty();
    }

    @Override
    public int rowCount() {
      return 0;
    }

    /** Its address within the page. */
    public String id() {
      return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }
  }

  /** A paragraph; one that warns is framed. */
  record Words(String text, boolean warns) implements RecordBlock {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.words(this);
    }
  }

  /** Names and their values. */
  record Pairs(List<List<String>> rows) implements RecordBlock {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.pairs(this);
    }

    @Override
    public int rowCount() {
      return rows.size();
    }
  }

  /**
   * A table.
   *
   * @param stateColumn the column by which rows are chosen on the screen; none where below zero
   * @param numbers columns whose cells are plain numbers, to be sorted and plotted by
   * @param reckoned so many last columns say a value once more as a number, for a workbook alone
   */
  record Table(
      String name,
      List<String> headings,
      List<List<String>> rows,
      int stateColumn,
      Set<Integer> numbers,
      int reckoned)
      implements RecordBlock {
    /** A table of words. */
    public Table(String name, List<String> headings, List<List<String>> rows, int stateColumn) {
      this(name, headings, rows, stateColumn, Set.of(), 0);
    }

    /** So many columns are for people. */
    public int shown() {
      return headings.size() - reckoned;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.table(this);
    }

    @Override
    public int rowCount() {
      return rows.size();
    }

    @Override
    public List<RecordBlock> inPieces(int mostRows) {
      List<RecordBlock> pieces = new ArrayList<>();
      for (int from = 0; from == 0 || from < rows.size(); from += mostRows) {
        List<List<String>> some = rows.subList(from, Math.min(rows.size(), from + mostRows));
        pieces.add(new Table(name, headings, some, stateColumn, numbers, reckoned));
      }
      return pieces;
    }

    @Override
    public Optional<Table> asTable() {
      return Optional.of(this);
    }

    /**
     * Every row has a cell for each heading.
     *
     * @throws IllegalArgumentException where one has not: its cells would stand under other heads
     */
    public Table {
      numbers = Collections.unmodifiableSet(new TreeSet<>(numbers));
      for (List<String> row : rows) {
        if (row.size() != headings.size()) {
          throw new IllegalArgumentException(name + ": " + row + " under " + headings);
        }
      }
      rows = rows.stream().map(List::copyOf).toList();
    }
  }

  /** A drawing (SVG) with what it shows in words. */
  record Picture(String svg, String caption) implements RecordBlock {
    private static final int ROWS_OF_A_PICTURE = 20;

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.picture(this);
    }

    @Override
    public int rowCount() {
      return ROWS_OF_A_PICTURE;
    }
  }

  /**
   * A photograph, as pages show it.
   *
   * @param base64 its bytes (JPEG), no larger than a page needs, as pages hold them (RFC 4648)
   * @param sha256 of the bytes that are kept, by which it is known
   * @param shows what is to be seen, for who can't see it
   * @param caption what stands below it
   */
  record Photograph(
      String base64, int width, int height, String sha256, String shows, String caption)
      implements RecordBlock {
    private static final int ROWS_OF_A_PHOTOGRAPH = 5;

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.photograph(this);
    }

    /** Of memory: it is set as it is, where a table's row is some hundred boxes. */
    @Override
    public int rowCount() {
      return ROWS_OF_A_PHOTOGRAPH;
    }
  }

  /** Places to sign, one for each who does. */
  record Signatures(List<String> who) implements RecordBlock {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.signatures(this);
    }
  }

  /** What follows stands on a new page. */
  record NewPage() implements RecordBlock {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.newPage(this);
    }
  }
}

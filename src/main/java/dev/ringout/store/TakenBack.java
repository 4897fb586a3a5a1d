package dev.ringout.store;

import dev.ringout.readings.Measured;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A reading that was taken back. Its row stays as it was; what is made of it says so.
 *
 * @param session of the row
 * @param seq of the row
 * @param columns of the row's values, by their letters
 */
public record TakenBack(String session, int seq, List<String> columns, String why) {
  /** What is given can't be changed afterwards. */
  public TakenBack {
    columns = List.copyOf(columns);
  }

  /** As the body of an entry. */
  public String body() {
    return Fields.line(session, Integer.toString(seq), String.join(" ", columns), why);
  }

  /** Of an entry's body; absent where it is none. */
  public static Optional<TakenBack> of(String body) {
    List<String> fields = Fields.of(body).get(0);
    return fields.size() == 4
            && fields.get(1).matches("[1-9]\\d{0,8}")
            && fields.get(2).matches("[A-Z]{1,3}( [A-Z]{1,3})*")
        ? Optional.of(
            new TakenBack(
                fields.get(0),
                Integer.parseInt(fields.get(1)),
                List.of(fields.get(2).split(" ", -1)),
                fields.get(3)))
        : Optional.empty();
  }

  /**
   * Where it stands.
   *
   * @param entries of its test
   * @param shownName the name of its test's file
   */
  public Place cell(List<Entry> entries, String shownName) {
    return KeptSheets.rowOf(entries, shownName, seq, Place.column(columns.get(0)));
  }

  /**
   * Where it stands; absent where its test is none of these.
   *
   * @param tests each with its entries
   */
  public Optional<Place> cell(Map<Session, List<Entry>> tests) {
    return tests.entrySet().stream()
        .filter(test -> test.getKey().id().equals(session))
        .map(test -> cell(test.getValue(), test.getKey().file()))
        .findFirst();
  }

  /** A row as it is read from then on. */
  Row in(Row row) {
    List<Cell> cells = new ArrayList<>(row.cells());
    for (String column : columns) {
      int index = Place.column(column) - 1;
      if (index < cells.size()) {
        cells.set(index, cell(cells.get(index)));
      }
    }
    return new Row(row.number(), List.copyOf(cells));
  }

  private static Cell cell(Cell was) {
    String value = was.shown().isEmpty() ? was.text() : was.shown();
    return new Cell(Cell.Stored.TEXT, Measured.TakenBack.WORDS + ": " + value);
  }
}

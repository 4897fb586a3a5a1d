package dev.ringout.intake;

import dev.ringout.cells.Blanks;
import dev.ringout.cells.LikelyMeant;
import dev.ringout.cells.PlainNumber;
import dev.ringout.cells.Understood;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import dev.ringout.source.Place;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;

/** One row under its headings. */
final class Entry {
  /** A cell may be written in several lines; what it says is one. */
  private static final Pattern BREAKS = Pattern.compile("[ ]*[\\t\\n\\r]+[ ]*");

  /** Columns whose cells are never compared with anything. */
  private static final Set<String> FOR_PEOPLE = Set.of("Step", "Note");

  private final Table table;
  private final Row row;

  Entry(Table table, Row row) {
    this.table = table;
    this.row = row;
  }

  /** Whether any column that is understood holds something. */
  boolean hasKnown() {
    for (int column : table.knownColumns()) {
      if (!row.cell(column).isBlank()) {
        return true;
      }
    }
    return false;
  }

  /** Whether no other column that is understood holds something. */
  boolean hasOnly(String column) {
    int only = table.columnOf(column);
    for (int other : table.knownColumns()) {
      if ((other == only) == row.cell(other).isBlank()) {
        return false;
      }
    }
    return true;
  }

  /** The row's number, counted from 1. */
  int number() {
    return row.number();
  }

  /** The row as a place. */
  Place place() {
    return table.placeOf(row.number(), 0);
  }

  /** A cell as a place; the row where the sheet has no such column. */
  Place place(String column) {
    return table.placeOf(row.number(), table.columnOf(column));
  }

  /** The unit that the column's heading gives, or empty. */
  String headingUnit(String column) {
    return table.unitOf(column);
  }

  /**
   * A cell's text without the blanks around it; empty where the sheet has no such column. A cell
   * that the spreadsheet has damaged is reported and read as empty.
   */
  String text(String column) {
    if (table.columnOf(column) == 0) {
      return "";
    }
    Cell cell = cell(column);
    if (cell.ink().struck()) {
      error(
          column,
          "\"" + cell.text() + "\" is struck through; delete the row, or type what is true now",
          cell.ink().left());
    }
    return switch (cell.kind()) {
      case TEXT -> textOf(column, cell);
      case NUMBER -> {
        reportShown(column, cell);
        yield cell.text();
      }
      default -> {
        reportDamage(column, cell);
        yield "";
      }
    };
  }

  private String textOf(String column, Cell cell) {
    String text = inOneLine(Blanks.strip(cell.text()));
    if (text.indexOf(Text.REPLACED) >= 0) {
      boolean matters = !column.equals("Note");
      report(
          column,
          matters ? Severity.ERROR : Severity.WARNING,
          "\"" + text + "\" holds a character that can't be shown",
          "");
    }
    if (text.length() != cell.text().length() && !text.isEmpty()) {
      table.countBlanksIgnored(table.columnOf(column));
    }
    return text;
  }

  private void reportShown(String column, Cell cell) {
    if (!cell.shown().isEmpty() && !FOR_PEOPLE.contains(column)) {
      error(
          column,
          Text.of(
              "%s is shown by the spreadsheet as \"%s\", by the cell's number format; type what"
                  + " holds, a unit into the cell or the column Unit, and format the cell as"
                  + " General",
              cell.text(), cell.shown()),
          "");
    }
  }

  private void reportDamage(String column, Cell cell) {
    switch (cell.kind()) {
      case TEXT, NUMBER -> {}
      case DATE ->
          error(
              column,
              "the spreadsheet has changed this cell to a date (" + cell.text() + ")",
              "the text that was typed, such as 1-2; format the cell as text and type it again");
      case BOOLEAN ->
          error(
              column,
              "the spreadsheet has made " + cell.text() + " of this cell; expected text",
              "");
      case ERROR -> error(column, "the cell holds the error " + cell.text(), "");
      case UNCALCULATED ->
          error(
              column,
              "the cell holds a formula without a stored result; save it from a spreadsheet",
              "");
    }
  }

  /** What stands in a cell in which a date is welcome; a time may be stored as a number too. */
  String timeText(Column column) {
    Cell cell = cell(column.name());
    return cell.kind() == Cell.Stored.DATE || cell.kind() == Cell.Stored.NUMBER
        ? cell.text()
        : text(column.name());
  }

  /** The number that a cell's text is; what is none is reported there. */
  OptionalDouble number(String text, Column column) {
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    OptionalDouble number = PlainNumber.of(text);
    if (number.isEmpty()) {
      error(column.name(), "\"" + text + "\" is not a number", LikelyMeant.asNumber(text));
    }
    return number;
  }

  private static String inOneLine(String text) {
    boolean broken = text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0 || text.indexOf('\t') >= 0;
    return broken ? BREAKS.matcher(text).replaceAll(" ") : text;
  }

  /** What stands in a cell, damaged or not, for naming the row where it is spoken of. */
  String asTyped(String column) {
    return table.columnOf(column) == 0 ? "" : inOneLine(Blanks.strip(cell(column).text()));
  }

  /** The cell as stored, for columns in which a date or a number is welcome. */
  Cell cell(String column) {
    return row.cell(table.columnOf(column));
  }

  /** The row's own columns, those that are not understood, by their headings. */
  Map<String, String> notes() {
    if (table.unknownColumns().isEmpty()) {
      return Map.of();
    }
    Map<String, String> notes = new LinkedHashMap<>();
    table
        .unknownColumns()
        .forEach(
            (column, heading) -> {
              Cell cell = row.cell(column);
              if (!cell.isBlank()) {
                notes.put(heading, cell.text());
              }
            });
    return Collections.unmodifiableMap(notes);
  }

  /** Hands over the cells of the columns that are not understood, in their order. */
  void forEachUnknown(BiConsumer<Integer, String> each) {
    for (int column = 1; column <= row.cells().size(); column++) {
      if (!table.isKnown(column) && !row.cell(column).isBlank()) {
        String text = inOneLine(Blanks.strip(row.cell(column).text()));
        if (!text.isEmpty()) {
          each.accept(column, text);
        }
      }
    }
  }

  /** The heading of a column counted from 1, or empty. */
  String heading(int column) {
    return table.heading(column);
  }

  /** An error in a column that is not understood. */
  void error(int column, String text) {
    table.add(
        this, table.placeOf(row.number(), column), table.heading(column), Severity.ERROR, text, "");
  }

  /** The value of a cell, or empty with its problem reported. */
  <T> Optional<T> take(String column, Understood<T> understood) {
    if (understood.value().isEmpty()) {
      error(column, understood.complaint(), understood.maybe());
    }
    return understood.value();
  }

  void error(String column, String text, String maybe) {
    report(column, Severity.ERROR, text, maybe);
  }

  void warning(String column, String text, String maybe) {
    report(column, Severity.WARNING, text, maybe);
  }

  void report(String column, Severity severity, String text, String maybe) {
    table.add(this, place(column), table.heading(table.columnOf(column)), severity, text, maybe);
  }
}

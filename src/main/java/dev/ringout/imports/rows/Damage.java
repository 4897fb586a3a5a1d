package dev.ringout.imports.rows;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.Finding.Kind;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import dev.ringout.source.Severity;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a spreadsheet makes of pins and designators that look like something else to it (trade
 * notes; for gene names: Ziemann, Eren and El-Osta, Genome Biology 17:177, 2016, from memory).
 */
final class Damage {
  private static final Pattern ISO_DATE = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})(T.*)?");
  private static final Pattern TIME = Pattern.compile("(\\d{2}):(\\d{2})(:\\d{2}.*)?");
  private static final Pattern TEXT_DATE =
      Pattern.compile(
          "(?i)\\d{1,2}[-/. ](jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\\.?"
              + "|(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*[-/. ]\\d{2}");
  private static final Pattern EXPONENT = Pattern.compile("\\d(?:[.,]\\d+)?E[+-]?\\d+");
  private static final Pattern LETTER_BETWEEN = Pattern.compile("\\d+[A-DF-Z]\\d+");
  private static final int DRAGGED = 4;

  /** Significant digits of a number in IEEE 754 binary64 as spreadsheets keep it. */
  private static final int DIGITS_KEPT = 15;

  private final ListTable table;
  private final Map<Integer, Integer> indexOfRow = new HashMap<>();
  private final Map<Integer, Evidence> evidence = new HashMap<>();

  Damage(ListTable table) {
    this.table = table;
  }

  /** What was found in a cell, and how bad it is. */
  record Found(Kind kind, Severity severity, String text, String maybe) {}

  /** What the other cells of a column look like. */
  private record Evidence(boolean lettersBetweenDigits, int zeroPadded) {}

  Optional<Found> find(Row row, ListColumn column, Cell cell) {
    return switch (cell.kind()) {
      case DATE ->
          column.role() == Role.WIRE || namesThings(column.role())
              ? date(row, column, cell)
              : Optional.empty();
      case BOOLEAN ->
          error(
              Kind.BOOLEAN,
              "the spreadsheet has made " + cell.text() + " of this cell",
              cell.text().substring(0, 1));
      case ERROR -> error(Kind.ERROR_VALUE, "the cell holds the error " + cell.text(), "");
      case UNCALCULATED ->
          error(
              Kind.NO_RESULT,
              "the cell holds a formula without a stored result; open and save it in a spreadsheet",
              "");
      case NUMBER -> number(row, column, cell);
      case TEXT -> text(row, column, cell);
    };
  }

  private static boolean namesThings(Role role) {
    return switch (role) {
      case GAUGE, LENGTH, NOTE, KEEP -> false;
      default -> true;
    };
  }

  private static Optional<Found> error(Kind kind, String text, String maybe) {
    return Optional.of(new Found(kind, Severity.ERROR, text, maybe));
  }

  private Optional<Found> date(Row row, ListColumn column, Cell cell) {
    Matcher time = TIME.matcher(cell.text());
    if (time.matches()) {
      int hour = Integer.parseInt(time.group(1));
      String minutes = time.group(2);
      String lettered =
          minutes.equals("00") && hour % 12 != 0
              ? " or " + hour % 12 + " " + (hour < 12 ? "A" : "P")
              : "";
      return error(
          Kind.TIME,
          "the spreadsheet has made a time of this cell (" + cell.text() + ")",
          hour + ":" + Integer.parseInt(minutes) + " or " + hour + ":" + minutes + lettered);
    }
    Matcher date = ISO_DATE.matcher(cell.text());
    if (!date.matches()) {
      return error(
          Kind.DATE, "the spreadsheet has made a date of this cell (" + cell.text() + ")", "");
    }
    return error(
        Kind.DATE,
        "the spreadsheet has made a date of this cell (" + cell.text() + ")" + around(row, column),
        candidates(row, column, date));
  }

  /** Both orders of day and month, the one that continues its neighbours first. */
  private String candidates(Row row, ListColumn column, Matcher date) {
    int month = Integer.parseInt(date.group(2));
    int day = Integer.parseInt(date.group(3));
    String monthFirst = month + "-" + day;
    String dayFirst = day + "-" + month;
    String name =
        LocalDate.of(2000, Month.of(month), 1).getMonth().name().substring(0, 3) + "-" + day;
    List<String> neighbours = neighbours(row, column);
    boolean slash = neighbours.stream().anyMatch(text -> text.contains("/"));
    boolean monthFits = neighbours.stream().anyMatch(text -> startsLike(text, month));
    boolean dayFits = neighbours.stream().anyMatch(text -> startsLike(text, day));
    String first = dayFits && !monthFits ? dayFirst : monthFirst;
    String second = first.equals(monthFirst) ? dayFirst : monthFirst;
    String text = first.equals(second) ? first : first + " or " + second;
    return (slash ? text.replace('-', '/') : text) + " or " + name;
  }

  private static boolean startsLike(String text, int number) {
    return text.startsWith(number + "-") || text.startsWith(number + "/");
  }

  private String around(Row row, ListColumn column) {
    List<String> neighbours = neighbours(row, column);
    return neighbours.isEmpty() ? "" : "; its neighbours are " + String.join(" and ", neighbours);
  }

  private List<String> neighbours(Row row, ListColumn column) {
    if (indexOfRow.isEmpty()) {
      for (int i = 0; i < table.body().size(); i++) {
        indexOfRow.put(table.body().get(i).number(), i);
      }
    }
    List<String> neighbours = new ArrayList<>();
    int index = indexOfRow.getOrDefault(row.number(), 0);
    for (int beside : new int[] {index - 1, index + 1}) {
      if (beside >= 0 && beside < table.body().size()) {
        Cell cell = table.body().get(beside).cell(column.index());
        if (cell.kind() == Cell.Kind.TEXT && !cell.isBlank()) {
          neighbours.add(CellText.clean(cell.text()));
        }
      }
    }
    return neighbours;
  }

  private Optional<Found> number(Row row, ListColumn column, Cell cell) {
    Role role = column.role();
    if (role == Role.GAUGE) {
      return drag(row, column, cell);
    }
    if (!namesThings(role)) {
      return Optional.empty();
    }
    String text = cell.text();
    if (text.startsWith("-")) {
      return Optional.of(
          new Found(
              Kind.SIGN,
              Severity.WARNING,
              "the number " + text + " has a minus: a dash before a pin, or a polarity?",
              text.substring(1)));
    }
    if (text.length() > DIGITS_KEPT) {
      return Optional.of(
          new Found(
              Kind.LONG_NUMBER,
              Severity.WARNING,
              "a spreadsheet keeps "
                  + DIGITS_KEPT
                  + " digits of a number; the last of "
                  + text
                  + " may have become zeros",
              ""));
    }
    if (text.indexOf('.') > 0) {
      return fraction(row, column, text);
    }
    if (evidence(column).lettersBetweenDigits() && (text.endsWith("0") || text.length() > 4)) {
      return error(
          Kind.EXPONENT,
          "the number "
              + text
              + " stands among names such as "
              + example(column)
              + ": the spreadsheet has taken an E for an exponent",
          exponents(text));
    }
    int padded = evidence(column).zeroPadded();
    if (role != Role.PIN && padded > text.length()) {
      return Optional.of(
          new Found(
              Kind.LEADING_ZERO,
              Severity.WARNING,
              "the number " + text + " stands among texts with leading zeros",
              "0".repeat(padded - text.length()) + text));
    }
    return Optional.empty();
  }

  /** A number with a fraction among names: dragged down, or a version of 1.10. */
  private Optional<Found> fraction(Row row, ListColumn column, String text) {
    double step = step(row, column);
    boolean dragged = step != 0;
    return Optional.of(
        new Found(
            dragged ? Kind.FILL_DRAG : Kind.EXPONENT,
            Severity.WARNING,
            dragged
                ? Text.of(
                    "the number %s goes on from its neighbours by the same step, as a fill handle makes it",
                    text)
                : "the number "
                    + text
                    + " has a fraction; a zero at its end would be lost, and an E taken for an exponent",
            text.matches("\\d+\\.\\d") ? text + "0" : ""));
  }

  private Optional<Found> drag(Row row, ListColumn column, Cell cell) {
    double value = number(cell).orElse(0.0);
    boolean series = step(row, column) == 1 && runLength(row, column) >= DRAGGED;
    boolean odd = value == Math.rint(value) && value % 2 == 1;
    return series && odd
        ? Optional.of(
            new Found(
                Kind.FILL_DRAG,
                Severity.WARNING,
                "the gauge "
                    + cell.text()
                    + " is one more than the row above, row after row: dragged down?",
                "the gauge of the first of these rows"))
        : Optional.empty();
  }

  private Optional<Double> numberAt(int index, ListColumn column) {
    if (index < 0 || index >= table.body().size()) {
      return Optional.empty();
    }
    Cell cell = table.body().get(index).cell(column.index());
    return number(cell);
  }

  private static Optional<Double> number(Cell cell) {
    if (cell.kind() != Cell.Kind.NUMBER) {
      return Optional.empty();
    }
    try {
      return Optional.of(Double.parseDouble(cell.text()));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  /** The step from the row before, where the row before that made the same one; else 0. */
  private double step(Row row, ListColumn column) {
    neighbours(row, column);
    int index = indexOfRow.getOrDefault(row.number(), 0);
    for (int first : new int[] {index - 2, index - 1, index}) {
      Optional<Double> one = numberAt(first, column);
      Optional<Double> two = numberAt(first + 1, column);
      Optional<Double> three = numberAt(first + 2, column);
      if (one.isPresent() && two.isPresent() && three.isPresent()) {
        double step = two.get() - one.get();
        if (step != 0 && Math.abs(three.get() - two.get() - step) < 1e-9) {
          return step;
        }
      }
    }
    return 0;
  }

  private int runLength(Row row, ListColumn column) {
    int index = indexOfRow.getOrDefault(row.number(), 0);
    int length = 1;
    for (int down : new int[] {-1, 1}) {
      int at = index;
      while (differsByOne(numberAt(at, column), numberAt(at + down, column), down)) {
        at += down;
        length++;
      }
    }
    return length;
  }

  private static boolean differsByOne(Optional<Double> here, Optional<Double> next, int down) {
    return here.isPresent() && next.isPresent() && next.get() - here.get() == down;
  }

  private Optional<Found> text(Row row, ListColumn column, Cell cell) {
    if (!namesThings(column.role()) || cell.text().length() > 12 || cell.text().isEmpty()) {
      return Optional.empty();
    }
    char first = cell.text().charAt(0);
    char last = cell.text().charAt(cell.text().length() - 1);
    boolean digits = CellText.isDigit(first) || CellText.isDigit(last);
    if (first == '#' && cell.text().matches("#(REF!|N/A|NAME\\?|VALUE!|DIV/0!|NUM!|NULL!)")) {
      return error(Kind.ERROR_VALUE, "the cell holds the error " + cell.text(), "");
    }
    if (!digits) {
      return cell.text().equals("TRUE") || cell.text().equals("FALSE")
          ? error(
              Kind.BOOLEAN,
              "the cell says " + cell.text() + ", which a spreadsheet makes of a letter",
              cell.text().substring(0, 1))
          : Optional.empty();
    }
    if (cell.text().length() > 4
        && cell.text().indexOf('E') > 0
        && EXPONENT.matcher(cell.text()).matches()
        && (cell.text().indexOf('+') > 0 || cell.text().indexOf('.') > 0)) {
      double number = Double.parseDouble(cell.text().replace(',', '.'));
      return error(
          Kind.EXPONENT,
          "\"" + cell.text() + "\" is a number with an exponent: a name with an E in it was lost",
          exponents(Numbers.plain(number)));
    }
    if (cell.text().length() <= 9
        && cell.text().length() >= 5
        && hasMonthLetters(cell.text())
        && TEXT_DATE.matcher(cell.text()).matches()) {
      return textDate(row, column, cell.text());
    }
    return Optional.empty();
  }

  private static boolean hasMonthLetters(String text) {
    int run = 0;
    for (int i = 0; i < text.length() && run < 3; i++) {
      run = Character.isLetter(text.charAt(i)) ? run + 1 : 0;
    }
    return run == 3;
  }

  /** A date that went through a text file: {@code 2-Jan} or {@code Jan-02}. */
  private Optional<Found> textDate(Row row, ListColumn column, String text) {
    String letters = text.replaceAll("[^A-Za-z]", "").toLowerCase(Locale.ROOT);
    int day = Integer.parseInt(text.replaceAll("[^0-9]", ""));
    for (Month month : Month.values()) {
      if (letters.startsWith(month.name().toLowerCase(Locale.ROOT).substring(0, 3))) {
        Matcher date =
            ISO_DATE.matcher(Text.of("2000-%02d-%02d", month.getValue(), Math.min(day, 99)));
        if (date.matches()) {
          return error(
              Kind.DATE,
              "\"" + text + "\" looks like a date that a spreadsheet made" + around(row, column),
              candidates(row, column, date));
        }
      }
    }
    return Optional.empty();
  }

  /** Names with an E that a spreadsheet reads as this number: 220 is 22E1. */
  private static String exponents(String number) {
    String digits = number.replaceFirst("0+$", "");
    int zeros = number.length() - digits.length();
    if (digits.isEmpty()) {
      return "0E0, 00E4 or the like";
    }
    List<String> names = new ArrayList<>();
    for (int exponent = zeros; exponent > 0 && names.size() < 3; exponent--) {
      names.add(digits + "0".repeat(zeros - exponent) + "E" + exponent);
    }
    return String.join(" or ", names);
  }

  private String example(ListColumn column) {
    for (Row row : table.body()) {
      String text = CellText.clean(row.cell(column.index()).text());
      if (LETTER_BETWEEN.matcher(text).matches()) {
        return text;
      }
    }
    return "";
  }

  private Evidence evidence(ListColumn column) {
    return evidence.computeIfAbsent(column.index(), index -> look(index));
  }

  private Evidence look(int index) {
    int texts = 0;
    int between = 0;
    int padded = 0;
    int paddedTexts = 0;
    List<Row> rows = table.body();
    for (Row row : rows.subList(0, Math.min(rows.size(), 400))) {
      Cell cell = row.cell(index);
      if (cell.kind() != Cell.Kind.TEXT || cell.isBlank()) {
        continue;
      }
      String text = CellText.clean(cell.text());
      texts++;
      between += LETTER_BETWEEN.matcher(text).matches() ? 1 : 0;
      if (text.startsWith("0") && CellText.isDigits(text)) {
        padded = Math.max(padded, text.length());
        paddedTexts++;
      }
    }
    return new Evidence(
        texts >= 2 && between * 2 >= texts, paddedTexts * 2 >= Math.max(texts, 2) ? padded : 0);
  }
}

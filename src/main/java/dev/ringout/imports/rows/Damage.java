package dev.ringout.imports.rows;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.DamagedCell;
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
  record Found(Severity severity, DamagedCell what) {}

  /** What the other cells of a column look like. */
  private record Evidence(boolean lettersBetweenDigits, int zeroPadded) {}

  Optional<Found> find(Row row, ListColumn column, Cell cell) {
    return switch (cell.kind()) {
      case DATE ->
          column.role() == Role.WIRE || namesThings(column.role())
              ? date(row, column, cell)
              : Optional.empty();
      case BOOLEAN -> error(new DamagedCell.MadeBoolean(cell.text()));
      case ERROR -> error(new DamagedCell.ErrorValue(cell.text()));
      case UNCALCULATED -> error(new DamagedCell.NoResult());
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

  private static Optional<Found> error(DamagedCell what) {
    return Optional.of(new Found(Severity.ERROR, what));
  }

  private static Optional<Found> warning(DamagedCell what) {
    return Optional.of(new Found(Severity.WARNING, what));
  }

  private Optional<Found> date(Row row, ListColumn column, Cell cell) {
    Matcher time = TIME.matcher(cell.text());
    if (time.matches()) {
      return error(new DamagedCell.MadeTime(cell.text(), pointsOf(time)));
    }
    Matcher date = ISO_DATE.matcher(cell.text());
    return error(
        date.matches()
            ? new DamagedCell.MadeDate(
                cell.text(), neighbours(row, column), candidates(row, column, date))
            : new DamagedCell.MadeDate(cell.text(), List.of(), List.of()));
  }

  /** The points that may have been typed: {@code 1:2}, and {@code 3 A} for three in the morning. */
  private static List<String> pointsOf(Matcher time) {
    int hour = Integer.parseInt(time.group(1));
    String minutes = time.group(2);
    List<String> points = new ArrayList<>();
    points.add(hour + ":" + Integer.parseInt(minutes));
    points.add(hour + ":" + minutes);
    if (minutes.equals("00") && hour % 12 != 0) {
      points.add(hour % 12 + " " + (hour < 12 ? "A" : "P"));
    }
    return points;
  }

  /** Both orders of day and month, the one that continues its neighbours first. */
  private List<String> candidates(Row row, ListColumn column, Matcher date) {
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
    List<String> orders = first.equals(second) ? List.of(first) : List.of(first, second);
    List<String> candidates = new ArrayList<>();
    orders.forEach(order -> candidates.add(slash ? order.replace('-', '/') : order));
    candidates.add(name);
    return candidates;
  }

  private static boolean startsLike(String text, int number) {
    return text.startsWith(number + "-") || text.startsWith(number + "/");
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
        if (cell.kind() == Cell.Stored.TEXT && !cell.isBlank()) {
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
      return warning(new DamagedCell.HasMinus(text));
    }
    if (text.length() > DIGITS_KEPT) {
      return warning(new DamagedCell.TooManyDigits(text, DIGITS_KEPT));
    }
    return text.indexOf('.') > 0 ? fraction(row, column, text) : whole(column, text);
  }

  /** A number among names that were typed otherwise: {@code 22E1}, {@code 007}. */
  private Optional<Found> whole(ListColumn column, String text) {
    if (evidence(column).lettersBetweenDigits() && (text.endsWith("0") || text.length() > 4)) {
      return error(new DamagedCell.NumberAmongNames(text, example(column), exponents(text)));
    }
    int padded = evidence(column).zeroPadded();
    return column.role() != Role.PIN && padded > text.length()
        ? warning(new DamagedCell.ZeroLost(text, "0".repeat(padded - text.length()) + text))
        : Optional.empty();
  }

  /** A number with a fraction among names: dragged down, or a version of 1.10. */
  private Optional<Found> fraction(Row row, ListColumn column, String text) {
    List<String> candidates = text.matches("\\d+\\.\\d") ? List.of(text + "0") : List.of();
    return warning(
        step(row, column) != 0
            ? new DamagedCell.StepOfNeighbours(text, candidates)
            : new DamagedCell.WithFraction(text, candidates));
  }

  private Optional<Found> drag(Row row, ListColumn column, Cell cell) {
    double value = number(cell).orElse(0.0);
    boolean series = step(row, column) == 1 && runLength(row, column) >= DRAGGED;
    boolean odd = value == Math.rint(value) && value % 2 == 1;
    return series && odd ? warning(new DamagedCell.GaugeCountsUp(cell.text())) : Optional.empty();
  }

  private Optional<Double> numberAt(int index, ListColumn column) {
    if (index < 0 || index >= table.body().size()) {
      return Optional.empty();
    }
    Cell cell = table.body().get(index).cell(column.index());
    return number(cell);
  }

  private static Optional<Double> number(Cell cell) {
    if (cell.kind() != Cell.Stored.NUMBER) {
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
      return error(new DamagedCell.ErrorValue(cell.text()));
    }
    if (!digits) {
      return cell.text().equals("TRUE") || cell.text().equals("FALSE")
          ? error(new DamagedCell.SaysBoolean(cell.text()))
          : Optional.empty();
    }
    if (cell.text().length() > 4
        && cell.text().indexOf('E') > 0
        && EXPONENT.matcher(cell.text()).matches()
        && (cell.text().indexOf('+') > 0 || cell.text().indexOf('.') > 0)) {
      double number = Double.parseDouble(cell.text().replace(',', '.'));
      return error(new DamagedCell.WithExponent(cell.text(), exponents(Numbers.plain(number))));
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
              new DamagedCell.LooksLikeDate(
                  text, neighbours(row, column), candidates(row, column, date)));
        }
      }
    }
    return Optional.empty();
  }

  /** Names with an E that a spreadsheet reads as this number: 220 is 22E1; none where any would. */
  private static List<String> exponents(String number) {
    String digits = number.replaceFirst("0+$", "");
    int zeros = number.length() - digits.length();
    if (digits.isEmpty()) {
      return List.of();
    }
    List<String> names = new ArrayList<>();
    for (int exponent = zeros; exponent > 0 && names.size() < 3; exponent--) {
      names.add(digits + "0".repeat(zeros - exponent) + "E" + exponent);
    }
    return names;
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
      if (cell.kind() != Cell.Stored.TEXT || cell.isBlank()) {
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

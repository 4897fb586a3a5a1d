package dev.ringout.imports.rows;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.DamagedCell;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.rows.SpreadsheetTexts.ShownDate;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import dev.ringout.source.Severity;
import dev.ringout.units.Numbers;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a spreadsheet makes of pins and designators that look like something else to it (trade
 * notes; for gene names: Ziemann, Eren and El-Osta, Genome Biology 17:177, 2016, from memory).
 */
final class Damage {
  private static final Pattern TIME = Pattern.compile("(\\d{2}):(\\d{2})(:\\d{2}.*)?");
  private static final Pattern EXPONENT = Pattern.compile("\\d(?:[.,]\\d+)?[Ee][+-]?\\d+");
  private static final Pattern LETTER_BETWEEN = Pattern.compile("\\d+[A-DF-Z]\\d+");
  private static final int DRAGGED = 4;

  /** The longest text that a spreadsheet shows of a date. */
  private static final int LONGEST_DAMAGED = 30;

  /** Significant digits of a number in IEEE 754 binary64 as spreadsheets keep it. */
  private static final int DIGITS_KEPT = 15;

  private final ListTable table;
  private final Map<Integer, Integer> indexOfRow = new HashMap<>();
  private final Map<Integer, Evidence> evidence = new HashMap<>();
  private final Map<Integer, List<String>> textsOfColumn = new HashMap<>();
  private final SpreadsheetTexts texts = SpreadsheetTexts.standard();

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
    List<String> candidates =
        SpreadsheetTexts.stored(cell.text())
            .map(date -> candidates(row, column, date))
            .orElse(List.of());
    return error(
        new DamagedCell.MadeDate(
            cell.text(), candidates.isEmpty() ? List.of() : neighbours(row, column), candidates));
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
  private List<String> candidates(Row row, ListColumn column, ShownDate date) {
    int month = date.month();
    int day = date.day();
    String monthFirst = month + "-" + day;
    String dayFirst = day + "-" + month;
    List<String> neighbours = neighbours(row, column);
    boolean slash = neighbours.stream().anyMatch(text -> text.contains("/"));
    boolean monthFits = neighbours.stream().anyMatch(text -> startsLike(text, month));
    boolean dayFits = neighbours.stream().anyMatch(text -> startsLike(text, day));
    String first = dayFits && !monthFits ? dayFirst : monthFirst;
    String second = first.equals(monthFirst) ? dayFirst : monthFirst;
    List<String> orders = first.equals(second) ? List.of(first) : List.of(first, second);
    List<String> candidates = new ArrayList<>();
    orders.forEach(order -> candidates.add(slash ? order.replace('-', '/') : order));
    candidates.add(date.name() + "-" + day);
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
        String text = CellText.clean(cell.text());
        // A neighbour that became a date as well tells nothing.
        if (cell.kind() == Cell.Stored.TEXT && !text.isEmpty() && texts.date(text).isEmpty()) {
          neighbours.add(text);
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
    if (!namesThings(column.role()) || cell.text().length() > LONGEST_DAMAGED) {
      return Optional.empty();
    }
    String text = CellText.clean(cell.text());
    if (text.isEmpty()) {
      return Optional.empty();
    }
    char first = text.charAt(0);
    boolean digits = CellText.isDigit(first) || CellText.isDigit(text.charAt(text.length() - 1));
    if (first == '#' || text.indexOf(':') > 0) {
      return texts.isError(text)
          ? error(new DamagedCell.ErrorValue(text))
          : SpreadsheetTexts.isHashes(text)
              ? error(new DamagedCell.HashesAlone(text))
              : digits ? textDate(row, column, text) : Optional.empty();
    }
    if (!digits) {
      boolean truth =
          isPointOrNumber(column.role()) ? texts.isTruthInAnyCase(text) : texts.isTruth(text);
      return truth ? error(new DamagedCell.SaysBoolean(text)) : Optional.empty();
    }
    Optional<Found> exponent = exponent(text);
    return exponent.isPresent() ? exponent : textDate(row, column, text);
  }

  private static Optional<Found> exponent(String text) {
    boolean mayBe =
        text.length() > 4
            && (text.indexOf('E') > 0 || text.indexOf('e') > 0)
            && (text.indexOf('+') > 0 || text.indexOf('.') > 0 || text.indexOf(',') > 0);
    if (!mayBe || !EXPONENT.matcher(text).matches()) {
      return Optional.empty();
    }
    double number = Double.parseDouble(text.replace(',', '.'));
    return error(new DamagedCell.WithExponent(text, exponents(Numbers.plain(number))));
  }

  /** A date that went through a text file: {@code 2-Jan}, {@code Jan-02}, {@code 2025-01-02}. */
  private Optional<Found> textDate(Row row, ListColumn column, String text) {
    Optional<ShownDate> date = isPointOrNumber(column.role()) ? texts.date(text) : Optional.empty();
    if (date.isEmpty() || texts.isOfColumnsForm(text, columnTexts(column))) {
      return Optional.empty();
    }
    return error(
        new DamagedCell.LooksLikeDate(
            text, neighbours(row, column), candidates(row, column, date.get())));
  }

  /** Where a point, an item or a wire number stands: none of them is a date or a truth value. */
  private static boolean isPointOrNumber(Role role) {
    return switch (role) {
      case WIRE,
          FROM,
          FROM_STRIP,
          FROM_PIN,
          TO,
          TO_STRIP,
          TO_PIN,
          FAR,
          FAR_PIN,
          ITEM,
          PIN,
          BOTH_PINS,
          BRIDGE,
          POINTS ->
          true;
      default -> false;
    };
  }

  private List<String> columnTexts(ListColumn column) {
    return textsOfColumn.computeIfAbsent(
        column.index(),
        index ->
            table.body().stream()
                .map(row -> row.cell(index))
                .filter(cell -> cell.kind() == Cell.Stored.TEXT && !cell.isBlank())
                .map(cell -> CellText.clean(cell.text()))
                .toList());
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
      String text = column.textIn(row);
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

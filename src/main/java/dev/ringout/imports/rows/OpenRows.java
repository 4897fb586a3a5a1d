package dev.ringout.imports.rows;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.RowOddity;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Row;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Rows that leave open as a whole what they are: taken out by a sign before them, moved by the
 * commas of a text file, or several cores at once.
 */
final class OpenRows {
  /** The signs before rows that are taken out in files of text. */
  private static final Pattern TAKEN_OUT =
      Pattern.compile("(#|//|;|%|--|'|(?i:rem ))\\s*[\\p{L}\\p{N}].*");

  private static final Pattern DIGITS = Pattern.compile("\\d{1,3}");

  /** {@code 1,2,3,PE}: cores of a cable with commas between. */
  private static final Pattern CORES =
      Pattern.compile("[\\p{L}\\p{N}]{1,4}(?:\\s*[,;+&]\\s*[\\p{L}\\p{N}]{1,4})+");

  private final ListTable table;
  private final Words words;
  private final int lastHeaded;
  private final Map<String, Boolean> usualSigns = new HashMap<>();

  OpenRows(ListTable table, Words words) {
    this.table = table;
    this.words = words;
    this.lastHeaded = lastHeaded(table);
  }

  /**
   * What is open, and where.
   *
   * @param lost whether nobody knows for it which points the row joins
   */
  record Open(ListColumn column, RowOddity oddity, boolean lost) {}

  Optional<Open> of(Row row) {
    return takenOut(row)
        .or(() -> parted(row))
        .or(() -> cores(row))
        .or(() -> namesBetweenStrokes(row));
  }

  /** {@code #2} before a row, as before hardly another. */
  private Optional<Open> takenOut(Row row) {
    Optional<ListColumn> first = first(row);
    Matcher sign = TAKEN_OUT.matcher(firstText(row));
    boolean alone = table.columns().stream().filter(one -> !one.textIn(row).isEmpty()).count() < 2;
    if (first.isEmpty() || alone || !sign.matches()) {
      return Optional.empty();
    }
    return usualSigns.computeIfAbsent(sign.group(1), this::isUsual)
        ? Optional.empty()
        : Optional.of(new Open(first.get(), new RowOddity.TakenOut(sign.group(1)), true));
  }

  private boolean isUsual(String sign) {
    long alike = table.body().stream().filter(row -> firstText(row).startsWith(sign)).count();
    return alike * 2 > table.body().size();
  }

  private String firstText(Row row) {
    return first(row).map(column -> column.textIn(row)).orElse("");
  }

  private Optional<ListColumn> first(Row row) {
    return table.columns().stream().filter(column -> !column.textIn(row).isEmpty()).findFirst();
  }

  /**
   * {@code 0,5} in a file whose cells have commas between and no quotes: two cells, and all that
   * stands behind is moved by one.
   */
  private Optional<Open> parted(Row row) {
    if (row.cell(lastHeaded + 1).isBlank()) {
      return Optional.empty();
    }
    for (ListColumn column : table.columns()) {
      boolean measure = column.role() == Role.GAUGE || column.role() == Role.LENGTH;
      String whole = measure ? column.textIn(row) : "";
      String rest = CellText.clean(row.cell(column.index() + 1).text());
      if (DIGITS.matcher(whole).matches()
          && DIGITS.matcher(rest).matches()
          && (whole.equals("0") || !holdsNumbers(column.index() + 1))) {
        boolean movesEnds = column.index() < lastEnd();
        return Optional.of(
            new Open(column, new RowOddity.PartedNumber(whole + "," + rest), movesEnds));
      }
    }
    return Optional.empty();
  }

  private int lastEnd() {
    return table.columns().stream()
        .filter(column -> column.role().isEnd() || column.role() == Role.PIN)
        .mapToInt(ListColumn::index)
        .max()
        .orElse(table.lastColumn());
  }

  private static int lastHeaded(ListTable table) {
    return table.columns().stream()
        .filter(column -> !column.heading().isEmpty())
        .mapToInt(ListColumn::index)
        .max()
        .orElse(table.lastColumn());
  }

  /** Whether numbers alone may be the texts of a column. */
  private boolean holdsNumbers(int index) {
    return table.columns().stream()
        .filter(column -> column.index() == index && !column.heading().isEmpty())
        .anyMatch(
            column ->
                switch (column.role()) {
                  case FROM, TO, FAR, ITEM, COLOR, TYPE, SIGNAL -> false;
                  default -> true;
                });
  }

  /** Several cores in a cell, and no end that has as many pins. */
  private Optional<Open> cores(Row row) {
    for (ListColumn column : table.columns()) {
      boolean named =
          switch (column.role()) {
            case KEEP, WIRE, BOTH_PINS -> headsCores(column.heading());
            default -> false;
          };
      String text = named ? column.textIn(row) : "";
      if (!text.isEmpty() && CORES.matcher(text).matches() && !isMatched(row, text)) {
        return Optional.of(new Open(column, new RowOddity.SeveralCores(text), true));
      }
    }
    return Optional.empty();
  }

  private boolean headsCores(String heading) {
    return words.mentions("core", heading) || words.mentions("conductors", heading);
  }

  private boolean isMatched(Row row, String cores) {
    int count = pieces(cores);
    return table.columns().stream()
        .filter(column -> column.role().isEnd())
        .anyMatch(column -> pieces(column.textIn(row)) == count);
  }

  /** {@code 3.3V / GND} beside {@code 3V3 / GND}: as many wires as there are names, or one pin. */
  private Optional<Open> namesBetweenStrokes(Row row) {
    List<ListColumn> several =
        table.columns().stream()
            .filter(column -> column.role() == Role.PIN || column.role() == Role.POINTS)
            .filter(column -> strokes(column.textIn(row)) > 0)
            .toList();
    return several.stream()
        .filter(
            column ->
                several.stream()
                    .filter(other -> other.index() != column.index())
                    .anyMatch(other -> strokes(other.textIn(row)) == strokes(column.textIn(row))))
        .findFirst()
        .map(column -> new Open(column, new RowOddity.EndInDoubt(column.textIn(row)), true));
  }

  private static int strokes(String text) {
    return text.split(" / ", -1).length - 1;
  }

  private static int pieces(String text) {
    return List.of(text.split("\\s*[,;+&]\\s*", -1)).size();
  }
}

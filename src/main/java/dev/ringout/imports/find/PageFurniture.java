package dev.ringout.imports.find;

import dev.ringout.cells.CellText;
import dev.ringout.harness.SerialNumbers;
import dev.ringout.imports.list.Grid;
import dev.ringout.imports.list.HeaderFact;
import dev.ringout.imports.list.HeaderFact.Name;
import dev.ringout.imports.list.Words;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds what the page around a table says of the list as a whole: {@code Title: …}, {@code Drawing
 * No | 1234}, {@code REV C}. A value stands in its label's cell, else in the next filled one to the
 * right, else below.
 */
public final class PageFurniture {
  private static final int LONGEST_LABEL = 4;
  private static final int LONGEST_VALUE = 200;
  private static final int LONGEST_REVISION = 12;
  private static final int LONGEST_DRAWING = 60;

  /** Stands where no title of its own does. */
  private static final String PROJECT = "label project";

  /** Anything may be a title; without a colon its row must show that it is none of headings. */
  private static final Set<String> NAMED = Set.of("label title", PROJECT);

  private static final Pattern COLON = Pattern.compile("\\s*[:=]\\s*");
  private static final Pattern LAST_COLON = Pattern.compile("\\s*[:=]$");
  private static final Pattern BLANK = Pattern.compile("\\s+");

  /** A revision at the end of a text: {@code HSB-2210 REV C}, {@code Rev. 02}. */
  private static final Pattern REVISION =
      Pattern.compile(
          "(?:.*[\\s,;(-])?rev(?:ision|isión|isione|\\.)?[\\s.]*([A-Z]{1,2}|[A-Z]?\\d{1,3}(?:\\.\\d{1,3})?)\\)?",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern REVISION_ALONE =
      Pattern.compile("-|[A-Za-z]{1,2}|[A-Za-z]{0,3}[.-]?\\d{1,4}([.-]\\d{1,4}){0,3}[A-Za-z]?");

  /** A label with its number: {@code DWG NO 4711-2}. */
  private static final Pattern NUMBERED =
      Pattern.compile(
          "(.{2,30}?(?:\\b(?:no|nr|number)\\b\\.?|#|nummer|n[°º]))\\s*(\\S*\\d\\S*)",
          Pattern.CASE_INSENSITIVE);

  private final Grid grid;
  private final Words words;
  private final List<Row> rows;
  private final Map<Name, HeaderFact> found = new LinkedHashMap<>();
  private final List<HeaderFact> others = new ArrayList<>();
  private Optional<HeaderFact> project = Optional.empty();

  private PageFurniture(List<Row> outside, Grid grid, Words words) {
    this.rows = outside;
    this.grid = grid;
    this.words = words;
  }

  /**
   * What a sheet says of the list as a whole, each fact as often as it is said with another value.
   *
   * @param outside the sheet's rows that stand in no table
   */
  public static List<HeaderFact> read(List<Row> outside, Grid grid, Words words) {
    return new PageFurniture(outside, grid, words).read();
  }

  private List<HeaderFact> read() {
    for (int at = 0; at < rows.size(); at++) {
      Row row = rows.get(at);
      for (int column = 1; column <= row.cells().size(); column++) {
        cell(at, column, CellText.clean(row.cell(column).text()));
      }
    }
    if (!found.containsKey(Name.TITLE)) {
      project.ifPresent(title -> found.put(Name.TITLE, title));
    }
    List<HeaderFact> all = new ArrayList<>(found.values());
    all.sort(Comparator.comparing(HeaderFact::name));
    all.addAll(others);
    return List.copyOf(all);
  }

  private void cell(int at, int column, String text) {
    if (text.isEmpty() || text.length() > LONGEST_VALUE * 2) {
      return;
    }
    Row row = rows.get(at);
    Optional<String> label = label(LAST_COLON.matcher(text).replaceFirst(""));
    if (label.isPresent()) {
      beside(at, column, label.get());
    } else if (text.indexOf(':') > 0 || text.indexOf('=') > 0) {
      within(row, column, text);
    } else {
      withoutColon(row, column, text);
    }
  }

  /**
   * Whether a row is of the page and not of a table: its first cell is a label, with a colon or
   * before another label.
   */
  public static boolean isPage(Row row, Words words) {
    int labels = 0;
    for (Cell cell : row.cells()) {
      String text = cell.isBlank() ? "" : CellText.clean(cell.text());
      if (text.isEmpty()) {
        continue;
      }
      boolean label = startsWithLabel(text, words);
      if (label && (labels > 0 || COLON.matcher(text).find())) {
        return true;
      }
      if (!label && labels == 0) {
        return false;
      }
      labels += label ? 1 : 0;
    }
    return false;
  }

  /** A label as a whole, or one that a colon follows; names of wires and points are none. */
  private static boolean startsWithLabel(String text, Words words) {
    boolean numbered = CellText.isDigit(text.charAt(text.length() - 1)) && text.indexOf(':') < 0;
    return !numbered
        && text.length() <= LONGEST_VALUE
        && label(COLON.split(text, 2)[0], words).isPresent();
  }

  private Optional<String> label(String text) {
    return label(text, words);
  }

  /** The kind of a label, where a text is one as a whole. */
  private static Optional<String> label(String text, Words words) {
    if (text.isEmpty()
        || "-_,;/(".indexOf(text.charAt(text.length() - 1)) >= 0
        || BLANK.split(text, -1).length > LONGEST_LABEL) {
      return Optional.empty();
    }
    for (Name name : Name.values()) {
      if (words.isAny("label " + name.word(), text)) {
        return Optional.of("label " + name.word());
      }
    }
    return words.isAny(PROJECT, text) ? Optional.of(PROJECT) : Optional.empty();
  }

  /** The value stands in the next filled cell to the right, else below. */
  private void beside(int at, int column, String label) {
    Row row = rows.get(at);
    boolean named = NAMED.contains(label) && !endsInColon(row.cell(column));
    if (named && !isPairs(row)) {
      return;
    }
    for (int right = column + 1; right <= row.cells().size(); right++) {
      String text = CellText.clean(row.cell(right).text());
      if (!text.isEmpty() && !text.equals(CellText.clean(row.cell(column).text()))) {
        if (isLabelled(text)) {
          break;
        }
        take(label, text, row, right);
        return;
      }
    }
    below(at, column, label);
  }

  private static boolean endsInColon(Cell cell) {
    return LAST_COLON.matcher(CellText.clean(cell.text())).find();
  }

  /** Labels each with its value, and no headings of a table: {@code Title | Bridge | Rev | C}. */
  private boolean isPairs(Row row) {
    List<String> filled =
        row.cells().stream()
            .map(cell -> CellText.clean(cell.text()))
            .filter(text -> !text.isEmpty())
            .toList();
    boolean labelsAlone = filled.stream().allMatch(this::isLabelled);
    boolean pairs = filled.size() % 2 == 0;
    for (int i = 0; i < filled.size(); i++) {
      pairs &= isLabelled(filled.get(i)) == (i % 2 == 0);
    }
    return labelsAlone || pairs;
  }

  private boolean isLabelled(String text) {
    return startsWithLabel(text, words);
  }

  /** Of a history of revisions, one below the other, the last by its letter holds. */
  private void below(int at, int column, String label) {
    List<Integer> filled = new ArrayList<>();
    for (int next = at + 1; next < rows.size(); next++) {
      boolean adjacent = rows.get(next).number() == rows.get(next - 1).number() + 1;
      String text = CellText.clean(rows.get(next).cell(column).text());
      if (!adjacent || text.isEmpty() || isLabelled(text)) {
        break;
      }
      filled.add(next);
    }
    if (filled.isEmpty()) {
      return;
    }
    if (filled.size() > 1 && !isHistory(rows.get(at), column, label, filled)) {
      return;
    }
    int last =
        filled.stream()
            .max(Comparator.comparing(next -> order(rows.get(next), column)))
            .orElseThrow();
    take(label, CellText.clean(rows.get(last).cell(column).text()), rows.get(last), column);
  }

  /** Revisions with their dates, each another; parts may have revisions of their own. */
  private boolean isHistory(Row headings, int column, String label, List<Integer> filled) {
    long different =
        filled.stream()
            .map(next -> CellText.clean(rows.get(next).cell(column).text()))
            .filter(text -> fits(Name.REVISION, text))
            .distinct()
            .count();
    return label.equals("label " + Name.REVISION.word())
        && different == filled.size()
        && headings.cells().stream()
            .map(cell -> CellText.clean(cell.text()))
            .anyMatch(text -> words.isAny("label " + Name.DATE.word(), text));
  }

  private static String order(Row row, int column) {
    String text = CellText.clean(row.cell(column).text());
    return " ".repeat(Math.max(0, LONGEST_REVISION - text.length())) + text;
  }

  /** {@code Drawing No: 4711 Rev: C}: each label takes what stands before the next. */
  private void within(Row row, int column, String text) {
    Matcher colon = COLON.matcher(text);
    Optional<String> label = Optional.empty();
    int from = 0;
    int after = 0;
    while (colon.find()) {
      String before = text.substring(after, colon.start());
      int cut = after == 0 ? 0 : labelAtEnd(before);
      Optional<String> next = label(before.substring(Math.min(cut, before.length())).strip());
      if (next.isPresent()) {
        takeFrom(label, text.substring(from, after + cut), row, column);
        label = next;
        from = colon.end();
      }
      after = colon.end();
    }
    takeFrom(label, text.substring(from), row, column);
  }

  private void takeFrom(Optional<String> label, String value, Row row, int column) {
    label.ifPresent(
        known -> take(known, value.replaceFirst("[\\s,;/|]+$", "").strip(), row, column));
  }

  /** Where the longest label begins that a text ends with; its length where there is none. */
  private int labelAtEnd(String text) {
    Matcher blank = BLANK.matcher(text);
    while (blank.find()) {
      if (label(text.substring(blank.end()).strip()).isPresent()) {
        return blank.start();
      }
    }
    return text.length();
  }

  private void withoutColon(Row row, int column, String text) {
    Matcher numbered = NUMBERED.matcher(text);
    if (numbered.matches()) {
      label(numbered.group(1)).ifPresent(known -> take(known, numbered.group(2), row, column));
    }
    Matcher revision = REVISION.matcher(text);
    if (revision.matches()) {
      take("label " + Name.REVISION.word(), revision.group(1), row, column);
    }
  }

  private void take(String label, String value, Row row, int column) {
    Optional<Name> name = Name.of(label.substring("label ".length()));
    if (name.isEmpty()) {
      HeaderFact fact = new HeaderFact(Name.TITLE, value, grid.place(row.number(), column));
      project = project.isPresent() || !fits(Name.TITLE, value) ? project : Optional.of(fact);
      return;
    }
    if (!fits(name.get(), value)) {
      return;
    }
    HeaderFact fact = new HeaderFact(name.get(), value, grid.place(row.number(), column));
    HeaderFact before = found.putIfAbsent(name.get(), fact);
    if (before != null && !before.value().equalsIgnoreCase(value)) {
      others.add(fact);
    }
  }

  private boolean fits(Name name, String value) {
    boolean said = !value.isEmpty() && (value.equals("-") || !words.isNothing(value));
    return said
        && switch (name) {
          case TITLE -> value.length() <= LONGEST_VALUE && hasLetter(value);
          case DRAWING -> value.length() <= LONGEST_DRAWING && CellText.hasDigit(value);
          case REVISION ->
              value.length() <= LONGEST_REVISION && REVISION_ALONE.matcher(value).matches();
          case EFFECTIVITY -> SerialNumbers.of(value).isPresent();
          case DATE -> value.length() <= LONGEST_DRAWING && CellText.hasDigit(value);
        };
  }

  private static boolean hasLetter(String text) {
    return text.codePoints().anyMatch(Character::isLetter);
  }
}

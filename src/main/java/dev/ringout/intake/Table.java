package dev.ringout.intake;

import dev.ringout.cells.Blanks;
import dev.ringout.sheet.Row;
import dev.ringout.sheet.Sheet;
import dev.ringout.sheet.Surroundings;
import dev.ringout.source.Place;
import dev.ringout.source.Problem;
import dev.ringout.source.Problems;
import dev.ringout.source.Severity;
import dev.ringout.source.UnusableInput;
import dev.ringout.units.Text;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A sheet whose first row holds headings: finds the columns and hands over row after row. */
final class Table {
  private static final int MOST_NAMED = 40;

  private final Sheet sheet;
  private final List<Column> known;
  private final List<Column> required;
  private final Problems problems;

  private final Map<String, Integer> columnOf = new HashMap<>();
  private final BitSet knownAt = new BitSet();
  private final Map<String, String> unitOf = new HashMap<>();
  private final Map<Integer, String> headings = new LinkedHashMap<>();
  private final Map<Integer, String> unknown = new LinkedHashMap<>();
  private final Map<Integer, Integer> blanksIgnored = new LinkedHashMap<>();
  private Surroundings surroundings = Surroundings.none();
  private boolean headingSeen;
  private boolean usable = true;
  private boolean mayBeEmpty;
  private Function<Collection<String>, String> looksLike = headings -> "";
  private Function<Entry, String> subject = entry -> "";
  private Consumer<Problem> rowProblems = problem -> {};

  Table(Sheet sheet, List<Column> known, List<Column> required, Problems problems) {
    this.sheet = sheet;
    this.known = known;
    this.required = required;
    this.problems = problems;
  }

  /**
   * Names the subject of a row before each of its problems, and hands these on.
   *
   * @param subjectOf asked for only where a problem is reported; empty where a row names none
   * @param alsoTo takes the problems of rows; those of the headings are not among them
   */
  Table naming(Function<Entry, String> subjectOf, Consumer<Problem> alsoTo) {
    subject = subjectOf;
    rowProblems = alsoTo;
    return this;
  }

  /**
   * Refuses a table of another kind.
   *
   * @param by says by the headings what it looks like; empty where it may be what is expected
   */
  Table unless(Function<Collection<String>, String> by) {
    looksLike = by;
    return this;
  }

  /** A sheet without even headings is none that was forgotten. */
  Table orEmpty() {
    mayBeEmpty = true;
    return this;
  }

  /** Reads the sheet to its end; rows are handed over only where the headings suffice. */
  void forEach(Consumer<Entry> each) throws UnusableInput {
    surroundings =
        sheet.forEachRow(
            row -> {
              if (!headingSeen) {
                headingSeen = true;
                readHeadings(row);
              } else if (usable) {
                Entry entry = new Entry(this, row);
                if (entry.hasKnown()) {
                  each.accept(entry);
                }
              }
            });
    if (!headingSeen && !mayBeEmpty) {
      problems.error(
          sheet.place(),
          "the sheet is empty; expected a heading row with "
              + names(required.isEmpty() ? known : required));
    }
    blanksIgnored.forEach(
        (column, count) ->
            problems.add(
                new Problem(
                    placeOf(0, column),
                    headings.getOrDefault(column, ""),
                    Severity.NOTE,
                    "blanks around the text of "
                        + count
                        + (count == 1 ? " cell" : " cells")
                        + " were ignored",
                    "")));
  }

  private static String names(List<Column> columns) {
    return columns.stream().map(Column::name).collect(Collectors.joining(", "));
  }

  private void readHeadings(Row row) {
    for (int column = 1; column <= row.cells().size(); column++) {
      String heading = Blanks.strip(row.cell(column).text());
      if (!heading.isEmpty()) {
        headings.put(column, heading);
        assign(row.number(), column, heading);
      }
    }
    String other = looksLike.apply(headings.values());
    if (!other.isEmpty()) {
      usable = false;
      problems.error(placeOf(row.number(), 0), other);
      return;
    }
    List<Column> missing =
        required.stream().filter(column -> !columnOf.containsKey(column.name())).toList();
    if (!missing.isEmpty()) {
      usable = false;
      problems.error(
          placeOf(row.number(), 0),
          "the headings must be in the first row; missing: "
              + names(missing)
              + ". Found: "
              + Text.first(headings.values(), MOST_NAMED));
    }
  }

  private void assign(int row, int column, String heading) {
    for (Column candidate : known) {
      String unit = candidate.unitIn(heading);
      if (!candidate.matches(heading) && unit.isEmpty()) {
        continue;
      }
      Integer earlier = columnOf.putIfAbsent(candidate.name(), column);
      if (earlier != null) {
        usable = false;
        problems.error(
            placeOf(row, column),
            Text.of(
                "both \"%s\" (%s) and \"%s\" are the column %s; rename the one that is not",
                headings.getOrDefault(earlier, ""),
                Place.columnLetters(earlier),
                heading,
                candidate.name()));
      }
      knownAt.set(column);
      if (!unit.isEmpty()) {
        unitOf.put(candidate.name(), unit);
      }
      return;
    }
    unknown.put(column, heading);
  }

  /** What stands around the cells, once the sheet has been read. */
  Surroundings surroundings() {
    return surroundings;
  }

  /** Whether a row was found that holds the headings. */
  boolean isHeaded() {
    return headingSeen;
  }

  int columnOf(String name) {
    return columnOf.getOrDefault(name, 0);
  }

  String unitOf(String name) {
    return unitOf.getOrDefault(name, "");
  }

  Iterable<Integer> knownColumns() {
    return columnOf.values();
  }

  /** Whether a column, counted from 1, is one that is understood. */
  boolean isKnown(int column) {
    return knownAt.get(column);
  }

  Map<Integer, String> unknownColumns() {
    return unknown;
  }

  Place placeOf(int row, int column) {
    Place whole = sheet.place();
    return new Place(whole.file(), whole.sheet(), row, column);
  }

  String heading(int column) {
    return headings.getOrDefault(column, "");
  }

  void countBlanksIgnored(int column) {
    blanksIgnored.merge(column, 1, Integer::sum);
  }

  /** A problem of a row, below its headings. */
  void add(Entry entry, Place place, String heading, Severity severity, String text, String maybe) {
    String named = subject.apply(entry);
    Problem problem =
        new Problem(place, heading, severity, named.isEmpty() ? text : named + ": " + text, maybe);
    problems.add(problem);
    rowProblems.accept(problem);
  }
}

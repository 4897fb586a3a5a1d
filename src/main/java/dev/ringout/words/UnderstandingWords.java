package dev.ringout.words;

import dev.ringout.imports.list.CellBalance;
import dev.ringout.imports.list.HeaderFact;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.ImportResult.RowCounts;
import dev.ringout.imports.list.ImportResult.SheetReport;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.Role;
import dev.ringout.source.Place;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** How a list was understood, in words: its tables, and what became of its rows and cells. */
public final class UnderstandingWords {
  private static final int COLUMNS_NAMED = 16;
  private static final int PLACES_NAMED = 6;

  private UnderstandingWords() {}

  /** Where a table is: {@code Sheet1 A:E}. */
  public static String name(SheetReport table) {
    return table.sheet() + (table.range().isEmpty() ? "" : " " + table.range());
  }

  /** How a table tells its wires. */
  public static String layout(SheetReport table) {
    return ImportWords.layout(table.layout())
        + (table.headingRow() > 0 ? " (headings in row " + table.headingRow() + ")" : "");
  }

  /** The columns by their letters, as the options call them. */
  public static String headings(List<ListColumn> columns) {
    return named(columns.stream().map(UnderstandingWords::heading).toList());
  }

  private static String heading(ListColumn column) {
    String heading = column.heading().isEmpty() ? "(no heading)" : column.heading();
    return Place.columnLetters(column.index()) + " " + heading;
  }

  /** What each column is taken for, and how certain that is. */
  public static String roles(List<ListColumn> columns) {
    return named(
        columns.stream()
            .filter(column -> column.role() != Role.KEEP)
            .map(
                column ->
                    heading(column)
                        + " is "
                        + column.role().title()
                        + " ("
                        + column.certainty().word()
                        + ")")
            .toList());
  }

  private static String named(List<String> all) {
    int more = all.size() - COLUMNS_NAMED;
    return all.stream().limit(COLUMNS_NAMED).collect(Collectors.joining(", "))
        + (more > 0 ? ", and " + more + " more" : "");
  }

  /** The headings of the columns that go along as notes; empty where there are none. */
  public static String keptAsNotes(List<ListColumn> columns) {
    return columns.stream()
        .filter(column -> column.role() == Role.KEEP)
        .map(ListColumn::heading)
        .filter(heading -> !heading.isEmpty())
        .collect(Collectors.joining(", "));
  }

  /** What the rows of a table are. */
  public static String rows(SheetReport table) {
    RowCounts rows = table.rows();
    Map<String, Integer> counts = new LinkedHashMap<>();
    counts.put("wire", rows.wire());
    counts.put("spare", rows.spare());
    counts.put("heading", rows.heading());
    counts.put("note", rows.note());
    counts.put("blank", rows.blank());
    counts.put("skipped", rows.skipped());
    return Numbers.count(rows.total(), row(table.layout()))
        + ": "
        + String.join(", ", counted(counts));
  }

  private static List<String> counted(Map<String, Integer> counts) {
    List<String> parts = new ArrayList<>();
    counts.forEach(
        (word, count) -> {
          if (count > 0) {
            parts.add(count + " " + word);
          }
        });
    return parts;
  }

  /** What is counted of a list. */
  private static String row(Layout layout) {
    return layout == Layout.CONNECTIONS ? "connection" : "row";
  }

  /** A fact of the list as a whole, and where it says so. */
  public static String fact(HeaderFact fact) {
    String where =
        fact.place().isNowhere()
            ? "as you say"
            : (fact.place().sheet().isEmpty() ? "" : fact.place().sheet() + "!")
                + fact.place().cell();
    return fact.value() + " (" + where + ")";
  }

  /** How many wires, links and pins there are, and at which ends the wires were found. */
  public static String counts(ImportResult result) {
    List<String> parts = new ArrayList<>();
    parts.add(Numbers.count(result.wiring().wires().size(), "wire"));
    if (!result.wiring().links().isEmpty()) {
      parts.add(Numbers.count(result.wiring().links().size(), "link"));
    }
    long spare = result.pinsWithoutWire();
    if (spare > 0) {
      parts.add(Numbers.count(spare, "pin") + " listed without a wire");
    }
    long named = result.wiring().pins().size() - spare;
    if (named > 0) {
      parts.add(Numbers.count(named, "wired pin") + " with a name beside");
    }
    if (result.found().bothEnds() > 0) {
      parts.add(
          Text.of(
              "%d found at both ends, %d at one end only, %d to a pin that the other end does not list, %d to an item without a list",
              result.found().bothEnds(),
              result.found().oneSided(),
              result.found().farPinNotListed(),
              result.found().farHasNoList()));
    }
    return String.join("; ", parts);
  }

  /** What became of a sheet's cells, so that none is gone without a word. */
  public static String cells(CellBalance cells) {
    Map<String, Integer> uses = new LinkedHashMap<>();
    uses.put("in wires", cells.wires());
    uses.put("in pins", cells.pins());
    uses.put("in notes", cells.notes());
    uses.put("in headings", cells.headings());
    uses.put("not read", cells.notRead());
    List<String> parts = counted(uses);
    if (cells.notUsed() > 0) {
      parts.add(cells.notUsed() + " not used (" + Text.first(cells.unused(), PLACES_NAMED) + ")");
    }
    return Text.of(
        "%s: %s of %s",
        cells.sheet(), String.join(", ", parts), Numbers.count(cells.filled(), "filled cell"));
  }

  /** Rows that may be wires and could not be read; empty where there are none. */
  public static String lost(ImportResult result) {
    long lost = result.lostRows();
    Layout layout = lost == 0 ? Layout.NONE : result.sheets().get(0).layout();
    return lost == 0
        ? ""
        : Numbers.count(lost, row(layout))
            + " could not be read and may be wires"
            + (layout == Layout.CONNECTIONS ? "" : settlingRows(result));
  }

  /** What settles rows that could not be read, without a change of the list. */
  private static String settlingRows(ImportResult result) {
    Map<String, Set<Integer>> rows = new LinkedHashMap<>();
    boolean several = result.cells().size() > 1;
    for (ImportResult.SheetReport sheet : result.sheets()) {
      sheet.skipped().stream()
          .filter(ImportResult.SkippedRow::lost)
          .forEach(
              row -> rows.computeIfAbsent(sheet.sheet(), key -> new TreeSet<>()).add(row.row()));
    }
    List<String> said = new ArrayList<>();
    rows.forEach(
        (sheet, own) -> {
          String numbers = own.stream().map(String::valueOf).collect(Collectors.joining(","));
          said.add(
              "--leave-out " + (several ? HypothesisWords.quoted(sheet + "!" + numbers) : numbers));
        });
    return "; what a cell means: --read-as \"TEXT=POINT\"; rows that are none: "
        + String.join(" ", said);
  }
}

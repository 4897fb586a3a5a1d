package dev.ringout.imports;

import dev.ringout.cells.CellText;
import dev.ringout.harness.Wiring;
import dev.ringout.imports.find.HeadingReader;
import dev.ringout.imports.find.PageFurniture;
import dev.ringout.imports.find.TableFinder;
import dev.ringout.imports.join.HarnessBuilder;
import dev.ringout.imports.join.HarnessBuilder.Built;
import dev.ringout.imports.join.TwoRows;
import dev.ringout.imports.join.WireEnds;
import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Grid;
import dev.ringout.imports.list.HeaderFact;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.ImportResult.RowCounts;
import dev.ringout.imports.list.ImportResult.SheetReport;
import dev.ringout.imports.list.ImportResult.SkippedRow;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.SheetOddity;
import dev.ringout.imports.list.SkipReason;
import dev.ringout.imports.list.Understanding;
import dev.ringout.imports.list.Words;
import dev.ringout.imports.rows.TableReader;
import dev.ringout.imports.rows.Tally;
import dev.ringout.imports.rows.Tally.RowKind;
import dev.ringout.sheet.Row;
import dev.ringout.sheet.Sheet;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Place;
import dev.ringout.source.UnusableInput;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Reads a wire list in any layout. */
public final class ListImporter {
  private final Words words;
  private final ImportOptions options;
  private final UnaryOperator<String> noteHeading;
  private final ListFindings findings = new ListFindings();
  private final TwoRows twoRows = new TwoRows(findings);
  private final Understanding list = new Understanding();
  private final Ends ends;
  private final Map<Place, String> comments = new HashMap<>();
  private final List<Part> parts = new ArrayList<>();
  private final List<HeaderFact> header = new ArrayList<>();

  private ListImporter(Words words, ImportOptions options, UnaryOperator<String> noteHeading) {
    this.noteHeading = noteHeading;
    this.words = words;
    this.options = options;
    this.ends = new Ends(words);
  }

  /** A table and what became of its rows. */
  private record Part(Grid grid, ListTable table, Tally tally, int firstDraft, int lastDraft) {}

  /**
   * Reads every table of every sheet.
   *
   * @param shownName the file's name in every message
   * @param noteHeading under what heading a column's texts may stand as notes of a wire
   * @throws UnusableInput where the file turns out to be damaged
   */
  public static ImportResult read(
      TabularFile file,
      String shownName,
      Words words,
      ImportOptions options,
      UnaryOperator<String> noteHeading)
      throws UnusableInput {
    return new ListImporter(words, options, noteHeading).read(file, shownName);
  }

  private ImportResult read(TabularFile file, String shownName) throws UnusableInput {
    OwnFiles.refuse(file, shownName);
    HeadingReader headings = new HeadingReader(words, options.columns());
    for (Sheet sheet : file.sheets()) {
      readSheet(Grid.read(sheet), headings);
    }
    new WireEnds(list, twoRows, findings).join();
    reportUnusedOptions(Place.of(shownName));
    Built built =
        new HarnessBuilder(list, words, options, twoRows, findings, comments, noteHeading)
            .build(Place.of(shownName));
    built.duplicates().forEach(this::countAsSkipped);
    if (built.wiring().wires().isEmpty() && built.wiring().links().isEmpty()) {
      findings.warning(Place.of(shownName), new SheetOddity.NoWires());
    }
    List<HeaderFact> settled = HeaderFacts.settle(header, options.header(), findings);
    return new ImportResult(
        parts.stream().map(part -> report(part, built.wiring())).toList(),
        built.wiring(),
        findings.list(),
        built.bothEnds(),
        built.oneSided(),
        built.farPinNotListed(),
        built.farHasNoList(),
        settled);
  }

  private void countAsSkipped(Draft duplicate) {
    for (Part part : parts) {
      if (part.grid().name().equals(duplicate.place().sheet())
          || duplicate.place().sheet().isEmpty()) {
        part.tally().count(RowKind.WIRE, -1);
        part.tally().skip(duplicate.place().row(), SkipReason.SAME_ONCE_MORE);
        return;
      }
    }
  }

  private void readSheet(Grid grid, HeadingReader headings) {
    if (grid.rows().isEmpty()) {
      return;
    }
    new Around(findings, comments).report(grid);
    readTables(grid, TableFinder.find(grid, words, headings));
    header.addAll(PageFurniture.read(outside(grid), grid, words));
  }

  /** The rows of a sheet from which nothing was read: what stands around its tables. */
  private List<Row> outside(Grid grid) {
    Set<Integer> read = new HashSet<>();
    list.rows(grid.place(0, 0)).forEach(read::add);
    for (Part part : parts) {
      if (part.grid() == grid && part.table().layout() != Layout.NONE) {
        read.add(part.table().headingRow());
        part.tally().skipped().forEach(row -> read.add(row.row()));
      }
    }
    return grid.rows().stream().filter(row -> !read.contains(row.number())).toList();
  }

  private void readTables(Grid grid, TableFinder.Found found) {
    if (found.tables().isEmpty()) {
      withoutTables(grid);
      return;
    }
    boolean first = true;
    int lastRow = 0;
    for (ListTable table : found.tables()) {
      boolean beside = !first && table.headingRow() == lastHeading(parts);
      int above = first || beside ? 0 : lastRow;
      readTable(table, first ? found.above().size() : 0, above);
      first = false;
      lastRow = lastRowOf(table);
    }
  }

  private void withoutTables(Grid grid) {
    Tally notes = new Tally();
    notes.count(RowKind.NOTE, grid.rows().size());
    notes.count(RowKind.BLANK, grid.lastRow() - grid.rows().size());
    findings.warning(grid.place(0, 0), new SheetOddity.NoTable());
    ListTable nothing =
        new ListTable(grid, 0, 1, grid.width(), List.of(), Layout.NONE, "", grid.rows());
    parts.add(new Part(grid, nothing, notes, 0, 0));
  }

  /**
   * Reads a table and accounts for its rows.
   *
   * @param notesAbove rows above the sheet's first table
   * @param lastRowAbove the last row of what stands above this table
   */
  private void readTable(ListTable table, int notesAbove, int lastRowAbove) {
    int firstDraft = list.drafts().size();
    Tally tally = TableReader.of(table, words, ends, options, findings, list).read();
    if (notesAbove > 0) {
      tally.count(RowKind.NOTE, notesAbove);
    }
    tally.count(RowKind.HEADING, headingRows(table));
    tally.count(RowKind.BLANK, Math.max(0, lastRowOf(table) - lastRowAbove - tally.total()));
    if (table.layout() == Layout.NONE) {
      findings.warning(
          table.grid().place(table.headingRow(), table.firstColumn()),
          new SheetOddity.ColumnsWithoutWires(headings(table)));
    }
    parts.add(new Part(table.grid(), table, tally, firstDraft, list.drafts().size()));
  }

  private static int lastHeading(List<Part> parts) {
    return parts.isEmpty() ? 0 : parts.get(parts.size() - 1).table().headingRow();
  }

  /** Heading rows stand between the heading's first and the body's first row. */
  private static int headingRows(ListTable table) {
    if (table.headingRow() == 0) {
      return 0;
    }
    long rows =
        table.grid().rows().stream()
            .filter(row -> row.number() >= table.headingRow())
            .filter(row -> table.body().isEmpty() || row.number() < table.body().get(0).number())
            .count();
    return (int) rows;
  }

  private static int lastRowOf(ListTable table) {
    List<Row> body = table.body();
    return body.isEmpty() ? table.headingRow() : body.get(body.size() - 1).number();
  }

  private static List<String> headings(ListTable table) {
    return table.columns().stream()
        .map(ListColumn::heading)
        .filter(heading -> !heading.isEmpty())
        .toList();
  }

  /** An option that fits nothing is a slip that would go unseen. */
  private void reportUnusedOptions(Place whole) {
    for (String heading : options.columns().keySet()) {
      reportUnused(whole, heading, new SheetOddity.ColumnNotFound(heading));
    }
    for (String heading : options.joinBy()) {
      reportUnused(whole, heading, new SheetOddity.NameColumnNotFound(heading));
    }
  }

  private void reportUnused(Place whole, String heading, SheetOddity unused) {
    boolean used =
        parts.stream()
            .flatMap(part -> part.table().columns().stream())
            .anyMatch(
                column ->
                    CellText.headingKey(column.heading()).equals(CellText.headingKey(heading))
                        || (column.heading().isEmpty()
                            && Place.columnLetters(column.index()).equals(heading)));
    if (!used) {
      findings.warning(whole, unused);
    }
  }

  /** Wires of a table; where rows are ends, those whose first end stands there. */
  private static int wires(Part part, Wiring wiring) {
    if (part.table().layout() != Layout.WIRE_ENDS) {
      return part.lastDraft() - part.firstDraft();
    }
    Set<Place> rows = new HashSet<>();
    part.table().body().forEach(row -> rows.add(part.table().place(row)));
    return (int) wiring.wires().stream().filter(wire -> rows.contains(wire.place())).count();
  }

  private SheetReport report(Part part, Wiring wiring) {
    ListTable table = part.table();
    Tally tally = part.tally();
    List<SkippedRow> skipped = new ArrayList<>();
    for (Tally.Skipped one : tally.skipped()) {
      List<String> cells = new ArrayList<>();
      for (Row row : table.body()) {
        if (row.number() == one.row()) {
          for (int column = table.firstColumn(); column <= table.lastColumn(); column++) {
            cells.add(row.cell(column).text());
          }
        }
      }
      skipped.add(new SkippedRow(one.row(), one.why(), List.copyOf(cells)));
    }
    return new SheetReport(
        part.grid().name(),
        Place.columnLetters(table.firstColumn())
            + ":"
            + Place.columnLetters(Math.max(1, table.lastColumn())),
        table.headingRow(),
        table.layout(),
        table.columns(),
        new RowCounts(
            tally.total(),
            tally.of(RowKind.WIRE),
            tally.of(RowKind.SPARE),
            tally.of(RowKind.HEADING),
            tally.of(RowKind.NOTE),
            tally.of(RowKind.BLANK),
            tally.of(RowKind.SKIPPED)),
        wires(part, wiring),
        skipped);
  }
}

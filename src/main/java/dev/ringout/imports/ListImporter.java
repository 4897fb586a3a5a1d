package dev.ringout.imports;

import dev.ringout.cells.CellText;
import dev.ringout.harness.Wiring;
import dev.ringout.imports.ImportResult.RowCounts;
import dev.ringout.imports.ImportResult.SheetReport;
import dev.ringout.imports.ImportResult.SkippedRow;
import dev.ringout.imports.find.HeadingReader;
import dev.ringout.imports.find.TableFinder;
import dev.ringout.imports.join.HarnessBuilder;
import dev.ringout.imports.join.HarnessBuilder.Built;
import dev.ringout.imports.join.TwoRows;
import dev.ringout.imports.join.WireEnds;
import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Finding.Kind;
import dev.ringout.imports.list.Findings;
import dev.ringout.imports.list.Grid;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Understanding;
import dev.ringout.imports.list.Words;
import dev.ringout.imports.rows.TableCells;
import dev.ringout.imports.rows.TableReader;
import dev.ringout.imports.rows.Tally;
import dev.ringout.imports.rows.Tally.RowKind;
import dev.ringout.sheet.Cell;
import dev.ringout.sheet.Row;
import dev.ringout.sheet.Sheet;
import dev.ringout.sheet.Surroundings;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Place;
import dev.ringout.source.UnusableInput;
import dev.ringout.source.UnusableInput.Reason;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Reads a wire list in any layout. */
public final class ListImporter {
  private final Words words;
  private final ImportOptions options;
  private final UnaryOperator<String> noteHeading;
  private final Findings findings = new Findings();
  private final TwoRows twoRows = new TwoRows(findings);
  private final Understanding list = new Understanding();
  private final Ends ends;
  private final Map<Place, String> comments = new HashMap<>();
  private final List<Part> parts = new ArrayList<>();

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
    refuseHarness(file, shownName);
    HeadingReader headings = new HeadingReader(words, options.columns());
    for (Sheet sheet : file.sheets()) {
      readSheet(Grid.read(sheet), headings);
    }
    new WireEnds(list, twoRows, findings).join();
    reportUnusedOptions(Place.of(shownName));
    Built built =
        new HarnessBuilder(list, words, options, twoRows, findings, comments, noteHeading)
            .build(Place.of(shownName));
    for (Draft duplicate : built.duplicates()) {
      for (Part part : parts) {
        if (part.grid().name().equals(duplicate.place().sheet())
            || duplicate.place().sheet().isEmpty()) {
          part.tally().count(RowKind.WIRE, -1);
          part.tally().skip(duplicate.place().row(), "the same wire and ends once more", false);
          break;
        }
      }
    }
    if (built.wiring().wires().isEmpty()) {
      findings.warning(
          Kind.NO_WIRES,
          Place.of(shownName),
          "no wires were found in this file; none were made up");
    }
    return new ImportResult(
        parts.stream().map(part -> report(part, built.wiring())).toList(),
        built.wiring(),
        findings.list(),
        built.bothEnds(),
        built.oneSided(),
        built.farPinNotListed(),
        built.farHasNoList());
  }

  /** A harness file would lose its links, switches and parts by an import. */
  private static void refuseHarness(TabularFile file, String shownName) throws UnusableInput {
    Set<String> own = Set.of("items", "pins", "links", "switches", "parts", "limits");
    Set<String> names = new HashSet<>();
    for (Sheet sheet : file.sheets()) {
      names.add(sheet.name().toLowerCase(Locale.ROOT));
    }
    if (names.contains("wires") && names.stream().filter(own::contains).count() >= 2) {
      throw new UnusableInput(
          shownName,
          Reason.NOT_UNDERSTOOD,
          "is a harness file already: the other commands read it as it is");
    }
  }

  private void readSheet(Grid grid, HeadingReader headings) {
    if (grid.rows().isEmpty()) {
      return;
    }
    reportSurroundings(grid);
    TableFinder.Found found = TableFinder.find(grid, words, headings);
    if (found.tables().isEmpty()) {
      Tally notes = new Tally();
      notes.count(RowKind.NOTE, grid.rows().size());
      notes.count(RowKind.BLANK, grid.lastRow() - grid.rows().size());
      findings.warning(
          Kind.NO_WIRES,
          grid.place(0, 0),
          "no table of wires is recognised here; if there is one, say what its columns are with"
              + " --column");
      ListTable nothing =
          new ListTable(grid, 0, 1, grid.width(), List.of(), Layout.NONE, "", grid.rows());
      parts.add(new Part(grid, nothing, notes, 0, 0));
      return;
    }
    boolean first = true;
    int lastRow = 0;
    for (ListTable table : found.tables()) {
      int firstDraft = list.drafts().size();
      Tally tally = TableReader.of(table, words, ends, options, findings, list).read();
      boolean beside = !first && table.headingRow() == lastHeading(parts);
      if (first) {
        tally.count(RowKind.NOTE, found.above().size());
      }
      int headingRows = headingRows(table);
      tally.count(RowKind.HEADING, headingRows);
      int start = first || beside ? 0 : lastRow;
      int end = lastRowOf(table);
      tally.count(RowKind.BLANK, Math.max(0, end - start - tally.total()));
      if (table.layout() == Layout.NONE) {
        findings.warning(
            Kind.NO_WIRES,
            grid.place(table.headingRow(), table.firstColumn()),
            "the columns " + headings(table) + " tell no wires");
      }
      parts.add(new Part(grid, table, tally, firstDraft, list.drafts().size()));
      first = false;
      lastRow = end;
    }
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

  private static String headings(ListTable table) {
    StringBuilder text = new StringBuilder();
    for (ListColumn column : table.columns()) {
      if (!column.heading().isEmpty()) {
        text.append(text.length() == 0 ? "" : ", ").append(column.heading());
      }
    }
    return text.toString();
  }

  private void reportSurroundings(Grid grid) {
    Surroundings around = grid.around();
    if (around.hidden()) {
      findings.warning(
          Kind.HIDDEN, grid.place(0, 0), "the sheet is hidden; it was read all the same");
    }
    List<Integer> hiddenRows =
        around.hiddenRows().stream().filter(row -> row <= grid.lastRow()).toList();
    if (!hiddenRows.isEmpty()) {
      findings.warning(
          Kind.HIDDEN,
          grid.place(hiddenRows.get(0), 0),
          Numbers.count(hiddenRows.size(), "hidden row")
              + " were read like the others: "
              + TableCells.rows(hiddenRows));
    }
    List<Integer> hiddenColumns =
        around.hiddenColumns().stream().filter(column -> column <= grid.width()).toList();
    if (!hiddenColumns.isEmpty()) {
      findings.warning(
          Kind.HIDDEN,
          grid.place(0, hiddenColumns.get(0)),
          Numbers.count(hiddenColumns.size(), "hidden column")
              + " were read like the others: "
              + String.join(", ", hiddenColumns.stream().map(Place::columnLetters).toList()));
    }
    if (around.filtered()) {
      findings.warning(
          Kind.FILTERED,
          grid.place(0, 0),
          "the sheet has a filter; every row was read, shown or not");
    }
    long tall = around.merges().stream().filter(m -> m.lastRow() > m.firstRow()).count();
    if (tall > 0) {
      findings.note(
          Kind.MERGED,
          grid.place(0, 0),
          Numbers.count(tall, "merged cell") + " hold for every row that they span");
    }
    around
        .comments()
        .forEach(
            (spot, text) -> {
              findings.warning(
                  Kind.COMMENT,
                  grid.place(spot.row(), spot.column()),
                  Text.of("a comment says: \"%s\"", text.replaceAll("\\s+", " ")));
              comments.merge(
                  grid.place(spot.row(), 0),
                  text.replaceAll("\\s+", " "),
                  (one, other) -> one + "; " + other);
            });
    List<Place> red = new ArrayList<>();
    for (Row row : grid.rows()) {
      for (int column = 1; column <= row.cells().size(); column++) {
        Cell cell = row.cell(column);
        if (cell.ink().red() && !cell.isBlank()) {
          red.add(grid.place(row.number(), column));
        }
      }
    }
    reportRed(grid, red);
  }

  private void reportRed(Grid grid, List<Place> red) {
    if (red.isEmpty()) {
      return;
    }
    if (red.size() > 40) {
      findings.warning(
          Kind.RED,
          red.get(0),
          red.size() + " cells are written in red: a red-line, or a decoration?");
      return;
    }
    for (Place place : red) {
      String text =
          grid.rows().stream()
              .filter(row -> row.number() == place.row())
              .map(row -> row.cell(place.column()).text())
              .findFirst()
              .orElse("");
      findings.warning(
          Kind.RED,
          place,
          "\"" + text + "\" is written in red: a change marked by hand? Read as it stands");
    }
  }

  /** An option that fits nothing is a slip that would go unseen. */
  private void reportUnusedOptions(Place whole) {
    for (String heading : options.columns().keySet()) {
      reportUnused(whole, heading, "--column");
    }
    for (String heading : options.joinBy()) {
      reportUnused(whole, heading, "--join-by");
    }
  }

  private void reportUnused(Place whole, String heading, String option) {
    boolean used =
        parts.stream()
            .flatMap(part -> part.table().columns().stream())
            .anyMatch(
                column ->
                    CellText.headingKey(column.heading()).equals(CellText.headingKey(heading))
                        || (column.heading().isEmpty()
                            && Place.columnLetters(column.index()).equals(heading)));
    if (!used) {
      findings.warning(
          Kind.HEADING,
          whole,
          Text.of("no column is headed \"%s\", which %s names", heading, option));
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
      skipped.add(new SkippedRow(one.row(), one.why(), one.lost(), List.copyOf(cells)));
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

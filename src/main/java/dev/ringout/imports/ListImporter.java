package dev.ringout.imports;

import dev.ringout.harness.Wire;
import dev.ringout.harness.Wiring;
import dev.ringout.imports.find.HeadingReader;
import dev.ringout.imports.find.OnItsSide;
import dev.ringout.imports.find.PageFurniture;
import dev.ringout.imports.find.Region;
import dev.ringout.imports.find.TableFinder;
import dev.ringout.imports.join.HarnessBuilder;
import dev.ringout.imports.join.HarnessBuilder.Built;
import dev.ringout.imports.join.TwoRows;
import dev.ringout.imports.join.WireEnds;
import dev.ringout.imports.list.CellBalance;
import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Evidence;
import dev.ringout.imports.list.Grid;
import dev.ringout.imports.list.HeaderFact;
import dev.ringout.imports.list.Hypothesis;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.ImportOptions.Shape;
import dev.ringout.imports.list.ImportResult;
import dev.ringout.imports.list.ImportResult.RowCounts;
import dev.ringout.imports.list.ImportResult.SheetReport;
import dev.ringout.imports.list.ImportResult.SkippedRow;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Said;
import dev.ringout.imports.list.SheetOddity;
import dev.ringout.imports.list.SkipReason;
import dev.ringout.imports.list.Understanding;
import dev.ringout.imports.list.Weighed;
import dev.ringout.imports.list.Words;
import dev.ringout.imports.rows.TableReader;
import dev.ringout.imports.rows.Tally;
import dev.ringout.imports.rows.Tally.RowKind;
import dev.ringout.imports.weigh.Weigher;
import dev.ringout.sheet.Row;
import dev.ringout.sheet.Sheet;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Place;
import dev.ringout.source.UnusableInput;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Reads a wire list in any layout. */
public final class ListImporter {
  /** What counts less against a way is of an odd row or two, which are told by themselves. */
  private static final int LEAST_AGAINST = -10;

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
  private final Corrected corrected;

  private ListImporter(Words words, ImportOptions options, UnaryOperator<String> noteHeading) {
    this.noteHeading = noteHeading;
    this.words = words;
    this.options = options;
    this.ends = new Ends(words);
    this.corrected = new Corrected(options.corrections());
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
    List<Grid> grids = new ArrayList<>();
    for (Sheet sheet : file.sheets()) {
      grids.add(Grid.read(sheet));
    }
    OwnFiles.refuse(grids, file.isSingleTable(), shownName);
    List<SheetTables> sheets =
        grids.stream().filter(grid -> options.shape().reads(grid.name())).map(this::find).toList();
    corrected.report(Place.of(shownName), findings);
    List<Weighed> weighed = weigh(sheets);
    sheets.forEach(sheet -> lyingOnItsSide(sheet, weighed));
    if (weighed.stream().anyMatch(table -> !table.decided())) {
      return undecided(sheets, weighed, Place.of(shownName));
    }
    Iterator<Weighed> tables = weighed.iterator();
    for (SheetTables sheet : sheets) {
      readSheet(sheet, tables);
    }
    new WireEnds(list, twoRows, findings).join();
    Built built =
        new HarnessBuilder(list, words, options, twoRows, findings, comments, noteHeading)
            .build(Place.of(shownName));
    Set<String> items = new HashSet<>();
    built
        .wiring()
        .wires()
        .forEach(wire -> items.addAll(List.of(wire.from().ref(), wire.to().ref())));
    new UnusedOptions(options, findings)
        .report(
            Place.of(shownName), sheets.stream().map(SheetTables::grid).toList(), weighed, items);
    built.duplicates().forEach(this::countAsSkipped);
    List<CellBalance> cells = balance(sheets, built.wiring());
    if (built.wiring().wires().isEmpty() && built.wiring().links().isEmpty()) {
      findings.warning(Place.of(shownName), new SheetOddity.NoWires());
    }
    List<HeaderFact> settled = HeaderFacts.settle(header, options.header(), findings);
    return new ImportResult(
        parts.stream().map(part -> report(part, built.wiring())).toList(),
        built.wiring(),
        findings.list(),
        new ImportResult.EndsFound(
            built.bothEnds(), built.oneSided(), built.farPinNotListed(), built.farHasNoList()),
        settled,
        weighed,
        cells);
  }

  /** A sheet of which no table tells wires, for its headings stand below each other. */
  private void lyingOnItsSide(SheetTables sheet, List<Weighed> weighed) {
    Grid grid = sheet.grid();
    boolean read =
        weighed.stream()
            .filter(table -> table.sheet().equals(grid.name()))
            .anyMatch(table -> table.decided() && table.best().table().layout().tellsWires());
    List<String> headings = read ? List.of() : OnItsSide.headings(grid, words);
    if (!headings.isEmpty()) {
      findings.error(grid.place(0, 0), new SheetOddity.LiesOnItsSide(headings));
    }
  }

  private List<CellBalance> balance(List<SheetTables> sheets, Wiring wiring) {
    Set<String> items = new HashSet<>();
    for (Wire wire : wiring.wires()) {
      if (Ends.isDesignator(wire.from().ref())) {
        items.add(wire.from().ref());
      }
      if (Ends.isDesignator(wire.to().ref())) {
        items.add(wire.to().ref());
      }
    }
    List<CellBalance> cells = new ArrayList<>();
    for (SheetTables sheet : sheets) {
      Balance balance = new Balance(sheet.grid(), items, words);
      parts.stream()
          .filter(part -> part.grid().equals(sheet.grid()))
          .forEach(part -> balance.add(part.table(), part.tally()));
      header.stream()
          .filter(fact -> fact.place().sheet().equals(sheet.grid().place(0, 0).sheet()))
          .forEach(fact -> balance.addHeader(fact.place()));
      if (!sheet.grid().rows().isEmpty()) {
        cells.add(balance.close(findings));
      }
    }
    return cells;
  }

  /** A sheet with the tables that were found on it. */
  private record SheetTables(Grid grid, TableFinder.Found found) {}

  private SheetTables find(Grid whole) {
    Shape shape = options.shape();
    Grid asked = Said.of(shape.rows(), whole.name()).map(whole::only).orElse(whole);
    Grid grid = turnedWhereOnItsSide(corrected.of(asked));
    HeadingReader headings =
        new HeadingReader(
            words,
            options.columnsOf(whole.name()),
            row -> options.columnsOf(whole.name(), row),
            grid.width());
    OptionalInt headingRow =
        Said.of(shape.headingRows(), whole.name()).map(OptionalInt::of).orElse(OptionalInt.empty());
    TableFinder.Said said = new TableFinder.Said(headingRow, shape.items());
    return new SheetTables(
        grid,
        grid.rows().isEmpty()
            ? new TableFinder.Found(List.of(), List.of())
            : TableFinder.find(grid, words, headings, said));
  }

  /** A sheet whose headings stand below each other is read with each of its columns as a row. */
  private Grid turnedWhereOnItsSide(Grid grid) {
    boolean headed = Said.of(options.shape().headingRows(), grid.name()).isPresent();
    List<String> headings =
        headed || grid.rows().isEmpty() ? List.<String>of() : OnItsSide.plainly(grid, words);
    if (headings.isEmpty()) {
      return grid;
    }
    findings.turn(grid.place(0, 0));
    findings.warning(grid.place(0, 0), new SheetOddity.ReadOnItsSide(headings));
    return grid.turned();
  }

  private List<Weighed> weigh(List<SheetTables> sheets) {
    List<Region> regions =
        sheets.stream().flatMap(sheet -> sheet.found().tables().stream()).toList();
    Weigher weigher = new Weigher(words, options, regions);
    List<Weighed> weighed = new ArrayList<>();
    long filled = sheets.stream().filter(sheet -> !sheet.grid().rows().isEmpty()).count();
    for (Region region : regions) {
      weighed.add(weigher.weigh(region, regions.size() == 1 && filled == 1));
    }
    weighed = Weigher.saidOfAll(Weigher.openWhereItemsAreWired(Weigher.alike(weighed)));
    boolean any = weighed.stream().anyMatch(table -> table.best().wires() > 0);
    boolean joined = !options.joinBy().isEmpty();
    return any || joined
        ? weighed.stream().map(Weighed::openWhereBothEndsAreNamed).toList()
        : weighed.stream().map(table -> table.mayTellWires() ? table.asked() : table).toList();
  }

  /** Nothing is read while it is not certain how: what it may be is told instead. */
  private ImportResult undecided(List<SheetTables> sheets, List<Weighed> weighed, Place whole) {
    for (Weighed table : weighed) {
      if (!table.decided()) {
        ListTable best = table.best().table();
        findings.error(
            best.grid().place(Math.max(1, best.headingRow()), best.firstColumn()),
            new SheetOddity.Undecided(table.best().table().layout()));
      }
    }
    new UnusedOptions(options, findings)
        .report(whole, sheets.stream().map(SheetTables::grid).toList(), weighed, Set.of());
    return new ImportResult(
        List.of(),
        Wiring.NONE,
        findings.list(),
        ImportResult.EndsFound.NONE,
        List.of(),
        weighed,
        List.of());
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

  private void readSheet(SheetTables sheet, Iterator<Weighed> weighed) {
    Grid grid = sheet.grid();
    if (grid.rows().isEmpty()) {
      return;
    }
    new Around(findings, comments).report(grid);
    readTables(grid, sheet.found(), weighed);
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

  private void readTables(Grid grid, TableFinder.Found found, Iterator<Weighed> weighed) {
    if (found.tables().isEmpty()) {
      withoutTables(grid);
      return;
    }
    boolean first = true;
    int lastRow = 0;
    int lastHeading = -1;
    for (int i = 0; i < found.tables().size(); i++) {
      Hypothesis way = weighed.next().best();
      ListTable table = way.table();
      boolean beside = !first && table.headingRow() == lastHeading;
      int above = first || beside ? 0 : lastRow;
      boolean said = way.isSaid();
      readTable(table, said, first ? found.above().size() : 0, above);
      if (said && isLayoutSaid(table)) {
        new LayoutAlone(findings).report(way);
      }
      if (said) {
        speaksAgainst(way);
      }
      first = false;
      lastHeading = table.headingRow();
      lastRow = lastRowOf(table);
    }
  }

  /** The way is the user's word; what its wires look like is said all the same. */
  private void speaksAgainst(Hypothesis way) {
    ListTable table = way.table();
    List<Evidence> against =
        way.evidence().stream()
            .filter(found -> found.kind().isOfWires() && found.points() <= LEAST_AGAINST)
            .toList();
    if (table.layout().tellsWires() && !against.isEmpty()) {
      findings.warning(
          table.grid().place(Math.max(1, table.headingRow()), table.firstColumn()),
          new SheetOddity.SpeaksAgainst(against));
    }
  }

  private boolean isLayoutSaid(ListTable table) {
    int row = Math.max(1, table.headingRow());
    String cell = Place.columnLetters(table.firstColumn()) + row;
    return Said.of(options.shape().layouts(), table.grid().name(), cell).isPresent();
  }

  private void withoutTables(Grid grid) {
    Tally notes = new Tally();
    notes.count(RowKind.NOTE, grid.rows().size());
    notes.count(RowKind.BLANK, grid.lastRow() - grid.rows().size());
    findings.warning(grid.place(0, 0), new SheetOddity.NoTable());
    ListTable nothing =
        new ListTable(grid, 0, 1, grid.width(), List.of(), Layout.NONE, "", grid.rows());
    parts.add(new Part(grid, nothing, notes, 0, 0));
    if (new BridgesLeft(nothing, words).isSpokenOf()) {
      findings.error(grid.place(0, 0), new SheetOddity.BridgesNotRead());
    }
  }

  /**
   * Reads a table and accounts for its rows.
   *
   * @param said whether the user says how it is read
   * @param notesAbove rows above the sheet's first table
   * @param lastRowAbove the last row of what stands above this table
   */
  private void readTable(ListTable table, boolean said, int notesAbove, int lastRowAbove) {
    int firstDraft = list.drafts().size();
    int above = (int) table.body().stream().filter(row -> isAbove(row, table)).count();
    if (above > 0) {
      findings.warning(
          table.grid().place(table.headingRow(), table.firstColumn()),
          new SheetOddity.RowsAboveRead(above));
    }
    Tally tally = TableReader.of(table, words, ends, options, findings, list).read();
    int notes = notesAbove + (lastRowAbove > 0 ? namesAbove(table, lastRowAbove) : 0);
    if (notes > 0) {
      tally.count(RowKind.NOTE, notes);
    }
    table.grid().leftOut().stream()
        .map(Row::number)
        .filter(row -> row > Math.max(lastRowAbove, table.headingRow()) && row < lastRowOf(table))
        .forEach(
            row -> {
              tally.begin(row);
              tally.skip(row, SkipReason.SAID_TO_BE_NO_WIRE);
            });
    tally.count(RowKind.HEADING, headingRows(table));
    tally.count(RowKind.BLANK, Math.max(0, lastRowOf(table) - lastRowAbove - tally.total()));
    if (!said && !table.layout().tellsWires() && new BridgesLeft(table, words).isSpokenOf()) {
      findings.error(
          table.grid().place(Math.max(1, table.headingRow()), table.firstColumn()),
          new SheetOddity.BridgesNotRead());
    }
    if (table.layout() == Layout.NONE) {
      findings.warning(
          table.grid().place(table.headingRow(), table.firstColumn()),
          new SheetOddity.ColumnsWithoutWires(headings(table)));
    }
    parts.add(new Part(table.grid(), table, tally, firstDraft, list.drafts().size()));
  }

  /** Rows between a table and the one above it that are of neither: the names of its items. */
  private static int namesAbove(ListTable table, int lastRowAbove) {
    return (int)
        table.grid().rows().stream()
            .filter(row -> row.number() > lastRowAbove && row.number() < table.headingRow())
            .count();
  }

  private static boolean isAbove(Row row, ListTable table) {
    return row.number() < table.headingRow();
  }

  /** Heading rows stand between the heading's first and the body's first row. */
  private static int headingRows(ListTable table) {
    if (table.headingRow() == 0) {
      return 0;
    }
    int firstBelow =
        table.body().stream()
            .mapToInt(Row::number)
            .filter(number -> number > table.headingRow())
            .findFirst()
            .orElse(Integer.MAX_VALUE);
    long rows =
        table.grid().rows().stream()
            .filter(row -> row.number() >= table.headingRow())
            .filter(row -> row.number() < firstBelow)
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

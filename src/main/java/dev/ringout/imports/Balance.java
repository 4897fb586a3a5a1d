package dev.ringout.imports;

import dev.ringout.cells.CellText;
import dev.ringout.imports.find.PageFurniture;
import dev.ringout.imports.list.CellBalance;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Grid;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListColumn;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.ListTable;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.RowOddity;
import dev.ringout.imports.list.SheetOddity;
import dev.ringout.imports.list.Titles;
import dev.ringout.imports.list.Words;
import dev.ringout.imports.rows.Tally;
import dev.ringout.imports.rows.Tally.RowKind;
import dev.ringout.sheet.Row;
import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Accounts for every filled cell of a sheet, and says where points stand that nothing is made of.
 */
final class Balance {
  private static final int PLACES_NAMED = 12;

  /** {@code TB1 1-2-3}: terminals of an item that are named together. */
  private static final Pattern PINS_OF_ITEM =
      Pattern.compile("\\b[A-Z]{1,3}\\d{1,3}:? \\d{1,3}(?:\\s?[-+&]\\s?\\d{1,3})+");

  private final Grid grid;
  private final Set<String> items;
  private final Words words;
  private final Set<Integer> saidRows = new HashSet<>();
  private final Map<Use, Integer> counts = new EnumMap<>(Use.class);
  private final Map<Integer, Use[]> uses = new HashMap<>();
  private final List<String> unused = new ArrayList<>();
  private final List<Place> points = new ArrayList<>();
  private final Map<Place, String> said = new LinkedHashMap<>();

  private enum Use {
    WIRE,
    PIN,
    NOTE,
    HEADING,
    NOT_READ,
    NOT_USED,
    /** No table holds the cell. */
    OUTSIDE
  }

  /**
   * Nothing is accounted for yet.
   *
   * @param items the items that have wires
   */
  Balance(Grid grid, Set<String> items, Words words) {
    this.words = words;
    this.grid = grid;
    this.items = items;
  }

  /** Takes what became of a table's rows. */
  void add(ListTable table, Tally tally) {
    Set<Integer> lost =
        tally.skipped().stream()
            .filter(row -> row.why().lost())
            .map(Tally.Skipped::row)
            .collect(Collectors.toSet());
    int firstBody = table.body().isEmpty() ? Integer.MAX_VALUE : table.body().get(0).number();
    for (Row row : grid.rows()) {
      boolean heading =
          table.headingRow() > 0 && row.number() >= table.headingRow() && row.number() < firstBody;
      if (heading) {
        for (int column = table.firstColumn(); column <= table.lastColumn(); column++) {
          use(row.number(), column, Use.HEADING);
        }
      }
    }
    for (Row row : table.body()) {
      RowKind kind = tally.kindOf(row.number());
      boolean page = kind == RowKind.NOTE && PageFurniture.isPage(row, words);
      if (kind == RowKind.SKIPPED || page) {
        saidRows.add(row.number());
      }
      for (ListColumn column : table.columns()) {
        boolean headless = table.headingRow() > 0 && column.heading().isEmpty();
        String text = row.cell(column.index()).text();
        if (kind == RowKind.WIRE
            && headless
            && column.role() == Role.KEEP
            && Ends.holdsPoint(CellText.clean(text))) {
          points.add(grid.place(row.number(), column.index()));
        }
        Use own = use(kind, column.role(), lost.contains(row.number()));
        // The links of a net carry no notes.
        boolean dropped = own == Use.NOTE && table.layout() == Layout.NET_LIST;
        use(row.number(), column.index(), dropped ? Use.NOT_USED : own);
      }
    }
  }

  /** Takes a cell of the page's header that was read. */
  void addHeader(Place place) {
    use(place.row(), place.column(), Use.HEADING);
  }

  private static Use use(RowKind kind, Role role, boolean lost) {
    boolean note = role == Role.KEEP || role == Role.NOTE;
    return switch (kind) {
      case WIRE -> note ? Use.NOTE : Use.WIRE;
      case SPARE -> spare(role);
      case HEADING -> Use.HEADING;
      case SKIPPED -> lost ? Use.NOT_READ : Use.NOT_USED;
      case NOTE, BLANK -> Use.NOT_USED;
    };
  }

  /** Of a pin without a wire its item, its name and what is said in place of a far end are kept. */
  private static Use spare(Role role) {
    return switch (role) {
      case PIN,
          ITEM,
          POINTS,
          FROM,
          FROM_PIN,
          FROM_STRIP,
          TO,
          TO_PIN,
          TO_STRIP,
          FAR,
          FAR_PIN,
          BOTH_PINS,
          NET,
          SIGNAL ->
          Use.PIN;
      default -> Use.NOT_USED;
    };
  }

  private void use(int row, int column, Use use) {
    Use[] own = uses.computeIfAbsent(row, key -> outsideTables());
    if (column < own.length) {
      own[column] = use;
    }
  }

  /** What becomes of a row's cells, counted from 1, while no table holds them. */
  private Use[] outsideTables() {
    Use[] own = new Use[grid.width() + 2];
    Arrays.fill(own, Use.OUTSIDE);
    return own;
  }

  /** The counts; points in cells of which nothing is made are said. */
  CellBalance close(ListFindings findings) {
    Use[] outside = outsideTables();
    int filled = 0;
    for (Row row : grid.rows()) {
      filled += close(row, uses.getOrDefault(row.number(), outside));
    }
    for (Row row : grid.leftOut()) {
      saidRows.add(row.number());
      filled += close(row, outside);
    }
    said.forEach((place, text) -> findings.warning(place, new RowOddity.RemarkMayChange(text)));
    if (!points.isEmpty()) {
      findings.warning(
          points.get(0),
          new SheetOddity.PointsUnused(
              points.size(), points.stream().limit(PLACES_NAMED).map(Place::cell).toList()));
    }
    return new CellBalance(
        grid.name(),
        filled,
        of(Use.WIRE),
        of(Use.PIN),
        of(Use.NOTE),
        of(Use.HEADING),
        of(Use.NOT_READ),
        of(Use.NOT_USED) + of(Use.OUTSIDE),
        unused);
  }

  /** Counts a row's filled cells; the places of those that are not used. */
  private int close(Row row, Use[] own) {
    int filled = 0;
    int start = 0;
    for (int column = 1; column <= row.cells().size() + 1; column++) {
      boolean blank = row.cell(column).isBlank();
      Use use = own[column];
      boolean open = !blank && (use == Use.NOT_USED || use == Use.OUTSIDE);
      if (!blank) {
        filled++;
        counts.merge(use, 1, Integer::sum);
      }
      if (open && start == 0) {
        start = column;
      } else if (!open && start > 0) {
        unused.add(range(row.number(), start, column - 1));
        start = 0;
      }
      String text = CellText.clean(row.cell(column).text());
      if (open && !saidRows.contains(row.number()) && speaksOfWires(text)) {
        said.put(grid.place(row.number(), column), text);
      }
      if (open
          && !saidRows.contains(row.number())
          && speaksOfPoints(row.cell(column).text(), use == Use.OUTSIDE)) {
        points.add(grid.place(row.number(), column));
      }
    }
    return filled;
  }

  /** A sentence outside of the rows that may change wires: "Do not fit wire 3". */
  private boolean speaksOfWires(String text) {
    // With a sign before it the word explains a colour.
    boolean ofSome =
        words.mentions("out of use", text) && text.length() < 48 && !text.startsWith("=");
    return text.indexOf(' ') > 0
        && text.length() < 120
        && (ofSome
            || CellText.hasDigit(text)
            || words.mentions("pin", text)
            || words.mentions("wire", text))
        && (words.mentions("changes wire", text)
            || words.mentions("likewise", text)
            || (CellText.hasDigit(text) && words.mentions("joins", text))
            || PINS_OF_ITEM.matcher(text).find()
            || words.mentions("out of use", text));
  }

  private boolean speaksOfPoints(String text, boolean outside) {
    return Ends.holdsPoint(CellText.clean(text))
        || (outside ? namesSeveral(text) || words.mentions("likewise", text) : namesItems(text));
  }

  private int of(Use use) {
    return counts.getOrDefault(use, 0);
  }

  private String range(int row, int first, int last) {
    if (grid.isTurned()) {
      String top = Place.columnLetters(row) + first;
      return first == last ? top : top + ":" + Place.columnLetters(row) + last;
    }
    String from = Place.columnLetters(first) + row;
    return first == last ? from : from + ":" + Place.columnLetters(last) + row;
  }

  /** Whether a sentence around the table speaks of several items that have wires. */
  private boolean namesSeveral(String text) {
    return text.length() > 20 && itemsIn(text).distinct().count() > 1;
  }

  /** The words of a text that are items with wires. */
  private Stream<String> itemsIn(String text) {
    return Arrays.stream(CellText.clean(text).split("[\\s,;():]+", -1)).filter(items::contains);
  }

  /** Whether a note speaks of items that have wires: what it says of them is nowhere else. */
  private boolean namesItems(String text) {
    return text.indexOf(' ') > 0
        && itemsIn(text).anyMatch(item -> item.length() > 1)
        && Titles.item(text, words).isEmpty()
        && Titles.ends(text, words).isEmpty();
  }
}

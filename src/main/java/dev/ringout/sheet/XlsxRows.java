package dev.ringout.sheet;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** Turns a sheet's XML events into rows. */
final class XlsxRows extends DefaultHandler {
  private static final int MOST_COLUMNS = 16_384;

  /** Rows filled to their very end are decoration. */
  private static final int MOST_BLANK_FILLS = 256;

  private final XlsxStrings strings;
  private final XlsxStyles styles;
  private final XlsxWorkbook workbook;
  private final Consumer<Row> each;

  private final StringBuilder value = new StringBuilder();
  private final XlsxRuns inline = new XlsxRuns();
  private final SortedSet<Integer> hiddenRows = new TreeSet<>();
  private final BitSet hiddenColumns = new BitSet();
  private final List<Surroundings.Merge> merges = new ArrayList<>();
  private boolean filtered;
  private final Map<Integer, String> blankFills = new HashMap<>();
  private List<Cell> cells = new ArrayList<>();
  private int widest;
  private int rowNumber;
  private int column;
  private String type = "";
  private int style;
  private boolean collecting;
  private boolean hasValue;
  private boolean hasFormula;

  XlsxRows(XlsxStrings strings, XlsxStyles styles, XlsxWorkbook workbook, Consumer<Row> each) {
    this.strings = strings;
    this.styles = styles;
    this.workbook = workbook;
    this.each = each;
  }

  /** The sheet's XML says something that no spreadsheet writes. */
  static final class Damaged extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Damaged(String message) {
      super(message);
    }
  }

  @Override
  public void startElement(String uri, String local, String qualified, Attributes attributes) {
    switch (local) {
      case "row" -> startRow(attributes);
      case "c" -> startCell(attributes);
      case "v" -> {
        collecting = true;
        hasValue = true;
      }
      case "f" -> hasFormula = true;
      case "is" -> {
        inline.clear();
        hasValue = true;
      }
      case "col" -> startColumn(attributes);
      case "autoFilter" -> filtered = true;
      case "mergeCell" -> startMerge(attributes);
      default -> inline.start(local, attributes);
    }
  }

  /** What stands around the cells, once the sheet has been read to its end. */
  Surroundings surroundings(boolean hidden, Map<Surroundings.Spot, String> comments) {
    TreeSet<Integer> columns = new TreeSet<>();
    hiddenColumns.stream().forEach(columns::add);
    return new Surroundings(hidden, filtered, hiddenRows, columns, merges, comments);
  }

  /** Whether an attribute says yes. */
  static boolean isOn(String value) {
    return "1".equals(value) || "true".equals(value);
  }

  private void startColumn(Attributes attributes) {
    String first = attributes.getValue("min");
    String last = attributes.getValue("max");
    if (isOn(attributes.getValue("hidden")) && first != null && last != null) {
      int from = Math.max(1, number(first));
      int to = Math.min(number(last), MOST_COLUMNS);
      if (from <= to) {
        hiddenColumns.set(from, to + 1);
      }
    }
  }

  private void startMerge(Attributes attributes) {
    String reference = attributes.getValue("ref");
    String[] corners = reference == null ? new String[0] : reference.split(":", -1);
    if (corners.length == 2) {
      merges.add(
          new Surroundings.Merge(
              rowOf(corners[0]), columnOf(corners[0]), rowOf(corners[1]), columnOf(corners[1])));
    }
  }

  private int rowOf(String reference) {
    return number(reference.replaceFirst("^[A-Z]+", ""));
  }

  private void startRow(Attributes attributes) {
    String number = attributes.getValue("r");
    rowNumber = number == null ? rowNumber + 1 : number(number);
    if (rowNumber < 1) {
      throw new Damaged("a row is numbered \"" + number + "\"");
    }
    column = 0;
    cells = new ArrayList<>();
    blankFills.clear();
    if (isOn(attributes.getValue("hidden"))) {
      hiddenRows.add(rowNumber);
    }
  }

  private void startCell(Attributes attributes) {
    String reference = attributes.getValue("r");
    int next = reference == null ? column + 1 : columnOf(reference);
    if (next <= column) {
      throw new Damaged("the cells of row " + rowNumber + " are not in order");
    }
    column = next;
    String kind = attributes.getValue("t");
    type = kind == null ? "n" : kind;
    String styleIndex = attributes.getValue("s");
    style = styleIndex == null ? -1 : number(styleIndex);
    value.setLength(0);
    hasValue = false;
    hasFormula = false;
  }

  @Override
  public void characters(char[] characters, int start, int length) {
    if (collecting) {
      value.append(characters, start, length);
    } else {
      inline.characters(characters, start, length);
    }
  }

  @Override
  public void endElement(String uri, String local, String qualified) {
    switch (local) {
      case "v" -> collecting = false;
      case "c" -> endCell();
      case "row" -> {
        addColourBesideLast();
        Row row = new Row(rowNumber, Collections.unmodifiableList(cells));
        if (!row.isBlank()) {
          each.accept(row);
        }
      }
      default -> inline.end(local);
    }
  }

  private void endCell() {
    Cell cell = hasValue ? cell(value.toString()) : withoutValue();
    String fill = styles.fill(style);
    if (cell.kind() == Cell.Stored.TEXT && cell.text().isEmpty()) {
      if (!fill.isEmpty() && blankFills.size() < MOST_BLANK_FILLS) {
        blankFills.put(column, fill);
      }
      return;
    }
    while (cells.size() < column - 1) {
      cells.add(blank());
    }
    widest = Math.max(widest, column);
    cells.add(cell.in(ink(cell)).filled(fill));
  }

  /** The next cell of the row, in which nothing stands but maybe a colour. */
  private Cell blank() {
    if (blankFills.isEmpty()) {
      return Cell.EMPTY;
    }
    return Cell.EMPTY.filled(blankFills.getOrDefault(cells.size() + 1, FillColours.NONE));
  }

  /** A colour beside the row's last text may explain it; no row becomes wider than texts are. */
  private void addColourBesideLast() {
    int next = cells.size() + 1;
    if (!cells.isEmpty() && next <= widest && blankFills.containsKey(next)) {
      cells.add(blank());
    }
  }

  /** The ink of the text's own runs, else that of the cell's style. */
  private Cell.Ink ink(Cell cell) {
    boolean struck = styles.isStruck(style);
    boolean red = styles.isRed(style);
    if (type.equals("inlineStr") && inline.isRich()) {
      return inline.rich().in(struck, red);
    }
    if (type.equals("s")) {
      if (strings.anyRich()) {
        Optional<XlsxRuns.Rich> rich = strings.rich(number(value.toString()));
        if (rich.isPresent()) {
          return rich.get().in(struck, red);
        }
      }
    }
    if (cell.isBlank()) {
      return Cell.Ink.PLAIN;
    }
    return struck ? new Cell.Ink(true, "", red) : red ? Cell.Ink.RED : Cell.Ink.PLAIN;
  }

  private Cell withoutValue() {
    return hasFormula ? new Cell(Cell.Stored.UNCALCULATED, "") : Cell.EMPTY;
  }

  private Cell cell(String stored) {
    return switch (type) {
      case "s" -> sharedString(stored);
      case "b" -> truth(stored.strip());
      case "e" -> new Cell(Cell.Stored.ERROR, stored);
      case "str" -> Cell.text(Xstring.decoded(stored));
      case "inlineStr" -> Cell.text(inline.text());
      case "d" -> new Cell(Cell.Stored.DATE, stored);
      default -> stored.isBlank() ? withoutValue() : numeral(stored);
    };
  }

  private static Cell truth(String stored) {
    return switch (stored) {
      case "1", "true" -> new Cell(Cell.Stored.BOOLEAN, "TRUE");
      case "0", "false" -> new Cell(Cell.Stored.BOOLEAN, "FALSE");
      default -> new Cell(Cell.Stored.ERROR, stored);
    };
  }

  private Cell sharedString(String index) {
    int i = number(index);
    if (i < 0 || i >= strings.size()) {
      throw new Damaged("a cell of row " + rowNumber + " refers to a text that is not there");
    }
    return strings.get(i);
  }

  private Cell numeral(String stored) {
    OptionalDouble parsed = StoredNumber.of(stored);
    if (parsed.isEmpty()) {
      return new Cell(Cell.Stored.ERROR, stored);
    }
    double number = parsed.getAsDouble();
    if (number == 0 && hasFormula && workbook.calculatesOnLoad()) {
      return withoutValue();
    }
    Cell cell = Numerals.cell(number, styles.isDate(style), workbook.dates1904());
    Optional<ShownNumbers> shown =
        cell.kind() == Cell.Stored.NUMBER ? styles.shown(style) : Optional.empty();
    return shown.isEmpty() ? cell : cell.shownAs(shown.get().of(number));
  }

  private int number(String digits) {
    try {
      return Integer.parseInt(digits.strip());
    } catch (NumberFormatException e) {
      throw new Damaged("row " + rowNumber + " is numbered \"" + digits + "\"");
    }
  }

  private static int columnOf(String reference) {
    int column = 0;
    for (int i = 0; i < reference.length(); i++) {
      char c = reference.charAt(i);
      if (c < 'A' || c > 'Z') {
        break;
      }
      column = column * 26 + (c - 'A' + 1);
    }
    if (column < 1 || column > MOST_COLUMNS) {
      throw new Damaged("a cell is addressed \"" + reference + "\"");
    }
    return column;
  }
}

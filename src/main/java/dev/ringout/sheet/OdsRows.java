package dev.ringout.sheet;

import dev.ringout.sheet.Surroundings.Merge;
import dev.ringout.sheet.Surroundings.Spot;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Turns the XML events of one sheet of an OpenDocument spreadsheet into rows (OASIS OpenDocument
 * 1.3 part 3, 9: one element may stand for many rows, or many cells).
 */
final class OdsRows extends DefaultHandler {
  private static final int MOST_COLUMNS = 16_384;
  private static final int MOST_REPEATS = 1024;

  /** Cells and blanks that are there by repetition alone: no list has so many. */
  private static final int MOST_REPEATED = 1 << 20;

  /** Blanks filled over and over are decoration. */
  private static final int MOST_BLANK_FILLS = 16;

  private final int wanted;
  private final OdsStyles styles;
  private final Consumer<Row> each;
  private final OdsText text = new OdsText();
  private final OdsText comment = new OdsText();
  private final OdsText aside = new OdsText();
  private final Map<String, String> values = new HashMap<>();
  private final List<String> columnStyles = new ArrayList<>();
  private final SortedSet<Integer> hiddenRows = new TreeSet<>();
  private final SortedSet<Integer> hiddenColumns = new TreeSet<>();
  private final List<Merge> merges = new ArrayList<>();
  private List<Merge> openMerges = new ArrayList<>();
  private final Map<Spot, String> comments = new LinkedHashMap<>();
  private final Map<Integer, String> blankFills = new HashMap<>();
  private List<Cell> cells = new ArrayList<>();
  private int depth;
  private int spreadsheet = -1;
  private int table = -1;
  private int tables;
  private int row;
  private int rowRepeats;
  private String rowStyle = "";
  private int column;
  private int cellDepth = -1;
  private int cellRepeats;
  private String cellStyle = "";
  private final Deque<String> runs = new ArrayDeque<>();
  private boolean covered;
  private int annotation = -1;
  private int drawing = -1;
  private boolean inParagraph;

  /** Whether the paragraph of a cell goes on behind what hangs in it. */
  private boolean inCellParagraph;

  private boolean filtered;
  private int widest;
  private int repeated;

  /**
   * Reads one sheet.
   *
   * @param wanted its place among the sheets, from 0
   */
  OdsRows(int wanted, OdsStyles styles, Consumer<Row> each) {
    this.wanted = wanted;
    this.styles = styles;
    this.each = each;
  }

  /** The sheet says something that no spreadsheet writes. */
  static final class Damaged extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Damaged(String message) {
      super(message);
    }
  }

  /** The sheet has been read; what follows is not of it. */
  static final class Read extends SAXException {
    private static final long serialVersionUID = 1L;
  }

  /** What stands around the cells, once the sheet has been read. */
  Surroundings surroundings(boolean hidden, boolean filterButtons) {
    return new Surroundings(
        hidden,
        filtered || filterButtons,
        hiddenRows,
        new TreeSet<>(hiddenColumns.headSet(widest + 1)),
        List.copyOf(merges),
        Collections.unmodifiableMap(comments));
  }

  private static int sum(int one, int other) {
    if (one > Integer.MAX_VALUE - other) {
      throw new Damaged("it says that it has more rows or columns than can be");
    }
    return one + other;
  }

  private static int number(Attributes attributes, String name) {
    String value = OdsNames.value(attributes, name);
    if (value.isEmpty()) {
      return 1;
    }
    try {
      int number = Integer.parseInt(value.strip());
      if (number >= 1) {
        return number;
      }
    } catch (NumberFormatException e) {
      // Said below, with what is no number at all.
    }
    throw new Damaged(name + " is \"" + value + "\"");
  }

  @Override
  public void startElement(String uri, String local, String qualified, Attributes attributes) {
    depth++;
    String name = OdsNames.of(uri, local);
    if (name.equals("office:spreadsheet")) {
      spreadsheet = depth;
    } else if (name.equals("table:table")) {
      startTable();
    } else if (table >= 0) {
      startWithin(name, attributes);
    }
  }

  private void startTable() {
    if (table >= 0 && cellDepth >= 0) {
      throw new Damaged("a table stands in a cell");
    }
    if (depth == spreadsheet + 1) {
      if (tables == wanted) {
        table = depth;
      }
      tables++;
    }
  }

  private void startWithin(String name, Attributes attributes) {
    switch (name) {
      case "table:table-column" -> startColumn(attributes);
      case "table:table-row" -> startRow(attributes);
      case "table:table-cell", "table:covered-table-cell" ->
          startCell(attributes, name.equals("table:covered-table-cell"));
      case "office:annotation" -> {
        if (annotation < 0) {
          annotation = depth;
          comment.clear();
          inCellParagraph = inParagraph;
        }
      }
      case "text:p", "text:h" -> {
        inParagraph = true;
        at().paragraph();
      }
      case "text:span" -> runs.push(OdsNames.value(attributes, "text:style-name"));
      case "text:s" -> {
        if (inParagraph) {
          int count = number(attributes, "text:c");
          repeat(count - 1);
          at().put(' ', count, isStruck());
        }
      }
      case "text:tab" -> put('\t');
      case "text:line-break" -> put('\n');
      default -> {
        if (name.startsWith("draw:") && drawing < 0) {
          drawing = depth;
          aside.clear();
          inCellParagraph = inParagraph;
        }
      }
    }
  }

  private void put(char c) {
    if (inParagraph) {
      at().put(c, 1, isStruck());
    }
  }

  /** What is read at the moment: a drawing's texts are none of the cell it hangs on. */
  private OdsText at() {
    return annotation >= 0 ? comment : drawing >= 0 || cellDepth < 0 ? aside : text;
  }

  private void startColumn(Attributes attributes) {
    int repeats = Math.min(number(attributes, "table:number-columns-repeated"), MOST_COLUMNS);
    String style = OdsNames.value(attributes, "table:default-cell-style-name");
    boolean hidden = isHidden(OdsNames.value(attributes, "table:visibility"));
    for (int i = 0; i < repeats && columnStyles.size() < MOST_COLUMNS; i++) {
      columnStyles.add(style);
      if (hidden) {
        hiddenColumns.add(columnStyles.size());
      }
    }
  }

  private static boolean isHidden(String visibility) {
    return visibility.equals("filter") || visibility.equals("collapse");
  }

  private void startRow(Attributes attributes) {
    rowRepeats = number(attributes, "table:number-rows-repeated");
    rowStyle = OdsNames.value(attributes, "table:default-cell-style-name");
    column = 0;
    cells = new ArrayList<>();
    blankFills.clear();
    openMerges.removeIf(merge -> merge.lastRow() <= row);
    String visibility = OdsNames.value(attributes, "table:visibility");
    filtered |= visibility.equals("filter");
    if (isHidden(visibility)) {
      for (int down = 1; down <= Math.min(rowRepeats, MOST_REPEATS); down++) {
        hiddenRows.add(sum(row, down));
      }
    }
  }

  private void startCell(Attributes attributes, boolean isCovered) {
    if (cellDepth >= 0) {
      throw new Damaged("a cell stands in a cell");
    }
    cellDepth = depth;
    cellRepeats = number(attributes, "table:number-columns-repeated");
    cellStyle = OdsNames.value(attributes, "table:style-name");
    if (cellStyle.isEmpty()) {
      cellStyle = rowStyle;
    }
    if (cellStyle.isEmpty() && column < columnStyles.size()) {
      cellStyle = columnStyles.get(column);
    }
    text.clear();
    comment.clear();
    runs.clear();
    values.clear();
    for (int i = 0; i < attributes.getLength(); i++) {
      values.put(
          OdsNames.of(attributes.getURI(i), attributes.getLocalName(i)), attributes.getValue(i));
    }
    covered = isCovered && openMerges.stream().anyMatch(this::isWithin);
    merge(attributes);
  }

  private boolean isWithin(Merge merge) {
    return merge.firstRow() <= row + 1
        && merge.firstColumn() <= column + 1
        && column + 1 <= merge.lastColumn();
  }

  private void merge(Attributes attributes) {
    int right = number(attributes, "table:number-columns-spanned");
    int down = number(attributes, "table:number-rows-spanned");
    if (right > 1 || down > 1) {
      Merge merge = new Merge(row + 1, column + 1, sum(row, down), sum(column, right));
      merges.add(merge);
      openMerges.add(merge);
    }
  }

  private String value(String name) {
    return values.getOrDefault(name, "");
  }

  private boolean isStruck() {
    return styles.struckRun(run()).orElseGet(() -> styles.isStruck(cellStyle));
  }

  private String run() {
    return runs.isEmpty() ? "" : runs.peek();
  }

  @Override
  public void characters(char[] characters, int start, int length) {
    if (inParagraph) {
      boolean isRed = styles.redRun(run()).orElseGet(() -> styles.isRed(cellStyle));
      at().characters(characters, start, length, isStruck(), isRed);
    }
  }

  @Override
  public void endElement(String uri, String local, String qualified) throws Read {
    if (depth == table) {
      throw new Read();
    }
    if (table >= 0) {
      endWithin(OdsNames.of(uri, local));
    }
    if (depth == annotation || depth == drawing) {
      annotation = depth == annotation ? -1 : annotation;
      drawing = depth == drawing ? -1 : drawing;
      inParagraph = inCellParagraph;
    }
    depth--;
  }

  private void endWithin(String name) {
    switch (name) {
      case "text:span" -> runs.poll();
      case "text:p", "text:h" -> inParagraph = false;
      case "table:table-cell", "table:covered-table-cell" -> endCell();
      case "table:table-row" -> endRow();
      default -> {}
    }
  }

  private void endCell() {
    cellDepth = -1;
    Cell cell = covered ? Cell.EMPTY : cell();
    if (!comment.toString().isBlank()) {
      comments.put(new Spot(row + 1, column + 1), comment.toString().strip());
    }
    String fill = covered ? FillColours.NONE : styles.fill(cellStyle);
    int next = sum(column, cellRepeats);
    if (cell.kind() == Cell.Stored.TEXT && cell.text().isEmpty()) {
      if (!fill.isEmpty()
          && cellRepeats <= MOST_BLANK_FILLS
          && rowRepeats <= MOST_BLANK_FILLS
          && next <= MOST_COLUMNS) {
        for (int at = column + 1; at <= next; at++) {
          blankFills.put(at, fill);
        }
      }
    } else {
      stand(cell.filled(fill), next);
    }
    column = next;
  }

  private void stand(Cell cell, int last) {
    if (cellRepeats > MOST_REPEATS || rowRepeats > MOST_REPEATS) {
      throw new Damaged(
          "a cell that is not blank stands there more than " + MOST_REPEATS + " times over");
    }
    if (last > MOST_COLUMNS) {
      throw new Damaged("a cell stands beyond its last column");
    }
    while (cells.size() < column) {
      cells.add(blank());
    }
    for (int i = 0; i < cellRepeats; i++) {
      cells.add(cell);
    }
    repeat(cellRepeats - 1);
    widest = Math.max(widest, last);
  }

  private void repeat(int more) {
    repeated = sum(repeated, more);
    if (repeated > MOST_REPEATED) {
      throw new Damaged(
          "its cells or blanks stand there over and over, more of them than any list has");
    }
  }

  /** The next cell of the row, in which nothing stands but maybe a colour. */
  private Cell blank() {
    return blankFills.isEmpty()
        ? Cell.EMPTY
        : Cell.EMPTY.filled(blankFills.getOrDefault(cells.size() + 1, FillColours.NONE));
  }

  private Cell cell() {
    String shown = text.toString();
    Cell cell = OdsValue.cell(this::value, shown).orElseGet(() -> text(shown));
    return cell.isBlank() || shown.isEmpty() ? cell : cell.in(text.ink());
  }

  private Cell text(String shown) {
    String stored = value("office:string-value");
    if (shown.isEmpty() && stored.isEmpty()) {
      return value("table:formula").isEmpty() ? Cell.EMPTY : new Cell(Cell.Stored.UNCALCULATED, "");
    }
    String says = shown.isEmpty() ? stored : shown;
    // As plain text it is what somebody has written.
    boolean isError =
        value("calcext:value-type").equals("error")
            || (!value("table:formula").isEmpty()
                && says.matches("#(REF!|N/A|NAME\\?|VALUE!|DIV/0!|NUM!|NULL!)"));
    boolean isAnother = !stored.isEmpty() && !withoutBlanks(stored).equals(withoutBlanks(says));
    return isError || isAnother ? new Cell(Cell.Stored.ERROR, says) : Cell.text(says);
  }

  private static String withoutBlanks(String text) {
    return text.replaceAll("\\s+", "");
  }

  private void endRow() {
    addColourBesideLast();
    Row first = new Row(row + 1, Collections.unmodifiableList(cells));
    int next = sum(row, rowRepeats);
    if (!first.isBlank()) {
      if (rowRepeats > 1) {
        repeat((rowRepeats - 1) * cells.size());
      }
      for (int number = row + 1; number <= next; number++) {
        each.accept(new Row(number, first.cells()));
      }
    }
    row = next;
  }

  /** A colour beside the row's last text may explain it; no row becomes wider than texts are. */
  private void addColourBesideLast() {
    int next = cells.size() + 1;
    if (!cells.isEmpty() && next <= widest && blankFills.containsKey(next)) {
      cells.add(blank());
    }
  }
}

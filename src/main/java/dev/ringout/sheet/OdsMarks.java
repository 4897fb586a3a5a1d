package dev.ringout.sheet;

import dev.ringout.sheet.Cell.Ink;
import dev.ringout.sheet.Surroundings.Spot;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Consumer;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.util.XMLHelper;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/**
 * What is struck through, red, filled or filtered in an OpenDocument spreadsheet (OASIS
 * OpenDocument 1.3 part 3: {@code style:text-line-through-style}, {@code fo:color}, {@code
 * fo:background-color}, {@code table:visibility}).
 */
final class OdsMarks extends DefaultHandler {
  private static final int MOST_REPEATS = 1024;

  /** Blanks filled over and over are decoration. */
  private static final int MOST_BLANK_FILLS = 16;

  private final Map<String, OfSheet> sheets = new HashMap<>();
  private final Map<String, Style> styles = new HashMap<>();
  private final Map<String, String> fills = new HashMap<>();
  private final List<String> columnStyles = new ArrayList<>();
  private final StringBuilder left = new StringBuilder();
  private final StringBuilder shown = new StringBuilder();
  private final Map<String, String> values = new HashMap<>();
  private OfSheet sheet = new OfSheet();
  private String styleName = "";
  private String cellStyle = "";
  private String spanStyle = "";
  private int row;
  private int rowRepeats;
  private int column;
  private int cellRepeats;
  private boolean holdsSomething;
  private boolean filterButtons;
  private boolean inText;
  private boolean anyText;
  private boolean anyStruck;
  private boolean anyRed;

  private record Style(boolean struck, boolean red) {
    static final Style PLAIN = new Style(false, false);
  }

  /** One cell stands for more cells than any list has that is read here. */
  static final class TooManyRepeats extends RuntimeException {
    private static final long serialVersionUID = 1L;

    TooManyRepeats() {
      super("a cell that is not blank stands there more than " + MOST_REPEATS + " times over");
    }
  }

  /** The marks of one sheet. */
  static final class OfSheet {
    private final Map<Spot, Ink> inks = new HashMap<>();
    private final Map<Spot, String> fills = new HashMap<>();
    private final Map<Spot, Cell> values = new HashMap<>();
    private final SortedSet<Integer> hiddenRows = new TreeSet<>();
    private boolean filtered;
    private int rows;
    private int columns;

    Ink ink(Spot spot) {
      return inks.getOrDefault(spot, Ink.PLAIN);
    }

    /** The colour that a cell is filled with, or empty. */
    String fill(Spot spot) {
      return fills.getOrDefault(spot, FillColours.NONE);
    }

    /** What a cell stores, in plain ink; absent where that is its text or nothing. */
    Optional<Cell> value(Spot spot) {
      return Optional.ofNullable(values.get(spot));
    }

    /** Rows that a filter or a person has hidden. */
    SortedSet<Integer> hiddenRows() {
      return hiddenRows;
    }

    boolean filtered() {
      return filtered;
    }

    /** The last row that holds something; files say more rows than that. */
    int rows() {
      return rows;
    }

    /** The last column that holds something. */
    int columns() {
      return columns;
    }
  }

  /** Reads the marks of every sheet, by the sheets' names. */
  static Map<String, OfSheet> read(byte[] content) throws IOException {
    try {
      OdsMarks marks = new OdsMarks();
      XMLReader xml = XMLHelper.newXMLReader();
      xml.setContentHandler(marks);
      xml.parse(new InputSource(new ByteArrayInputStream(content)));
      if (marks.filterButtons) {
        marks.sheets.values().forEach(one -> one.filtered = true);
      }
      return marks.sheets;
    } catch (SAXException | ParserConfigurationException e) {
      throw new IOException(e.getMessage(), e);
    }
  }

  private static String value(Attributes attributes, String name) {
    String value = attributes.getValue(name);
    return value == null ? "" : value;
  }

  private static int repeats(Attributes attributes, String name) {
    String value = value(attributes, name);
    return value.isEmpty() ? 1 : Integer.parseInt(value);
  }

  @Override
  public void startElement(String uri, String local, String qualified, Attributes attributes) {
    switch (qualified) {
      case "table:database-range" ->
          filterButtons |= value(attributes, "table:display-filter-buttons").equals("true");
      case "style:style" -> styleName = value(attributes, "style:name");
      case "style:text-properties" -> startProperties(attributes);
      case "style:table-cell-properties" -> startCellProperties(attributes);
      case "table:table" -> {
        sheet = sheets.computeIfAbsent(value(attributes, "table:name"), name -> new OfSheet());
        row = 0;
        columnStyles.clear();
      }
      case "table:table-column" -> {
        int repeats = Math.min(repeats(attributes, "table:number-columns-repeated"), MOST_REPEATS);
        for (int i = 0; i < repeats; i++) {
          columnStyles.add(value(attributes, "table:default-cell-style-name"));
        }
      }
      case "table:table-row" -> {
        rowRepeats = repeats(attributes, "table:number-rows-repeated");
        column = 0;
        String visibility = value(attributes, "table:visibility");
        sheet.filtered |= visibility.equals("filter");
        if (visibility.equals("filter") || visibility.equals("collapse")) {
          for (int down = 1; down <= Math.min(rowRepeats, MOST_REPEATS); down++) {
            sheet.hiddenRows.add(row + down);
          }
        }
      }
      case "table:table-cell", "table:covered-table-cell" -> startCell(attributes);
      case "office:annotation" -> inText = false;
      case "text:p" -> inText = true;
      case "text:span" -> spanStyle = value(attributes, "text:style-name");
      default -> {}
    }
  }

  private void startProperties(Attributes attributes) {
    String line = value(attributes, "style:text-line-through-style");
    String type = value(attributes, "style:text-line-through-type");
    boolean struck =
        (!line.isEmpty() && !line.equals("none")) || (!type.isEmpty() && !type.equals("none"));
    String colour = value(attributes, "fo:color");
    boolean red = false;
    if (colour.matches("#[0-9a-fA-F]{6}")) {
      int mixture = Integer.parseInt(colour.substring(1), 16);
      red = XlsxStyles.isRed(mixture >> 16, (mixture >> 8) & 0xff, mixture & 0xff);
    }
    styles.put(styleName, new Style(struck, red));
  }

  private void startCellProperties(Attributes attributes) {
    String colour = value(attributes, "fo:background-color");
    if (colour.matches("#[0-9a-fA-F]{6}")) {
      fills.put(styleName, FillColours.shown(colour, 0));
    }
  }

  private void startCell(Attributes attributes) {
    cellRepeats = repeats(attributes, "table:number-columns-repeated");
    cellStyle = value(attributes, "table:style-name");
    if (cellStyle.isEmpty() && column < columnStyles.size()) {
      cellStyle = columnStyles.get(column);
    }
    holdsSomething =
        attributes.getValue("office:value-type") != null
            || attributes.getValue("table:formula") != null;
    left.setLength(0);
    shown.setLength(0);
    values.clear();
    for (int i = 0; i < attributes.getLength(); i++) {
      if (attributes.getQName(i).startsWith("office:")) {
        values.put(attributes.getQName(i), attributes.getValue(i));
      }
    }
    spanStyle = "";
    anyText = false;
    anyStruck = false;
    anyRed = false;
  }

  private Style style(String name) {
    return styles.getOrDefault(name, Style.PLAIN);
  }

  @Override
  public void characters(char[] characters, int start, int length) {
    if (!inText) {
      return;
    }
    anyText = true;
    shown.append(characters, start, length);
    boolean struck = style(cellStyle).struck() || style(spanStyle).struck();
    anyRed |= style(cellStyle).red() || style(spanStyle).red();
    if (struck) {
      anyStruck = true;
    } else {
      left.append(characters, start, length);
    }
  }

  @Override
  public void endElement(String uri, String local, String qualified) {
    switch (qualified) {
      case "text:span" -> spanStyle = "";
      case "text:p" -> inText = false;
      case "office:annotation" -> {
        // A comment's own text says nothing about the cell's.
        left.setLength(0);
        shown.setLength(0);
        anyText = false;
        anyStruck = false;
        anyRed = false;
      }
      case "table:table-cell", "table:covered-table-cell" -> endCell();
      case "table:table-row" -> row += rowRepeats;
      default -> {}
    }
  }

  private void endCell() {
    if (holdsSomething || anyText) {
      if (rowRepeats > MOST_REPEATS || cellRepeats > MOST_REPEATS) {
        // What stands in the last of them would be known to the library alone.
        throw new TooManyRepeats();
      }
      sheet.rows = Math.max(sheet.rows, row + Math.min(rowRepeats, MOST_REPEATS));
      sheet.columns = Math.max(sheet.columns, column + Math.min(cellRepeats, MOST_REPEATS));
    }
    String text = shown.toString();
    Optional<Cell> value = OdsValue.cell(name -> values.getOrDefault(name, ""), text);
    if (value.isPresent()) {
      OfSheet stored = sheet;
      eachSpot(spot -> stored.values.put(spot, value.get()));
    }
    if (anyText && (anyStruck || anyRed)) {
      Ink ink = anyStruck ? new Ink(true, left.toString(), anyRed) : Ink.RED;
      OfSheet marked = sheet;
      eachSpot(spot -> marked.inks.put(spot, ink));
    }
    String fill = fills.getOrDefault(cellStyle, FillColours.NONE);
    boolean alone = cellRepeats <= MOST_BLANK_FILLS && rowRepeats <= MOST_BLANK_FILLS;
    if (!fill.isEmpty() && (holdsSomething || anyText || alone)) {
      OfSheet marked = sheet;
      eachSpot(spot -> marked.fills.put(spot, fill));
    }
    column += cellRepeats;
  }

  private void eachSpot(Consumer<Spot> each) {
    for (int down = 1; down <= Math.min(rowRepeats, MOST_REPEATS); down++) {
      for (int right = 1; right <= Math.min(cellRepeats, MOST_REPEATS); right++) {
        each.accept(new Spot(row + down, column + right));
      }
    }
  }
}

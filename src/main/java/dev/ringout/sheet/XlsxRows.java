package dev.ringout.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** Turns a sheet's XML events into rows. */
final class XlsxRows extends DefaultHandler {
  private final XlsxStrings strings;
  private final XlsxStyles styles;
  private final boolean dates1904;
  private final Consumer<Row> each;

  private final StringBuilder value = new StringBuilder();
  private List<Cell> cells = new ArrayList<>();
  private int rowNumber;
  private int column;
  private String type = "";
  private int style;
  private boolean collecting;
  private boolean hasValue;
  private boolean hasFormula;
  private boolean phonetic;

  XlsxRows(XlsxStrings strings, XlsxStyles styles, boolean dates1904, Consumer<Row> each) {
    this.strings = strings;
    this.styles = styles;
    this.dates1904 = dates1904;
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
      case "t" -> {
        collecting = !phonetic;
        hasValue = true;
      }
      case "f" -> hasFormula = true;
      case "rPh" -> phonetic = true;
      default -> {}
    }
  }

  private void startRow(Attributes attributes) {
    String number = attributes.getValue("r");
    rowNumber = number == null ? rowNumber + 1 : number(number);
    column = 0;
    cells = new ArrayList<>();
  }

  private void startCell(Attributes attributes) {
    String reference = attributes.getValue("r");
    column = reference == null ? column + 1 : columnOf(reference);
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
    }
  }

  @Override
  public void endElement(String uri, String local, String qualified) {
    switch (local) {
      case "v", "t" -> collecting = false;
      case "rPh" -> phonetic = false;
      case "c" -> endCell();
      case "row" -> {
        Row row = new Row(rowNumber, List.copyOf(cells));
        if (!row.isBlank()) {
          each.accept(row);
        }
      }
      default -> {}
    }
  }

  private void endCell() {
    Cell cell = hasValue ? cell(value.toString()) : withoutValue();
    if (cell.equals(Cell.EMPTY)) {
      return;
    }
    while (cells.size() < column - 1) {
      cells.add(Cell.EMPTY);
    }
    cells.add(cell);
  }

  private Cell withoutValue() {
    return hasFormula ? new Cell(Cell.Kind.UNCALCULATED, "") : Cell.EMPTY;
  }

  private Cell cell(String stored) {
    return switch (type) {
      case "s" -> Cell.text(sharedString(stored));
      case "b" -> new Cell(Cell.Kind.BOOLEAN, stored.equals("1") ? "TRUE" : "FALSE");
      case "e" -> new Cell(Cell.Kind.ERROR, stored);
      case "str", "inlineStr" -> Cell.text(stored);
      case "d" -> new Cell(Cell.Kind.DATE, stored);
      default -> stored.isBlank() ? withoutValue() : numeral(stored);
    };
  }

  private String sharedString(String index) {
    int i = number(index);
    if (i < 0 || i >= strings.size()) {
      throw new Damaged("a cell of row " + rowNumber + " refers to a text that is not there");
    }
    return strings.get(i);
  }

  private Cell numeral(String stored) {
    try {
      return Numerals.cell(Double.parseDouble(stored), styles.isDate(style), dates1904);
    } catch (NumberFormatException e) {
      return Cell.text(stored);
    }
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
    if (column < 1 || column > 16_384) {
      throw new Damaged("a cell is addressed \"" + reference + "\"");
    }
    return column;
  }
}

package dev.ringout.imports;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A small list of src/test/resources/lists as a workbook. A line is a row: cells with bars between,
 * then {@code =>} and what the import must say of it. Braces write what a spreadsheet stores:
 * {@code {date 2026-01-02}}, {@code {num 220}}, {@code {struck J1}}, {@code {part old/new}}, {@code
 * {fill FF0000 J1}}.
 */
record MessyList(String sheet, List<String> directives, List<Line> lines) {
  private static final Pattern MARKED = Pattern.compile("\\{(\\w+) ?([^}]*)}");

  /** A row with what is expected of it. */
  record Line(List<String> cells, List<String> expected) {}

  static MessyList read(Path file) throws IOException {
    String sheet = "Sheet1";
    List<String> directives = new ArrayList<>();
    List<Line> lines = new ArrayList<>();
    for (String line : Files.readAllLines(file)) {
      if (line.startsWith("@sheet ")) {
        sheet = line.substring("@sheet ".length());
      } else if (line.startsWith("@")) {
        directives.add(line);
      } else if (!line.startsWith("#")) {
        int arrow = line.indexOf(" => ");
        List<String> cells = new ArrayList<>();
        for (String cell : line.substring(0, arrow).split("\\|", -1)) {
          cells.add(cell.strip().replace('␣', ' ').replace('⍽', '\u00A0').replace('∅', '\u200B'));
        }
        List<String> expected = new ArrayList<>();
        for (String one : line.substring(arrow + " => ".length()).split(" ; ", -1)) {
          expected.add(one.strip());
        }
        lines.add(new Line(cells, expected));
      }
    }
    return new MessyList(sheet, directives, lines);
  }

  /** Writes the list as a spreadsheet would have saved it. */
  void write(Path file) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      XSSFSheet to = workbook.createSheet(sheet);
      for (int row = 0; row < lines.size(); row++) {
        var stored = to.createRow(row);
        List<String> cells = lines.get(row).cells();
        for (int column = 0; column < cells.size(); column++) {
          if (!cells.get(column).isEmpty()) {
            write(workbook, stored.createCell(column), cells.get(column));
          }
        }
      }
      for (String directive : directives) {
        String[] words = directive.split(" ", -1);
        switch (words[0]) {
          case "@hide-row" -> to.getRow(Integer.parseInt(words[1]) - 1).setZeroHeight(true);
          case "@hide-column" -> to.setColumnHidden(Integer.parseInt(words[1]) - 1, true);
          case "@filter" -> to.setAutoFilter(new CellRangeAddress(0, lines.size() - 1, 0, 3));
          default -> throw new IllegalArgumentException(directive);
        }
      }
      workbook.write(out);
    }
  }

  private static void write(XSSFWorkbook workbook, Cell cell, String text) {
    Matcher marked = MARKED.matcher(text);
    if (!marked.matches()) {
      cell.setCellValue(text);
      return;
    }
    String value = marked.group(2);
    switch (marked.group(1)) {
      case "num" -> cell.setCellValue(Double.parseDouble(value));
      case "bool" -> cell.setCellValue(value.equals("TRUE"));
      case "err" -> cell.setCellErrorValue(FormulaError.forString(value).getCode());
      case "formula" -> cell.setCellFormula("A1");
      case "date" -> {
        cell.setCellValue(LocalDate.parse(value));
        cell.setCellStyle(format(workbook, "d-mmm"));
      }
      case "time" -> {
        String[] parts = value.split(":", -1);
        cell.setCellValue(
            (Integer.parseInt(parts[0]) * 60 + Integer.parseInt(parts[1])) / (24.0 * 60));
        cell.setCellStyle(format(workbook, "h:mm"));
      }
      case "struck" -> {
        cell.setCellValue(value);
        cell.setCellStyle(inked(workbook, true));
      }
      case "red" -> {
        cell.setCellValue(value);
        cell.setCellStyle(inked(workbook, false));
      }
      case "fill" -> {
        cell.setCellStyle(filled(workbook, value.substring(0, 6)));
        if (value.length() > 6) {
          cell.setCellValue(value.substring(6).strip());
        }
      }
      case "part" -> {
        int slash = value.indexOf('/');
        XSSFRichTextString rich =
            new XSSFRichTextString(value.substring(0, slash) + value.substring(slash + 1));
        XSSFFont struck = workbook.createFont();
        struck.setStrikeout(true);
        rich.applyFont(0, slash, struck);
        cell.setCellValue(rich);
      }
      case "comment" -> {
        int slash = value.indexOf('/');
        cell.setCellValue(value.substring(0, slash));
        var drawing = ((XSSFSheet) cell.getSheet()).createDrawingPatriarch();
        var comment = drawing.createCellComment(new XSSFClientAnchor());
        comment.setString(new XSSFRichTextString(value.substring(slash + 1)));
        cell.setCellComment(comment);
      }
      case "merge" -> {
        int rows = value.charAt(0) - '0';
        cell.setCellValue(value.substring(2));
        cell.getSheet()
            .addMergedRegion(
                new CellRangeAddress(
                    cell.getRowIndex(),
                    cell.getRowIndex() + rows - 1,
                    cell.getColumnIndex(),
                    cell.getColumnIndex()));
      }
      case "across" -> {
        int columns = value.charAt(0) - '0';
        int first = cell.getColumnIndex();
        cell.setCellValue(value.substring(2));
        cell.getSheet()
            .addMergedRegion(
                new CellRangeAddress(
                    cell.getRowIndex(), cell.getRowIndex(), first, first + columns - 1));
      }
      default -> throw new IllegalArgumentException(text);
    }
  }

  private static CellStyle format(XSSFWorkbook workbook, String code) {
    CellStyle style = workbook.createCellStyle();
    style.setDataFormat(workbook.createDataFormat().getFormat(code));
    return style;
  }

  private static CellStyle filled(XSSFWorkbook workbook, String colour) {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setFillForegroundColor(
        new XSSFColor(
            HexFormat.of().parseHex(colour), workbook.getStylesSource().getIndexedColors()));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    return style;
  }

  private static CellStyle inked(XSSFWorkbook workbook, boolean struck) {
    XSSFFont font = workbook.createFont();
    font.setStrikeout(struck);
    if (!struck) {
      font.setColor(IndexedColors.RED.getIndex());
    }
    CellStyle style = workbook.createCellStyle();
    style.setFont(font);
    return style;
  }
}

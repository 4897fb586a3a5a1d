package dev.ringout.sheet;

import static java.nio.file.StandardOpenOption.CREATE_NEW;
import static java.nio.file.StandardOpenOption.WRITE;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import dev.ringout.source.FileBytes;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.streaming.SXSSFRow;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;

/** Writes sheets as a workbook, a folder of CSV files or one CSV file. */
public final class OutFile {
  private static final int WIDEST_COLUMN = 60;

  /** With a narrow one beside it as wide as an upright page: wider ones are printed smaller. */
  private static final int WIDEST_PRINTED_COLUMN = 84;

  /** What a pen needs. */
  private static final int NARROWEST_TO_FILL = 8;

  private static final int NARROWEST_FOR_TEXT = 40;

  /** A letter of the font that a new workbook has: 7 pixels, of which an inch has 96. */
  private static final double MM_OF_A_LETTER = 7 * 25.4 / 96;

  /** Two lines. */
  private static final float BAR_POINTS = 32;

  /** Of characters, in .xlsx. */
  private static final int MOST_IN_CELL = 32_767;

  private static final int ROWS_UNPACKED = 200;
  private static final int ROWS_MEASURED = 200;

  /**
   * A time that stands for none: the same sheets give the same bytes. The earliest that a zip can
   * say, the first second of 1980, would be written once more by the clock of the machine's zone.
   */
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 2, 0, 0);

  private OutFile() {}

  /** A workbook of plain tables. */
  public static void workbook(Path file, List<OutSheet> sheets) throws IOException {
    try (OutputStream out = Files.newOutputStream(file)) {
      workbook(out, sheets);
    }
  }

  /** A workbook of plain tables. */
  public static void workbook(OutputStream out, List<OutSheet> sheets) throws IOException {
    workbook(out, sheets, PrintForm.tested("", PrintForm.PaperSize.A4));
  }

  /** A workbook: printed sheets, and plain tables whose cells are all text. */
  public static void workbook(OutputStream out, List<OutSheet> sheets, PrintForm form)
      throws IOException {
    ByteArrayOutputStream dated = new ByteArrayOutputStream();
    try (SXSSFWorkbook workbook = new SheetsInMemory(ROWS_UNPACKED)) {
      Styles styles = new Styles(workbook);
      for (OutSheet sheet : sheets) {
        SXSSFSheet made = workbook.createSheet(WorkbookUtil.createSafeSheetName(sheet.name()));
        Rows rows = Rows.of(sheet);
        if (!sheet.look().title().isEmpty()) {
          PrintedSheet.prepare(made, sheet, form, rows);
        }
        write(made, sheet, styles, rows, rowPoints(sheet, form));
        if (!sheet.pictures().isEmpty()) {
          PicturesInCells.write(workbook, made, sheet.pictures());
        }
        if (!sheet.drawings().isEmpty()) {
          PicturesInCells.writeBelow(workbook, made, sheet.drawings(), rows.last() + 2);
        }
        if (!sheet.look().onScreen().isEmpty()) {
          workbook.setPrintArea(
              workbook.getSheetIndex(made), 0, sheet.printedColumns() - 1, 0, rows.last());
        }
      }
      workbook.writeAvoidingTempFiles(dated);
    }
    withoutTimes(dated.toByteArray(), out);
  }

  /**
   * Where the rows of a sheet stand, from 0.
   *
   * @param above the headings, and below them what is on every page
   * @param at of each row of the sheet
   * @param isEndedByBar whether a bar stands below the last of them
   */
  record Rows(int above, List<Integer> at, boolean isEndedByBar) {
    static Rows of(OutSheet sheet) {
      int above = sheet.look().caution().isEmpty() ? 1 : 2;
      int next = above;
      List<Integer> at = new ArrayList<>();
      for (int row = 0; row < sheet.rows().size(); row++) {
        next += sheet.look().bars().containsKey(row) ? 1 : 0;
        at.add(next++);
      }
      return new Rows(above, at, sheet.look().bars().containsKey(sheet.rows().size()));
    }

    int last() {
      int last = at.isEmpty() ? above : at.get(at.size() - 1);
      return isEndedByBar ? last + 1 : last;
    }
  }

  /** As high as asked for on paper, on which a sheet that is too wide is made smaller. */
  private static float rowPoints(OutSheet sheet, PrintForm form) {
    if (sheet.look().rowMm() == 0) {
      return 0;
    }
    double wide = 0;
    for (int column = 0; column < sheet.printedColumns(); column++) {
      wide += width(sheet, column) * MM_OF_A_LETTER;
    }
    double smaller = Math.max(1, wide / form.widthMm());
    return (float) (sheet.look().rowMm() * PrintForm.POINTS_OF_A_MM * smaller);
  }

  /** The looks of cells. */
  private static final class Styles {
    private final CellStyle heading;
    private final CellStyle text;
    private final CellStyle ruled;
    private final CellStyle ruledText;
    private final CellStyle ruledNumber;
    private final CellStyle ruledHeading;
    private final CellStyle bar;

    Styles(SXSSFWorkbook workbook) {
      short asText = workbook.createDataFormat().getFormat("@");
      Font bold = workbook.createFont();
      bold.setBold(true);
      text = workbook.createCellStyle();
      text.setDataFormat(asText);
      heading = workbook.createCellStyle();
      heading.setFont(bold);
      ruled = ruled(workbook);
      ruledText = ruled(workbook);
      ruledText.setDataFormat(asText);
      ruledNumber = ruled(workbook);
      ruledNumber.setAlignment(HorizontalAlignment.CENTER);
      ruledHeading = ruled(workbook);
      ruledHeading.setFont(bold);
      Font white = workbook.createFont();
      white.setBold(true);
      white.setColor(IndexedColors.WHITE.getIndex());
      bar = workbook.createCellStyle();
      bar.setFont(white);
      bar.setWrapText(true);
      bar.setVerticalAlignment(VerticalAlignment.CENTER);
      bar.setFillForegroundColor(IndexedColors.BLACK.getIndex());
      bar.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }

    private static CellStyle ruled(SXSSFWorkbook workbook) {
      CellStyle style = workbook.createCellStyle();
      style.setBorderBottom(BorderStyle.THIN);
      style.setBorderTop(BorderStyle.THIN);
      style.setBorderLeft(BorderStyle.THIN);
      style.setBorderRight(BorderStyle.THIN);
      style.setWrapText(true);
      style.setVerticalAlignment(VerticalAlignment.CENTER);
      return style;
    }
  }

  private static void write(
      SXSSFSheet to, OutSheet sheet, Styles styles, Rows rows, float rowPoints) {
    boolean printed = !sheet.look().title().isEmpty();
    to.createFreezePane(0, rows.above());
    double[] widths =
        IntStream.range(0, sheet.headings().size())
            .mapToDouble(column -> width(sheet, column))
            .toArray();
    for (int column = 0; column < widths.length; column++) {
      to.setColumnWidth(column, (int) Math.round(256 * widths[column]));
    }
    SXSSFRow headings = to.createRow(0);
    row(headings, sheet.headings(), printed ? styles.ruledHeading : styles.heading);
    if (printed) {
      heighten(headings, sheet.headings(), widths);
    }
    if (!sheet.look().caution().isEmpty()) {
      across(to, 1, sheet, SheetBar.of(sheet.look().caution()), styles.ruledHeading);
    }
    for (int index = 0; index < sheet.rows().size(); index++) {
      List<String> cells = sheet.rows().get(index);
      String bar = sheet.look().bars().get(index);
      if (bar != null) {
        across(to, rows.at().get(index) - 1, sheet, SheetBar.of(bar), styles.bar);
      }
      SXSSFRow row = to.createRow(rows.at().get(index));
      if (printed) {
        printedRow(row, cells, sheet, styles);
      } else {
        row(row, cells, styles.text);
      }
      if (rowPoints > 0) {
        row.setHeightInPoints(rowPoints);
      } else if (printed) {
        heighten(row, cells, widths);
      }
      int at = index;
      sheet.pictures().stream()
          .filter(picture -> picture.row() == at)
          .forEach(picture -> row.setHeightInPoints(PicturesInCells.rowPoints(picture)));
    }
    String last = sheet.look().bars().get(sheet.rows().size());
    if (last != null) {
      across(to, rows.last(), sheet, SheetBar.of(last), styles.bar);
    }
  }

  /** Makes a row as high as its fullest cell: not every program looks by itself. */
  private static void heighten(SXSSFRow row, List<String> cells, double[] widths) {
    int lines =
        IntStream.range(0, Math.min(cells.size(), widths.length))
            .filter(column -> cells.get(column).indexOf(' ') > 0)
            .map(column -> (int) Math.ceil((cells.get(column).length() + 1) / widths[column]))
            .max()
            .orElse(1);
    if (lines > 1) {
      row.setHeightInPoints(lines * row.getSheet().getDefaultRowHeightInPoints());
    }
  }

  /** Words from the first printed column to the last. */
  private static void across(
      SXSSFSheet to, int number, OutSheet sheet, String words, CellStyle style) {
    SXSSFRow row = to.createRow(number);
    row.setHeightInPoints(BAR_POINTS);
    int last = sheet.printedColumns() - 1;
    for (int column = 0; column <= last; column++) {
      row.createCell(column).setCellStyle(style);
    }
    row.getCell(0).setCellValue(fitting(words));
    to.addMergedRegion(new CellRangeAddress(number, number, 0, last));
  }

  private static void row(SXSSFRow row, List<String> cells, CellStyle style) {
    for (int column = 0; column < cells.size(); column++) {
      if (!cells.get(column).isEmpty()) {
        var cell = row.createCell(column);
        cell.setCellValue(fitting(cells.get(column)));
        cell.setCellStyle(style);
      }
    }
  }

  /** Every cell is ruled, filled or not: a pen writes there too. */
  private static void printedRow(SXSSFRow row, List<String> cells, OutSheet sheet, Styles styles) {
    for (int column = 0; column < sheet.headings().size(); column++) {
      String text = column < cells.size() ? cells.get(column) : "";
      var cell = row.createCell(column);
      cell.setCellStyle(sheet.look().texts().contains(column) ? styles.ruledText : styles.ruled);
      if (!text.isEmpty() && sheet.look().numbers().contains(column)) {
        cell.setCellStyle(styles.ruledNumber);
        cell.setCellValue(Double.parseDouble(text));
      } else if (!text.isEmpty()) {
        cell.setCellValue(fitting(text));
      }
    }
  }

  /** No cell of a workbook holds more; what is cut says so. */
  private static String fitting(String stored) {
    String text = Xstring.encoded(stored);
    if (text.length() <= MOST_IN_CELL) {
      return text;
    }
    String cut = " … (" + text.length() + " characters; a cell holds no more)";
    return text.substring(0, MOST_IN_CELL - cut.length()) + cut;
  }

  /** In letters. */
  private static double width(OutSheet sheet, int column) {
    Integer wanted = sheet.look().widthsMm().get(column);
    return wanted == null ? widthOfTexts(sheet, column) : wanted / MM_OF_A_LETTER;
  }

  private static int widthOfTexts(OutSheet sheet, int column) {
    int widest = sheet.headings().get(column).length();
    for (List<String> row : sheet.rows().subList(0, Math.min(ROWS_MEASURED, sheet.rows().size()))) {
      widest = Math.max(widest, column < row.size() ? row.get(column).length() : 0);
    }
    boolean printed = !sheet.look().title().isEmpty();
    if (sheet.look().toFill().contains(column)) {
      widest = Math.max(widest, NARROWEST_TO_FILL);
    }
    if (sheet.pictures().stream().anyMatch(picture -> picture.column() == column)) {
      return PicturesInCells.WIDTH_OF_COLUMN;
    }
    if (sheet.look().texts().contains(column)) {
      widest = Math.max(widest, NARROWEST_FOR_TEXT);
    }
    boolean narrow = !printed || !sheet.pictures().isEmpty();
    return Math.min(narrow ? WIDEST_COLUMN : WIDEST_PRINTED_COLUMN, widest + 2);
  }

  /** Copies a workbook without the times at which its parts were written. */
  private static void withoutTimes(byte[] from, OutputStream to) throws IOException {
    ZipParts in = new ZipParts(FileBytes.of("workbook", from));
    ZipOutputStream out = new ZipOutputStream(to);
    for (String name : in.names()) {
      ZipEntry copy = new ZipEntry(name);
      copy.setTimeLocal(NO_TIME);
      out.putNextEntry(copy);
      try (InputStream content = in.openOwn(name)) {
        if (name.equals("docProps/core.xml")) {
          out.write(undated(content).getBytes(StandardCharsets.UTF_8));
        } else {
          content.transferTo(out);
        }
      }
      out.closeEntry();
    }
    out.finish();
  }

  private static String undated(InputStream in) throws IOException {
    String properties = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    return properties.replaceAll("<dcterms:created[^>]*>[^<]*</dcterms:created>", "");
  }

  /** One CSV file a sheet, in a folder that is made. */
  public static void folder(Path folder, List<OutSheet> sheets) throws IOException {
    Files.createDirectory(folder);
    for (OutSheet sheet : sheets) {
      csv(folder.resolve(sheet.name().toLowerCase(Locale.ROOT) + ".csv"), sheet);
    }
  }

  /** One CSV file, UTF-8 with a byte-order mark, without which spreadsheets misread Ω and µ. */
  public static void csv(Path file, OutSheet sheet) throws IOException {
    // Made here, so that nothing is written through what somebody else has put there.
    try (OutputStream out = Files.newOutputStream(file, CREATE_NEW, WRITE)) {
      csv(out, sheet);
    }
  }

  /** The same, onto a stream, which is closed. */
  public static void csv(OutputStream out, OutSheet sheet) throws IOException {
    out.write(new byte[] {(byte) 0xef, (byte) 0xbb, (byte) 0xbf});
    try (CsvWriter csv =
        CsvWriter.builder()
            .lineDelimiter(LineDelimiter.LF)
            .build(new OutputStreamWriter(out, StandardCharsets.UTF_8))) {
      csv.writeRecord(sheet.headings().stream().map(OutFile::harmless).toList());
      for (List<String> row : sheet.rows()) {
        csv.writeRecord(row.stream().map(OutFile::harmless).toList());
      }
    }
  }

  /**
   * A field that no spreadsheet takes for a formula: with the apostrophe that people type before
   * text. The reader takes it off again.
   */
  static String harmless(String text) {
    return startsFormula(withoutApostrophes(text)) ? "'" + text : text;
  }

  static boolean startsFormula(String text) {
    return text.length() > 1 && "=+-@".indexOf(text.charAt(0)) >= 0;
  }

  /** A field as it was before it was made harmless. */
  static String asWritten(String text) {
    return text.startsWith("'") && startsFormula(withoutApostrophes(text))
        ? text.substring(1)
        : text;
  }

  private static String withoutApostrophes(String text) {
    int start = 0;
    while (start < text.length() && text.charAt(start) == '\'') {
      start++;
    }
    return text.substring(start);
  }
}

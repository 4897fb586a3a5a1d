package dev.ringout.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.source.UnusableInput;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.record.DateWindow1904Record;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a file stores of a number or a date is read as its standard says, or is an error. */
class StoredValuesTest {
  private static final String ODS = "application/vnd.oasis.opendocument.spreadsheet";
  private static final String ODF = "urn:oasis:names:tc:opendocument:xmlns:";

  @TempDir Path folder;

  private static void put(ZipOutputStream zip, String name, String text) throws Exception {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(text.getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
  }

  /** An OpenDocument spreadsheet of one cell, as other programs than ours may write it. */
  private Cell ods(String attributes, String shown, String settings) throws Exception {
    Path file = folder.resolve("one.ods");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      put(zip, "mimetype", ODS);
      put(
          zip,
          "content.xml",
          "<office:document-content xmlns:office='"
              + ODF
              + "office:1.0' xmlns:table='"
              + ODF
              + "table:1.0' xmlns:text='"
              + ODF
              + "text:1.0'><office:automatic-styles/><office:body><office:spreadsheet>"
              + settings
              + "<table:table table:name='Continuity'><table:table-row><table:table-cell "
              + attributes
              + ">"
              + (shown.isEmpty() ? "" : "<text:p>" + shown + "</text:p>")
              + "</table:table-cell></table:table-row></table:table>"
              + "</office:spreadsheet></office:body></office:document-content>");
    }
    return Book.read(file).cell(1, 1);
  }

  private Cell ods(String attributes) throws Exception {
    return ods(attributes, "", "");
  }

  /** A workbook of one cell. */
  private Cell xlsx(String cell) throws Exception {
    Path file = folder.resolve("one.xlsx");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      put(
          zip,
          "_rels/.rels",
          "<Relationships><Relationship Id='r1' Type='x/officeDocument' Target='xl/workbook.xml'/>"
              + "</Relationships>");
      put(
          zip,
          "xl/_rels/workbook.xml.rels",
          "<Relationships><Relationship Id='r1' Type='x/worksheet' Target='sheet.xml'/>"
              + "</Relationships>");
      put(
          zip,
          "xl/workbook.xml",
          "<workbook xmlns:r='rels'><sheets><sheet name='Continuity' r:id='r1'/></sheets>"
              + "</workbook>");
      put(
          zip,
          "xl/sheet.xml",
          "<worksheet><sheetData><row r='1'>" + cell + "</row></sheetData></worksheet>");
    }
    return Book.read(file).cell(1, 1);
  }

  /** Programs write so what XML can't hold, and what looks like it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          J1_x002D_A | J1-A
          J1_x005F_x002D_A | J1_x002D_A
          _x003d_1 | =1
          J1_x2D_A | J1_x2D_A
          J1_x | J1_x
          """)
  void a_character_that_stands_by_its_number_is_that_character(String stored, String text)
      throws Exception {
    assertEquals(text, xlsx("<c r='A1' t='inlineStr'><is><t>" + stored + "</t></is></c>").text());
    assertEquals(text, xlsx("<c r='A1' t='str'><f>B1</f><v>" + stored + "</v></c>").text());
  }

  @ParameterizedTest
  @ValueSource(strings = {"J1_x002D_A", "_x005F_x002D_", "_x", "_x00e4_x00e4_"})
  void what_looks_like_a_number_of_a_character_reads_back_as_it_was(String text) throws Exception {
    Path file = folder.resolve("back.xlsx");
    OutFile.workbook(file, List.of(new OutSheet("Wires", List.of("Wire"), List.of(List.of(text)))));
    assertEquals(text, Book.read(file).cell(2, 1).text());
  }

  @ParameterizedTest
  @CsvSource({
    "1e6,1000000",
    "1E6,1000000",
    "1.5E+6,1500000",
    "2e-1,0.2",
    "-1e-3,-0.001",
    ".5,0.5",
    "5.,5",
    "+7,7"
  })
  void an_exponent_belongs_to_its_number(String stored, String text) throws Exception {
    Cell expected = new Cell(Cell.Stored.NUMBER, text);
    assertEquals(expected, ods("office:value-type='float' office:value='" + stored + "'"));
    assertEquals(expected, ods("office:value-type='currency' office:value='" + stored + "'"));
    assertEquals(expected, xlsx("<c r='A1'><v>" + stored + "</v></c>"));
  }

  /** The library for OpenDocument takes the digits before what it does not understand. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "NaN",
        "INF",
        "-INF",
        "Infinity",
        "1e400",
        "1x",
        "12d",
        "0x1p3",
        "1;5",
        "1/2",
        "1 000",
        "OL",
        "\u221e"
      })
  void what_is_no_number_in_a_number_s_place_is_an_error_of_the_cell(String stored)
      throws Exception {
    Cell expected = new Cell(Cell.Stored.ERROR, stored);
    assertEquals(expected, ods("office:value-type='float' office:value='" + stored + "'"));
    assertEquals(expected, ods("office:value-type='percentage' office:value='" + stored + "'"));
    assertEquals(expected, xlsx("<c r='A1'><v>" + stored + "</v></c>"));
  }

  /** A day that can't be read must not become a day that was never stated. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "office:value-type='float'",
        "office:value-type='float' office:value=''",
        "office:value-type='date' office:date-value='2026-13-40'",
        "office:value-type='date' office:date-value='31.03.2027'",
        "office:value-type='date'",
        "office:value-type='time' office:time-value='10:30'",
        "office:value-type='boolean' office:boolean-value='yes'",
        "office:value-type='complex' office:value='0.2'"
      })
  void a_value_that_is_none_of_its_type_is_an_error_and_never_a_blank(String attributes)
      throws Exception {
    assertEquals(Cell.Stored.ERROR, ods(attributes).kind());
  }

  /** What is shown is what a person has read. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.2|0.2|same",
        "0.2|0,20|same",
        "0.2|2E-01|same",
        "0.2|0|same",
        "1234567.891|1.234.567,89|same",
        "1234567.891|1,234,567.9|same",
        "1234567.891|1 234 568|same",
        "-5|(5.00)|same",
        "-5|\u22125|same",
        "5|\u20ac 5.00|same",
        "0.2|200|other",
        "0.2|-0.2|other",
        "0.2|(0.20)|other",
        "-0.2|0.2|other",
        "36000|36|other",
        "0.2|0.2 k\u03a9|other",
        "0.2|OL|other"
      })
  void a_number_that_is_shown_as_another_one_says_so(String stored, String shown, String expected)
      throws Exception {
    Cell cell = ods("office:value-type='float' office:value='" + stored + "'", shown, "");
    assertEquals(stored, cell.text());
    assertEquals(expected.equals("same") ? "" : shown, cell.shown());
  }

  /** The library would go on by itself where the marks end. */
  @Test
  void a_value_for_more_cells_than_a_list_has_is_refused() {
    UnusableInput refused =
        assertThrows(
            UnusableInput.class,
            () ->
                ods(
                    "table:number-columns-repeated='2000' office:value-type='float'"
                        + " office:value='1e6'"));
    assertTrue(refused.text().contains("more than 1024 times"), refused.text());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1", "true"})
  void true_is_true_as_a_digit_and_as_a_word(String stored) throws Exception {
    Cell expected = new Cell(Cell.Stored.BOOLEAN, "TRUE");
    assertEquals(expected, xlsx("<c r='A1' t='b'><v>" + stored + "</v></c>"));
    assertEquals(
        expected, ods("office:value-type='boolean' office:boolean-value='" + stored + "'"));
  }

  private Cell day(boolean old, boolean from1904, double number) throws Exception {
    Path file = folder.resolve(old ? "day.xls" : "day.xlsx");
    try (Workbook workbook = old ? new HSSFWorkbook() : new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      var cell = workbook.createSheet("Job").createRow(0).createCell(0);
      CellStyle style = workbook.createCellStyle();
      style.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd"));
      cell.setCellStyle(style);
      cell.setCellValue(number);
      if (from1904 && workbook instanceof HSSFWorkbook older) {
        for (var record : older.getInternalWorkbook().getRecords()) {
          if (record instanceof DateWindow1904Record window) {
            window.setWindowing((short) 1);
          }
        }
      }
      if (from1904 && workbook instanceof XSSFWorkbook newer) {
        newer.getCTWorkbook().addNewWorkbookPr().setDate1904(true);
      }
      workbook.write(out);
    }
    return Book.read(file).cell(1, 1);
  }

  /** ECMA-376 part 1, 18.17.4.1; [MS-XLS] 2.4.77 Date1904. Day 46112 is 2026-03-31 of 1900. */
  @Test
  void days_count_from_where_the_workbook_says() throws Exception {
    Cell expected = new Cell(Cell.Stored.DATE, "2026-03-31");
    for (boolean old : new boolean[] {true, false}) {
      assertEquals(expected, day(old, false, 46_112));
      assertEquals(expected, day(old, true, 46_112 - 1462));
    }
  }

  /** OpenDocument stores days as days; its null-date is for sums alone. */
  @Test
  void a_null_date_moves_no_day_of_an_open_document() throws Exception {
    assertEquals(
        new Cell(Cell.Stored.DATE, "2026-03-31"),
        ods(
            "office:value-type='date' office:date-value='2026-03-31'",
            "",
            "<table:calculation-settings><table:null-date table:date-value='1904-01-01'/>"
                + "</table:calculation-settings>"));
  }
}

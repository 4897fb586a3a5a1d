package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.github.miachm.sods.SpreadSheet;
import dev.ringout.support.Run;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * No resistance is below zero. What a meter shows so is voltage on the circuit, or leads nulled too
 * far (common practice, no source): it proves nothing, and is said with caution.
 */
class NegativeOhmsTest {
  @TempDir Path folder;

  /** Two wires of which nothing is known, so that the fixed limit holds. */
  private Path list() throws IOException {
    Path list = Files.createDirectories(folder.resolve("list"));
    Files.write(list.resolve("wires.csv"), List.of("Wire,From,To", "W1,J1-A,P2-1", "W2,J1-B,P2-2"));
    return list;
  }

  private Path sheet(String join, String reverse, String apart, String insulation)
      throws IOException {
    Path sheet = Files.createDirectories(folder.resolve("sheet"));
    Files.write(
        sheet.resolve("continuity.csv"),
        List.of(
            "From,To,Reading,Reverse",
            "J1-A,P2-1,\"" + join + "\"," + reverse,
            "J1-B,P2-2,0.2",
            "J1-A,J1-B,\"" + apart + "\""));
    Files.write(
        sheet.resolve("insulation.csv"),
        List.of("From,To,Volts,Reading", "J1-A,J1-B,500,\"" + insulation + "\""));
    Files.write(
        sheet.resolve("job.csv"), List.of("Name,Value", "serial number,7", "date,2026-11-20"));
    return sheet;
  }

  private static void assertNotJudgedAndSaid(Run run) {
    assertEquals(2, run.code(), run.out() + run.err());
    String flat = (run.out() + run.err()).replaceAll("\\s+", " ");
    assertTrue(flat.contains("is below zero and proves nothing"), flat);
    assertTrue(flat.contains("ake it for live until it is shown dead"), flat);
    assertTrue(flat.contains("0 fail, 0 not tested, 1 not judged"), flat);
  }

  @Test
  void the_same_sheet_without_a_minus_conforms() throws IOException {
    Run run = Run.of("check", list(), sheet("0.2", "", "OL", "2000"));
    assertEquals(0, run.code(), run.out() + run.err());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"-0.02", "-200 MΩ", "-200.000000000 MΩ", "-1e-3", "\u22120.2", "\u00ad0.2", "<-5"})
  void a_join_is_not_shown_by_less_than_nothing(String reading) throws IOException {
    assertNotJudgedAndSaid(Run.of("check", list(), sheet(reading, "", "OL", "2000")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"-0.02", "-1e9", "-200 MΩ", "> -5"})
  void a_gap_is_neither_shown_nor_disproved_by_it(String reading) throws IOException {
    assertNotJudgedAndSaid(Run.of("check", list(), sheet("0.2", "", reading, "2000")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"-2000", "-1e9", "\u22125 GΩ", "<-1"})
  void insulation_is_neither_shown_nor_disproved_by_it(String reading) throws IOException {
    assertNotJudgedAndSaid(Run.of("check", list(), sheet("0.2", "", "OL", reading)));
  }

  /** The same voltage lowers what is read one way and raises it the other. */
  @ParameterizedTest
  @CsvSource({"-5,0.2", "0.2,-5"})
  void with_the_leads_exchanged_it_is_not_made_good(String reading, String reverse)
      throws IOException {
    assertNotJudgedAndSaid(Run.of("check", list(), sheet(reading, reverse, "OL", "2000")));
  }

  /** With the leads taken off it is below zero; a little less is how they were held. */
  @ParameterizedTest
  @CsvSource({"0.02,2", "0.20,2", "0.3,0", "0.5,0", "0.6,0"})
  void nor_is_it_shown_by_less_than_the_leads_alone_have(String reading, int code)
      throws IOException {
    Path sheet = sheet(reading, "", "OL", "2000");
    Files.writeString(
        sheet.resolve("continuity.csv"),
        Files.readString(sheet.resolve("continuity.csv")).replace("P2-2,0.2", "P2-2,0.6"));
    Files.write(
        sheet.resolve("job.csv"),
        List.of("Name,Value", "serial number,7", "date,2026-11-20", "lead null,0.5 \u03a9"));
    Run run = Run.of("check", list(), sheet);
    assertEquals(code, run.code(), run.out() + run.err());
    assertEquals(
        code == 2,
        run.out().replaceAll("\\s+", " ").contains("is less than the leads alone read"),
        run.out());
  }

  @Test
  void a_list_is_not_built_from_it() throws IOException {
    Path built = folder.resolve("built.csv");
    Path sheet = sheet("-0.2", "", "OL", "2000");
    Run run = Run.of("asfound", sheet.resolve("continuity.csv"), "--json");
    assertTrue(run.err().contains("is below zero and proves nothing"), run.err());
    assertFalse(run.out().contains("\"J1-A\",\"P2-1\""), run.out());
    assertFalse(Files.exists(built));
  }

  private Path workbook(Workbook workbook, String name, double join, String format)
      throws IOException {
    Sheet sheet = workbook.createSheet("Continuity");
    String[][] rows = {
      {"From", "To", "Reading"}, {"J1-A", "P2-1"}, {"J1-B", "P2-2", "0.2"}, {"J1-A", "J1-B", "OL"}
    };
    for (int row = 0; row < rows.length; row++) {
      sheet.createRow(row);
      for (int column = 0; column < rows[row].length; column++) {
        sheet.getRow(row).createCell(column).setCellValue(rows[row][column]);
      }
    }
    CellStyle style = workbook.createCellStyle();
    style.setDataFormat(workbook.createDataFormat().getFormat(format));
    sheet.getRow(1).createCell(2).setCellValue(join);
    sheet.getRow(1).getCell(2).setCellStyle(style);
    Sheet insulation = workbook.createSheet("Insulation");
    String[][] insulated = {{"From", "To", "Volts", "Reading"}, {"J1-A", "J1-B", "500", "2000"}};
    for (int row = 0; row < insulated.length; row++) {
      insulation.createRow(row);
      for (int column = 0; column < insulated[row].length; column++) {
        insulation.getRow(row).createCell(column).setCellValue(insulated[row][column]);
      }
    }
    Path file = folder.resolve(name);
    try (OutputStream out = Files.newOutputStream(file)) {
      workbook.write(out);
    }
    workbook.close();
    return file;
  }

  @ParameterizedTest
  @ValueSource(strings = {"General", "0.00;0.00", "0.00_);(0.00)", "[Red]0.00;[Red]0.00"})
  void a_number_cell_below_zero_is_so_however_it_is_shown(String format) throws IOException {
    for (boolean old : new boolean[] {true, false}) {
      Path file =
          workbook(
              old ? new HSSFWorkbook() : new XSSFWorkbook(),
              old ? "sheet.xls" : "sheet.xlsx",
              -0.2,
              format);
      Run run = Run.of("check", list(), file);
      String said = run.out() + run.err();
      assertEquals(2, run.code(), said);
      assertTrue(run.err().contains("-0.2 is below zero"), said);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"-0.00", "\"-\"0.00", "\\-0.00", "(0.00)", "\u22120.00"})
  void a_number_cell_that_is_shown_below_zero_is_not_read_above_it(String format)
      throws IOException {
    for (boolean old : new boolean[] {true, false}) {
      Path file =
          workbook(
              old ? new HSSFWorkbook() : new XSSFWorkbook(),
              old ? "sheet.xls" : "sheet.xlsx",
              0.2,
              format);
      Run run = Run.of("check", list(), file);
      assertEquals(65, run.code(), run.out() + run.err());
      assertTrue(run.err().contains("is shown by the spreadsheet as"), run.err());
    }
  }

  /** Formats of every day that hold a minus and mean none. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "_-* #,##0.00_-;-* #,##0.00_-;_-* \"-\"??_-;_-@_-",
        "#,##0.00_);(#,##0.00)",
        "0.00E-00",
        "[<0]-0.00;0.00"
      })
  void a_format_with_a_minus_for_others_is_no_minus(String format) throws IOException {
    Run run = Run.of("check", list(), workbook(new XSSFWorkbook(), "sheet.xlsx", 0.2, format));
    assertEquals(0, run.code(), run.out() + run.err());
  }

  @Test
  void a_number_cell_below_zero_of_an_open_document_is_one_too() throws IOException {
    SpreadSheet book = new SpreadSheet();
    com.github.miachm.sods.Sheet sheet = new com.github.miachm.sods.Sheet("Continuity", 4, 3);
    sheet
        .getDataRange()
        .setValues(
            "From", "To", "Reading", "J1-A", "P2-1", -0.2, "J1-B", "P2-2", 0.2, "J1-A", "J1-B",
            "OL");
    book.appendSheet(sheet);
    Path file = folder.resolve("sheet.ods");
    try (OutputStream out = Files.newOutputStream(file)) {
      book.save(out);
    }
    Run run = Run.of("check", list(), file);
    assertEquals(2, run.code(), run.out() + run.err());
    assertTrue(run.err().contains("-0.2 is below zero"), run.err());
  }
}

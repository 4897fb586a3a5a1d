package dev.ringout.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.github.miachm.sods.Color;
import com.github.miachm.sods.SpreadSheet;
import com.github.miachm.sods.Style;
import dev.ringout.source.Problems;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.RichTextString;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTColor;

/** Workbooks of the old and the new format give the same cells. */
class WorkbooksTest {
  private static final Path SAVED = Path.of("src/test/resources/formats");

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"list.xls", "list.xlsx"})
  void a_text_stays_a_text_and_a_number_has_its_shortest_form(String file) throws Exception {
    Book book =
        Book.of(
            folder.resolve(file),
            workbook -> {
              var row = workbook.createSheet("List").createRow(0);
              row.createCell(0).setCellValue("007");
              row.createCell(1).setCellValue(7.0);
              row.createCell(2).setCellValue(0.3);
              row.createCell(3).setCellValue(true);
            });
    assertEquals("List", book.sheet());
    assertEquals(new Cell(Cell.Stored.TEXT, "007"), book.cell(1, 1));
    assertEquals(new Cell(Cell.Stored.NUMBER, "7"), book.cell(1, 2), "never 7.0");
    assertEquals(new Cell(Cell.Stored.NUMBER, "0.3"), book.cell(1, 3));
    assertEquals(new Cell(Cell.Stored.BOOLEAN, "TRUE"), book.cell(1, 4));
  }

  /** Written by a library of another language, whose palette stands where ours looks for none. */
  @Test
  void a_workbook_of_more_than_one_sheet_is_read_whoever_wrote_it() throws Exception {
    Book book = Book.read(SAVED.resolve("three-sheets.xls"));
    assertEquals("Continuity", book.sheet());
    assertEquals(new Cell(Cell.Stored.NUMBER, "0.2").in(Cell.Ink.RED), book.cell(2, 3));
    assertTrue(book.cell(3, 3).isStruck());
    assertEquals("1000000", book.cell(3, 3).text());
    assertEquals("FFFF00", book.cell(4, 1).fill());
    try (TabularFile file =
        TabularFile.open(SAVED.resolve("three-sheets.xls"), "sheets", new Problems())) {
      assertEquals(
          List.of("Continuity", "Job", "Header"), file.sheets().stream().map(Sheet::name).toList());
      for (Sheet sheet : file.sheets()) {
        List<Row> rows = new ArrayList<>();
        sheet.forEachRow(rows::add);
        assertFalse(rows.isEmpty(), sheet.name());
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"list.xls", "list.xlsx"})
  void rows_and_columns_keep_their_places_across_empty_ones(String file) throws Exception {
    Book book =
        Book.of(
            folder.resolve(file),
            workbook -> {
              var sheet = workbook.createSheet("List");
              sheet.createRow(0).createCell(0).setCellValue("Wire");
              sheet.createRow(4).createCell(2).setCellValue("J1-A");
            });
    assertEquals(List.of(1, 5), book.rows().stream().map(Row::number).toList());
    assertEquals("J1-A", book.cell(5, 3).text());
    assertEquals(Cell.EMPTY, book.cell(5, 1));
    assertEquals(Cell.EMPTY, book.cell(5, 99), "beyond the row's end");
  }

  @ParameterizedTest
  @ValueSource(strings = {"list.xls", "list.xlsx"})
  void a_number_shown_as_a_date_is_a_date(String file) throws Exception {
    Book book =
        Book.of(
            folder.resolve(file),
            workbook -> {
              CellStyle day = workbook.createCellStyle();
              day.setDataFormat(workbook.createDataFormat().getFormat("d-mmm"));
              var cell = workbook.createSheet("List").createRow(0).createCell(0);
              cell.setCellValue(LocalDate.of(2026, 1, 2));
              cell.setCellStyle(day);
            });
    assertEquals(new Cell(Cell.Stored.DATE, "2026-01-02"), book.cell(1, 1), "typed as 1-2");
  }

  @ParameterizedTest
  @ValueSource(strings = {"list.xls", "list.xlsx"})
  void a_formula_is_the_result_that_was_stored_with_it(String file) throws Exception {
    Book book =
        Book.of(
            folder.resolve(file),
            workbook -> {
              var row = workbook.createSheet("List").createRow(0);
              row.createCell(0).setCellValue(2);
              row.createCell(1).setCellFormula("A1*3");
              row.createCell(2).setCellFormula("1/0");
              workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
            });
    assertEquals(new Cell(Cell.Stored.NUMBER, "6"), book.cell(1, 2));
    assertEquals(new Cell(Cell.Stored.ERROR, "#DIV/0!"), book.cell(1, 3));
  }

  @ParameterizedTest
  @ValueSource(strings = {"list.xls", "list.xlsx"})
  void a_formula_whose_result_was_not_stored_is_no_number(String file) throws Exception {
    Book book =
        Book.of(
            folder.resolve(file),
            workbook ->
                workbook.createSheet("List").createRow(0).createCell(0).setCellFormula("1+1"));
    assertEquals(Cell.Stored.UNCALCULATED, book.cell(1, 1).kind());
  }

  /** Other libraries store an empty text where they do not calculate. */
  @Test
  void a_formula_that_gives_a_number_has_no_empty_text_for_its_result() throws Exception {
    Book book = Book.read(SAVED.resolve("never-calculated.xls"));
    assertEquals(Cell.Stored.UNCALCULATED, book.cell(1, 1).kind(), "1+1");
    assertEquals(Cell.Stored.UNCALCULATED, book.cell(2, 1).kind(), "A1*2");
    assertEquals(Cell.EMPTY, book.cell(3, 1), "texts put together may well be empty");
  }

  @Test
  void a_zero_of_a_workbook_that_asks_to_be_calculated_is_none() throws Exception {
    Book.Content zeroAndTwo =
        workbook -> {
          var row = workbook.createSheet("List").createRow(0);
          row.createCell(0).setCellFormula("2-2");
          row.createCell(1).setCellFormula("1+1");
          row.createCell(2).setCellValue(0);
          workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
        };
    Path file = folder.resolve("list.xlsx");
    assertEquals(new Cell(Cell.Stored.NUMBER, "0"), Book.of(file, zeroAndTwo).cell(1, 1));
    Book asks =
        Book.of(
            file,
            workbook -> {
              zeroAndTwo.in(workbook);
              workbook.setForceFormulaRecalculation(true);
            });
    assertEquals(Cell.Stored.UNCALCULATED, asks.cell(1, 1).kind());
    assertEquals(new Cell(Cell.Stored.NUMBER, "2"), asks.cell(1, 2));
    assertEquals(new Cell(Cell.Stored.NUMBER, "0"), asks.cell(1, 3));
  }

  @ParameterizedTest
  @ValueSource(strings = {"list.xls", "list.xlsx"})
  void merged_cells_have_their_text_in_the_first(String file) throws Exception {
    Book book =
        Book.of(
            folder.resolve(file),
            workbook -> {
              var sheet = workbook.createSheet("List");
              sheet.createRow(0).createCell(0).setCellValue("J1");
              sheet.createRow(1).createCell(1).setCellValue("B");
              sheet.addMergedRegion(new CellRangeAddress(0, 1, 0, 0));
            });
    assertEquals(List.of(new Surroundings.Merge(1, 1, 2, 1)), book.around().merges());
    assertEquals("J1", book.cell(1, 1).text());
    assertTrue(book.cell(2, 1).isBlank());
  }

  @ParameterizedTest
  @ValueSource(strings = {"list.xls", "list.xlsx"})
  void struck_and_red_ink_is_seen_as_on_paper(String file) throws Exception {
    Book book =
        Book.of(
            folder.resolve(file),
            workbook -> {
              Font struck = workbook.createFont();
              struck.setStrikeout(true);
              Font red = workbook.createFont();
              red.setColor(Font.COLOR_RED);
              CellStyle whole = workbook.createCellStyle();
              whole.setFont(struck);
              CellStyle inRed = workbook.createCellStyle();
              inRed.setFont(red);
              var row = workbook.createSheet("List").createRow(0);
              row.createCell(0).setCellValue("J1-A");
              row.getCell(0).setCellStyle(whole);
              RichTextString part = workbook.getCreationHelper().createRichTextString("J1-A J1-B");
              part.applyFont(0, 5, struck);
              row.createCell(1).setCellValue(part);
              row.createCell(2).setCellValue("J1-C");
              row.getCell(2).setCellStyle(inRed);
            });
    assertTrue(book.cell(1, 1).isStruck());
    assertFalse(book.cell(1, 2).isStruck(), "not all of it");
    assertEquals(new Cell.Ink(true, "J1-B", false), book.cell(1, 2).ink());
    assertEquals(Cell.Ink.RED, book.cell(1, 3).ink());
  }

  @ParameterizedTest
  @ValueSource(strings = {"list.xls", "list.xlsx"})
  void the_colour_that_a_cell_is_filled_with_is_seen_as_on_paper(String file) throws Exception {
    Book book =
        Book.of(
            folder.resolve(file),
            workbook -> {
              CellStyle red = filled(workbook, IndexedColors.RED);
              CellStyle hatched = filled(workbook, IndexedColors.RED);
              hatched.setFillPattern(FillPatternType.THIN_FORWARD_DIAG);
              CellStyle white = filled(workbook, IndexedColors.WHITE);
              var row = workbook.createSheet("List").createRow(0);
              row.createCell(0).setCellValue("J1-A");
              row.getCell(0).setCellStyle(red);
              row.createCell(1).setCellStyle(red);
              row.createCell(2).setCellValue("J1-C");
              row.createCell(3).setCellValue("J1-D");
              row.getCell(3).setCellStyle(white);
              row.createCell(4).setCellValue("J1-E");
              row.getCell(4).setCellStyle(hatched);
            });
    assertEquals("FF0000", book.cell(1, 1).fill());
    assertEquals("FF0000", book.cell(1, 2).fill(), "blank, before a cell that is not");
    assertTrue(book.cell(1, 2).isBlank());
    assertEquals("", book.cell(1, 3).fill());
    assertEquals("", book.cell(1, 4).fill(), "white is paper");
    assertEquals("", book.cell(1, 5).fill(), "a pattern is not a colour");
  }

  private static CellStyle filled(Workbook workbook, IndexedColors colour) {
    CellStyle style = workbook.createCellStyle();
    style.setFillForegroundColor(colour.getIndex());
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    return style;
  }

  /** ECMA-376 part 1, 18.8.3: a colour of the theme with a tint; -0.5 halves its lightness. */
  @Test
  void a_fill_in_a_colour_of_the_theme_is_that_colour() throws Exception {
    Book book =
        Book.of(
            folder.resolve("list.xlsx"),
            workbook -> {
              var row = workbook.createSheet("List").createRow(0);
              double[] tints = {0, -0.5, 0.5};
              for (int column = 0; column < tints.length; column++) {
                XSSFCellStyle style = (XSSFCellStyle) workbook.createCellStyle();
                CTColor colour = CTColor.Factory.newInstance();
                colour.setTheme(5);
                if (tints[column] != 0) {
                  colour.setTint(tints[column]);
                }
                style.setFillForegroundColor(XSSFColor.from(colour));
                style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
                row.createCell(column).setCellValue("J1");
                row.getCell(column).setCellStyle(style);
              }
            },
            "<a:theme xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\"><a:clrScheme>"
                + "<a:dk1><a:sysClr val=\"windowText\" lastClr=\"000000\"/></a:dk1>"
                + "<a:lt1><a:sysClr val=\"window\" lastClr=\"FFFFFF\"/></a:lt1>"
                + "<a:dk2><a:srgbClr val=\"111111\"/></a:dk2><a:lt2><a:srgbClr val=\"222222\"/></a:lt2>"
                + "<a:accent1><a:srgbClr val=\"333333\"/></a:accent1>"
                + "<a:accent2><a:srgbClr val=\"C00000\"/></a:accent2>"
                + "</a:clrScheme></a:theme>");
    assertEquals("C00000", book.cell(1, 1).fill());
    assertEquals("600000", book.cell(1, 2).fill());
    assertEquals("FF6060", book.cell(1, 3).fill());
  }

  @Test
  void an_open_document_s_fill_is_seen_as_well() throws Exception {
    Path file = folder.resolve("list.ods");
    SpreadSheet book = new SpreadSheet();
    var sheet = new com.github.miachm.sods.Sheet("List", 2, 3);
    sheet.getRange(0, 0).setValue("J1-A");
    sheet.getRange(0, 2).setValue("J1-C");
    Style red = new Style();
    red.setBackgroundColor(new Color(255, 0, 0));
    sheet.getRange(0, 0, 1, 2).setStyle(red);
    book.appendSheet(sheet);
    book.save(file.toFile());
    Book read = Book.read(file);
    assertEquals("FF0000", read.cell(1, 1).fill());
    assertEquals("FF0000", read.cell(1, 2).fill(), "blank");
    assertEquals("", read.cell(1, 3).fill());
  }

  @ParameterizedTest
  @ValueSource(strings = {"list.xls", "list.xlsx"})
  void hidden_rows_and_columns_are_read_and_named(String file) throws Exception {
    Book book =
        Book.of(
            folder.resolve(file),
            workbook -> {
              var sheet = workbook.createSheet("List");
              for (int row = 0; row < 3; row++) {
                sheet.createRow(row).createCell(0).setCellValue("W" + row);
                sheet.getRow(row).createCell(2).setCellValue("note");
              }
              sheet.getRow(1).setZeroHeight(true);
              sheet.setColumnHidden(2, true);
            });
    assertEquals(Set.of(2), Set.copyOf(book.around().hiddenRows()));
    assertEquals(Set.of(3), Set.copyOf(book.around().hiddenColumns()));
    assertEquals(List.of("W1", "", "note"), book.texts(2));
  }

  @Test
  void a_sheet_of_a_workbook_is_a_place_and_so_are_its_cells() throws Exception {
    var problems = new dev.ringout.source.Problems();
    try (TabularFile saved =
        TabularFile.open(SAVED.resolve("list.xlsx"), "shop's list.xlsx", problems)) {
      Sheet sheet = saved.sheets().get(0);
      assertEquals("shop's list.xlsx", sheet.place().file());
      assertEquals(sheet.name(), sheet.place().sheet());
    }
  }

  /** The same list, saved by a spreadsheet program in three formats. */
  @Test
  void what_one_program_saves_in_three_formats_has_the_same_cells() throws Exception {
    Book expected = Book.read(SAVED.resolve("list.xlsx"));
    for (String file : List.of("list.xls", "list.ods")) {
      Book other = Book.read(SAVED.resolve(file));
      assertEquals(expected.sheet(), other.sheet(), file);
      for (Row row : expected.rows()) {
        for (int column = 1; column <= row.cells().size(); column++) {
          Cell cell = row.cell(column);
          Cell read = other.cell(row.number(), column);
          String where = file + " " + row.number() + ":" + column;
          assertEquals(cell.kind() + " " + cell.text(), read.kind() + " " + read.text(), where);
          assertEquals(cell.ink(), read.ink(), where);
        }
      }
      assertEquals(expected.around().merges(), other.around().merges(), file);
      assertEquals(expected.around().hiddenRows(), other.around().hiddenRows(), file);
      assertEquals(Map.copyOf(expected.around().comments()), Map.copyOf(other.around().comments()));
    }
  }
}

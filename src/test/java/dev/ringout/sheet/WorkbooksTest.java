package dev.ringout.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.RichTextString;
import org.apache.poi.ss.util.CellRangeAddress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

  @Test
  void a_formula_whose_result_was_not_stored_is_no_number() throws Exception {
    Book book =
        Book.of(
            folder.resolve("list.xlsx"),
            workbook ->
                workbook.createSheet("List").createRow(0).createCell(0).setCellFormula("1+1"));
    assertEquals(Cell.Stored.UNCALCULATED, book.cell(1, 1).kind());
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

package dev.ringout.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.record.EmbeddedDigest;
import dev.ringout.record.RecordBlock;
import dev.ringout.record.RecordContent;
import dev.ringout.sheet.OutFile;
import dev.ringout.sheet.PrintForm.PaperSize;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One content as a page, a PDF and a workbook: each says the same, and shows the same digest. */
class RecordFormsTest {
  private static final String DIGEST = "0123456789abcdef".repeat(4);

  /** What a spreadsheet takes for a formula where it is not kept as text. */
  private static final List<String> LIKE_FORMULAS = List.of("=1+1", "+24 V", "-24 V", "@SUM(A1)");

  private static final RecordContent RECORD =
      new RecordContent(
          "Span lock box",
          "0418",
          List.of(
              new RecordBlock.Heading(1, "Test record: Span <lock> box"),
              new RecordBlock.Verdict("CONFORMS", true),
              new RecordBlock.Heading(2, "Readings"),
              new RecordBlock.Table(
                  "Readings",
                  List.of("Signal", "Verdict"),
                  LIKE_FORMULAS.stream().map(one -> List.of(one, "conforms")).toList(),
                  1),
              new RecordBlock.Words("Content digest " + DIGEST, false)),
          DIGEST);

  @TempDir Path folder;

  private Path page() throws IOException {
    Path file = folder.resolve("record.html");
    Files.writeString(file, RecordHtml.write(RECORD, PaperSize.A4));
    return file;
  }

  private Path pdf() throws IOException {
    Path file = folder.resolve("record.pdf");
    try (OutputStream out = Files.newOutputStream(file)) {
      PdfFile.writeTagged(out, RecordHtml.forPaper(RECORD, PaperSize.A4));
    }
    return file;
  }

  private Path workbook() throws IOException {
    Path file = folder.resolve("record.xlsx");
    OutFile.workbook(file, RecordSheets.of(RECORD));
    return file;
  }

  @Test
  void each_form_shows_the_digest_of_its_content() throws IOException {
    assertEquals(Optional.of(DIGEST), EmbeddedDigest.of(page()));
    assertEquals(Optional.of(DIGEST), EmbeddedDigest.of(pdf()));
    assertEquals(Optional.of(DIGEST), EmbeddedDigest.of(workbook()));
  }

  /** A tagged PDF of a record with one table, whose digest is its last words. */
  private Path pdfOfReadings(List<String> headings, List<List<String>> rows) throws IOException {
    RecordContent record =
        new RecordContent(
            "Span lock box",
            "0418",
            List.of(
                new RecordBlock.Heading(2, "Readings"),
                new RecordBlock.Table("Readings", headings, rows, 1),
                new RecordBlock.Words("Content digest " + DIGEST, false)),
            DIGEST);
    Path file = folder.resolve("long.pdf");
    try (OutputStream out = Files.newOutputStream(file)) {
      PdfFile.writeTagged(out, RecordHtml.forPaper(record, PaperSize.A4));
    }
    return file;
  }

  /** What is too long to be set at once is set in parts, and nobody sees where they meet. */
  @Test
  void a_long_pdf_is_one_document_with_all_rows_numbered_pages_and_tags() throws IOException {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 1; i <= PaperParts.MOST_ROWS + 100; i++) {
      rows.add(List.of("S" + i, "conforms"));
    }
    Path file = pdfOfReadings(List.of("Signal", "Verdict"), rows);
    assertEquals(Optional.of(DIGEST), EmbeddedDigest.of(file));
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      int pages = document.getNumberOfPages();
      String text = new PDFTextStripper().getText(document);
      for (int page = 1; page <= pages; page++) {
        String number = "page " + page + " of " + pages;
        assertEquals(2, (" " + text + " ").split(number + "\\s", -1).length, number);
      }
      for (List<String> row : rows) {
        assertTrue(text.contains(row.get(0) + " conforms"), row.get(0));
      }
      assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked(), "tagged");
      assertEquals("en", document.getDocumentCatalog().getLanguage());
      assertEquals("Test record: Span lock box", document.getDocumentInformation().getTitle());
    }
  }

  /** Thousands of rows are set without HTML; what is said of each is the same. */
  @Test
  void a_very_long_table_has_all_its_rows_its_headings_on_every_page_and_the_digest()
      throws IOException {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 1; i <= PaperParts.LONG_ROWS + 100; i++) {
      rows.add(List.of("S" + i, i == 7 ? "open" : "conforms", i == 9 ? "a note ".repeat(40) : "↯"));
    }
    Path file = pdfOfReadings(List.of("Signal", "Verdict", "Note"), rows);
    assertEquals(Optional.of(DIGEST), EmbeddedDigest.of(file));
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      PDFTextStripper stripper = new PDFTextStripper();
      StringBuilder all = new StringBuilder();
      int pages = document.getNumberOfPages();
      for (int page = 1; page <= pages; page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        String text = stripper.getText(document);
        all.append(text);
        assertTrue(text.contains("page " + page + " of " + pages), text);
        assertTrue(text.contains("serial number 0418"), text);
        assertTrue(page == 1 || page == pages || text.contains("Signal Verdict Note"), text);
      }
      for (List<String> row : rows) {
        assertTrue(all.toString().contains(row.get(0) + " " + row.get(1) + " "), row.get(0));
      }
      assertEquals(40, all.toString().split("a\\s+note", -1).length - 1, "broken into lines");
    }
  }

  @Test
  void a_heading_is_not_parted_from_what_it_begins() {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < PaperParts.MOST_ROWS; i++) {
      rows.add(List.of("S" + i));
    }
    RecordBlock.Table table = new RecordBlock.Table("Readings", List.of("Signal"), rows, -1);
    RecordContent two =
        new RecordContent(
            "Span lock box",
            "0418",
            List.of(table, new RecordBlock.Heading(2, "Remarks"), table),
            DIGEST);
    List<Supplier<String>> parts = RecordHtml.forPaper(two, PaperSize.A4).pages();
    assertEquals(2, parts.size());
    assertFalse(parts.get(0).get().contains("Remarks"));
    assertTrue(parts.get(1).get().contains("Remarks"));
  }

  /** A folder for all users of the machine may be another's, and what is left there stays. */
  @Test
  void nothing_is_left_in_the_temporary_folder_not_even_by_runs_that_were_killed()
      throws IOException {
    Path all = Path.of(System.getProperty("java.io.tmpdir"));
    Path killed = Files.createTempDirectory(all, "ringout-999999999999-");
    Files.writeString(killed.resolve("file"), "font");
    Path living = Files.createTempDirectory(all, "ringout-" + ProcessHandle.current().pid() + "-");
    pdf();
    assertFalse(Files.exists(killed));
    assertTrue(Files.exists(living), "of a process that goes on");
    Files.delete(living);
  }

  @Test
  void a_workbook_is_written_without_the_folder_for_all() throws IOException {
    Path closed = Files.writeString(folder.resolve("closed"), "");
    String before = System.getProperty("java.io.tmpdir");
    System.setProperty("java.io.tmpdir", closed.toString());
    try {
      assertTrue(Files.size(workbook()) > 0);
    } finally {
      System.setProperty("java.io.tmpdir", before);
    }
  }

  @Test
  void a_cell_that_begins_like_a_formula_stays_text() throws IOException {
    try (Workbook workbook = WorkbookFactory.create(workbook().toFile())) {
      int row = 1;
      for (String text : LIKE_FORMULAS) {
        Row cells = workbook.getSheet("Readings").getRow(row++);
        Cell cell = cells.getCell(0);
        assertEquals(CellType.STRING, cell.getCellType(), text);
        assertEquals(text, cell.getStringCellValue());
      }
    }
  }

  @Test
  void what_a_unit_is_called_is_no_mark_of_the_page() throws IOException {
    String page = Files.readString(page());
    assertTrue(page.contains("Test record: Span &lt;lock&gt; box"));
    assertFalse(page.contains("<lock>"));
  }

  @Test
  void a_pdf_has_a_title_a_language_and_its_structure_tagged() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf().toFile())) {
      assertEquals("Test record: Span lock box", document.getDocumentInformation().getTitle());
      assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked(), "tagged");
      assertTrue(document.getDocumentCatalog().getStructureTreeRoot() != null, "with structure");
      assertEquals("en", document.getDocumentCatalog().getLanguage());
    }
  }

  @Test
  void the_same_content_gives_the_same_bytes() throws IOException {
    byte[] first = Files.readAllBytes(pdf());
    assertArrayEquals(first, Files.readAllBytes(pdf()));
    byte[] book = Files.readAllBytes(workbook());
    assertArrayEquals(book, Files.readAllBytes(workbook()));
  }

  @Test
  void the_page_for_paper_has_nothing_that_only_a_screen_needs() {
    String paper = RecordHtml.forPaper(RECORD, PaperSize.LETTER).pages().get(0).get();
    assertTrue(paper.contains("@page { size: letter;"));
    assertFalse(paper.contains("<script") || paper.contains("<nav"), "no script, no navigation");
  }
}

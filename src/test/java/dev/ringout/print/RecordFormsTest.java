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
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
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
    String paper = RecordHtml.forPaper(RECORD, PaperSize.LETTER);
    assertTrue(paper.contains("@page { size: letter;"));
    assertFalse(paper.contains("<script") || paper.contains("<nav"), "no script, no navigation");
  }
}

package dev.ringout.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.record.EmbeddedDigest;
import dev.ringout.record.RecordBlock;
import dev.ringout.record.RecordContent;
import dev.ringout.sheet.OutFile;
import dev.ringout.sheet.PrintForm.PaperSize;
import dev.ringout.support.DrawnPhotograph;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A photograph in a record's page, PDF and workbook. */
class PhotographsInFormsTest {
  private static final String DIGEST = "0123456789abcdef".repeat(4);
  private static final String SHOWS = "Photograph 1: <b>J1</b> \"backed out\" & nicked";
  private static final byte[] JPEG = DrawnPhotograph.of("jpeg", 1600, 1200);

  private static final String BASE64 = Base64.getEncoder().encodeToString(JPEG);

  private static final RecordContent RECORD =
      new RecordContent(
          "Span lock box",
          "0418",
          List.of(
              new RecordBlock.Heading(2, "What was noted"),
              new RecordBlock.Table(
                  "Noted", List.of("Who", "Said"), List.of(List.of("RA", "x".repeat(500))), -1),
              new RecordBlock.Photograph(
                  BASE64, 1600, 1200, "ab".repeat(32), SHOWS, SHOWS + ". R. Adeyemi."),
              new RecordBlock.Words("Content digest " + DIGEST, false)),
          DIGEST);

  @TempDir Path folder;

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
  void the_page_holds_the_picture_itself_and_what_it_shows_as_text() {
    String page = RecordHtml.write(RECORD, PaperSize.A4);
    String shows = "Photograph 1: &lt;b&gt;J1&lt;/b&gt; &quot;backed out&quot; &amp; nicked";
    assertTrue(page.contains("alt=\"" + shows + "\""), "told to who can't see it");
    assertTrue(page.contains("<figcaption>" + shows + ". R. Adeyemi.</figcaption>"));
    assertTrue(page.contains("src=\"data:image/jpeg;base64," + BASE64));
    assertTrue(page.contains("<figure style=\"width: 126.7mm; max-width: 100%\">"), "95 mm high");
  }

  @Test
  void a_pdf_has_the_picture_tagged_with_what_it_shows() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf().toFile())) {
      List<String> figures = new ArrayList<>();
      figures(document.getDocumentCatalog().getStructureTreeRoot(), figures);
      assertEquals(List.of(SHOWS), figures);
      List<PDImageXObject> pictures = pictures(document);
      assertEquals(1, pictures.size());
      assertEquals(1600, pictures.get(0).getWidth());
    }
    assertEquals(Optional.of(DIGEST), EmbeddedDigest.of(pdf()));
  }

  private static void figures(PDStructureNode node, List<String> figures) {
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        if (element.getStructureType().equals("Figure")) {
          figures.add(element.getAlternateDescription());
        }
        figures(element, figures);
      }
    }
  }

  private static List<PDImageXObject> pictures(PDDocument document) throws IOException {
    List<PDImageXObject> pictures = new ArrayList<>();
    for (PDPage page : document.getPages()) {
      for (COSName name : page.getResources().getXObjectNames()) {
        PDXObject object = page.getResources().getXObject(name);
        if (object instanceof PDImageXObject image) {
          pictures.add(image);
        }
      }
    }
    return pictures;
  }

  @Test
  void a_workbook_holds_it_on_a_sheet_of_its_own_with_what_it_shows() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(workbook()))) {
      XSSFSheet sheet = workbook.getSheet("Photographs");
      assertEquals(SHOWS + ". R. Adeyemi.", sheet.getRow(1).getCell(1).getStringCellValue());
      XSSFPicture picture = (XSSFPicture) sheet.getDrawingPatriarch().getShapes().get(0);
      assertArrayEquals(JPEG, picture.getPictureData().getData());
      assertEquals(SHOWS, picture.getCTPicture().getNvPicPr().getCNvPr().getDescr());
      assertEquals(1, picture.getClientAnchor().getRow1());
      assertEquals(1, picture.getClientAnchor().getRow2(), "within its cell");
    }
    assertEquals(Optional.of(DIGEST), EmbeddedDigest.of(workbook()));
  }

  @Test
  void the_same_photographs_give_the_same_bytes() throws IOException {
    byte[] first = Files.readAllBytes(pdf());
    assertArrayEquals(first, Files.readAllBytes(pdf()));
    byte[] book = Files.readAllBytes(workbook());
    assertArrayEquals(book, Files.readAllBytes(workbook()));
  }

  /** Somebody's words may be one word that no line holds. */
  @Test
  void an_endless_word_stays_on_the_paper() throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf().toFile())) {
      String text = new PDFTextStripper().getText(document);
      String row = text.substring(text.indexOf("RA x"), text.indexOf("Photograph 1"));
      assertEquals(500, row.chars().filter(c -> c == 'x').count());
      assertTrue(text.lines().noneMatch(one -> one.contains("x".repeat(41))), text);
    }
  }
}

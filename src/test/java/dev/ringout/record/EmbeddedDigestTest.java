package dev.ringout.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.sheet.OutFile;
import dev.ringout.sheet.OutSheet;
import dev.ringout.source.FileBytes;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.junit.jupiter.api.Test;

/** The digest in a record that anyone may have made: whatever it is, it is read or it is none. */
class EmbeddedDigestTest {
  private static final String DIGEST = "0123456789abcdef".repeat(4);
  private static final int DEEP = 200_000;

  private static FileBytes workbook() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    OutSheet sheet = new OutSheet("Record", List.of("Content digest " + DIGEST), List.of());
    OutFile.workbook(out, List.of(sheet));
    return FileBytes.of("record.xlsx", out.toByteArray());
  }

  private static byte[] pdf() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (PDDocument document = new PDDocument()) {
      PDPage page = new PDPage();
      document.addPage(page);
      try (PDPageContentStream content = new PDPageContentStream(document, page)) {
        content.beginText();
        content.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 8);
        content.showText("Content digest " + DIGEST);
        content.endText();
      }
      document.save(out);
    }
    return out.toByteArray();
  }

  /** Reads it, or says that it can't be read; all else is a defect. */
  private static Optional<String> digest(FileBytes record) {
    try {
      return EmbeddedDigest.of(record);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  @Test
  void it_is_found_in_a_workbook_and_in_a_pdf() throws IOException {
    assertEquals(Optional.of(DIGEST), EmbeddedDigest.of(workbook()));
    assertEquals(Optional.of(DIGEST), EmbeddedDigest.of(FileBytes.of("record.pdf", pdf())));
  }

  @Test
  void elements_in_each_other_without_end_are_read_or_refused() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipInputStream from =
            new ZipInputStream(new ByteArrayInputStream(workbook().open().readAllBytes()));
        ZipOutputStream to = new ZipOutputStream(out)) {
      for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
        String text = new String(from.readAllBytes(), StandardCharsets.UTF_8);
        to.putNextEntry(new ZipEntry(entry.getName()));
        String deep =
            text.replace("<sheetData>", "<a>".repeat(DEEP) + "</a>".repeat(DEEP) + "<sheetData>");
        to.write(deep.getBytes(StandardCharsets.UTF_8));
      }
    }
    digest(FileBytes.of("record.xlsx", out.toByteArray()));
  }

  @Test
  void a_pdf_whose_parts_hold_each_other_without_end_is_refused() throws IOException {
    String nested =
        "%PDF-1.7\n1 0 obj "
            + "[".repeat(DEEP)
            + "]".repeat(DEEP)
            + " endobj\ntrailer << /Root 1 0 R >>\n%%EOF\n";
    FileBytes record = FileBytes.of("record.pdf", nested.getBytes(StandardCharsets.US_ASCII));
    IOException refused = assertThrows(IOException.class, () -> EmbeddedDigest.of(record));
    assertTrue(!String.valueOf(refused.getMessage()).isEmpty());
  }

  @Test
  void damage_anywhere_makes_it_another_or_none() throws IOException {
    Random random = new Random(1);
    byte[] book = workbook().open().readAllBytes();
    byte[] paper = pdf();
    for (int i = 0; i < 200; i++) {
      digest(FileBytes.of("record.xlsx", damaged(book, random)));
      digest(FileBytes.of("record.pdf", damaged(paper, random)));
    }
  }

  private static byte[] damaged(byte[] whole, Random random) {
    byte[] bytes = whole.clone();
    for (int i = 1 + random.nextInt(6); i > 0; i--) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }
}

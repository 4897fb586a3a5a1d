package dev.ringout.print;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.multipdf.PDFMergerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** A page of HTML as a PDF with its own font, the same bytes for the same page. */
public final class PdfFile {
  /** Comes with the PDF library; has the Ω that the built-in fonts of PDF lack. */
  private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private static final int NORMAL_WEIGHT = 400;
  private static final int MOST_TAGGED_PARTS = 4;

  private PdfFile() {}

  /** Writes the file. */
  public static void write(OutputStream out, PaperParts parts) throws IOException {
    write(out, parts, false);
  }

  /**
   * Writes the file with its headings and tables tagged (PDF/UA, ISO 14289-1). A very long one is
   * not: tags of all its cells are in memory at once until it is whole.
   */
  public static void writeTagged(OutputStream out, PaperParts parts) throws IOException {
    write(out, parts, parts.parts().size() <= MOST_TAGGED_PARTS && !parts.hasLongTable());
  }

  private static void write(OutputStream out, PaperParts parts, boolean tagged) throws IOException {
    // Drawings take a font only from a file, and else any that the machine has.
    try (PrivateFile font = PrivateFile.of(PdfFile::font);
        PDDocument whole = set(parts.pages().get(0), tagged, font)) {
      List<PaperParts.Part> others = parts.parts().subList(1, parts.parts().size());
      if (!others.isEmpty()) {
        PDFont written = font(whole);
        for (PaperParts.Part part : others) {
          append(whole, part, tagged, font, written);
        }
        PageNumbers.write(whole, written, parts.numbers());
      }
      PDDocumentInformation information = whole.getDocumentInformation();
      information.setCreationDate(null);
      information.setModificationDate(null);
      whole.setDocumentId(0L);
      whole.save(out);
    }
  }

  private static void append(
      PDDocument whole, PaperParts.Part part, boolean tagged, PrivateFile font, PDFont written)
      throws IOException {
    if (part.table().isPresent()) {
      PaperTablePages.write(whole, written, part.table().get());
    }
    if (part.page().isPresent()) {
      try (PDDocument next = set(part.page().get(), tagged, font)) {
        new PDFMergerUtility().appendDocument(whole, next);
      }
    }
  }

  /** A page of HTML that is not kept as a file. */
  static PDDocument document(String html) throws IOException {
    try (PrivateFile font = PrivateFile.of(PdfFile::font)) {
      return set(() -> html, false, font);
    }
  }

  /** Sets one part; of many each is packed at once, so that its boxes and objects can go. */
  private static PDDocument set(Supplier<String> part, boolean tagged, PrivateFile font)
      throws IOException {
    XRLog.setLoggingEnabled(false);
    // Else each picture goes through a file in a folder for all users of the machine.
    ImageIO.setUseCache(false);
    PdfRendererBuilder builder = new PdfRendererBuilder();
    if (tagged) {
      builder.usePdfUaAccessibility(true);
    }
    PDDocument document = new PDDocument();
    builder.useFont(new PDFontSupplier(font(document)), "Liberation Sans");
    builder.useSVGDrawer(new BatikSVGDrawer());
    builder.useFont(
        font.path().toFile(),
        "Liberation Sans",
        NORMAL_WEIGHT,
        FontStyle.NORMAL,
        true,
        Set.of(FSFontUseCase.SVG));
    builder.withHtmlContent(part.get(), null);
    builder.usePDDocument(document);
    try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
      renderer.createPDFWithoutClosing();
    }
    return document;
  }

  /** Without its ligatures: to look for them takes most of the time that a page takes. */
  private static PDFont font(PDDocument document) throws IOException {
    try (InputStream letters = font()) {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(letters));
      font.setEnableGsub(false);
      return PDType0Font.load(document, font, true);
    }
  }

  private static InputStream font() {
    InputStream font = PDDocument.class.getResourceAsStream(FONT);
    if (font == null) {
      throw new UncheckedIOException(new IOException("the PDF library holds no font " + FONT));
    }
    return font;
  }
}

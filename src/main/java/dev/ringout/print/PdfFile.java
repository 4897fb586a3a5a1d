package dev.ringout.print;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Set;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/** A page of HTML as a PDF with its own font, the same bytes for the same page. */
public final class PdfFile {
  /** Comes with the PDF library; has the Ω that the built-in fonts of PDF lack. */
  private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private static final int NORMAL_WEIGHT = 400;

  private PdfFile() {}

  /** Writes the file. */
  public static void write(OutputStream out, String html) throws IOException {
    write(out, html, new PdfRendererBuilder());
  }

  /** Writes the file with its headings and tables tagged (PDF/UA, ISO 14289-1). */
  public static void writeTagged(OutputStream out, String html) throws IOException {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.usePdfUaAccessibility(true);
    write(out, html, builder);
  }

  private static void write(OutputStream out, String html, PdfRendererBuilder builder)
      throws IOException {
    XRLog.setLoggingEnabled(false);
    builder.useFont(PdfFile::font, "Liberation Sans");
    builder.withHtmlContent(html, null);
    builder.useSVGDrawer(new BatikSVGDrawer());
    // Drawings take a font only from a file, and else any that the machine has.
    try (PrivateFile fontFile = PrivateFile.of(PdfFile::font)) {
      builder.useFont(
          fontFile.path().toFile(),
          "Liberation Sans",
          NORMAL_WEIGHT,
          FontStyle.NORMAL,
          true,
          Set.of(FSFontUseCase.SVG));
      render(builder, out);
    }
  }

  private static void render(PdfRendererBuilder builder, OutputStream out) throws IOException {
    try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
      renderer.createPDFWithoutClosing();
      PDDocument document = renderer.getPdfDocument();
      PDDocumentInformation information = document.getDocumentInformation();
      information.setCreationDate(null);
      information.setModificationDate(null);
      document.setDocumentId(0L);
      document.save(out);
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

package dev.ringout.record;

import dev.ringout.sheet.SheetTexts;
import dev.ringout.source.FileBytes;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** The digest that a record shows of its own content, read from the record itself. */
public final class EmbeddedDigest {
  private static final Pattern SHOWN = Pattern.compile("Content digest\\s+([0-9a-f\\s]{64,80})");
  private static final int HEX_DIGITS = 64;

  private EmbeddedDigest() {}

  /** The digest, where the record shows one. */
  public static Optional<String> of(Path record) throws IOException {
    return of(FileBytes.read(record));
  }

  /** The digest, where a record that was read shows one. */
  public static Optional<String> of(FileBytes record) throws IOException {
    Matcher shown = SHOWN.matcher(text(record));
    String last = "";
    while (shown.find()) {
      last = shown.group(1).replaceAll("\\s", "");
    }
    return last.length() < HEX_DIGITS
        ? Optional.empty()
        : Optional.of(last.substring(0, HEX_DIGITS));
  }

  private static String text(FileBytes record) throws IOException {
    String name = record.name().toLowerCase(Locale.ROOT);
    if (name.endsWith(".pdf")) {
      try (PDDocument document = Loader.loadPDF(record.open().readAllBytes())) {
        PDFTextStripper last = new PDFTextStripper();
        last.setStartPage(document.getNumberOfPages());
        return last.getText(document);
      } catch (RuntimeException | StackOverflowError e) {
        // The library throws whatever it stumbles over in a damaged document, and goes down without
        // end where one thing in it holds the next.
        throw new IOException("it is not a PDF: " + e.getMessage(), e);
      }
    }
    if (name.endsWith(".xlsx")) {
      return SheetTexts.of(record);
    }
    return record.utf8();
  }
}

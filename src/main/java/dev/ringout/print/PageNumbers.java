package dev.ringout.print;

import dev.ringout.sheet.PrintForm;
import java.io.IOException;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** Numbers on pages that were set in parts: how many there are is known at the end. */
final class PageNumbers {
  private static final float POINTS_OF_A_MM = (float) PrintForm.POINTS_OF_A_MM;
  private static final float FROM_BELOW_MM = 7;
  private static final float FROM_RIGHT_MM = 12;
  private static final float SIZE = 8;

  private PageNumbers() {}

  static void write(PDDocument document, PDFont font, PaperParts.Numbers where) throws IOException {
    int pages = document.getNumberOfPages();
    int number = 0;
    for (PDPage page : document.getPages()) {
      number++;
      String text = "page " + number + " of " + pages;
      float width = font.getStringWidth(text) / 1000 * SIZE;
      float wide = page.getMediaBox().getWidth();
      float left =
          where == PaperParts.Numbers.MIDDLE
              ? (wide - width) / 2
              : wide - width - FROM_RIGHT_MM * POINTS_OF_A_MM;
      try (PDPageContentStream to =
          new PDPageContentStream(document, page, AppendMode.APPEND, true, true)) {
        // What is no part of the text is marked as such (ISO 14289-1, 7.8).
        to.beginMarkedContent(COSName.ARTIFACT);
        to.beginText();
        to.setFont(font, SIZE);
        to.newLineAtOffset(left, FROM_BELOW_MM * POINTS_OF_A_MM);
        to.showText(text);
        to.endText();
        to.endMarkedContent();
      }
    }
  }
}

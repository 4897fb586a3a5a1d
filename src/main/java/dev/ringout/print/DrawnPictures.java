package dev.ringout.print;

import dev.ringout.sheet.OutDrawing;
import dev.ringout.sheet.OutSheet;
import dev.ringout.units.Text;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * Drawings as pixels, for workbooks: set as the PDF sets them, with the font that comes along, so
 * that they look the same on every machine.
 */
public final class DrawnPictures {
  private static final float DOTS_PER_INCH = 200;
  private static final double MM_OF_AN_INCH = 25.4;
  private static final Pattern SVG =
      Pattern.compile(
          "<svg [^>]*?width=\"([0-9.]+)mm\" height=\"([0-9.]+)mm\"[^>]*?aria-label=\"([^\"]*)\""
              + ".*?</svg>",
          Pattern.DOTALL);

  private DrawnPictures() {}

  private record Drawing(int sheet, String svg, double widthMm, double heightMm, String shows) {}

  /** The sheets, with the drawings of each below its table. */
  public static List<OutSheet> below(List<OutSheet> sheets) throws IOException {
    List<Drawing> drawings = new ArrayList<>();
    for (int sheet = 0; sheet < sheets.size(); sheet++) {
      Matcher svg = SVG.matcher(sheets.get(sheet).look().picture());
      while (svg.find()) {
        drawings.add(
            new Drawing(
                sheet,
                svg.group(),
                Double.parseDouble(svg.group(1)),
                Double.parseDouble(svg.group(2)),
                svg.group(3)));
      }
    }
    if (drawings.isEmpty()) {
      return sheets;
    }
    List<String> pixels = drawn(drawings);
    List<OutSheet> with = new ArrayList<>();
    for (int sheet = 0; sheet < sheets.size(); sheet++) {
      List<OutDrawing> own = new ArrayList<>();
      for (int one = 0; one < drawings.size(); one++) {
        Drawing drawing = drawings.get(one);
        if (drawing.sheet == sheet) {
          own.add(
              new OutDrawing(pixels.get(one), drawing.widthMm, drawing.heightMm, drawing.shows));
        }
      }
      with.add(sheets.get(sheet).withDrawings(own));
    }
    return with;
  }

  /** Each as the bytes of a PNG (RFC 4648), in black, white and what lies between. */
  private static List<String> drawn(List<Drawing> drawings) throws IOException {
    double widest = drawings.stream().mapToDouble(Drawing::widthMm).max().orElse(1);
    double highest = drawings.stream().mapToDouble(Drawing::heightMm).max().orElse(1);
    StringBuilder html =
        new StringBuilder(
            Text.of(
                "<!DOCTYPE html>\n<html><head><title>Drawings</title><style>\n"
                    + "@page { size: %.1fmm %.1fmm; margin: 0; } body { margin: 0; }"
                    + " svg { display: block; page-break-after: always; }</style></head><body>\n",
                widest, highest + 2));
    drawings.forEach(drawing -> html.append(drawing.svg));
    html.append("</body></html>\n");
    List<String> pixels = new ArrayList<>();
    try (PDDocument document = PdfFile.document(html.toString())) {
      PDFRenderer renderer = new PDFRenderer(document);
      for (int one = 0; one < drawings.size(); one++) {
        BufferedImage page = renderer.renderImageWithDPI(one, DOTS_PER_INCH, ImageType.GRAY);
        Drawing drawing = drawings.get(one);
        pixels.add(
            png(
                page.getSubimage(
                    0,
                    0,
                    Math.min(page.getWidth(), dots(drawing.widthMm)),
                    Math.min(page.getHeight(), dots(drawing.heightMm)))));
      }
    }
    return pixels;
  }

  private static int dots(double mm) {
    return (int) Math.ceil(mm / MM_OF_AN_INCH * DOTS_PER_INCH);
  }

  private static String png(BufferedImage image) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(image, "png", bytes);
    return Base64.getEncoder().encodeToString(bytes.toByteArray());
  }
}

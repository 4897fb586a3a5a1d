package dev.ringout.print;

import static dev.ringout.sheet.PrintForm.POINTS_OF_A_MM;

import dev.ringout.units.Text;
import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;

/**
 * Sets a long table without a page of HTML in between: boxes for each of its cells take the machine
 * several milliseconds a row.
 */
final class PaperTablePages {
  private static final float SIDE = (float) (12 * POINTS_OF_A_MM);
  private static final float ABOVE = (float) (16 * POINTS_OF_A_MM);
  private static final float LETTER = 7.5f;
  private static final float LINE = 9f;
  private static final float PAD = 2f;
  private static final String UNKNOWN = "#";

  private final PDDocument document;
  private final PDFont font;
  private final PaperTable table;
  private final PDRectangle paper;
  private final Map<Integer, String> shown = new HashMap<>();
  private final Map<Integer, Float> widthOf = new HashMap<>();
  private final float[] columns;

  private PaperTablePages(PDDocument document, PDFont font, PaperTable table) {
    this.document = document;
    this.font = font;
    this.table = table;
    this.paper =
        new PDRectangle(
            (float) (table.widthMm() * POINTS_OF_A_MM),
            (float) (table.heightMm() * POINTS_OF_A_MM));
    this.columns = columns();
  }

  /** Adds the pages of a table to a document. */
  static void write(PDDocument document, PDFont font, PaperTable table) throws IOException {
    new PaperTablePages(document, font, table).write();
  }

  private void write() throws IOException {
    int next = 0;
    while (next < table.rows().size()) {
      PDPage page = new PDPage(paper);
      document.addPage(page);
      try (PDPageContentStream to = new PDPageContentStream(document, page)) {
        next = page(to, next);
      }
    }
  }

  /** Fills a page; gives the row with which the next one begins. */
  private int page(PDPageContentStream to, int first) throws IOException {
    float top = paper.getHeight() - ABOVE;
    say(to, table.title(), SIDE, top + 14, 8);
    say(to, table.which(), paper.getWidth() - SIDE - width(table.which(), 8), top + 14, 8);
    say(to, table.foot(), SIDE, ABOVE / 2, 7);
    to.setRenderingMode(RenderingMode.FILL_STROKE);
    to.setLineWidth(0.25f);
    float y = row(to, lines(table.headings()), top);
    to.setRenderingMode(RenderingMode.FILL);
    rule(to, y, 1.4f);
    int next = first;
    while (next < table.rows().size()) {
      List<List<String>> lines = lines(table.rows().get(next));
      if (next > first && y - height(lines) < ABOVE) {
        break;
      }
      boolean fails = table.failing().contains(next);
      if (fails) {
        to.setNonStrokingColor(new Color(0xdd, 0xdd, 0xdd));
        to.addRect(SIDE, y - height(lines), paper.getWidth() - 2 * SIDE, height(lines));
        to.fill();
        to.setNonStrokingColor(Color.BLACK);
      }
      y = row(to, lines, y);
      rule(to, y, fails ? 1.4f : 0.5f);
      next++;
    }
    return next;
  }

  private static float height(List<List<String>> cells) {
    return cells.stream().mapToInt(List::size).max().orElse(1) * LINE + PAD;
  }

  private float row(PDPageContentStream to, List<List<String>> cells, float top)
      throws IOException {
    float x = SIDE;
    for (int column = 0; column < cells.size(); column++) {
      float y = top - LINE + 1;
      for (String line : cells.get(column)) {
        say(to, line, x + PAD, y, LETTER);
        y -= LINE;
      }
      x += columns[column];
    }
    return top - height(cells);
  }

  private void rule(PDPageContentStream to, float y, float width) throws IOException {
    to.setLineWidth(width);
    to.moveTo(SIDE, y);
    to.lineTo(paper.getWidth() - SIDE, y);
    to.stroke();
    to.setLineWidth(0.25f);
  }

  private void say(PDPageContentStream to, String words, float x, float y, float size)
      throws IOException {
    if (words.isEmpty()) {
      return;
    }
    StringBuilder known = new StringBuilder();
    Text.visible(words).codePoints().forEach(one -> known.append(shown(one)));
    to.beginText();
    to.setFont(font, size);
    to.newLineAtOffset(x, y);
    to.showText(known.toString());
    to.endText();
  }

  /** A letter; for one that the font does not have, a sign that stands for it. */
  private String shown(int letter) {
    return shown.computeIfAbsent(
        letter,
        one -> {
          String text = Character.toString(one);
          try {
            font.encode(text);
            return text;
          } catch (IOException | IllegalArgumentException e) {
            return UNKNOWN;
          }
        });
  }

  private float width(String words, float size) {
    float width = 0;
    for (int letter : Text.visible(words).codePoints().toArray()) {
      width += widthOf.computeIfAbsent(letter, this::thousandths);
    }
    return width * size / 1000;
  }

  private float thousandths(int letter) {
    try {
      return font.getStringWidth(shown(letter));
    } catch (IOException e) {
      return 1000;
    }
  }

  /** As wide as what stands in each; where that is too much, the widest are broken into lines. */
  private float[] columns() {
    float[] widest = new float[table.headings().size()];
    for (int column = 0; column < widest.length; column++) {
      widest[column] = width(table.headings().get(column), LETTER) + 0.5f;
      for (List<String> row : table.rows()) {
        widest[column] = Math.max(widest[column], width(row.get(column), LETTER));
      }
      widest[column] += 2 * PAD + 1;
    }
    float all = paper.getWidth() - 2 * SIDE;
    float[] sorted = widest.clone();
    Arrays.sort(sorted);
    float left = all;
    float most = Float.MAX_VALUE;
    for (int column = 0; column < sorted.length && most == Float.MAX_VALUE; column++) {
      float share = left / (sorted.length - column);
      if (sorted[column] > share) {
        most = share;
      }
      left -= sorted[column];
    }
    float sum = 0;
    for (int column = 0; column < widest.length; column++) {
      widest[column] = Math.min(widest[column], most);
      sum += widest[column];
    }
    for (int column = 0; column < widest.length; column++) {
      widest[column] *= all / sum;
    }
    return widest;
  }

  private List<List<String>> lines(List<String> cells) {
    List<List<String>> lines = new ArrayList<>();
    for (int column = 0; column < cells.size(); column++) {
      lines.add(lines(cells.get(column), columns[column] - 2 * PAD));
    }
    return lines;
  }

  private List<String> lines(String text, float most) {
    if (width(text, LETTER) <= most) {
      return List.of(text);
    }
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      if (line.length() > 0 && width(line + " " + word, LETTER) > most) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
      while (width(line.toString(), LETTER) > most && line.length() > 1) {
        int fits = line.length() - 1;
        while (fits > 1 && width(line.substring(0, fits), LETTER) > most) {
          fits--;
        }
        lines.add(line.substring(0, fits));
        line.delete(0, fits);
      }
    }
    lines.add(line.toString());
    return lines;
  }
}

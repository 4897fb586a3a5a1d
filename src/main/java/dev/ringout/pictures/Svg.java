package dev.ringout.pictures;

import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.List;

/** A drawing in the making, in millimetres: what all drawings have in common. */
public final class Svg {
  private final StringBuilder shapes = new StringBuilder();

  /** Adds a shape as {@link Text#of}. */
  public Svg add(String shape, Object... values) {
    shapes.append(Text.of(shape, values)).append('\n');
    return this;
  }

  /** Adds what another has, on top of what is here. */
  public Svg add(Svg other) {
    shapes.append(other.shapes);
    return this;
  }

  /** Words in black. */
  public void text(double x, double y, double size, String anchor, String words) {
    text(x, y, size, anchor, "", words);
  }

  /** Words in lines of at most so many letters. */
  static List<String> lines(String words, int most) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : words.split(" ", -1)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > most) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    if (line.length() > 0) {
      lines.add(line.toString());
    }
    return lines;
  }

  /** Words in bold: by a stroke, since not every page has a bold font at hand. */
  void boldText(double x, double y, double size, String anchor, String words) {
    text(
        x, y, size, anchor, Text.of(" stroke=\"#000\" stroke-width=\"%.3f\"", 0.045 * size), words);
  }

  /** Words in white, on black. */
  void whiteText(double x, double y, double size, String words) {
    text(x, y, size, "middle", " fill=\"#fff\"", words);
  }

  private void text(
      double x, double y, double size, String anchor, String attributes, String words) {
    add(
        "<text x=\"%.2f\" y=\"%.2f\" font-size=\"%.2f\" text-anchor=\"%s\"%s>%s</text>",
        x, y, size, anchor, attributes, Html.escaped(words));
  }

  /**
   * The whole drawing.
   *
   * @param label what it shows, for those who can't see it
   */
  public String drawing(String label, double width, double height) {
    return Text.of(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$.1fmm\" height=\"%2$.1fmm\""
                + " viewBox=\"0 0 %1$.1f %2$.1f\" role=\"img\" aria-label=\"%3$s\""
                + " font-family=\"Liberation Sans, Arial, sans-serif\">\n",
            width, height, Html.escaped(label))
        + shapes
        + "</svg>\n";
  }
}

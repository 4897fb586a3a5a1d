package dev.ringout.record;

import dev.ringout.pictures.Svg;

/** What the charts are drawn with. Told by shape and letter, never by tone alone. */
final class Chart {
  static final double WIDTH_MM = 180;
  static final double NAMES_MM = 34;
  static final double ROW_MM = 5;
  static final int MOST_ROWS = 45;
  private static final double HEAD_MM = 8;
  private static final double FOOT_MM = 9;

  final Svg svg = new Svg();

  /** The middle of the first row. */
  static double firstRow() {
    return HEAD_MM + ROW_MM / 2;
  }

  /** Where so many rows end. */
  static double bottom(int rows) {
    return HEAD_MM + rows * ROW_MM;
  }

  String drawing(String title, double bottom) {
    return svg.drawing(title, WIDTH_MM, bottom + FOOT_MM);
  }

  void grid(double x, double bottom, String words, boolean limit) {
    line(x, 6, x, bottom, limit ? 0.7 : 0.1);
    svg.text(x, bottom + 4, 2.6, "middle", words);
    if (limit) {
      svg.text(x, 4.5, 2.6, "middle", "limit");
    }
  }

  void line(double x1, double y1, double x2, double y2, double width) {
    svg.add(
        "<path d=\"M%.2f %.2f L%.2f %.2f\" stroke=\"#000\" stroke-width=\"%.2f\"/>",
        x1, y1, x2, y2, width);
  }

  /** A ring that is good, a filled lozenge that fails. */
  void dot(double x, double y, boolean fails) {
    if (fails) {
      svg.add("<path d=\"M%.2f %.2f l1.9 1.9 l-1.9 1.9 l-1.9 -1.9 Z\"/>", x, y - 1.9);
    } else {
      svg.add(
          "<circle cx=\"%.2f\" cy=\"%.2f\" r=\"0.9\" fill=\"none\" stroke=\"#000\""
              + " stroke-width=\"0.25\"/>",
          x, y);
    }
  }

  void onWhite(double x, double y, double size, String words) {
    double wide = 0.62 * size * words.length() + 0.8;
    svg.add(
        "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" fill=\"#fff\"/>",
        x - wide / 2, y - size * 0.6, wide, size * 1.2);
    svg.text(x, y + size * 0.35, size, "middle", words);
  }
}

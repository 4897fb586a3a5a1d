package dev.ringout.pictures;

import dev.ringout.harness.NaturalOrder;
import dev.ringout.harness.Point;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What joins some points, twice side by side: a column for each item, a row for each of its points.
 * Lines are told apart by their look and a sign before their names; tone says nothing.
 */
public final class JoinPicture {
  private static final double SIDE_MM = 128;
  private static final double GAP_MM = 6;
  private static final double ROW_MM = 7;
  private static final double HEAD_MM = 15;
  private static final double MOST_COLUMN_MM = 42;
  private static final double BOX_MM = 15;

  /** For what runs from point to point of the last column. */
  private static final double AROUND_MM = 10;

  private final Map<String, List<Point>> columns = new LinkedHashMap<>();
  private final Svg svg = new Svg();

  /** How a line is drawn. */
  public enum Look {
    /** As it is. */
    THIN("", "stroke-width=\"0.25\""),
    /** It goes. */
    BROKEN("− ", "stroke-width=\"0.4\" stroke-dasharray=\"1.6 1.2\""),
    /** It comes. */
    THICK("+ ", "stroke-width=\"0.9\""),
    /** It should join, and does not. */
    OPEN("× ", "stroke-width=\"0.4\" stroke-dasharray=\"0.6 1.8\""),
    /** It joins, but poorly. */
    POOR("? ", "stroke-width=\"0.5\" stroke-dasharray=\"3 0.8\"");

    private final String sign;
    private final String stroke;

    Look(String sign, String stroke) {
      this.sign = sign;
      this.stroke = stroke;
    }
  }

  /** A line between two points. */
  public record Join(Point from, Point to, String name, Look look) {}

  /** One side: what it shows, and its lines. */
  public record Side(String title, List<Join> joins) {}

  public JoinPicture(Collection<Point> points) {
    Map<String, List<Point>> byRef = new TreeMap<>(NaturalOrder.INSTANCE);
    new TreeSet<>(points)
        .forEach(point -> byRef.computeIfAbsent(point.ref(), ref -> new ArrayList<>()).add(point));
    columns.putAll(byRef);
  }

  /**
   * The drawing (SVG).
   *
   * @param note under it; may be empty
   */
  public String draw(String label, Side left, Side right, String note) {
    int rows = columns.values().stream().mapToInt(List::size).max().orElse(1);
    double height = HEAD_MM + rows * ROW_MM + 9;
    double width = 2 * SIDE_MM + GAP_MM;
    side(left, 0);
    side(right, SIDE_MM + GAP_MM);
    text(svg, 0, height - 1, 2.6, "start", note);
    return svg.drawing(label, width, height);
  }

  private void side(Side side, double left) {
    text(svg, left, 4, 3.6, "start", side.title());
    double step =
        Math.min(
            MOST_COLUMN_MM,
            columns.size() < 2 ? 0 : (SIDE_MM - BOX_MM - AROUND_MM) / (columns.size() - 1));
    Map<Point, double[]> at = new HashMap<>();
    int column = 0;
    for (Map.Entry<String, List<Point>> entry : columns.entrySet()) {
      double x = left + column * step;
      // Neighbour columns stand half a row apart, so that a line does not run along a row.
      double top = HEAD_MM + (column % 2) * ROW_MM / 2;
      double below = top + entry.getValue().size() * ROW_MM - 1;
      text(svg, x + BOX_MM / 2, below, 3.2, "middle", entry.getKey());
      for (int row = 0; row < entry.getValue().size(); row++) {
        at.put(entry.getValue().get(row), new double[] {x, top + row * ROW_MM, column});
      }
      column++;
    }
    Svg names = new Svg();
    for (Join join : side.joins()) {
      double[] from = at.get(join.from());
      double[] to = at.get(join.to());
      if (from != null && to != null) {
        line(join, from[0] <= to[0] ? from : to, from[0] <= to[0] ? to : from, names);
      }
    }
    at.forEach(
        (point, corner) -> {
          svg.add(
              "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.1f\" height=\"%.1f\" fill=\"#fff\""
                  + " stroke=\"#000\" stroke-width=\"0.2\"/>",
              corner[0], corner[1] - 2.2, BOX_MM, 4.4);
          text(svg, corner[0] + BOX_MM / 2, corner[1] + 1, 2.8, "middle", point.pin());
        });
    svg.add(names);
  }

  /** From the right side of one box to the left of the other; within a column around it. */
  private void line(Join join, double[] one, double[] other, Svg names) {
    int columnsOver = (int) (other[2] - one[2]);
    boolean sameColumn = columnsOver == 0;
    double x1 = one[0] + BOX_MM;
    double x2 = sameColumn ? other[0] + BOX_MM : other[0];
    double aside = sameColumn ? 4 + Math.abs(one[1] - other[1]) / 6 : 0;
    double above = columnsOver > 1 ? 3.5 * columnsOver : 0;
    double middleX = (x1 + x2) / 2 + 2 * aside;
    double middleY = (one[1] + other[1]) / 2 - 2 * above;
    svg.add(
        "<path d=\"M%.2f %.2f Q%.2f %.2f %.2f %.2f\" fill=\"none\" stroke=\"#000\" %s/>",
        x1, one[1], middleX, middleY, x2, other[1], join.look().stroke);
    String name = join.look().sign + join.name();
    // Near its start: names of lines that cross do not meet. On white: a thick line is black.
    double x = 0.61 * x1 + 0.34 * middleX + 0.05 * x2 + (sameColumn ? 0.6 : 0);
    double y = 0.61 * one[1] + 0.34 * middleY + 0.05 * other[1];
    double wide = 1.4 * name.length();
    if (!name.isBlank()) {
      names.add(
          "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"2.6\" fill=\"#fff\"/>",
          sameColumn ? x : x - wide / 2, y - 2.2, wide);
    }
    text(names, x, y, 2.5, sameColumn ? "start" : "middle", name);
  }

  private static void text(Svg to, double x, double y, double size, String anchor, String words) {
    if (!words.isBlank()) {
      to.text(x, y, size, anchor, words);
    }
  }
}

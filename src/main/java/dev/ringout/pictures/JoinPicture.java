package dev.ringout.pictures;

import dev.ringout.harness.NaturalOrder;
import dev.ringout.harness.Point;
import java.util.ArrayList;
import java.util.Collection;
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
  /** Of one side where its columns need no more: two stand side by side on an upright page. */
  private static final double SIDE_MM = 89;

  private static final double ROW_MM = 7;
  private static final double HEAD_MM = 15;
  private static final double MOST_COLUMN_MM = 42;

  /** Between columns, so that a name has room. */
  private static final double LEAST_COLUMN_MM = 26;

  private static final double BOX_MM = 15;
  private static final double LINE_MM = 3.6;
  private static final double LETTER_MM = 2.5;

  /** Of the height of a letter. */
  private static final double LETTER_WIDTH = 0.58;

  /** Where along its line a name may stand; near its start first: there lines do not cross. */
  private static final double[] PLACES = {
    0.22, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.15, 0.1, 0.9, 0.26, 0.35, 0.45, 0.55, 0.65, 0.75
  };

  /** For what runs from point to point of the last column. */
  private static final double AROUND_MM = 10;

  private final Map<String, List<Point>> columns = new LinkedHashMap<>();

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
    return new Drawn(left, List.of()).drawing(label)
        + new Drawn(right, Svg.lines(note, (int) (SIDE_MM / (LETTER_MM * LETTER_WIDTH))))
            .drawing(label);
  }

  /** A rectangle on which nothing else may stand. */
  private record Room(double x, double y, double width, double height) {
    boolean meets(Room other) {
      return x < other.x + other.width
          && other.x < x + width
          && y < other.y + other.height
          && other.y < y + height;
    }
  }

  /** One side as it is drawn. */
  private final class Drawn {
    private final Side side;
    private final List<String> below;
    private final double step;
    private final Svg svg = new Svg();
    private final Svg names = new Svg();
    private final Map<Point, double[]> at = new LinkedHashMap<>();
    private final List<Room> taken = new ArrayList<>();

    Drawn(Side side, List<String> note) {
      this.side = side;
      this.below = new ArrayList<>(note);
      int gaps = Math.max(1, columns.size() - 1);
      this.step =
          Math.min(
              MOST_COLUMN_MM, Math.max(LEAST_COLUMN_MM, (SIDE_MM - BOX_MM - AROUND_MM) / gaps));
    }

    String drawing(String label) {
      text(svg, 0, 4, 3.6, "start", side.title());
      points();
      for (Join join : side.joins()) {
        double[] from = at.get(join.from());
        double[] to = at.get(join.to());
        if (from != null && to != null) {
          line(join, from[0] <= to[0] ? from : to, from[0] <= to[0] ? to : from);
        }
      }
      at.forEach(this::box);
      svg.add(names);
      int rows = columns.values().stream().mapToInt(List::size).max().orElse(1);
      double y = HEAD_MM + rows * ROW_MM + ROW_MM;
      for (String line : below) {
        text(svg, 0, y, LETTER_MM, "start", line);
        y += LINE_MM;
      }
      double width = (columns.size() - 1) * step + BOX_MM + AROUND_MM;
      return svg.drawing(label, Math.max(SIDE_MM, width), y);
    }

    /** Where each point stands, and the items' names below their columns. */
    private void points() {
      int column = 0;
      for (Map.Entry<String, List<Point>> entry : columns.entrySet()) {
        double x = column * step;
        // Neighbour columns stand half a row apart, so that a line does not run along a row.
        double top = HEAD_MM + (column % 2) * ROW_MM / 2;
        for (int row = 0; row < entry.getValue().size(); row++) {
          double y = top + row * ROW_MM;
          at.put(entry.getValue().get(row), new double[] {x, y, column});
          taken.add(new Room(x, y - 2.2, BOX_MM, 4.4));
        }
        double below = top + entry.getValue().size() * ROW_MM - 1;
        text(svg, x + BOX_MM / 2, below, 3.2, "middle", entry.getKey());
        taken.add(new Room(x, below - 3, BOX_MM, 3.6));
        column++;
      }
    }

    private void box(Point point, double[] corner) {
      svg.add(
          "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.1f\" height=\"%.1f\" fill=\"#fff\""
              + " stroke=\"#000\" stroke-width=\"0.2\"/>",
          corner[0], corner[1] - 2.2, BOX_MM, 4.4);
      text(svg, corner[0] + BOX_MM / 2, corner[1] + 1, 2.8, "middle", point.pin());
    }

    /** From the right side of one box to the left of the other; within a column around it. */
    private void line(Join join, double[] one, double[] other) {
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
      name(join, new double[] {x1, middleX, x2}, new double[] {one[1], middleY, other[1]});
    }

    /** On white, for a thick line is black; where there is no room on its line, below all. */
    private void name(Join join, double[] x, double[] y) {
      String name = join.look().sign + join.name();
      if (name.isBlank()) {
        return;
      }
      double wide = LETTER_WIDTH * LETTER_MM * name.length() + 0.6;
      for (double place : PLACES) {
        double middle = Math.max(wide / 2, along(x, place));
        double base = along(y, place) + 0.9;
        Room room = new Room(middle - wide / 2, base - 2.2, wide, 2.8);
        if (taken.stream().noneMatch(room::meets)) {
          taken.add(room);
          names.add(
              "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" fill=\"#fff\"/>",
              room.x, room.y, room.width, room.height);
          text(names, middle, base, LETTER_MM, "middle", name);
          return;
        }
      }
      below.add(join.from() + " to " + join.to() + ": " + name);
    }
  }

  /** A point of the curve through three (quadratic Bézier). */
  private static double along(double[] ends, double place) {
    double left = 1 - place;
    return left * left * ends[0] + 2 * left * place * ends[1] + place * place * ends[2];
  }

  private static void text(Svg to, double x, double y, double size, String anchor, String words) {
    if (!words.isBlank()) {
      to.text(x, y, size, anchor, words);
    }
  }
}

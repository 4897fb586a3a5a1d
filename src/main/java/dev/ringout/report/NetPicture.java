package dev.ringout.report;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Link;
import dev.ringout.harness.NaturalOrder;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.revision.Change;
import dev.ringout.revision.Difference;
import dev.ringout.revision.NetChange;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Changed nets before and after: a column for each item, a row for each of its points. What goes is
 * drawn broken and marked −, what comes thick and marked +; the rest is thin. Tone says nothing.
 */
final class NetPicture {
  private static final int MOST_POINTS = 36;
  private static final double SIDE_MM = 128;
  private static final double GAP_MM = 6;
  private static final double ROW_MM = 7;
  private static final double HEAD_MM = 15;
  private static final double MOST_COLUMN_MM = 42;
  private static final double BOX_MM = 15;

  /** For what runs from point to point of the last column. */
  private static final double AROUND_MM = 10;

  private final Set<Object> goes = new HashSet<>();
  private final Set<Object> comes = new HashSet<>();
  private final Difference difference;
  private StringBuilder svg = new StringBuilder();

  NetPicture(Difference difference) {
    this.difference = difference;
    for (Change change : difference.changes()) {
      if (change instanceof Change.Removed one) {
        goes.add(one.wire());
      } else if (change instanceof Change.Added one) {
        comes.add(one.wire());
      } else if (change instanceof Change.Moved one) {
        goes.add(one.before());
        comes.add(one.after());
      } else if (change instanceof Change.Jumper one) {
        (one.added() ? comes : goes).add(one.link());
      }
    }
  }

  private record Join(Point from, Point to, String name, boolean changed) {}

  /** The drawing (SVG). */
  String draw(int number, NetChange change) {
    svg = new StringBuilder();
    List<Join> before = joins(difference.before(), change.before(), goes);
    List<Join> after = joins(difference.after(), change.after(), comes);
    Set<Point> shown = shown(change, before, after);
    Map<String, List<Point>> columns = columns(shown);
    int rows = columns.values().stream().mapToInt(List::size).max().orElse(1);
    double height = HEAD_MM + rows * ROW_MM + 9;
    double width = 2 * SIDE_MM + GAP_MM;
    String title = Text.of("Nets %d: %s", number, change.kind().name().toLowerCase(Locale.ROOT));
    svg.append(
        Text.of(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$.1fmm\" height=\"%2$.1fmm\""
                + " viewBox=\"0 0 %1$.1f %2$.1f\" role=\"img\" aria-label=\"%3$s\""
                + " font-family=\"Liberation Sans, Arial, sans-serif\">\n",
            width, height, Html.escaped(title)));
    side(title + ", BEFORE", columns, before, 0, true);
    side(title + ", AFTER", columns, after, SIDE_MM + GAP_MM, false);
    int all = all(change).size();
    if (shown.size() < all) {
      text(
          0,
          height - 1,
          2.6,
          "start",
          Text.of(
              "%d more points of these nets, where nothing changes, are not drawn",
              all - shown.size()));
    }
    return svg.append("</svg>\n").toString();
  }

  private static Set<Point> all(NetChange change) {
    Set<Point> all = new TreeSet<>();
    change.before().forEach(all::addAll);
    change.after().forEach(all::addAll);
    return all;
  }

  private static List<Join> joins(Harness harness, List<List<Point>> nets, Set<Object> changed) {
    Set<Point> points = new HashSet<>();
    nets.forEach(points::addAll);
    List<Join> joins = new ArrayList<>();
    for (Wire wire : harness.wires()) {
      if (points.contains(wire.from())) {
        joins.add(new Join(wire.from(), wire.to(), wire.name(), changed.contains(wire)));
      }
    }
    for (Link link : harness.links()) {
      if (points.contains(link.from())) {
        joins.add(new Join(link.from(), link.to(), "", changed.contains(link)));
      }
    }
    return joins;
  }

  /** All points, or of large nets those where something changes and what is joined to them. */
  private static Set<Point> shown(NetChange change, List<Join> before, List<Join> after) {
    Set<Point> all = all(change);
    if (all.size() <= MOST_POINTS) {
      return all;
    }
    Set<Point> shown = new TreeSet<>();
    List<Join> joins = new ArrayList<>(before);
    joins.addAll(after);
    for (boolean changed : new boolean[] {true, false}) {
      for (Join join : joins) {
        boolean near = join.changed() || shown.contains(join.from()) || shown.contains(join.to());
        if (near && join.changed() == changed && shown.size() < MOST_POINTS - 1) {
          shown.add(join.from());
          shown.add(join.to());
        }
      }
    }
    return shown;
  }

  private static Map<String, List<Point>> columns(Set<Point> points) {
    Map<String, List<Point>> columns = new TreeMap<>(NaturalOrder.INSTANCE);
    points.forEach(
        point -> columns.computeIfAbsent(point.ref(), ref -> new ArrayList<>()).add(point));
    return new LinkedHashMap<>(columns);
  }

  private void side(
      String title, Map<String, List<Point>> columns, List<Join> joins, double left, boolean old) {
    text(left, 4, 3.6, "start", title);
    double step =
        Math.min(
            MOST_COLUMN_MM,
            columns.size() < 2 ? 0 : (SIDE_MM - BOX_MM - AROUND_MM) / (columns.size() - 1));
    Map<Point, double[]> at = new HashMap<>();
    int column = 0;
    for (Map.Entry<String, List<Point>> one : columns.entrySet()) {
      double x = left + column * step;
      // Neighbour columns stand half a row apart, so that a line does not run along a row.
      double top = HEAD_MM + (column % 2) * ROW_MM / 2;
      double below = top + one.getValue().size() * ROW_MM - 1;
      text(x + BOX_MM / 2, below, 3.2, "middle", one.getKey());
      for (int row = 0; row < one.getValue().size(); row++) {
        at.put(one.getValue().get(row), new double[] {x, top + row * ROW_MM, column});
      }
      column++;
    }
    StringBuilder lines = svg;
    StringBuilder names = new StringBuilder();
    for (Join join : joins) {
      double[] from = at.get(join.from());
      double[] to = at.get(join.to());
      if (from != null && to != null) {
        line(join, from[0] <= to[0] ? from : to, from[0] <= to[0] ? to : from, old, names);
      }
    }
    at.forEach(
        (point, corner) -> {
          lines.append(
              Text.of(
                  "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.1f\" height=\"%.1f\" fill=\"#fff\""
                      + " stroke=\"#000\" stroke-width=\"0.2\"/>\n",
                  corner[0], corner[1] - 2.2, BOX_MM, 4.4));
          text(corner[0] + BOX_MM / 2, corner[1] + 1, 2.8, "middle", point.pin());
        });
    svg.append(names);
  }

  /** From the right side of one box to the left of the other; within a column around it. */
  private void line(Join join, double[] one, double[] other, boolean old, StringBuilder names) {
    String look =
        !join.changed()
            ? "stroke-width=\"0.25\""
            : old ? "stroke-width=\"0.4\" stroke-dasharray=\"1.6 1.2\"" : "stroke-width=\"0.9\"";
    int columnsOver = (int) (other[2] - one[2]);
    boolean sameColumn = columnsOver == 0;
    double x1 = one[0] + BOX_MM;
    double x2 = sameColumn ? other[0] + BOX_MM : other[0];
    double aside = sameColumn ? 4 + Math.abs(one[1] - other[1]) / 6 : 0;
    double above = columnsOver > 1 ? 3.5 * columnsOver : 0;
    double middleX = (x1 + x2) / 2 + 2 * aside;
    double middleY = (one[1] + other[1]) / 2 - 2 * above;
    svg.append(
        Text.of(
            "<path d=\"M%.2f %.2f Q%.2f %.2f %.2f %.2f\" fill=\"none\" stroke=\"#000\" %s/>\n",
            x1, one[1], middleX, middleY, x2, other[1], look));
    String name = (join.changed() ? old ? "− " : "+ " : "") + join.name();
    // Near its start: names of lines that cross do not meet. On white: a thick line is black.
    double x = 0.61 * x1 + 0.34 * middleX + 0.05 * x2 + (sameColumn ? 0.6 : 0);
    double y = 0.61 * one[1] + 0.34 * middleY + 0.05 * other[1];
    double wide = 1.4 * name.length();
    if (!name.isBlank()) {
      names.append(
          Text.of(
              "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"2.6\" fill=\"#fff\"/>\n",
              sameColumn ? x : x - wide / 2, y - 2.2, wide));
    }
    StringBuilder all = svg;
    svg = names;
    text(x, y, 2.5, sameColumn ? "start" : "middle", name);
    svg = all;
  }

  private void text(double x, double y, double size, String anchor, String words) {
    if (!words.isBlank()) {
      svg.append(
          Text.of(
              "<text x=\"%.2f\" y=\"%.2f\" font-size=\"%.2f\" text-anchor=\"%s\">%s</text>\n",
              x, y, size, anchor, Html.escaped(words)));
    }
  }
}

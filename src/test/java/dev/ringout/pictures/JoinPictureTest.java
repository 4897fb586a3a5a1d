package dev.ringout.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Point;
import dev.ringout.pictures.JoinPicture.Join;
import dev.ringout.pictures.JoinPicture.Look;
import dev.ringout.pictures.JoinPicture.Side;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Two drawings of the same points, side by side. */
class JoinPictureTest {
  private static final Point J1_A = new Point("J1", "A");
  private static final Point J10_1 = new Point("J10", "1");
  private static final Point J2_1 = new Point("J2", "1");

  private static String drawn(Join... joins) {
    return new JoinPicture(List.of(J10_1, J2_1, J1_A))
        .draw("Nets", new Side("BEFORE", List.of()), new Side("AFTER", List.of(joins)), "");
  }

  private static long count(String drawing, String piece) {
    return drawing.split(Pattern.quote(piece), -1).length - 1L;
  }

  @Test
  void every_point_is_drawn_once_on_each_side() {
    String drawing = drawn();
    assertEquals(2, count(drawing, ">A</text>"));
    assertEquals(2, count(drawing, ">J10</text>"));
    assertTrue(drawing.contains(">BEFORE</text>") && drawing.contains(">AFTER</text>"));
  }

  @Test
  void items_stand_in_their_natural_order() {
    String drawing = drawn();
    assertTrue(drawing.indexOf(">J2</text>") < drawing.indexOf(">J10</text>"));
  }

  @Test
  void a_line_is_told_by_its_stroke_and_by_a_sign_before_its_name() {
    assertTrue(drawn(new Join(J1_A, J2_1, "W1", Look.THICK)).contains(">+ W1</text>"));
    assertTrue(drawn(new Join(J1_A, J2_1, "W1", Look.BROKEN)).contains(">− W1</text>"));
    assertTrue(drawn(new Join(J1_A, J2_1, "OL", Look.OPEN)).contains(">× OL</text>"));
    assertTrue(drawn(new Join(J1_A, J2_1, "9 Ω", Look.POOR)).contains(">? 9 Ω</text>"));
  }

  @Test
  void no_two_looks_have_one_stroke() {
    List<String> strokes =
        Stream.of(Look.values())
            .map(look -> drawn(new Join(J1_A, J2_1, "", look)))
            .map(drawing -> drawing.lines().filter(line -> line.startsWith("<path")).toList())
            .map(List::toString)
            .distinct()
            .toList();
    assertEquals(Look.values().length, strokes.size(), strokes.toString());
  }

  @Test
  void a_line_to_a_point_that_is_not_drawn_is_left_out() {
    String drawing = drawn(new Join(J1_A, new Point("TB1", "4"), "W9", Look.THIN));
    assertFalse(drawing.contains("W9"));
  }

  @Test
  void no_two_names_stand_on_each_other_and_none_is_left_out() {
    List<Point> points = new ArrayList<>();
    List<Join> joins = new ArrayList<>();
    for (int pin = 1; pin <= 8; pin++) {
      for (String item : List.of("J1", "J2", "TB1")) {
        points.add(new Point(item, "" + pin));
      }
    }
    for (int pin = 1; pin <= 8; pin++) {
      joins.add(
          new Join(
              new Point("J1", "" + pin), new Point("J2", "" + (9 - pin)), "W1" + pin, Look.THIN));
      joins.add(
          new Join(
              new Point("J1", "" + pin), new Point("TB1", "1"), "0.2" + pin + " Ω", Look.POOR));
      joins.add(new Join(new Point("J2", "1"), new Point("J2", "" + pin), "0.3" + pin, Look.THICK));
    }
    String drawing =
        new JoinPicture(points)
            .draw("Nets", new Side("BEFORE", List.of()), new Side("AFTER", joins), "");
    List<Rectangle2D> names = new ArrayList<>();
    Matcher rect =
        Pattern.compile(
                "<rect x=\"([-0-9.]+)\" y=\"([-0-9.]+)\" width=\"([0-9.]+)\" height=\"([0-9.]+)\""
                    + " fill=\"#fff\"/>")
            .matcher(drawing);
    while (rect.find()) {
      double[] at = new double[4];
      for (int i = 0; i < at.length; i++) {
        at[i] = Double.parseDouble(rect.group(i + 1)) + (i < 2 ? 0.02 : -0.04);
      }
      Rectangle2D name = new Rectangle2D.Double(at[0], at[1], at[2], at[3]);
      assertTrue(names.stream().noneMatch(name::intersects), name.toString());
      names.add(name);
    }
    assertTrue(names.size() > 8, names.size() + " names on their lines");
    for (Join join : joins) {
      assertTrue(drawing.contains(join.name()), join.name());
    }
  }
}

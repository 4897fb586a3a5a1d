package dev.ringout.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Point;
import dev.ringout.pictures.JoinPicture.Join;
import dev.ringout.pictures.JoinPicture.Look;
import dev.ringout.pictures.JoinPicture.Side;
import java.util.List;
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
}

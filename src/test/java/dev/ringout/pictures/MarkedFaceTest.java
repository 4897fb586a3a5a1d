package dev.ringout.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Place;
import dev.ringout.standards.FacePositions.Spot;
import dev.ringout.work.Face;
import dev.ringout.work.ItemSheet;
import dev.ringout.work.WireEnd;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The face of an insert on which the points of a fault are marked. */
class MarkedFaceTest {
  private static final double PAGE_MM = 186;
  private static final Face FACE =
      new Face(List.of(new Spot("A", 0, 0), new Spot("B", 5, 0)), true, "the test", List.of("C"));

  /** J1 with W1 in A and nothing in B. */
  private static ItemSheet sheet() {
    Point here = new Point("J1", "A");
    Point there = new Point("P2", "1");
    WireEnd end =
        new WireEnd(
            Wire.of("W1", here, there, Place.of("test")),
            here,
            there,
            "",
            Optional.empty(),
            "",
            "W1");
    return new ItemSheet(
        "J1",
        "connector",
        Optional.empty(),
        List.of(
            new ItemSheet.Cavity("A", List.of(end), "", List.of()),
            new ItemSheet.Cavity("B", List.of(), "", List.of())),
        Optional.of(FACE),
        Optional.empty());
  }

  private static int count(String drawing, String piece) {
    return (drawing.length() - drawing.replace(piece, "").length()) / piece.length();
  }

  @Test
  void a_marked_point_bears_its_number_on_both_sides() {
    String drawing = FacePicture.of(sheet(), FACE, Map.of("A", "7"), PAGE_MM);
    assertEquals(2, count(drawing, ">7</text>"));
    assertTrue(drawing.contains("J1  WIRING SIDE") && drawing.contains("J1  MATING SIDE"));
  }

  /** Seven cavities as near to each other as they can be: none has a side that is free. */
  @Test
  void a_mark_stays_in_its_cavity_and_covers_no_name() {
    List<Spot> spots = new ArrayList<>(List.of(new Spot("A", 0, 0)));
    for (int i = 0; i < 6; i++) {
      spots.add(new Spot("" + i, 5 * Math.cos(i * Math.PI / 3), 5 * Math.sin(i * Math.PI / 3)));
    }
    Face face = new Face(spots, true, "the test", List.of());
    String drawing = FacePicture.of(sheet(), face, Map.of("A", "12"), PAGE_MM);
    Matcher ring =
        Pattern.compile("cx=\"([0-9.]+)\" cy=\"([0-9.]+)\" r=\"([0-9.]+)\"[^>]*\"0.6\"")
            .matcher(drawing);
    Matcher mark =
        Pattern.compile(
                "<path d=\"M([0-9.]+) ([0-9.]+) A([0-9.]+) [0-9.]+ 0 0 1 ([0-9.]+) ([0-9.]+) Z\"/>")
            .matcher(drawing);
    Matcher name =
        Pattern.compile(" y=\"([0-9.]+)\" font-size=\"([0-9.]+)\"[^>]*>A</text>").matcher(drawing);
    for (int side = 0; side < 2; side++) {
      assertTrue(ring.find() && mark.find() && name.find());
      double x = number(ring, 1);
      double y = number(ring, 2);
      double radius = number(ring, 3);
      assertEquals(radius, number(mark, 3), 0.01);
      assertEquals(radius, Math.hypot(number(mark, 1) - x, number(mark, 2) - y), 0.02);
      assertEquals(radius, Math.hypot(number(mark, 4) - x, number(mark, 5) - y), 0.02);
      double top = number(name, 1) - 0.73 * number(name, 2);
      assertTrue(number(mark, 2) <= top + 0.05, "the mark ends above the name");
    }
    assertEquals(2, count(drawing, ">12</text>"));
  }

  private static double number(Matcher found, int group) {
    return Double.parseDouble(found.group(group));
  }

  @Test
  void without_marks_none_is_drawn() {
    assertFalse(FacePicture.of(sheet(), FACE, PAGE_MM).contains("fill=\"#fff\""));
    assertEquals(
        FacePicture.of(sheet(), FACE, PAGE_MM), FacePicture.of(sheet(), FACE, Map.of(), PAGE_MM));
  }

  @Test
  void a_cavity_with_a_wire_has_a_thick_ring_and_its_name_and_an_empty_one_is_crossed() {
    String drawing = FacePicture.of(sheet(), FACE, PAGE_MM);
    assertEquals(2, count(drawing, "stroke-width=\"0.6\""));
    assertEquals(2, count(drawing, "stroke-width=\"0.15\""));
    assertEquals(2, count(drawing, ">W1</text>"));
  }

  @Test
  void a_cavity_of_unknown_position_is_named_and_not_drawn() {
    String drawing = FacePicture.of(sheet(), FACE, PAGE_MM);
    assertTrue(drawing.contains("Without a position, so not drawn: C."));
    assertFalse(drawing.contains(">C</text>"));
  }

  /** An insert of 12 rows with 12 contacts each: more than most that are made. */
  @Test
  void the_name_of_a_cavity_can_be_read_in_the_hand_and_a_view_fits_its_page() {
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < 144; i++) {
      spots.add(new Spot("" + i, 2 * (i % 12), 2 * (i / 12)));
    }
    Face face = new Face(spots, true, "the test", List.of());
    for (double page : new double[] {186, 259}) {
      String drawing = FacePicture.of(sheet(), face, page);
      Matcher letters =
          Pattern.compile("font-size=\"([0-9.]+)\"[^>]*>\\d+</text>").matcher(drawing);
      int found = 0;
      while (letters.find()) {
        found++;
        assertTrue(Double.parseDouble(letters.group(1)) >= 2, letters.group());
      }
      assertEquals(2 * 144, found);
      Matcher widths = Pattern.compile("<svg [^>]*width=\"([0-9.]+)mm").matcher(drawing);
      while (widths.find()) {
        assertTrue(Double.parseDouble(widths.group(1)) <= page, widths.group());
      }
    }
  }
}

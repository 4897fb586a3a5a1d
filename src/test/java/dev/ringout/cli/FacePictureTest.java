package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The face of an insert, drawn from both sides. */
class FacePictureTest {
  private static final Pattern LETTER =
      Pattern.compile(
          "<text x=\"([0-9.]+)\" y=\"([0-9.]+)\"[^>]*\"middle\"[^>]*stroke[^>]*>([^<]*)<");

  @TempDir Path folder;

  private record Letter(double x, double y, String text) {}

  private String page(String items, String pins, String wires) throws IOException {
    Path unit = Files.createDirectories(folder.resolve("unit"));
    Files.writeString(unit.resolve("wires.csv"), wires);
    Files.writeString(unit.resolve("items.csv"), items);
    Files.writeString(unit.resolve("pins.csv"), pins);
    Path page = folder.resolve("page.html");
    Run run = Run.of("work", unit, "-o", page, "--force");
    assertEquals(0, run.code(), run.err());
    return Files.readString(page);
  }

  /** The cavities of the upper row of a view, from left to right. */
  private static List<String> upperRow(String html, String side) {
    String view = html.substring(html.indexOf("J1  " + side));
    int end = view.indexOf(side.equals("WIRING SIDE") ? "J1  MATING SIDE" : "</svg>");
    Matcher matcher = LETTER.matcher(view.substring(0, end));
    List<Letter> letters = new ArrayList<>();
    while (matcher.find()) {
      letters.add(
          new Letter(
              Double.parseDouble(matcher.group(1)),
              Double.parseDouble(matcher.group(2)),
              matcher.group(3)));
    }
    double top = letters.stream().mapToDouble(Letter::y).min().orElseThrow();
    return letters.stream()
        .filter(letter -> letter.y() < top + 2)
        .sorted(Comparator.comparingDouble(Letter::x))
        .map(Letter::text)
        .toList();
  }

  /**
   * Public pinout pages of the family: on the mating face of the pin half 1 is top left; the solder
   * side of the socket half shows the same; the other two views are mirror images.
   */
  @Test
  void pin_1_of_a_nine_way_connector_stands_where_published_pinouts_have_it() throws IOException {
    String wires = "Wire,From,To\nW1,J1-1,TB1-1\nW9,J1-9,TB1-2\n";
    String socket = page("Ref,Kind,Arrangement\nJ1,connector,DE-9S\n", "Ref,Pin\n", wires);
    assertEquals(List.of("1", "2", "3", "4", "5"), upperRow(socket, "WIRING SIDE"));
    assertEquals(List.of("5", "4", "3", "2", "1"), upperRow(socket, "MATING SIDE"));
    String pin = page("Ref,Kind,Arrangement\nJ1,male connector,DB9\n", "Ref,Pin\n", wires);
    assertEquals(List.of("5", "4", "3", "2", "1"), upperRow(pin, "WIRING SIDE"));
    assertEquals(List.of("1", "2", "3", "4", "5"), upperRow(pin, "MATING SIDE"));
  }

  @Test
  void nothing_is_drawn_where_nobody_says_which_half_it_is() throws IOException {
    String html =
        page(
            "Ref,Kind,Arrangement\nJ1,connector,DE-9\n",
            "Ref,Pin\n",
            "Wire,From,To\nW1,J1-1,TB1-1\n");
    assertFalse(html.contains("WIRING SIDE"), html);
    assertTrue(html.contains("one is the mirror image of the other"), html);
    String unknown =
        page(
            "Ref,Kind,Arrangement\nJ1,connector,17-26\n",
            "Ref,Pin\n",
            "Wire,From,To\nW1,J1-A,TB1-1\n");
    assertFalse(unknown.contains("<svg"), unknown);
    assertTrue(unknown.contains("Pins gives no X and Y"), unknown);
  }

  @Test
  void listed_positions_are_drawn_as_listed_and_mirrored_and_what_has_none_is_named()
      throws IOException {
    String html =
        page(
            "Ref,Kind\nJ1,connector\n",
            "Ref,Pin,X (mm),Y (mm)\nJ1,A,0,5\nJ1,B,5,5\nJ1,C,5,0\nJ1,D,,\n",
            "Wire,From,To\nW1,J1-A,TB1-1\nW2,J1-D,TB1-2\nW3,J1-B,TB1-3\n");
    assertEquals(List.of("A", "B"), upperRow(html, "WIRING SIDE"));
    assertEquals(List.of("B", "A"), upperRow(html, "MATING SIDE"));
    assertTrue(html.contains("Without a position, so not drawn: D."), html);
    assertTrue(html.contains(">W1</text>"), html);
  }
}

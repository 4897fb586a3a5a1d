package dev.ringout.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.revision.Difference;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nets that a revision changes, before and after. */
class NetPictureTest {
  @TempDir Path folder;

  private UnitUnderTest list(String name) {
    return new UnitUnderTest(folder.resolve(name));
  }

  private static Difference difference(UnitUnderTest before, UnitUnderTest after) {
    return Difference.of(
        before.harness(),
        after.harness(),
        new Difference.Options(Map.of(), false, item -> false, false));
  }

  private static String drawn(Difference difference) {
    assertEquals(1, difference.nets().size(), difference.nets().toString());
    return new NetPicture(difference).draw(1, difference.nets().get(0));
  }

  @Test
  void what_comes_is_marked_and_what_stays_is_not() {
    String drawing =
        drawn(
            difference(
                list("a").wire("W1,J1-A,P2-1").wire("W9,J9-A,P9-1"),
                list("b").wire("W1,J1-A,P2-1").wire("W2,P2-1,P3-4").wire("W9,J9-A,P9-1")));
    assertTrue(drawing.contains(">+ W2</text>"), drawing);
    assertTrue(drawing.contains(">W1</text>") && !drawing.contains("− W1"), drawing);
    assertFalse(drawing.contains("W9"), "nets that do not change are not drawn");
  }

  @Test
  void what_goes_is_marked_before_and_not_drawn_after() {
    String drawing =
        drawn(
            difference(
                list("a").wire("W1,J1-A,P2-1").wire("W2,P2-1,P3-4"),
                list("b").wire("W1,J1-A,P2-1")));
    assertEquals(drawing.indexOf("− W2"), drawing.lastIndexOf("− W2"));
    assertTrue(drawing.indexOf("− W2") < drawing.indexOf(", AFTER"), drawing);
  }

  @Test
  void of_a_large_net_the_points_where_nothing_changes_are_counted() {
    UnitUnderTest before = list("a").wire("W100,J1-A,TB1-1");
    UnitUnderTest after = list("b").wire("W100,J1-A,TB1-1").wire("W200,J1-A,P9-9");
    for (int pin = 1; pin <= 50; pin++) {
      String row = "W" + pin + ",TB1-" + pin + ",TB1-" + (pin + 1);
      before.wire(row);
      after.wire(row);
    }
    String drawing = drawn(difference(before, after));
    assertTrue(drawing.contains(">+ W200</text>"), "what changes is drawn");
    assertTrue(
        drawing
            .replaceAll("</text>\\s*<text[^>]*>", " ")
            .contains("more points of these nets, where nothing changes, are not drawn"),
        drawing);
  }
}

package dev.ringout.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Designators and pins in the order in which people read them, and pins as they are compared. */
class NaturalOrderTest {
  @ParameterizedTest
  @CsvSource({
    "J2,J10",
    "J9,J10",
    "J09,J10",
    "J1,J1A",
    "J1A,J1B",
    "J1A2,J1A10",
    "A,B",
    "A,a",
    "Z,a",
    "1,A",
    "'',A",
    "99999999999999999999,100000000000000000000",
    "J2:1,J10/1",
    "7,8",
    "7,70",
    "007,8",
    "J0,J1",
    "J00,J1",
    "J-1,J1"
  })
  void the_smaller_number_and_the_earlier_letter_come_first(String first, String second) {
    assertTrue(NaturalOrder.INSTANCE.compare(first, second) < 0, first + " before " + second);
    assertTrue(NaturalOrder.INSTANCE.compare(second, first) > 0, second + " after " + first);
  }

  @Test
  void only_what_is_written_alike_is_the_same_though_leading_zeros_say_no_more() {
    assertEquals(0, NaturalOrder.INSTANCE.compare("J10-A", "J10-A"));
    assertNotEquals(0, NaturalOrder.INSTANCE.compare("J01", "J1"));
    assertEquals(
        -Integer.signum(NaturalOrder.INSTANCE.compare("J01", "J1")),
        Integer.signum(NaturalOrder.INSTANCE.compare("J1", "J01")));
    assertTrue(NaturalOrder.INSTANCE.compare("J01A", "J1B") < 0, "A before B, whatever the zeros");
    assertTrue(NaturalOrder.INSTANCE.compare("J01B", "J1A") > 0, "B after A, whatever the zeros");
  }

  @Test
  void points_are_sorted_by_their_item_then_by_their_pin() {
    List<Point> sorted = new ArrayList<>();
    for (String name : List.of("J10-1", "J2-10", "J2-9", "J2-B", "J2-A", "J2-a")) {
      sorted.add(point(name));
    }
    List<Point> expected = new ArrayList<>();
    for (String name : List.of("J2-9", "J2-10", "J2-A", "J2-B", "J2-a", "J10-1")) {
      expected.add(point(name));
    }
    Collections.sort(sorted);
    assertEquals(expected, sorted);
  }

  private static Point point(String name) {
    int dash = name.indexOf('-');
    return new Point(name.substring(0, dash), name.substring(dash + 1));
  }

  @ParameterizedTest
  @CsvSource({
    "07,7",
    "007,7",
    "0,0",
    "00,0",
    "09,9",
    "0A,0A",
    "A0,A0",
    "10,10",
    "shell,SHELL",
    "Shell,SHELL"
  })
  void a_pin_s_leading_zeros_do_not_count_and_a_shell_is_one_however_written(
      String written, String compared) {
    assertEquals(compared, Point.pinName(written));
  }

  @Test
  void two_points_are_one_only_where_item_and_pin_are_the_same_in_the_same_case() {
    assertEquals(point("J1-A"), point("J1-A"));
    assertEquals(point("J1-A").hashCode(), point("J1-A").hashCode());
    assertNotEquals(point("J1-A"), point("J1-a"));
    assertNotEquals(point("J1-A"), point("J2-A"));
  }
}

package dev.ringout.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PointsTest {
  @ParameterizedTest
  @CsvSource({
    "J1-A,J1,A",
    "J1:A,J1,A",
    "J1.A,J1,A",
    "J1/A,J1,A",
    "TB1-3,TB1,3",
    "2A1-J4-7,2A1-J4,7",
    "PS1-+,PS1,+",
    "E1-shell,E1,SHELL"
  })
  void a_point_may_stand_in_one_cell(String text, String ref, String pin) {
    assertEquals(new Point(ref, pin), new Refs().point(text, "").value().orElseThrow());
  }

  @Test
  void a_known_item_decides_where_a_point_is_split() {
    Refs refs = new Refs();
    refs.spelling("K1");
    assertEquals(new Point("K1", "13-14"), refs.point("K1-13-14", "").value().orElseThrow());
  }

  @Test
  void a_numeric_pin_loses_leading_zeros_and_no_other() {
    assertEquals("7", Point.pinName("07"));
    assertEquals("0", Point.pinName("00"));
    assertEquals("0A", Point.pinName("0A"));
  }

  @Test
  void lower_and_upper_case_pins_are_two_pins() {
    Refs refs = new Refs();
    assertNotEquals(refs.point("J1-A", "").value(), refs.point("J1-a", "").value());
  }

  @Test
  void case_of_a_designator_does_not_matter_and_it_is_shown_as_first_written() {
    Refs refs = new Refs();
    refs.point("Tb1-3", "");
    assertEquals(new Point("Tb1", "3"), refs.point("TB1", "3").value().orElseThrow());
  }

  @Test
  void a_designator_without_a_pin_names_no_point() {
    assertTrue(new Refs().point("J1", "").value().isEmpty());
  }
}

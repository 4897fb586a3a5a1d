package dev.ringout.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * For which units a list or a waiver is good. The ways of writing it are common practice, no
 * source.
 */
class SerialNumbersTest {
  private static SerialNumbers numbers(String text) {
    return SerialNumbers.of(text).orElseThrow(() -> new AssertionError(text));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0100 to 0200|0100",
        "0100 to 0200|0150",
        "0100 to 0200|0200",
        "0100 through 0200|0150",
        "0100 thru 0200|0150",
        "from 0100 to 0200|0150",
        "0100-0200, 0305|0150",
        "0100-0200, 0305|0305",
        "0100 - 0200; 0305|0305",
        "0100\u20130200|0150",
        "0300 and on|0300",
        "0300 and on|99999",
        "0300 and subsequent|0301",
        "0300 onwards|0301",
        "0300+|0301",
        "from 0300 and up|0301",
        "up to 0200|0001",
        "up to 0200|0200",
        "through 0200|0007",
        "all|0418",
        "All|HS-0418",
        "all units|x",
        "HS-0100 to HS-0200|HS-0150",
        "hs-0100 to hs-0200|HS-0150",
        "HS-0100-HS-0200|HS-0150",
        "SN 0418|0418",
        "S/N 0418|0418",
        "serial number 0418|0418",
        "serial numbers 0100 to 0200|0150",
        "units 12 & 14|12",
        "units 12 & 14|14",
        "units 12 and 14|14",
        "0100 to 0200 and 0300 and on|0150",
        "0100 to 0200 and 0300 and on|0400",
        "0418|0418",
        "HS-0418|hs-0418",
        "22-0400 to 22-0500|22-0418",
        "9-12|10"
      })
  void a_unit_is_among_them(String text, String serial) {
    assertTrue(numbers(text).covers(serial), text + " covers " + serial);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0100 to 0200|0501",
        "0100 to 0200|0099",
        "0100 to 0200|0201",
        "0100-0200, 0305|0304",
        "0300 and on|0299",
        "up to 0200|0201",
        "units 12 & 14|13",
        "0418|0419",
        "HS-0100 to HS-0200|0150"
      })
  void a_unit_is_not_among_them(String text, String serial) {
    assertFalse(numbers(text).covers(serial), text + " does not cover " + serial);
  }

  @Test
  void leading_zeros_do_not_matter() {
    assertTrue(numbers("0100 to 0500").covers("418"));
    assertTrue(numbers("100 to 500").covers("0418"));
    assertTrue(numbers("0418").covers("418"));
  }

  /** A number of another family of units says nothing about this one. */
  @Test
  void what_stands_before_the_digits_must_be_the_same() {
    assertFalse(numbers("0100 to 0200").covers("HS-0150"));
    assertFalse(numbers("HS-0100 and on").covers("HT-0150"));
    assertFalse(numbers("HS-0150").covers("0150"));
  }

  /** What can't be told is asked for: a list good for no one knows whom is good for nobody. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "0200 to 0100",
        "before mod 12",
        "mod 12 to mod 14",
        "HS-0100 to HT-0200",
        "0100, and so on",
        "some",
        "0100 to",
        "to 0200 to",
        "0100,",
        ", 0100",
        "22-0418",
        "various",
        "see note 3"
      })
  void what_can_not_be_told_is_absent(String text) {
    assertTrue(SerialNumbers.of(text).isEmpty(), text);
  }

  @Test
  void a_unit_without_a_serial_number_is_among_all_alone() {
    assertFalse(numbers("0100 to 0200").covers(""));
    assertFalse(numbers("0100 and on").covers(""));
    assertTrue(numbers("all").covers(""));
  }

  @Test
  void they_are_shown_as_written_and_alike_where_they_say_the_same() {
    assertEquals("0100 to 0200", numbers(" 0100 to 0200 ").toString());
    assertEquals(numbers("0100-0200"), numbers("0100 to 0200"));
    assertEquals(numbers("0100-0200").hashCode(), numbers("0100 to 0200").hashCode());
    assertNotEquals(numbers("0100-0200"), numbers("0100-0201"));
  }
}

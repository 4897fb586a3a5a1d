package dev.ringout.revision;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Pins that follow from one another. The letters that inserts leave out: MIL-DTL-38999 and
 * MIL-STD-1651 inserts use no I, O and Q among capitals (from memory).
 */
class PinSchemeTest {
  private static Map<String, String> pins(String... pairs) {
    Map<String, String> pins = new LinkedHashMap<>();
    for (String pair : pairs) {
      pins.put(pair.substring(0, pair.indexOf('>')), pair.substring(pair.indexOf('>') + 1));
    }
    return pins;
  }

  private static List<String> numbers(int last) {
    return IntStream.rangeClosed(1, last).mapToObj(Integer::toString).toList();
  }

  @Test
  void numbers_become_letters_in_step_and_pins_without_wires_follow() {
    Map<String, String> pins = pins("1>A", "2>B", "3>C");
    assertEquals(3, PinScheme.complete(pins, numbers(5)));
    assertEquals(pins("1>A", "2>B", "3>C", "4>D", "5>E"), pins);
  }

  @Test
  void small_letters_follow_the_capitals() {
    Map<String, String> pins = pins("25>Y", "26>Z", "27>a", "28>b", "52>z");
    assertEquals(5, PinScheme.complete(pins, numbers(53)));
    assertEquals("A", pins.get("1"));
    assertEquals("z", pins.get("52"));
    assertEquals(52, pins.size(), "beyond z there is no letter");
  }

  @Test
  void letters_taken_for_digits_may_be_left_out() {
    Map<String, String> pins = pins("8>H", "9>J", "13>N", "14>P", "15>R", "23>Z");
    assertEquals(6, PinScheme.complete(pins, numbers(24)));
    assertEquals("J", pins.get("9"));
    assertEquals("P", pins.get("14"));
    assertEquals("a", pins.get("24"));
  }

  @Test
  void small_letters_may_be_left_out_too_in_two_ways() {
    // 23 capitals; then a … k, m, n, p: the insert without l and o.
    Map<String, String> pins = pins("24>a", "32>i", "34>k", "35>m", "36>n", "37>p", "38>q");
    assertEquals(7, PinScheme.complete(pins, numbers(40)));
    assertEquals("j", pins.get("33"));
    // Without i too.
    Map<String, String> without = pins("24>a", "31>h", "32>j", "33>k", "34>m", "35>n", "36>p");
    assertEquals(7, PinScheme.complete(without, numbers(40)));
    assertEquals("g", without.get("30"));
  }

  @Test
  void numbers_may_start_elsewhere_and_none_falls_off_the_row() {
    Map<String, String> pins = pins("3>1", "4>2", "5>3");
    assertEquals(3, PinScheme.complete(pins, numbers(5)));
    assertEquals(pins("3>1", "4>2", "5>3"), pins, "for 1 and 2 there is no pin");
    Map<String, String> up = pins("1>101", "2>102", "3>103");
    assertEquals(3, PinScheme.complete(up, numbers(100)));
    assertEquals(100, up.size());
    assertEquals("200", up.get("100"));
  }

  @Test
  void a_wire_that_breaks_step_was_moved() {
    Map<String, String> pins = pins("1>A", "2>B", "3>C", "4>E");
    assertEquals(3, PinScheme.complete(pins, numbers(4)));
    assertEquals("D", pins.get("4"));
  }

  @Test
  void six_of_ten_in_step_are_a_scheme_five_are_none() {
    String[] six = {"1>A", "2>B", "3>C", "4>D", "5>E", "6>F", "7>K", "8>J", "9>M", "10>S"};
    Map<String, String> pins = pins(six);
    assertEquals(6, PinScheme.complete(pins, numbers(10)));
    assertEquals("G", pins.get("7"));
    String[] five = {"1>A", "2>B", "3>C", "4>D", "5>E", "6>X", "7>K", "8>Y", "9>M", "10>S"};
    Map<String, String> left = pins(five);
    assertEquals(10, PinScheme.complete(left, numbers(10)));
    assertEquals(pins(five), left, "left as the wires tell");
  }

  @Test
  void pins_of_no_scheme_are_left_as_they_are() {
    Map<String, String> pins = pins("L1>U", "L2>MAIN", "PE>GND");
    assertEquals(3, PinScheme.complete(pins, List.of("L1", "L2", "PE")));
    assertEquals(pins("L1>U", "L2>MAIN", "PE>GND"), pins);
  }
}

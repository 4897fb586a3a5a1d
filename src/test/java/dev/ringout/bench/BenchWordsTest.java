package dev.ringout.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.harness.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is heard and read at arm's length. */
class BenchWordsTest {
  @Test
  void a_small_letter_is_heard_as_one() {
    assertEquals("J one, small a", BenchWords.spoken(new Point("J1", "a")));
    assertEquals("J one, large A", BenchWords.spoken(new Point("J1", "A")));
    assertEquals("TB one two, three four", BenchWords.spoken(new Point("TB12", "34")));
    assertEquals("J two, shell", BenchWords.spoken(new Point("J2", Point.SHELL)));
    assertEquals("BT one, plus", BenchWords.spoken(new Point("BT1", "+")));
  }

  @ParameterizedTest
  @CsvSource({
    "0.005996, 6 mΩ",
    "0.0182, 18.2 mΩ",
    "0.131, 131 mΩ",
    "1, 1 Ω",
    "2200, 2.2 kΩ",
    "1e8, 100 MΩ",
    "0, 0 Ω"
  })
  void ohms_are_said_in_the_unit_that_people_say(double ohms, String said) {
    assertEquals(said, BenchWords.ohms(ohms));
  }
}

package dev.ringout.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quantities as a mechanic reads them. */
class UnitsAsTextTest {

  @ParameterizedTest
  @CsvSource({
    "0, 0 Ω",
    "0.0421, 0.0421 Ω",
    "0.04214, 0.0421 Ω",
    "999, 999 Ω",
    "2200, 2.2 kΩ",
    "100e6, 100 MΩ",
    "5.55e9, 5.55 GΩ",
    "-0.02, -0.02 Ω",
    "Infinity, open"
  })
  void ohms_have_three_digits_and_the_prefix_that_suits(double ohms, String text) {
    assertEquals(text, Ohms.text(ohms));
  }

  /** Source: ASTM B258: 1/0 to 4/0 are the gauges above 1. */
  @ParameterizedTest
  @CsvSource({"20, AWG 20", "1, AWG 1", "0, AWG 1/0", "-3, AWG 4/0"})
  void gauges_thicker_than_one_are_written_with_noughts(int number, String label) {
    assertEquals(label, new Gauge.Awg(number).label());
  }

  @Test
  void a_metric_conductor_is_named_by_its_cross_section() {
    assertEquals("0.75 mm²", new Gauge.SquareMillimetres(0.75).label());
    assertEquals("4 mm²", new Gauge.SquareMillimetres(4).label());
  }

  @ParameterizedTest
  @CsvSource({
    "0.36, 0.45, 0.36 to 0.45 Ω",
    "1000, 1200, 1 to 1.2 kΩ",
    "900, 1100, 900 Ω to 1.1 kΩ",
    "0.1, 0.10000001, 0.1 Ω",
    "0.5, Infinity, 0.5 Ω to open"
  })
  void a_range_names_its_unit_once_where_both_ends_have_it(double low, double high, String text) {
    assertEquals(text, new OhmsRange(low, high).text());
  }

  @Test
  void resistances_in_series_add_up_at_both_ends_and_without_an_upper_bound_nothing_is_known() {
    assertEquals(new OhmsRange(3, 7), new OhmsRange(1, 2).plus(new OhmsRange(2, 5)));
    assertFalse(OhmsRange.NONE.plus(OhmsRange.ANY).isKnown());
    assertEquals(1.5, new OhmsRange(1, 2).middleOhms());
    assertEquals(0.5, new OhmsRange(1, 2).halfWidthOhms());
  }

  @ParameterizedTest
  @CsvSource({"1, 1 net", "0, 0 nets", "2, 2 nets"})
  void one_is_singular_and_nothing_else(long number, String text) {
    assertEquals(text, Numbers.count(number, "net"));
  }

  @ParameterizedTest
  @CsvSource({"7.0, 7", "0.75, 0.75", "700000, 700000", "1e-5, 0.00001"})
  void numbers_are_written_plain(double number, String text) {
    assertEquals(text, Numbers.plain(number));
  }

  @Test
  void digits_are_the_same_in_every_country() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals("12 at 0.50", Text.of("%d at %.2f", 12, 0.5));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void of_many_names_the_first_are_said_and_the_rest_counted() {
    assertEquals("W1, W2 and 2 more", Text.first(List.of("W1", "W2", "W3", "W4"), 2));
    assertEquals("W1, W2", Text.first(List.of("W1", "W2"), 2));
  }

  /** Source: Unicode Standard Annex 9: U+202E turns the direction of reading. */
  @Test
  void what_can_t_be_seen_and_yet_acts_is_shown_as_replaced() {
    assertEquals("J1\uFFFD[2J", Text.visible("J1\u001b[2J"));
    assertEquals("J1\uFFFDA", Text.visible("J1\u202eA"));
    assertEquals("J1\tA µ Ω", Text.visible("J1\tA µ Ω"));
  }
}

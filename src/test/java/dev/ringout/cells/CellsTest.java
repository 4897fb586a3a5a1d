package dev.ringout.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.readings.Measured;
import dev.ringout.units.Gauge;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every way of writing a reading, gauge or length that docs/reference/files.md names. */
class CellsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.3|0.3",
        "0,3|0.3",
        ".3|0.3",
        "300 mΩ|0.3",
        "300m|0.3",
        "300 m\u2126|0.3",
        "0.3 ohm|0.3",
        "0.3 Ohms|0.3",
        "0,2ohm|0.2",
        "0.2ohms|0.2",
        "0.2Ohm|0.2",
        "2k2|2200",
        "2K2|2200",
        "4R7|4.7",
        "R47|0.47",
        "1.2E9|1.2E9",
        "3E-1|0.3",
        "1 MEG|1E6",
        "1 megohm|1E6",
        "5 MΩ|5E6",
        "1.2 GΩ|1.2E9",
        "0,300|0.3"
      })
  void a_reading_is_a_number_with_its_unit(String text, double ohms) {
    Measured measured = OhmsCell.reading(text, "").value().orElseThrow();
    assertEquals(
        ohms, assertInstanceOf(Measured.Value.class, measured).ohms(), Math.abs(ohms) * 1e-12);
  }

  /** Meters show a minus for voltage on the circuit, programs write it in many ways. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-0.02|-0.02|-0.02 Ω",
        "-200 MΩ|-2E8|-200 MΩ",
        "\u2212200 MΩ|-2E8|-200 MΩ",
        "\u20131.5 k|-1500|-1.5 kΩ",
        "\u00ad5|-5|-5 Ω",
        "\uff0d5|-5|-5 Ω",
        "- 5|-5|-5 Ω",
        "-1e9|-1E9|-1 GΩ",
        "-2k2|-2200|-2.2 kΩ",
        "-R47|-0.47|-0.47 Ω",
        "-,5|-0.5|-0.5 Ω",
        "<-5|-5|< -5 Ω",
        "<0|0|< 0 Ω",
        "> -5|-5|> -5 Ω"
      })
  void what_is_below_zero_is_no_resistance(String text, double ohms, String shown) {
    assertEquals(
        new Measured.BelowZero(ohms, shown), OhmsCell.reading(text, "").value().orElseThrow());
  }

  /** Some programs write the minus behind, some people put it in brackets: neither is a number. */
  @ParameterizedTest
  @ValueSource(strings = {"200-", "0.2 -", "200 M-", "(0.2)", "-1e-400", "1e-400", "-0.2+", "--5"})
  void what_is_no_number_with_its_minus_before_it_is_none(String text) {
    assertTrue(OhmsCell.reading(text, "").value().isEmpty(), text);
  }

  /** Zeros before an exponent hide nothing: 0e9 was anything below half of a gigaohm. */
  @Test
  void an_exponent_counts_however_it_is_written() {
    Measured.Value value =
        assertInstanceOf(
            Measured.Value.class, OhmsCell.reading("0e0000009", "").value().orElseThrow());
    assertEquals(5e8, value.halfDigitOhms());
  }

  /** Nothing is infinite: what a program would read so is a typing error. */
  @Test
  void a_number_beyond_all_numbers_is_none() {
    for (String text :
        new String[] {"1e999", "9e308 G", "9".repeat(400), "> 1e400", "9".repeat(400) + "k1"}) {
      assertTrue(OhmsCell.reading(text, "").value().isEmpty(), text);
    }
    assertTrue(LengthCell.length("9".repeat(400) + " m", "").value().isEmpty());
    assertTrue(GaugeCell.gauge("9".repeat(400) + " mm²", "").value().isEmpty());
  }

  @Test
  void a_bare_number_takes_the_unit_of_its_column() {
    assertEquals(
        5e6,
        assertInstanceOf(Measured.Value.class, OhmsCell.reading("5", "MΩ").value().orElseThrow())
            .ohms());
  }

  @Test
  void milli_and_mega_are_nine_orders_of_magnitude_apart() {
    assertEquals(1e-3, OhmsCell.unit("mΩ").orElseThrow());
    assertEquals(1e6, OhmsCell.unit("MΩ").orElseThrow());
    assertEquals(1e-3, OhmsCell.unit("milliohm").orElseThrow());
    assertEquals(1e6, OhmsCell.unit("Mohm").orElseThrow());
    assertTrue(OhmsCell.unit("furlong").isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "OL",
        "O.L",
        "O.L.",
        "0L",
        "0.L",
        "ol",
        "OPEN",
        "∞",
        "o/l",
        "O/L",
        "O L",
        "OVLD",
        "ovld",
        "OVERLOAD",
        "over range",
        "infinity",
        "infinite",
        "inf",
        "inf."
      })
  void over_range_is_no_number(String text) {
    assertInstanceOf(Measured.OverRange.class, OhmsCell.reading(text, "").value().orElseThrow());
  }

  /** An inspector who looks for the cell finds there what the page says. */
  @ParameterizedTest
  @ValueSource(strings = {"OL", "O.L", "OPEN", "∞", "OK", "✓", "Pass", "beep", "tone", "UNSAT"})
  void a_word_is_shown_as_it_was_typed(String text) {
    assertEquals(text, OhmsCell.reading(text, "").value().orElseThrow().text());
  }

  @Test
  void more_than_and_less_than_keep_their_bound() {
    assertEquals(
        new Measured.MoreThan(200e6), OhmsCell.reading(">200 M", "").value().orElseThrow());
    assertEquals(new Measured.LessThan(0.1), OhmsCell.reading("<0.1", "").value().orElseThrow());
  }

  @ParameterizedTest
  @CsvSource({
    "200+, 200",
    "200 M+, 2E8",
    "200+ MΩ, 2E8",
    "200MΩ+, 2E8",
    "200 MΩ +, 2E8",
    "> 200M, 2E8",
    ">200+, 200"
  })
  void a_plus_behind_a_number_is_more_than_it(String text, double ohms) {
    assertEquals(new Measured.MoreThan(ohms), OhmsCell.reading(text, "").value().orElseThrow());
  }

  /** Common practice, no source: what is seen on filled sheets. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.3x|0.3",
        "0.3.|0.3",
        "O.3|0.3",
        "O.3 Ω|0.3 Ω",
        "l.2|1.2",
        "l.2 mΩ|1.2 mΩ",
        "0 .3|0.3",
        "0..3|0.3",
        "1.2.3|1.23 or 12.3",
        "0.3/0.4|0.3 or 0.4",
        "0.3 - 0.4|0.3 or 0.4",
        "0.3 to 0.4|0.3 or 0.4",
        "~0.3|0.3",
        "approx. 0.3|0.3",
        "0.3?|0.3",
        "good?|good",
        "0.3 onm|0.3 ohm",
        "opne|OPEN",
        "beeep|BEEP",
        "0.3 V|''",
        "three|''"
      })
  void a_doubtful_reading_is_asked_about_never_repaired(String text, String maybe) {
    Understood<Measured> understood = OhmsCell.reading(text, "");
    assertTrue(understood.value().isEmpty(), text);
    assertEquals(maybe, understood.maybe());
  }

  @Test
  void what_is_doubtful_is_said() {
    assertEquals(
        "\"0.3?\" is in doubt; read it again, or write it without the question mark",
        OhmsCell.reading("0.3?", "").complaint());
    assertEquals(
        "\"0.3/0.4\" is two values; write one, or give each a row of its own",
        OhmsCell.reading("0.3/0.4", "").complaint());
    assertEquals("\"1.2.3\" has two decimal points", OhmsCell.reading("1.2.3", "").complaint());
  }

  @ParameterizedTest
  @ValueSource(strings = {"PASS", "pass", "OK", "✓"})
  void a_word_says_good_without_a_number(String text) {
    assertEquals(
        new Measured.Word(Measured.Meaning.PASS, text),
        OhmsCell.reading(text, "").value().orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "N/T",
        "nt",
        "n.t.",
        "N.T.",
        "-",
        "--",
        "\u2013",
        "not done",
        "Not tested",
        "skipped",
        "N/A"
      })
  void blank_or_left_out_is_not_tested_and_never_a_pass(String text) {
    assertFalse(OhmsCell.reading(text, "").value().orElseThrow().made());
  }

  @Test
  void a_comma_before_three_digits_can_be_read_in_two_ways() {
    Understood<Measured> understood = OhmsCell.reading("1,000", "");
    assertTrue(understood.value().isEmpty());
    assertEquals("1000 or 1.000", understood.maybe());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"0.3 / 0.4", "12->14", "three", "0.3 V", "1.2.3", "<200+", "-5+", "5 + 3"})
  void what_is_no_reading_is_not_guessed(String text) {
    assertTrue(OhmsCell.reading(text, "").value().isEmpty());
  }

  @ParameterizedTest
  @CsvSource({
    "20,AWG 20",
    "AWG 20,AWG 20",
    "20 AWG,AWG 20",
    "awg20,AWG 20",
    "#20,AWG 20",
    "4/0,AWG 4/0",
    "0000,AWG 4/0",
    "1/0,AWG 1/0",
    "0,AWG 1/0",
    "0.75 mm²,0.75 mm²",
    "0.75mm2,0.75 mm²",
    "'0,75 mm²',0.75 mm²"
  })
  void a_gauge_is_american_or_metric(String text, String label) {
    assertEquals(label, GaugeCell.gauge(text, "").value().orElseThrow().label());
  }

  @Test
  void a_gauge_column_may_give_the_unit_in_its_heading() {
    assertEquals(
        new Gauge.SquareMillimetres(1.5), GaugeCell.gauge("1.5", "mm²").value().orElseThrow());
  }

  @Test
  void a_letter_for_a_digit_is_asked_about_never_repaired() {
    Understood<Gauge> understood = GaugeCell.gauge("2O", "");
    assertTrue(understood.value().isEmpty());
    assertEquals("20", understood.maybe());
  }

  @ParameterizedTest
  @CsvSource({
    "4 ft,1.2192",
    "4',1.2192",
    "18 in,0.4572",
    "250 mm,0.25",
    "1.5 m,1.5",
    "'1,5 m',1.5",
    "30cm,0.3"
  })
  void a_length_has_its_unit_in_the_cell(String text, double metres) {
    assertEquals(metres, LengthCell.length(text, "").value().orElseThrow().metres(), 1e-12);
  }

  @Test
  void a_length_without_a_unit_is_a_problem_not_a_guess() {
    assertTrue(LengthCell.length("4", "").value().isEmpty());
    assertEquals(1.2192, LengthCell.length("4", "ft").value().orElseThrow().metres(), 1e-12);
  }
}

package dev.ringout.cells;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells as people write them, and those that are asked about instead of guessed. */
class WhatCellsMeanTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"500|500", "500 V|500", "500 VDC|500", "0,5 kV|500", "0.5kV|500", "1 kilovolt|1000"})
  void a_test_voltage_has_its_unit(String text, double volts) {
    assertEquals(volts, VoltsCell.volts(text, "").value().orElseThrow(), 1e-9);
  }

  @Test
  void a_bare_voltage_takes_the_unit_of_its_heading() {
    assertEquals(1000, VoltsCell.volts("1", "kV").value().orElseThrow(), 1e-9);
  }

  @Test
  void five_hundred_below_a_heading_of_kilovolts_is_asked_about() {
    Understood<Double> volts = VoltsCell.volts("500", "kV");
    assertTrue(volts.value().isEmpty());
    assertTrue(volts.complaint().contains("\"500\" in kV is 500000 V"), volts.complaint());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "high|is not a number of volts",
        "500?|is not a unit of test voltage",
        "500V~|is not a unit of test voltage",
        "500 mA|is not a unit of test voltage",
        "500 VAC|is not a unit of test voltage",
        "0 V|must be above 0",
        "500 kV|is 500000 V: no insulation tester gives so much"
      })
  void what_is_no_test_voltage_says_why(String text, String complaint) {
    Understood<Double> volts = VoltsCell.volts(text, "");
    assertTrue(volts.value().isEmpty(), text);
    assertTrue(volts.complaint().contains(complaint), volts.complaint());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0,75 mm²|0.75 mm²",
        "0.75 sq mm|0.75 mm²",
        "2/0|AWG 2/0",
        "00|AWG 2/0",
        "#20|AWG 20"
      })
  void a_gauge_with_a_decimal_comma_or_a_slash_is_one(String text, String label) {
    assertEquals(label, GaugeCell.gauge(text, "").value().orElseThrow().label());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"0.75|0.75 mm²", "2O|20", "heavy|''", "0 mm²|''", "99|''"})
  void what_is_no_gauge_is_not_taken_and_asked_about(String text, String maybe) {
    Understood<?> gauge = GaugeCell.gauge(text, "");
    assertTrue(gauge.value().isEmpty(), text);
    assertFalse(gauge.complaint().isBlank());
    assertEquals(maybe, gauge.maybe());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"1,5 m|1.5", "150cm|1.5", "18 in.|0.4572", "5'|1.524", ".5 m|0.5", "250 mm|0.25"})
  void a_length_with_a_decimal_comma_or_a_mark_is_one(String text, double metres) {
    assertEquals(metres, LengthCell.length(text, "").value().orElseThrow().metres(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(strings = {"as required", "4", "4 furlongs", "4 ft 6 in", ""})
  void what_is_no_length_says_what_was_expected(String text) {
    Understood<?> length = LengthCell.length(text, "");
    assertTrue(length.value().isEmpty(), text);
    assertTrue(
        length.complaint().contains("write one such as")
            || length.complaint().contains("has no unit"),
        length.complaint());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"470|470", "4k7|4700", "0,22 Ω|0.22", "1 MΩ|1E6", "R22|0.22"})
  void resistance_on_the_list_has_its_unit(String text, double ohms) {
    assertEquals(ohms, OhmsCell.ohms(text, "").value().orElseThrow(), Math.abs(ohms) * 1e-12);
  }

  @ParameterizedTest
  @ValueSource(strings = {"OL", "> 1 M", "about 5", "5 V"})
  void what_is_no_resistance_of_a_part_is_not_taken(String text) {
    assertTrue(OhmsCell.ohms(text, "").value().isEmpty(), text);
  }

  @ParameterizedTest
  @CsvSource({"NaN", "12d", "0x1p3", "1e400", "1_000", "''"})
  void a_number_is_one_that_people_write(String text) {
    assertTrue(PlainNumber.of(text).isEmpty(), text);
  }

  @Test
  void a_time_is_read_as_people_and_spreadsheets_write_it() {
    for (String same :
        List.of(
            "2026-11-25 14:30", "25.11.2026 14:30", "2026-11-25T14:30", "25.11.2026, 2:30 PM")) {
      assertEquals(
          TimeCell.time("2026-11-25 14:30:00").orElseThrow(),
          TimeCell.time(same).orElseThrow(),
          same);
    }
    for (String none :
        List.of("11/25/2026", "25:00", "2026-02-30", "2026-11-2514:30", "soon", "")) {
      assertTrue(TimeCell.time(none).isEmpty(), none);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "D40,D05|D40 D05",
        "1;2;3|1 2 3",
        "A & B|A B",
        "4|4",
        "J1-4,spare|J1-4,spare",
        "A,12|A,12"
      })
  void pins_of_one_shape_in_a_cell_are_several(String text, String pins) {
    assertEquals(List.of(pins.split(" ")), PinList.listed(text));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"D42-D44|D42 D43 D44", "8 thru 10|8 9 10", "07-09|07 08 09", "1..3|1 2 3"})
  void a_range_of_pins_is_each_of_them(String text, String pins) {
    assertEquals(List.of(pins.split(" ")), PinList.range(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"D1-P4", "9-3", "A-D", "1-9999", "D42"})
  void what_may_be_a_name_is_no_range(String text) {
    assertEquals(List.of(), PinList.range(text));
  }

  @Test
  void blanks_and_dashes_of_every_kind_are_one_kind() {
    assertEquals("J1-A", CellText.clean("\u00A0J1\u2013A \u200B"));
    assertTrue(CellText.hasOddBlanks("J1\u00A0A"));
    assertTrue(CellText.hasOddDash("J1\u2013A"));
    assertFalse(CellText.hasOddBlanks("J1 A") || CellText.hasOddDash("J1-A"));
    assertEquals("x", Blanks.strip("\uFEFF\u00A0x\u3000"));
  }

  @ParameterizedTest
  @CsvSource({
    "j01,J1",
    "J001,J1",
    "J0010,J10",
    "J 1,J1",
    "J1 01,J1 1",
    "TB01A02,TB1A2",
    "TB001A002,TB1A2",
    "J10,J10",
    "J100,J100",
    "J1.01,J1.1",
    "J0,J0",
    "J000,J0",
    "007,7",
    "00,0"
  })
  void a_designator_is_the_same_without_case_blanks_and_leading_zeros(String text, String key) {
    assertEquals(key, CellText.refKey(text));
  }

  @Test
  void what_was_probably_meant_is_one_slip_away() {
    List<String> pins = List.of("J1-10", "J1-11", "J2-A");
    assertEquals("J1-10", LikelyMeant.nearest("Jl-1O", pins), "letters for digits");
    assertEquals("J2-A", LikelyMeant.nearest("2J-A", pins), "two neighbours swapped");
    assertEquals("", LikelyMeant.nearest("K9-Z", pins), "nothing is near");
    assertEquals("0.3", LikelyMeant.asNumber("O.3"));
    assertEquals("", LikelyMeant.asNumber("0.3"), "is one already");
  }
}

package dev.ringout.readings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.source.Place;
import dev.ringout.support.PlainLimits;
import dev.ringout.support.PlainWires;
import dev.ringout.units.Gauge;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Readings as they stand on a test sheet, and what is known of who took them with what. */
class WhatAMeterSaidTest {
  private static final Place SHEET = Place.of("sheet.csv");
  private static final Point J1_A = new Point("J1", "A");
  private static final Point P2_1 = new Point("P2", "1");

  @Test
  void a_blank_was_never_read() {
    assertFalse(new Measured.NotTested().made());
    assertEquals("not tested", new Measured.NotTested().text());
    assertTrue(new Measured.OverRange(OptionalDouble.empty()).made());
  }

  @Test
  void what_was_typed_is_what_is_shown() {
    assertEquals("∞", new Measured.OverRange(OptionalDouble.empty(), "∞").text());
    assertEquals("✓", new Measured.Word(Measured.Meaning.PASS, "✓").text());
    assertEquals("> 200 MΩ", new Measured.MoreThan(200e6).text());
    assertEquals("< 0.1 Ω", new Measured.LessThan(0.1).text());
  }

  /** Source: JCGM 100:2008 F.2.2.1: an indication may stand for anything half a digit about it. */
  @Test
  void a_value_is_off_by_half_its_last_digit_and_by_the_meter_s_own_error() {
    Measured.Value value = new Measured.Value(100, 0.05);
    assertEquals(0.05, Meter.UNKNOWN.uncertaintyOhms(value), 1e-12);
    assertEquals(0.1, Meter.UNKNOWN.benefitOfTheDoubtOhms(value), 1e-12, "a digit, untold");
    Meter meter =
        new Meter(
            OptionalDouble.empty(),
            0,
            OptionalDouble.empty(),
            0.01,
            2,
            0.3,
            OptionalDouble.of(0.1));
    assertEquals(0.05 + 1 + 0.2 + 0.3, meter.uncertaintyOhms(value), 1e-12);
    assertEquals(0, meter.benefitOfTheDoubtOhms(value), 1e-12, "what is told is all");
  }

  private static Reading reading(Side from, Side to, SwitchState state) {
    return new Reading(
        Reading.Kind.CONTINUITY,
        "7",
        from,
        to,
        state,
        new Measured.Value(0.1, 0.05),
        Meter.UNKNOWN,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        "",
        "",
        SHEET);
  }

  @Test
  void a_reading_is_named_by_its_two_sides_and_the_switches_that_were_moved() {
    Side tied = new Side.Points(List.of(J1_A, P2_1));
    Side one = new Side.Points(List.of(J1_A));
    assertEquals(
        "J1-A+P2-1 to REST", reading(tied, new Side.Rest(), SwitchState.normal()).subject());
    SwitchState moved =
        SwitchState.normal()
            .withLifted(PlainWires.of("W1", J1_A, P2_1, new Gauge.Awg(20), 1, SHEET));
    assertEquals("J1-A to REST (W1=LIFTED)", reading(one, new Side.Rest(), moved).subject());
  }

  @Test
  void exchanged_leads_read_the_other_way() {
    Side here = new Side.Points(List.of(J1_A));
    Side there = new Side.Points(List.of(P2_1));
    Reading turned =
        reading(here, there, SwitchState.normal())
            .reversed(new Measured.OverRange(OptionalDouble.empty()), Place.of("other.csv"));
    assertEquals("P2-1 to J1-A", turned.subject());
    assertEquals("OL", turned.measured().text());
    assertEquals(Place.of("other.csv"), turned.place());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "R. Adeyemi|Adeyemi, R.|true",
        "R. Adeyemi|r adeyemi|true",
        "Adeyemi|R. Adeyemi|true",
        "R. Adeyemi|M. Adeyemi|false",
        "RA|R. Adeyemi|true",
        "Rolf Adeyemi|R. Adeyemi|true",
        "Rolf Adeyemi|Mia Adeyemi|false",
        "RAdeyemi|R. Adeyemi|true",
        "R. M.|R. Adeyemi|false",
        "n/a|n/a|false"
      })
  void a_person_is_known_in_whatever_order_the_name_is_written(
      String one, String other, boolean same) {
    assertEquals(same, Person.isSame(one, other));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "-", "n/a", "none", "TBD", "same as tester", "ditto"})
  void a_cell_may_name_nobody(String cell) {
    assertFalse(Person.isNamed(cell));
  }

  @Test
  void a_time_without_a_day_has_none() {
    assertEquals(Optional.empty(), new TimeOfReading(LocalDate.EPOCH.atTime(14, 5)).day());
    LocalDateTime dated = LocalDate.of(2024, 3, 2).atTime(14, 5);
    assertEquals(Optional.of(LocalDate.of(2024, 3, 2)), new TimeOfReading(dated).day());
  }

  private static Job job(String... namesAndValues) {
    Map<String, String> entries = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      entries.put(namesAndValues[i], namesAndValues[i + 1]);
    }
    return new Job(
        "sheet.xlsx",
        entries,
        Map.of(),
        OptionalDouble.of(1e3),
        OptionalDouble.of(2e9),
        OptionalDouble.empty(),
        Meter.UNKNOWN,
        "",
        Place.of("sheet.xlsx"));
  }

  @Test
  void a_job_sheet_is_read_by_its_names_whatever_their_case_and_blanks() {
    assertEquals("T-118", job("Instrument  No.", " T-118 ").value("instrument no"));
    assertEquals(Place.of("sheet.xlsx"), job().place("instrument"));
  }

  @ParameterizedTest
  @CsvSource({"0418, 0418", "HS-7, HS-7", "n/a, ''", "-, ''", "PROTOTYPE, PROTOTYPE"})
  void a_dash_is_no_serial_number(String written, String serial) {
    assertEquals(serial, job("Serial number", written).serialNumber());
  }

  @Test
  void one_instrument_serves_for_both_tests_unless_the_insulation_tester_has_rows_of_its_own() {
    assertEquals(
        List.of("continuity and insulation"),
        job("Instrument", "meter").instruments().stream().map(Instrument::use).toList());
    assertEquals(
        List.of("continuity", "insulation"),
        job("Instrument", "meter", "Insulation instrument", "tester").instruments().stream()
            .map(Instrument::use)
            .toList());
    assertEquals(OptionalDouble.of(2e9), job().rangeOhms(Reading.Kind.INSULATION));
  }

  @Test
  void whoever_touches_a_wire_opens_the_items_at_both_its_ends() {
    Harness unit =
        Harness.builder(PlainLimits.of())
            .wires(List.of(PlainWires.of("W1", J1_A, P2_1, new Gauge.Awg(20), 1, SHEET)))
            .build();
    assertEquals(Set.of("TB1", "J1", "P2"), Rework.told(unit, Set.of("W1"), Set.of("TB1")).items());
    assertEquals(Set.of(), Rework.told(unit, Set.of("W9"), Set.of()).items());
  }

  @Test
  void each_rework_is_told_once_and_numbered_on_from_the_last() {
    Rework first =
        new Rework(
            "3", "", Optional.empty(), Set.of("J1"), Set.of(), "", true, Place.of("first.csv"));
    Rework next = Rework.told(Harness.builder(PlainLimits.of()).build(), Set.of(), Set.of("P2"));
    ReadingSet readings =
        new ReadingSet(List.of(), List.of(), List.of(first), List.of(), List.of()).before(next);
    assertEquals(List.of("3", "4"), readings.reworksBefore().stream().map(Rework::number).toList());
  }
}

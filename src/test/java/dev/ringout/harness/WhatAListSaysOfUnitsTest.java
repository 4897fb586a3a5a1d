package dev.ringout.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Demands.Calibration;
import dev.ringout.harness.Demands.WordUse;
import dev.ringout.source.Place;
import dev.ringout.support.PlainLimits;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** For which units a list is good, what it lets a word stand for, until when a waiver holds. */
class WhatAListSaysOfUnitsTest {
  private static final Place ROW = Place.of("list.csv");

  private static String effectivity(Map<String, String> header) {
    return Effectivity.of(Harness.builder(PlainLimits.of()).header(header).build());
  }

  @ParameterizedTest
  @CsvSource({"Effectivity", "Serial Numbers", "serial number:", "Effective for", "VALID FOR"})
  void effectivity_is_found_under_any_of_its_names(String name) {
    assertEquals("0100 to 0200", effectivity(Map.of(name, " 0100 to 0200 ")));
  }

  @Test
  void a_list_that_does_not_say_for_whom_it_is_good_says_nothing() {
    assertEquals("", effectivity(Map.of("Title", "box", "Effectivity", "  ")));
    assertEquals(
        "0300 and on", effectivity(Map.of("Effectivity", " ", "Valid for", "0300 and on")));
  }

  @ParameterizedTest
  @CsvSource({
    "0100 to 0200,0100-0200,true",
    "0100 to 0200,0100-0201,false",
    "after mod 12,After Mod 12 ,true",
    "after mod 12,after mod 13,false",
    "0100,after mod 12,false",
    "after mod 12,0100,false"
  })
  void two_effectivities_are_one_where_they_mean_the_same_units(
      String one, String other, boolean same) {
    assertEquals(same, Effectivity.same(one, other));
  }

  @Test
  void a_word_may_stand_only_for_what_the_list_says() {
    for (WordUse use : WordUse.values()) {
      assertFalse(Demands.USUAL.allows(use), "nothing is said: " + use);
    }
    Demands joins =
        new Demands(
            true, Optional.of(Set.of(WordUse.JOINS)), Calibration.REQUIRED, true, true, true);
    assertTrue(joins.allows(WordUse.JOINS));
    assertFalse(joins.allows(WordUse.INSULATION));
  }

  @Test
  void a_waiver_holds_to_the_end_of_its_last_day() {
    LocalDate last = LocalDate.of(2027, 3, 31);
    Waiver waiver =
        new Waiver("crimp-gauge", "J1-A", "R. Adeyemi", "tried", Optional.of(last), ROW);
    assertFalse(waiver.isExpired(last.minusDays(1)));
    assertFalse(waiver.isExpired(last));
    assertTrue(waiver.isExpired(last.plusDays(1)));
    assertEquals("2027-03-31", waiver.until());
    Waiver always = new Waiver("crimp-gauge", "J1-A", "R. Adeyemi", "tried", Optional.empty(), ROW);
    assertFalse(always.isExpired(LocalDate.MAX));
    assertEquals("", always.until());
  }

  @Test
  void what_a_wire_is_made_of_is_its_type_and_what_columns_of_the_list_say_of_that() {
    Wire wire =
        Wire.of("W1", new Point("J1", "A"), new Point("J2", "A"), ROW)
            .madeOf(Wire.Make.UNSAID.ofType("AS22759/16"));
    assertEquals("AS22759/16", wire.making());
    assertEquals("AS22759/16", wire.withNotes(Map.of("Zone", "4")).making());
    assertEquals(
        "AS22759/16 solid", wire.withNotes(Map.of("Conductor stranding", "solid")).making());
    assertEquals("AS22759/16 tin", wire.withNotes(Map.of(" MATERIAL ", "tin")).making());
  }

  @Test
  void an_end_and_its_contact_are_those_of_the_column() {
    Wire wire =
        Wire.of("W1", new Point("J1", "A"), new Point("J2", "B"), ROW)
            .withContact(Wire.End.FROM, "pin")
            .withContact(Wire.End.TO, "socket");
    assertEquals("pin", wire.fromContact());
    assertEquals("socket", wire.toContact());
    assertEquals(Wire.End.TO, Wire.End.FROM.opposite());
    assertEquals(Wire.End.FROM, Wire.End.TO.opposite());
  }

  @Test
  void points_are_given_in_the_order_in_which_people_read_them() {
    Harness unit =
        Harness.builder(PlainLimits.of())
            .wires(List.of(Wire.of("W1", new Point("J10", "1"), new Point("J2", "1"), ROW)))
            .build();
    assertEquals(List.of(new Point("J2", "1"), new Point("J10", "1")), unit.points());
  }
}

package dev.ringout.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.readings.Rework;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.words.UnprovenSentences;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * At a contact that is closed at rest, a wire on the other terminal reads as the good unit does:
 * only readings with the switch operated tell. Plain circuit reasoning, no source.
 */
class OwnSideTest {
  @TempDir Path folder;

  /** A limit switch with its three wires, all read at rest, and its contacts at its terminals. */
  private UnitUnderTest limitSwitch() {
    return limitSwitchAtRest()
        .readsIn("S1=MADE", "S1-COM", "S1-NO", "0.1")
        .readsIn("S1=MADE", "S1-COM", "S1-NC", "OL");
  }

  private UnitUnderTest limitSwitchAtRest() {
    return new UnitUnderTest(folder)
        .withoutInsulationTest()
        .contact("S1,CLEAR,COM,NC")
        .contact("S1,MADE,COM,NO")
        .wire("W1,P2-1,S1-COM")
        .wire("W2,P2-2,S1-NO")
        .wire("W3,P2-3,S1-NC")
        .reads("P2-1", "S1-COM", "0.1")
        .reads("P2-2", "S1-NO", "0.1")
        .reads("P2-3", "S1-NC", "0.1")
        .reads("P2-1", "P2-3", "0.2")
        .reads("P2-2", "REST", "OL");
  }

  /** Both wires at the contact read through while it is open. */
  private UnitUnderTest bothReadWithTheContactOpen() {
    return limitSwitch()
        .readsIn("S1=MADE", "P2-1", "S1-COM", "0.1")
        .readsIn("S1=MADE", "P2-3", "S1-NC", "0.1");
  }

  /** A second wire at the common terminal. */
  private UnitUnderTest withTwoAtTheCommon() {
    return limitSwitch().wire("W4,P2-4,S1-COM").reads("P2-4", "S1-COM", "0.1");
  }

  private static String sameWithAnEndAt(String what, String terminal, String state) {
    return what
        + ": would read the same with an end at "
        + terminal
        + ", which a closed contact joins; read it with "
        + state;
  }

  private static String exchanged(String what, String other, String terminal, String state) {
    return what
        + ": would read the same exchanged with "
        + other
        + " at "
        + terminal
        + ", which a closed contact joins; read it with "
        + state;
  }

  private static List<String> unproven(CheckResult result) {
    return result.coverage().unproven().stream()
        .map(one -> UnprovenSentences.said(result.circuit(), one))
        .toList();
  }

  @Test
  void readings_at_rest_and_at_the_terminals_leave_it_open() {
    CheckResult result = limitSwitch().check();
    assertEquals(CheckResult.Verdict.INCOMPLETE, result.verdict());
    assertEquals(
        List.of(
            sameWithAnEndAt("wire W1", "S1-NC", "S1=MADE"),
            sameWithAnEndAt("wire W3", "S1-COM", "S1=MADE")),
        unproven(result));
  }

  @Test
  void a_wire_read_through_with_the_contact_open_is_on_its_own_side() {
    CheckResult result = bothReadWithTheContactOpen().check();
    assertEquals(List.of(), unproven(result));
    assertEquals(CheckResult.Verdict.CONFORMS, result.verdict());
  }

  @Test
  void one_reading_through_two_wires_and_the_other_contact_shows_the_first() {
    CheckResult result = limitSwitch().readsIn("S1=MADE", "P2-1", "P2-2", "0.2").check();
    assertEquals(List.of(sameWithAnEndAt("wire W3", "S1-COM", "S1=MADE")), unproven(result));
  }

  /** An end of either wire at the other's terminal would join the far ends; both ends would not. */
  @Test
  void an_open_between_the_far_ends_shows_each_end_but_not_that_they_are_exchanged() {
    UnitUnderTest unit = limitSwitch().readsIn("S1=MADE", "P2-1", "P2-3", "OL");
    CheckResult result = unit.check();
    assertEquals(CheckResult.Verdict.INCOMPLETE, result.verdict());
    assertEquals(
        List.of(
            exchanged("wire W1", "W3", "S1-NC", "S1=MADE"),
            exchanged("wire W3", "W1", "S1-COM", "S1=MADE")),
        unproven(result));
    CheckResult withOneRead = unit.readsIn("S1=MADE", "P2-1", "S1-COM", "0.1").check();
    assertEquals(List.of(), unproven(withOneRead));
    assertEquals(CheckResult.Verdict.CONFORMS, withOneRead.verdict());
  }

  /** Three may have changed places, which no reading of two of them contradicts. */
  @Test
  void opens_alone_never_show_that_no_ends_have_changed_places() {
    assertEquals(
        CheckResult.Verdict.INCOMPLETE,
        limitSwitch()
            .readsIn("S1=MADE", "P2-1", "S1-NC", "OL")
            .readsIn("S1=MADE", "P2-3", "S1-COM", "OL")
            .check()
            .verdict());
  }

  @Test
  void an_open_on_the_far_side_of_another_wire_shows_nothing_of_it() {
    assertEquals(
        List.of(
            exchanged("wire W1", "W3", "S1-NC", "S1=MADE"),
            sameWithAnEndAt("wire W3", "S1-COM", "S1=MADE"),
            sameWithAnEndAt("wire W4", "S1-NC", "S1=MADE")),
        unproven(withTwoAtTheCommon().readsIn("S1=MADE", "P2-1", "S1-NC", "OL").check()));
  }

  @Test
  void the_other_side_against_the_rest_shows_that_no_wire_of_this_one_is_there_alone() {
    assertEquals(
        List.of(
            exchanged("wire W1", "W3", "S1-NC", "S1=MADE"),
            sameWithAnEndAt("wire W3", "S1-COM", "S1=MADE"),
            exchanged("wire W4", "W3", "S1-NC", "S1=MADE")),
        unproven(withTwoAtTheCommon().readsIn("S1=MADE", "S1-NC", "REST", "OL").check()));
  }

  /** At rest the contact shorts it: it could be missing. */
  @Test
  void a_lamp_across_a_closed_contact_is_read_with_the_contact_open() {
    UnitUnderTest unit =
        limitSwitchAtRest()
            .wire("W4,DS1-1,S1-COM")
            .wire("W5,DS1-2,S1-NC")
            .part("DS1,1,2,lamp,96,15,")
            .reads("DS1-1", "S1-COM", "0.1")
            .reads("DS1-2", "S1-NC", "0.1")
            .readsIn("S1=MADE", "S1-COM", "S1-NO", "0.1")
            .readsIn("S1=MADE", "DS1-1", "P2-1", "0.2")
            .readsIn("S1=MADE", "DS1-2", "P2-3", "0.2");
    assertEquals(
        List.of(
            "the contact S1-COM/NC of S1: no reading shows it open at MADE",
            "no good reading was made across lamp DS1 with S1=MADE"),
        unproven(unit.check()));
    CheckResult result = unit.readsIn("S1=MADE", "DS1-1", "DS1-2", "96").check();
    assertEquals(List.of(), unproven(result));
    assertEquals(CheckResult.Verdict.CONFORMS, result.verdict());
  }

  /** What is joined to the probes as listed is no part of the rest. */
  @Test
  void a_group_with_both_sides_of_a_contact_to_the_rest_shows_no_side() {
    CheckResult result =
        new UnitUnderTest(folder)
            .withoutInsulationTest()
            .contact("S1,OFF,1,2")
            .contact("S1,ON,3,4")
            .wire("W1,S1-2,J1-1")
            .reads("S1-1", "S1-2", "0.1")
            .reads("S1-1", "J1-1", "0.1")
            .readsIn("S1=ON", "S1-3", "S1-4", "0.1")
            .readsIn("S1=ON", "S1-1", "S1-2", "OL")
            .readsIn("S1=ON", "S1-1+S1-2", "REST", "OL")
            .check();
    assertTrue(
        unproven(result).contains(sameWithAnEndAt("wire W1", "S1-1", "S1=ON")),
        unproven(result).toString());
  }

  @Test
  void a_resistor_at_a_switchs_terminal_is_read_with_the_contact_open() {
    UnitUnderTest unit =
        bothReadWithTheContactOpen()
            .wire("W4,P2-4,TB1-4")
            .reads("P2-4", "TB1-4", "0.1")
            .part(",S1-NC,TB1-4,resistor,470,5,")
            .reads("P2-3", "TB1-4", "470");
    assertEquals(
        List.of("no good reading was made across resistor S1 with S1=MADE"),
        unproven(unit.check()));
    assertEquals(List.of(), unproven(unit.readsIn("S1=MADE", "P2-3", "TB1-4", "470").check()));
  }

  /** With the lead behind the contact, the switch would take it out of circuit. */
  @Test
  void a_resistor_anywhere_in_a_net_that_a_closed_contact_holds_is_read_with_it_open() {
    UnitUnderTest unit =
        bothReadWithTheContactOpen()
            .wire("W4,P2-4,TB1-4")
            .reads("P2-4", "TB1-4", "0.1")
            .part(",P2-1,TB1-4,resistor,470,5,")
            .reads("P2-1", "TB1-4", "470");
    assertTrue(
        unproven(unit.check()).stream().anyMatch(one -> one.startsWith("no good reading")),
        unproven(unit.check()).toString());
    assertEquals(List.of(), unproven(unit.readsIn("S1=MADE", "P2-1", "TB1-4", "470").check()));
  }

  /** Its leads are a relay's own pins: the wires to them are shown on their sides. */
  @Test
  void a_winding_between_its_own_pins_is_where_it_is() {
    UnitUnderTest unit =
        bothReadWithTheContactOpen()
            .wire("W4,P2-1,K1-A1")
            .wire("W5,P2-4,K1-A2")
            .reads("P2-1", "K1-A1", "0.1")
            .readsIn("S1=MADE", "P2-1", "K1-A1", "0.1")
            .reads("P2-4", "K1-A2", "0.1")
            .part("K1,A1,A2,winding,470,5,")
            .reads("P2-1", "P2-4", "470");
    assertEquals(List.of(), unproven(unit.check()));
  }

  /** The bridge hangs at the far end of the wire, and is off with it. */
  @Test
  void a_contact_seen_open_with_a_wire_lifted_does_not_show_that_nothing_leads_past() {
    UnitUnderTest unit =
        new UnitUnderTest(folder)
            .withoutInsulationTest()
            .contact("S1,OFF,1,2")
            .contact("S1,ON,,")
            .pin("S1,2,")
            .wire("W1,J1-1,S1-1")
            .reads("J1-1", "S1-1", "0.1")
            .reads("S1-1", "S1-2", "0.1")
            .readsIn("S1=ON", "J1-1", "S1-1", "0.1")
            .readsIn("S1=ON; W1=LIFTED", "S1-1", "S1-2", "OL");
    assertEquals(
        List.of("the contact S1-1/2 of S1: no reading shows it open at ON"),
        unproven(unit.check()));
    assertEquals(List.of(), unproven(unit.readsIn("S1=ON", "J1-1", "S1-2", "OL").check()));
  }

  /** Each contact opens, and a wire from the first to the last leads around both. */
  @Test
  void the_ends_of_contacts_in_series_are_held_apart_with_both_open() {
    UnitUnderTest unit =
        new UnitUnderTest(folder)
            .withoutInsulationTest()
            .contact("S1,OFF,1,2")
            .contact("S1,OFF,3,4")
            .contact("S1,ON,5,6")
            .wire("W1,J1-1,S1-1")
            .wire("W2,S1-2,S1-3")
            .wire("W3,J1-2,S1-4")
            .reads("J1-1", "S1-2", "0.1")
            .reads("S1-3", "J1-2", "0.1")
            .reads("S1-2", "S1-3", "0.1")
            .readsIn("S1=ON", "J1-1", "S1-1", "0.1")
            .readsIn("S1=ON", "S1-2", "S1-3", "0.1")
            .readsIn("S1=ON", "S1-4", "J1-2", "0.1")
            .readsIn("S1=ON", "S1-5", "S1-6", "0.1")
            .readsIn("S1=ON", "S1-1", "S1-2", "OL")
            .readsIn("S1=ON", "S1-3", "S1-4", "OL")
            .reads("S1-5", "S1-6", "OL")
            .reads("S1-5", "J1-1", "OL")
            .reads("S1-6", "J1-1", "OL");
    assertEquals(
        List.of(
            "S1-1 and S1-4: something may join them past the contacts; read between them with S1=ON"),
        unproven(unit.check()));
    // What leads past may hang at the end that is off.
    assertEquals(
        1, unproven(unit.readsIn("S1=ON; W1=LIFTED", "S1-1", "J1-2", "OL").check()).size());
    CheckResult result = unit.readsIn("S1=ON", "J1-1", "J1-2", "OL").check();
    assertEquals(List.of(), unproven(result));
    assertEquals(CheckResult.Verdict.CONFORMS, result.verdict());
  }

  /** With a wire lifted a piece is in two halves, and each is a place for an end. */
  @Test
  void a_reading_with_an_end_lifted_shows_no_side() {
    assertEquals(
        List.of(sameWithAnEndAt("wire W1", "S1-NC", "S1=MADE")),
        unproven(
            limitSwitch()
                .readsIn("S1=MADE; W3=LIFTED", "P2-1", "S1-NC", "OL")
                .readsIn("S1=MADE", "P2-3", "S1-NC", "0.1")
                .check()));
  }

  @Test
  void a_jumper_between_terminals_of_a_strip_is_shown_on_its_side_too() {
    UnitUnderTest unit =
        bothReadWithTheContactOpen()
            .wire("W4,TB1-1,S1-COM")
            .link("TB1,1,2")
            .reads("TB1-1", "S1-COM", "0.1")
            .reads("TB1-1", "TB1-2", "0.01")
            .readsIn("S1=MADE", "TB1-1", "S1-COM", "0.1");
    assertEquals(
        List.of(sameWithAnEndAt("the link TB1-1/2", "S1-NC", "S1=MADE")), unproven(unit.check()));
    assertEquals(List.of(), unproven(unit.readsIn("S1=MADE", "TB1-1", "TB1-2", "0.01").check()));
  }

  /** The other contact joins both again: only this wire's own reading then tells. */
  @Test
  void terminals_that_are_joined_in_every_position_through_the_wire_have_sides() {
    UnitUnderTest unit =
        new UnitUnderTest(folder)
            .withoutInsulationTest()
            .contact("S1,OFF,1,2")
            .contact("S1,ON,3,4")
            .wire("W1,S1-1,S1-3")
            .wire("W2,S1-2,S1-4")
            .reads("S1-1", "S1-2", "0.1")
            .reads("S1-1", "S1-3", "0.1")
            .reads("S1-2", "S1-4", "0.1")
            .readsIn("S1=ON", "S1-4", "S1-3", "0.1")
            .readsIn("S1=ON", "S1-2", "S1-4", "0.1");
    assertTrue(
        unproven(unit.check()).stream().anyMatch(one -> one.startsWith("wire W1: would read")),
        unproven(unit.check()).toString());
  }

  /** Of three positions the one tells in which the other contact alone is closed. */
  @Test
  void every_position_of_a_switch_is_one_in_which_a_side_may_show() {
    UnitUnderTest unit =
        new UnitUnderTest(folder)
            .withoutInsulationTest()
            .contact("S1,A,1,2")
            .contact("S1,A,3,4")
            .contact("S1,B,1,2")
            .contact("S1,D,3,4")
            .wire("W1,S1-4,S1-2")
            .wire("W2,S1-1,S1-3")
            .reads("S1-1", "S1-2", "0.1")
            .reads("S1-1", "S1-3", "0.1")
            .reads("S1-4", "S1-2", "0.1")
            .readsIn("S1=B", "S1-2", "S1-1", "0.1")
            .readsIn("S1=B", "S1-1", "S1-3", "0.1")
            .readsIn("S1=B", "S1-4", "S1-2", "0.1")
            .readsIn("S1=D", "S1-3", "S1-4", "0.1");
    String open = sameWithAnEndAt("wire W1", "S1-1", "S1=D");
    assertTrue(unproven(unit.check()).contains(open), unproven(unit.check()).toString());
    assertFalse(unproven(unit.readsIn("S1=D", "S1-4", "S1-2", "0.1").check()).contains(open));
  }

  /** Then no reading tells the two sides apart, whatever is asked. */
  @Test
  void a_contact_that_never_opens_has_one_side() {
    CheckResult result =
        new UnitUnderTest(folder)
            .withoutInsulationTest()
            .contact("S1,CLEAR,COM,NC")
            .contact("S1,MADE,COM,NC")
            .contact("S1,MADE,COM,NO")
            .wire("W1,P2-1,S1-COM")
            .wire("W3,P2-3,S1-NC")
            .reads("P2-1", "S1-COM", "0.1")
            .reads("P2-3", "S1-NC", "0.1")
            .reads("P2-1", "P2-3", "0.2")
            .reads("P2-1", "REST", "OL")
            .readsIn("S1=MADE", "S1-COM", "S1-NC", "0.1")
            .readsIn("S1=MADE", "S1-COM", "S1-NO", "0.1")
            .check();
    assertEquals(
        List.of(),
        unproven(result).stream()
            .filter(one -> one.startsWith("wire") || one.contains("past the contacts"))
            .toList());
  }

  /** What was done there may have led past the contact. */
  @Test
  void a_contact_seen_open_before_the_far_side_was_opened_is_seen_open_again() {
    CheckResult before =
        new UnitUnderTest(folder)
            .withoutInsulationTest()
            .contact("S1,OFF,1,2")
            .contact("S1,ON,,")
            .wire("W1,J1-1,S1-1")
            .wire("W2,S1-2,J2-1")
            .reads("J1-1", "S1-1", "0.1")
            .reads("S1-2", "J2-1", "0.1")
            .reads("J1-1", "J2-1", "0.2")
            .readsIn("S1=ON", "J1-1", "S1-1", "0.1")
            .readsIn("S1=ON", "S1-2", "J2-1", "0.1")
            .readsIn("S1=ON", "S1-1", "REST", "OL")
            .check();
    assertEquals(List.of(), unproven(before));
    Rework opened = Rework.told(before.harness(), Set.of(), Set.of("J2"));
    CheckResult after =
        CheckResult.of(before.harness(), before.readings().before(opened), List.of());
    assertTrue(
        unproven(after).contains("the contact S1-1/2 of S1: no reading shows it open at ON"),
        unproven(after).toString());
  }

  /** A contact that is closed at OFF alone, all else shown. */
  private UnitUnderTest closedAtOffAlone(String... positions) {
    UnitUnderTest unit =
        new UnitUnderTest(folder)
            .withoutInsulationTest()
            .contact("S1,OFF,1,2")
            .pin("S1,2,")
            .pin("S1,9,")
            .wire("W1,J1-1,S1-1")
            .reads("J1-1", "S1-1", "0.1")
            .reads("S1-1", "S1-2", "0.1")
            .reads("S1-9", "REST", "OL")
            .readsIn("S1=ON", "J1-1", "S1-1", "0.1");
    for (String position : positions) {
      unit.contact("S1," + position + ",,");
    }
    return unit;
  }

  private static String neverSeenOpenAt(String position) {
    return "the contact S1-1/2 of S1: no reading shows it open at " + position;
  }

  @Test
  void a_contact_is_seen_open_in_every_position_in_which_it_is_not_closed() {
    UnitUnderTest unit = closedAtOffAlone("ON", "TEST").readsIn("S1=ON", "S1-1", "S1-2", "OL");
    assertEquals(List.of(neverSeenOpenAt("TEST")), unproven(unit.check()));
    assertEquals(List.of(), unproven(unit.readsIn("S1=TEST", "S1-1", "S1-2", "OL").check()));
  }

  @Test
  void what_else_is_apart_in_a_position_shows_no_contact_open() {
    UnitUnderTest unit = closedAtOffAlone("ON").readsIn("S1=ON", "S1-1", "S1-9", "OL");
    assertEquals(List.of(neverSeenOpenAt("ON")), unproven(unit.check()));
    assertEquals(List.of(), unproven(unit.readsIn("S1=ON", "S1-2", "J1-1", "OL").check()));
  }

  /** Around it a wire leads as listed: only without that is it seen at all. */
  @Test
  void a_contact_that_a_wire_leads_around_is_seen_open_with_that_wire_lifted() {
    UnitUnderTest unit =
        closedAtOffAlone("ON")
            .wire("W2,S1-1,S1-2")
            .readsIn("S1=ON", "S1-1", "S1-2", "0.1")
            .readsIn("W2=LIFTED", "S1-1", "S1-2", "0.1");
    assertEquals(List.of(neverSeenOpenAt("ON")), unproven(unit.check()));
    assertEquals(
        List.of(), unproven(unit.readsIn("S1=ON; W2=LIFTED", "S1-1", "S1-2", "OL").check()));
  }

  /** No wire goes with it, and a bridge past the contact would still be there. */
  @Test
  void a_lamp_that_is_off_meanwhile_takes_nothing_from_an_open_contact() {
    UnitUnderTest unit =
        closedAtOffAlone("ON")
            .part("DS1,1,2,lamp,96,15,")
            .reads("DS1-1", "DS1-2", "96")
            .reads("DS1-1", "S1-1", "OL")
            .reads("DS1-2", "S1-1", "OL")
            .reads("DS1-1", "S1-9", "OL");
    assertEquals(List.of(neverSeenOpenAt("ON")), unproven(unit.check()));
    assertEquals(
        List.of(), unproven(unit.readsIn("S1=ON; DS1=LIFTED", "S1-1", "S1-2", "OL").check()));
  }

  /** A resistor beside a contact, read in some positions of a switch with three. */
  private UnitUnderTest resistorBesideAContact(String... positions) {
    UnitUnderTest unit =
        closedAtOffAlone("ON", "TEST")
            .readsIn("S1=ON", "S1-1", "S1-2", "OL")
            .readsIn("S1=TEST", "S1-1", "S1-2", "OL")
            .part(",S1-2,TB1-4,resistor,470,5,")
            .reads("TB1-4", "S1-9", "OL")
            .reads("S1-2", "TB1-4", "470");
    for (String position : positions) {
      unit.readsIn("S1=" + position, "S1-2", "TB1-4", "470");
    }
    return unit;
  }

  @Test
  void a_part_beside_a_contact_is_read_in_any_position_in_which_the_contact_is_open() {
    assertEquals(
        List.of("no good reading was made across resistor S1 with S1=ON"),
        unproven(resistorBesideAContact().check()));
    assertEquals(List.of(), unproven(resistorBesideAContact("TEST").check()));
  }

  /** A relay's pins are those of its winding and of its own contacts. */
  @Test
  void a_winding_of_a_relay_with_contacts_of_its_own_is_where_it_is() {
    UnitUnderTest unit =
        bothReadWithTheContactOpen()
            .contact("K1,DROPPED,11,12")
            .contact("K1,PULLED,,")
            .wire("W4,P2-1,K1-A1")
            .wire("W5,P2-4,K1-A2")
            .reads("P2-1", "K1-A1", "0.1")
            .readsIn("S1=MADE", "P2-1", "K1-A1", "0.1")
            .reads("P2-4", "K1-A2", "0.1")
            .part("K1,A1,A2,winding,470,5,")
            .reads("P2-1", "P2-4", "470")
            .reads("K1-11", "K1-12", "0.1")
            .readsIn("K1=PULLED", "K1-11", "K1-12", "OL")
            .reads("K1-11", "P2-1", "OL")
            .reads("K1-11", "P2-4", "OL");
    assertEquals(List.of(), unproven(unit.check()));
  }

  /** Its lead may be at any terminal of the strip. */
  @Test
  void a_lamp_between_terminals_of_a_strip_is_read_with_the_contact_open() {
    UnitUnderTest unit =
        bothReadWithTheContactOpen()
            .wire("W4,P2-1,TB1-1")
            .wire("W5,P2-4,TB1-2")
            .pin("TB1,3,")
            .reads("P2-1", "TB1-1", "0.1")
            .readsIn("S1=MADE", "P2-1", "TB1-1", "0.1")
            .reads("P2-4", "TB1-2", "0.1")
            .reads("TB1-3", "REST", "OL")
            .part("TB1,1,2,lamp,470,5,")
            .reads("P2-1", "P2-4", "470");
    assertEquals(
        List.of("no good reading was made across lamp TB1 with S1=MADE"), unproven(unit.check()));
    assertEquals(List.of(), unproven(unit.readsIn("S1=MADE", "P2-1", "P2-4", "470").check()));
  }

  /** What the switch joins there may be what was read. */
  @Test
  void a_part_apart_from_all_contacts_is_read_with_every_switch_at_rest() {
    UnitUnderTest unit =
        bothReadWithTheContactOpen()
            .part(",TB9-1,TB9-2,resistor,470,5,")
            .reads("TB9-1", "P2-1", "OL")
            .reads("TB9-2", "P2-1", "OL")
            .readsIn("S1=MADE", "TB9-1", "TB9-2", "470");
    assertEquals(List.of("no good reading was made across resistor TB9"), unproven(unit.check()));
    assertEquals(List.of(), unproven(unit.reads("TB9-1", "TB9-2", "470").check()));
  }

  @Test
  void an_open_to_what_is_in_neither_piece_shows_no_side() {
    assertEquals(
        List.of(
            sameWithAnEndAt("wire W1", "S1-NC", "S1=MADE"),
            sameWithAnEndAt("wire W3", "S1-COM", "S1=MADE")),
        unproven(
            limitSwitch()
                .pin("P2,9,")
                .reads("P2-9", "REST", "OL")
                .readsIn("S1=MADE", "P2-1", "P2-9", "OL")
                .readsIn("S1=MADE", "P2-3", "P2-9", "OL")
                .check()));
  }
}

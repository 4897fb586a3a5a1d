package dev.ringout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.check.InsulationNote;
import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Coverage;
import dev.ringout.compare.Coverage.Unprovable;
import dev.ringout.compare.InsulationDemand.Level;
import dev.ringout.compare.MissingWire;
import dev.ringout.compare.Unproven;
import dev.ringout.harness.SwitchState;
import dev.ringout.plan.LeftOut;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is not shown, in the names of the list: by a check, and by a plan. */
class GapSentencesTest {
  private final CheckResult result;
  private final Circuit circuit;

  /** Two wires side by side, a switch, and a resistor that bears 50 V. */
  GapSentencesTest(@TempDir Path folder) {
    result =
        new UnitUnderTest(folder)
            .wire("W1,J1-A,P1-1")
            .wire("W2,J1-A,P1-1")
            .wire("W3,J1-B,S1-1")
            .contact("S1,ON,1,2")
            .contact("S1,OFF,1,3")
            .wire("W4,J1-C,R1-1")
            .part("R1,1,2,resistor,100,5,50")
            .insulation("J1-C", "REST", "30")
            .check();
    circuit = result.circuit();
  }

  private int point(String name) {
    return IntStream.range(0, circuit.size())
        .filter(point -> circuit.point(point).toString().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private int contact(String position) {
    return IntStream.range(0, circuit.conductors().size())
        .filter(
            one ->
                circuit
                    .conductors()
                    .get(one)
                    .asContact()
                    .filter(contact -> contact.state().equals(position))
                    .isPresent())
        .findFirst()
        .orElseThrow();
  }

  private void says(String said, Unproven gap) {
    assertEquals(said, UnprovenSentences.said(circuit, gap));
  }

  @Test
  void two_pieces_of_a_net_are_named_by_a_point_of_each() {
    says("no reading joins J1-A to P1-1", new Unproven.Join(point("J1-A"), point("P1-1")));
  }

  @Test
  void a_net_that_is_not_held_apart_names_one_of_the_others_and_counts_them() {
    says(
        "net of J1-A: no reading holds it apart from the net of J1-B",
        new Unproven.Isolation(point("J1-A"), point("J1-B"), 1, false));
    says(
        "net of J1-A: no reading holds it apart from 3 other nets, that of J1-B among them",
        new Unproven.Isolation(point("J1-A"), point("J1-B"), 3, true));
  }

  @Test
  void insulation_that_is_not_shown_says_at_what_it_is_to_be_read() {
    says(
        "net of J1-A: no reading shows its insulation from the net of J1-B, at 500 V and 100 MΩ",
        new Unproven.Insulation(point("J1-A"), point("J1-B"), 1, false, new Level(500, 1e8)));
  }

  @Test
  void a_wire_says_what_keeps_a_reading_from_missing_it() {
    says(
        "wire W1: no good reading goes through it",
        new Unproven.OfWire(0, new MissingWire.NotRead()));
    says(
        "wire W1: in parallel with W2: continuity can't tell them apart",
        new Unproven.OfWire(0, new MissingWire.InParallel(1)));
    says(
        "wire W1: part of a loop: continuity beeps with it missing; lift one end and read again",
        new Unproven.OfWire(0, new MissingWire.InLoop()));
  }

  @Test
  void a_contact_says_the_position_in_which_it_was_not_seen() {
    says(
        "the contact S1-1/2 of S1: no reading shows it closed at ON",
        new Unproven.Contact(contact("ON"), "ON", true));
    says(
        "the contact S1-1/2 of S1: no reading shows it open at OFF",
        new Unproven.Contact(contact("ON"), "OFF", false));
  }

  @Test
  void a_part_is_named_by_its_kind() {
    says(
        "no good reading was made across resistor R1",
        new Unproven.OfPart(0, false, SwitchState.normal()));
    says(
        "no good reading was made across resistor R1 with S1=OFF",
        new Unproven.OfPart(0, false, new SwitchState(new TreeMap<>(Map.of("S1", "OFF")))));
  }

  @Test
  void every_sort_that_is_counted_is_said_where_something_of_it_is_needed() {
    long sorts =
        Stream.of(Coverage.class.getRecordComponents())
            .filter(one -> one.getType() == Coverage.Tally.class)
            .count();
    Coverage coverage = result.coverage();
    assertEquals(sorts, Sentences.coverage(coverage).split(", ", -1).length);
    assertTrue(coverage.switches().needed() > 0 && coverage.parts().needed() > 0);
  }

  @Test
  void a_plan_says_what_no_step_of_it_proves() {
    LeftOutSentences leftOut = new LeftOutSentences(circuit);
    List<Integer> ends = List.of(point("R1-1"), point("R1-2"));
    assertEquals(
        "insulation between R1-1, R1-2: resistor R1 between them",
        new LeftOut.WithPartsInPlace(new Unprovable(true, ends, List.of(0))).match(leftOut));
    assertEquals(
        "R1-1, R1-2 apart: the list gives no ohms for the resistor R1 between them",
        new LeftOut.WithPartsInPlace(new Unprovable(false, ends, List.of(0))).match(leftOut));
    assertEquals(
        "insulation, which the list asks for: no test of it is planned here",
        new LeftOut.InsulationNotPlanned().match(leftOut));
    assertEquals(
        "no good reading goes through it",
        new LeftOut.NotShown(new Unproven.OfWire(0, new MissingWire.NotRead())).match(leftOut));
  }

  @Test
  void notes_on_insulation_say_what_it_may_have_done_and_what_it_would_be() {
    assertEquals(
        List.of(
            "J1-C to REST was tested at 500 V; resistor R1 stands only 50 V: if it was not"
                + " disconnected, prove it again.",
            "The readings were taken at 40 °C. By a rule of thumb (halves for each 10 °C) the"
                + " lowest, 30 MΩ, would be 120 MΩ at 20 °C; it is shown only; no verdict uses it."),
        InsulationNoteSentences.of(
            List.of(
                new InsulationNote.Strained(
                    result.comparison().inForce().get(0), 500, circuit.harness().parts()),
                new InsulationNote.Warmer(40, 30e6, 120e6))));
  }
}

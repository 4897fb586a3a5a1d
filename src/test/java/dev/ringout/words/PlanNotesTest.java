package dev.ringout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.circuit.Circuit;
import dev.ringout.plan.PlanOptions;
import dev.ringout.plan.Planner;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.Tables;
import dev.ringout.support.PublishedLimits;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.words.PlanNotes.Note;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is read before the first step of a plan and ticked after the last. */
class PlanNotesTest {
  @TempDir Path folder;

  private UnitUnderTest unit() {
    return new UnitUnderTest(folder)
        .wire("W1,J1-A,P2-1,20,4 ft")
        .wire("W2,J1-B,P2-2,20,4 ft")
        .wire("W3,J1-C,S1-1,20,4 ft")
        .wire("W4,J1-D,S1-2,20,4 ft")
        .contact("S1,CLEAR,1,2")
        .contact("S1,BLOCKED,1,3");
  }

  private static List<Note> notes(UnitUnderTest unit, PlanOptions options) {
    Circuit circuit = Circuit.of(unit.harness());
    return PlanNotes.of(
        Planner.plan(
            circuit, PublishedLimits.of(circuit), new HandMovements(Tables.published()), options));
  }

  private static List<String> about(List<Note> notes, String topic) {
    return notes.stream().filter(note -> note.topic().equals(topic)).map(Note::text).toList();
  }

  @Test
  void cautions_come_first_and_what_a_test_can_t_prove_last() {
    List<Note> notes = notes(unit(), PlanOptions.ALL);
    assertEquals("caution", notes.get(0).topic());
    assertTrue(notes.get(notes.size() - 1).text().startsWith("Continuity does not prove polarity"));
  }

  @Test
  void rest_is_explained_where_a_step_uses_it() {
    assertEquals(1, about(notes(unit(), PlanOptions.ALL), "REST").size());
  }

  @Test
  void what_is_said_of_insulation_volts_stands_only_where_they_are_used() {
    assertEquals(1, about(notes(unit(), PlanOptions.ALL), "after volts").size());
    assertEquals(
        List.of(), about(notes(unit().withoutInsulationTest(), PlanOptions.ALL), "after volts"));
  }

  @Test
  void a_part_that_volts_would_spoil_is_ticked_off_and_on_again() {
    List<Note> notes =
        notes(
            unit().wire("W5,J1-E,R1-1,20,4 ft").part("R1,1,2,resistor,100,5,50"), PlanOptions.ALL);
    List<String> off = about(notes, "off [ ]");
    assertEquals(1, off.size());
    assertTrue(off.get(0).contains("R1") && off.get(0).contains("it stands 50 V"), off.get(0));
    assertTrue(
        about(notes, "on again [ ]").stream().anyMatch(note -> note.contains("R1")),
        "what was taken off is connected again");
  }

  @Test
  void switches_that_are_turned_are_put_back() {
    assertTrue(
        about(notes(unit(), PlanOptions.ALL), "restore [ ]")
            .contains("Every switch in its normal position."));
    UnitUnderTest without = new UnitUnderTest(folder.resolve("b")).wire("W1,J1-A,P2-1,20,4 ft");
    assertFalse(
        about(notes(without, PlanOptions.ALL), "restore [ ]")
            .contains("Every switch in its normal position."));
  }
}

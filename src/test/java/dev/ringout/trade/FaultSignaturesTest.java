package dev.ringout.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.diagnose.Arrangement;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.LeadsNotNulled;
import dev.ringout.diagnose.Fault.LowInsulation;
import dev.ringout.diagnose.Fault.Misread;
import dev.ringout.diagnose.Fault.Miswire;
import dev.ringout.diagnose.Fault.OnPaper;
import dev.ringout.diagnose.Fault.Open;
import dev.ringout.diagnose.Fault.Pattern;
import dev.ringout.diagnose.Fault.Shorted;
import dev.ringout.diagnose.Fault.SlippedRows;
import dev.ringout.diagnose.NextReading;
import dev.ringout.diagnose.SlipFact;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.words.BlindSentences;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What each fault that direct current can see looks like on the sheet, as people who ring out
 * harnesses tell it; common practice, no source. Poor joints, gauges, parts and switches have tests
 * of their own beside this one.
 */
class FaultSignaturesTest {
  private static final String LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZ";

  @TempDir Path folder;

  /** A cable from J1 to P2, pin for pin, with a spare at either end of P2. */
  private UnitUnderTest cable(int wires) {
    return cable(folder, wires);
  }

  private static UnitUnderTest cable(Path folder, int wires) {
    UnitUnderTest unit = new UnitUnderTest(folder);
    unit.pin("P2,1,");
    for (int wire = 1; wire <= wires; wire++) {
      unit.wire("W" + wire + "," + j1(wire) + "," + p2(wire));
    }
    return unit.pin("P2," + (wires + 2) + ",");
  }

  private static String j1(int wire) {
    return "J1-" + LETTERS.charAt(wire - 1);
  }

  private static String p2(int wire) {
    return "P2-" + (wire + 1);
  }

  /** Each wire of J1 read against all of P2, where it answers at one place only. */
  private static void readAll(UnitUnderTest unit, int wires, IntUnaryOperator answersAt) {
    for (int wire = 1; wire <= wires; wire++) {
      for (int pin = 0; pin <= wires + 1; pin++) {
        unit.reads(j1(wire), p2(pin), answersAt.applyAsInt(wire) == pin ? "0.2" : "OL");
      }
    }
  }

  private static <T extends Fault> T theOnly(Class<T> kind, CheckResult result) {
    assertTrue(result.diagnosis().unexplained().isEmpty());
    return assertInstanceOf(kind, OnlyFault.of(result));
  }

  private static List<String> points(Fault fault) {
    return fault.points().stream().map(Object::toString).toList();
  }

  @Test
  void one_row_open_and_no_new_join_is_an_open_wire() {
    UnitUnderTest unit = cable(4);
    readAll(unit, 4, wire -> wire == 2 ? -1 : wire);
    Open open = theOnly(Open.class, unit.check());
    assertEquals("W2", open.suspects().get(0).label());
    // The reading was made once: the probe may have been a pin off.
    assertEquals(1, open.finding().alternatives().size());
    assertInstanceOf(SlipFact.Misread.class, open.finding().alternatives().get(0).slips().get(0));
  }

  @Test
  void a_single_open_reading_is_likely_until_it_has_been_made_once_more() {
    UnitUnderTest once =
        cable(2)
            .reads("J1-A", "P2-2", "OL")
            .reads("J1-B", "P2-3", "0.2")
            .reads("J1-A", "REST", "OL")
            .reads("J1-B", "REST", "OL")
            .reads("P2-2", "J1-B", "OL");
    CheckResult first = once.check();
    assertEquals(Certainty.LIKELY, theOnly(Open.class, first).finding().certainty());
    assertTrue(
        first.diagnosis().next().stream()
            .anyMatch(next -> (next.from() + " " + next.to()).equals("J1-A P2-2")),
        first.diagnosis().next().toString());

    CheckResult second = once.reads("J1-A", "P2-2", "OL").check();
    assertEquals(Certainty.CERTAIN, theOnly(Open.class, second).finding().certainty());
  }

  @Test
  void both_rows_good_and_the_two_joined_is_a_short_between_neighbours() {
    UnitUnderTest unit = cable(3);
    readAll(unit, 3, wire -> wire);
    unit.reads("J1-A", "P2-3", "0.3").reads("J1-B", "P2-2", "0.3").reads("J1-A", "J1-B", "0.1");
    assertEquals(List.of("J1-A", "J1-B"), points(theOnly(Shorted.class, unit.check())));
  }

  @Test
  void a_pin_joined_to_the_shell_is_a_short_to_the_shell() {
    UnitUnderTest unit =
        cable(3).pin("J1,SHELL,").reads("J1-A", "J1-SHELL", "OL").reads("J1-B", "J1-SHELL", "0.1");
    readAll(unit, 3, wire -> wire);
    assertEquals(
        Set.of("J1-B", "J1-SHELL"), Set.copyOf(points(theOnly(Shorted.class, unit.check()))));
  }

  @Test
  void ends_in_a_ring_are_one_item_reloaded_from_the_wrong_rows() {
    UnitUnderTest unit = cable(6);
    readAll(unit, 6, wire -> wire == 2 ? 3 : wire == 3 ? 5 : wire == 5 ? 2 : wire);
    Miswire ring = theOnly(Miswire.class, unit.check());
    assertEquals(3, ring.moves().size());
  }

  @Test
  void a_run_one_cavity_out_eats_the_spare_either_way() {
    for (int step : new int[] {1, -1}) {
      UnitUnderTest unit = cable(folder.resolve("run" + step), 6);
      readAll(unit, 6, wire -> wire + step);
      Miswire run = theOnly(Miswire.class, unit.check());
      assertEquals(Pattern.SHIFT, run.pattern());
      assertEquals(6, run.moves().size());
    }
  }

  @Test
  void a_shift_with_its_last_wire_unread_asks_for_the_spare_next() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int wire = 3; wire <= 6; wire++) {
      unit.wire("W" + wire + "," + j1(wire) + ",P2-" + wire);
    }
    unit.pin("P2,7,");
    CheckResult result =
        unit.reads("J1-C", "P2-3", "OL")
            .reads("J1-D", "P2-4", "OL")
            .reads("J1-E", "P2-5", "OL")
            .reads("J1-F", "P2-6", "OL")
            .reads("J1-C", "P2-4", "0.2")
            .reads("J1-D", "P2-5", "0.2")
            .reads("J1-E", "P2-6", "0.2")
            .check();
    assertEquals(Pattern.SHIFT, theOnly(Miswire.class, result).pattern());
    NextReading next = result.diagnosis().next().get(0);
    assertEquals(List.of("J1-F", "P2-7"), List.of(next.from(), next.to()));
    assertTrue(next.answers().size() >= 2, next.answers().toString());
  }

  /** The listed place of a wire whose net is joined to its neighbour's reads good all the same. */
  @Test
  void a_shift_past_two_jumpered_terminals_is_one_mistake() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    int wires = 6;
    for (int wire = 1; wire <= wires; wire++) {
      unit.wire("W" + wire + ",TB1-" + wire + ",P2-" + wire);
    }
    unit.link("TB1,3,4").pin("P2,7,");
    for (int wire = 1; wire <= wires; wire++) {
      boolean jumpered = wire == 4;
      unit.reads("TB1-" + wire, "P2-" + wire, jumpered ? "0.3" : "OL");
      unit.reads("TB1-" + wire, "P2-" + (wire + 1), "0.2");
    }
    Miswire shifted = theOnly(Miswire.class, unit.check());
    assertEquals(Arrangement.SHIFTED, shifted.arrangement().orElseThrow());
    assertEquals(6, shifted.moves().size());
  }

  /** A cable pin for pin and without a spare, each wire read against all of P2. */
  private CheckResult insert(int wires, IntUnaryOperator answersAt) {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int wire = 1; wire <= wires; wire++) {
      unit.wire("W" + wire + "," + j1(wire) + ",P2-" + wire);
    }
    for (int wire = 1; wire <= wires; wire++) {
      for (int pin = 1; pin <= wires; pin++) {
        unit.reads(j1(wire), "P2-" + pin, answersAt.applyAsInt(wire) == pin ? "0.2" : "OL");
      }
    }
    return unit.check();
  }

  @Test
  void pins_that_count_from_the_other_end_are_an_insert_read_from_its_wrong_face() {
    Miswire mirrored = theOnly(Miswire.class, insert(6, wire -> 7 - wire));
    assertEquals(Arrangement.MIRRORED, mirrored.arrangement().orElseThrow());
  }

  @Test
  void pins_a_fixed_step_round_the_ring_are_another_key() {
    Miswire rotated = theOnly(Miswire.class, insert(7, wire -> (wire + 2) % 7 + 1));
    assertEquals(Arrangement.ROTATED, rotated.arrangement().orElseThrow());
  }

  /** Example: every wire of P3 answers at the same pin of P4, and the reverse. */
  @Test
  void whole_plugs_crossed_are_labels_to_look_at_and_no_wire_to_move() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int pin = 1; pin <= 5; pin++) {
      unit.wire("W3" + pin + ",J3-" + pin + ",P3-" + pin);
      unit.wire("W4" + pin + ",J4-" + pin + ",P4-" + pin);
    }
    for (int pin = 1; pin <= 5; pin++) {
      unit.reads("J3-" + pin, "P3-" + pin, "OL").reads("J4-" + pin, "P4-" + pin, "OL");
      unit.reads("J3-" + pin, "P4-" + pin, "0.2").reads("J4-" + pin, "P3-" + pin, "0.2");
    }
    Miswire crossed = theOnly(Miswire.class, unit.check());
    assertEquals(Arrangement.PLUGS_CROSSED, crossed.arrangement().orElseThrow());
    assertEquals(10, crossed.moves().size());
  }

  @Test
  void one_open_and_a_join_to_the_spare_beside_it_is_the_neighbour_cavity() {
    UnitUnderTest unit = cable(4);
    readAll(unit, 4, wire -> wire == 4 ? 5 : wire);
    Miswire moved = theOnly(Miswire.class, unit.check());
    assertEquals(Pattern.MOVED, moved.pattern());
    assertEquals(List.of("P2-5", "P2-6"), points(moved));
  }

  @Test
  void two_nets_merged_on_the_strip_are_an_extra_jumper() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,J1-A,TB1-1")
            .wire("W2,J1-B,TB1-2")
            .reads("J1-A", "TB1-1", "0.2")
            .reads("J1-B", "TB1-2", "0.2")
            .reads("J1-A", "TB1-2", "0.2")
            .reads("J1-A", "J1-B", "0.4")
            .reads("TB1-1", "TB1-2", "0.01")
            .check();
    assertEquals(2, points(theOnly(Shorted.class, result)).size());
  }

  @Test
  void a_conductor_joined_to_its_shield_is_a_short_to_the_shield() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,J1-A,P2-1")
            .wire("SH1,J1-SHELL,P2-SHELL")
            .reads("J1-A", "P2-1", "0.2")
            .reads("J1-SHELL", "P2-SHELL", "0.1")
            .reads("J1-A", "J1-SHELL", "0.2")
            .check();
    assertTrue(points(theOnly(Shorted.class, result)).toString().contains("SHELL"));
  }

  @Test
  void an_open_shield_reads_open_from_end_to_end() {
    CheckResult result =
        new UnitUnderTest(folder)
            .wire("W1,J1-A,P2-1")
            .wire("SH1,J1-SHELL,P2-SHELL")
            .reads("J1-A", "P2-1", "0.2")
            .reads("J1-SHELL", "P2-SHELL", "OL")
            .check();
    assertEquals("SH1", theOnly(Open.class, result).suspects().get(0).label());
  }

  @Test
  void low_insulation_of_one_pair_is_one_leak_however_often_it_is_read() {
    UnitUnderTest unit = cable(4);
    readAll(unit, 4, wire -> wire);
    CheckResult result =
        unit.insulation("J1-A", "REST", "3M")
            .insulation("J1-B", "REST", "3M")
            .insulation("J1-C", "REST", "2G")
            .insulation("J1-A", "J1-B", "3M")
            .check();
    LowInsulation leak = theOnly(LowInsulation.class, result);
    assertEquals(List.of("J1-A", "J1-B"), points(leak));
    assertEquals(Certainty.CERTAIN, leak.finding().certainty());
    assertEquals(3, leak.finding().readings().size());
  }

  @Test
  void two_nets_that_leak_alike_to_the_rest_leak_to_each_other_and_the_pair_is_read_next() {
    UnitUnderTest unit = cable(4);
    readAll(unit, 4, wire -> wire);
    CheckResult result =
        unit.insulation("J1-A", "REST", "3M")
            .insulation("J1-B", "REST", "2G")
            .insulation("J1-C", "REST", "3.1M")
            .check();
    LowInsulation leak = theOnly(LowInsulation.class, result);
    assertEquals(List.of("J1-A", "J1-C"), points(leak));
    assertEquals(Certainty.LIKELY, leak.finding().certainty());
    assertTrue(
        result.diagnosis().next().stream()
            .anyMatch(next -> next.from().equals("J1-A") && next.to().equals("J1-C")));
  }

  /** Example: from row 17 on each value fits the next row; the lamp lands a row off. */
  @Test
  void values_that_fit_the_row_below_are_a_line_skipped_on_the_sheet_and_nothing_is_rewired() {
    UnitUnderTest unit = cable(20);
    unit.part("DS1,1,2,lamp,40").wire("W31,J5-1,DS1-1").wire("W32,J5-2,DS1-2");
    for (int row = 1; row <= 20; row++) {
      unit.reads(j1(row), p2(row), "0.2");
      if (row == 18) {
        // The lamp's value stands here, a row above its own.
        unit.reads("J5-1", "DS1-1", "40").reads("J5-1", "J5-2", "0.2");
      }
    }
    unit.reads("J5-2", "DS1-2", "OL").reads("J1-A", "J1-B", "OL").reads("J1-B", "J1-C", "");
    SlippedRows slipped = theOnly(SlippedRows.class, unit.check());
    assertEquals(1, slipped.step());
    assertEquals("J5-1 to DS1-1", slipped.first().reading().subject());
  }

  @Test
  void all_values_high_by_the_same_amount_are_leads_that_were_not_nulled() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int pin = 1; pin <= 8; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P2-" + pin + ",20,4 ft");
      unit.reads("J1-" + pin, "P2-" + pin, "0.4" + pin % 3);
    }
    assertEquals(0.35, theOnly(LeadsNotNulled.class, unit.check()).ohms(), 0.05);
  }

  @Test
  void the_same_fault_in_a_second_unit_is_the_paper_and_a_fault_of_one_unit_is_not() {
    UnitUnderTest unit = cable(4);
    readAll(unit, 4, wire -> wire == 2 ? 3 : wire == 3 ? 2 : wire);
    CheckResult first = unit.check();
    OnPaper paper = theOnly(OnPaper.class, first.comparedWith(Map.of("0420.xlsx", first)));
    assertInstanceOf(Miswire.class, paper.same());
    assertEquals(List.of("0420.xlsx"), paper.others());

    UnitUnderTest sound = cable(folder.resolve("second"), 4);
    readAll(sound, 4, wire -> wire);
    theOnly(Miswire.class, first.comparedWith(Map.of("0421.xlsx", sound.check())));
  }

  @Test
  void a_reading_that_contradicts_all_others_was_taken_at_another_pin() {
    UnitUnderTest unit = cable(4);
    readAll(unit, 4, wire -> wire);
    CheckResult result =
        unit.reads("P2-2", "J1-B", "OL")
            .reads("J1-A", "J1-B", "OL")
            .reads("P2-2", "P2-3", "OL")
            .reads("J1-A", "P2-3", "0.2")
            .check();
    theOnly(Misread.class, result);
  }

  @Test
  void two_errors_that_cancel_each_other_are_said_to_be_unseen() {
    UnitUnderTest unit =
        new UnitUnderTest(folder)
            .wire("W1,J1-A,TB1-1")
            .wire("W2,J1-B,TB1-2")
            .wire("W3,TB1-1,P2-1")
            .wire("W4,TB1-2,P2-2")
            .reads("J1-A", "P2-1", "0.2")
            .reads("J1-B", "P2-2", "0.2")
            .reads("J1-A", "REST", "OL")
            .reads("J1-B", "REST", "OL");
    CheckResult ends = unit.check();
    assertFalse(cancelling(ends).isEmpty(), ends.diagnosis().blind().toString());
    assertEquals(
        List.of(),
        cancelling(unit.reads("J1-A", "TB1-1", "0.1").reads("J1-B", "TB1-2", "0.1").check()));
  }

  private static List<String> cancelling(CheckResult result) {
    return result.diagnosis().blind().stream()
        .map(BlindSentences::of)
        .filter(text -> text.contains("cancel"))
        .toList();
  }
}

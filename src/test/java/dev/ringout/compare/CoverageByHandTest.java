package dev.ringout.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Coverage.Tally;
import dev.ringout.support.PublishedLimits;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.words.UnprovenSentences;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What readings prove and what they do not, worked out by hand. */
class CoverageByHandTest {
  @TempDir Path folder;

  private int number;

  private UnitUnderTest unit() {
    return new UnitUnderTest(folder.resolve("unit" + number++)).withoutInsulationTest();
  }

  private UnitUnderTest threeGoodWires() {
    return unit()
        .wire("W1,J1-A,P2-1")
        .wire("W2,J1-B,P2-2")
        .wire("W3,J1-C,P2-3")
        .reads("J1-A", "P2-1", "0.1")
        .reads("J1-B", "P2-2", "0.1")
        .reads("J1-C", "P2-3", "0.1");
  }

  private static List<String> unproven(CheckResult result) {
    return result.coverage().unproven().stream().map(one -> said(result.circuit(), one)).toList();
  }

  private static String said(Circuit circuit, Unproven one) {
    if (one instanceof Unproven.Join join) {
      return "join "
          + circuit.point(join.from())
          + " "
          + circuit.point(join.to())
          + ": "
          + UnprovenSentences.why(circuit, one);
    }
    if (one instanceof Unproven.Isolation apart) {
      return "apart "
          + circuit.point(apart.point())
          + " "
          + circuit.point(apart.other())
          + " and "
          + (apart.others() - 1)
          + (apart.waitsForJoins() ? ", waits for joins: " : ": ")
          + UnprovenSentences.why(circuit, one);
    }
    if (one instanceof Unproven.OfWire wire) {
      return UnprovenSentences.said(circuit, wire);
    }
    return "contact " + UnprovenSentences.why(circuit, one);
  }

  @Test
  void a_net_in_two_pieces_is_joined_by_nothing_and_says_which_points() {
    CheckResult result =
        unit()
            .wire("W1,J1-A,P2-1")
            .wire("W2,P2-1,P3-1")
            .wire("W3,J1-B,P2-2")
            .reads("J1-A", "P2-1", "0.1")
            .reads("J1-B", "P2-2", "0.1")
            .reads("J1-A", "REST", "OL")
            .check();
    assertEquals(
        List.of(
            "join J1-A P3-1: no reading joins J1-A to P3-1",
            "wire W2: no good reading goes through it",
            "apart J1-A J1-B and 0, waits for joins: no reading holds it apart from the net of J1-B",
            "apart J1-B J1-A and 0, waits for joins: no reading holds it apart from the net of J1-A"),
        unproven(result));
    assertEquals(new Tally(3, 2), result.coverage().joins());
    assertEquals(new Tally(3, 2), result.coverage().wires());
    assertEquals(new Tally(1, 0), result.coverage().isolation());
  }

  @Test
  void what_was_read_against_the_rest_is_apart_from_every_net_in_one_piece() {
    CheckResult result =
        unit()
            .wire("W1,J1-A,P2-1")
            .wire("W2,J1-B,P2-2")
            .wire("W3,J1-C,P2-3")
            .wire("W4,J1-D,P2-4")
            .reads("J1-A", "P2-1", "0.1")
            .reads("J1-B", "P2-2", "0.1")
            .reads("J1-C", "P2-3", "0.1")
            .reads("J1-D", "P2-4", "0.1")
            .reads("J1-A", "REST", "OL")
            .reads("P2-2", "REST", "OL")
            .check();
    assertEquals(
        List.of(
            "apart J1-C J1-D and 0: no reading holds it apart from the net of J1-D",
            "apart J1-D J1-C and 0: no reading holds it apart from the net of J1-C"),
        unproven(result));
    assertEquals(new Tally(6, 5), result.coverage().isolation());
  }

  @Test
  void nets_that_nothing_holds_apart_are_told_with_how_many_others() {
    CheckResult result = threeGoodWires().check();
    assertEquals(3, unproven(result).size());
    assertEquals(
        "apart J1-A J1-B and 1: no reading holds it apart from 2 other nets, that of J1-B among"
            + " them",
        unproven(result).get(0));
    assertEquals(
        "apart J1-B J1-A and 1: no reading holds it apart from 2 other nets, that of J1-A among"
            + " them",
        unproven(result).get(1));
    assertEquals(new Tally(3, 0), result.coverage().isolation());
  }

  private UnitUnderTest changeover() {
    return unit()
        .wire("W1,J1-A,S1-1")
        .wire("W2,S1-2,P2-1")
        .wire("W3,S1-3,P2-2")
        .wire("W4,J1-D,P2-4")
        .contact("S1,CLEAR,1,2")
        .contact("S1,CAUGHT,1,3")
        .reads("J1-A", "S1-1", "0.1")
        .reads("S1-2", "P2-1", "0.1")
        .reads("S1-1", "S1-2", "0.1")
        .reads("S1-3", "P2-2", "0.1")
        .reads("J1-D", "P2-4", "0.1");
  }

  /** With the contact open the rest of the same net is part of the rest: that proves nothing. */
  @Test
  void a_reading_in_a_state_that_parts_the_net_holds_only_a_piece_of_it_apart() {
    CheckResult parted = changeover().readsIn("S1=CAUGHT", "J1-A", "REST", "OL").check();
    assertEquals(new Tally(3, 0), parted.coverage().isolation());
    CheckResult whole = changeover().reads("J1-A", "REST", "OL").check();
    assertEquals(new Tally(3, 2), whole.coverage().isolation());
  }

  /** With the other contact closed both are one net: nothing holds them apart there. */
  @Test
  void a_reading_in_a_state_that_joins_two_nets_does_not_hold_them_apart() {
    CheckResult result = changeover().readsIn("S1=CAUGHT", "J1-D", "REST", "OL").check();
    assertEquals(new Tally(3, 2), result.coverage().isolation(), "J1-D from both others");
    CheckResult joined = changeover().readsIn("S1=CAUGHT", "P2-2", "REST", "OL").check();
    assertEquals(
        new Tally(3, 1),
        joined.coverage().isolation(),
        "P2-2 is joined to J1-A there, and held apart from J1-D alone");
  }

  @Test
  void a_join_read_in_another_state_joins_only_what_the_normal_state_joins() {
    CheckResult result =
        unit()
            .wire("W1,J1-A,S1-1")
            .wire("W3,S1-3,P2-2")
            .contact("S1,CLEAR,1,2")
            .contact("S1,CAUGHT,1,3")
            .readsIn("S1=CAUGHT", "J1-A", "P2-2", "0.1")
            .check();
    assertTrue(
        unproven(result).contains("join J1-A S1-1: no reading joins J1-A to S1-1"),
        unproven(result)::toString);
    assertEquals(new Tally(2, 2), result.coverage().wires(), "both wires carried the reading");
  }

  /** The way may have led through the contact that is open in the normal state. */
  @Test
  void a_join_read_while_another_way_was_closed_proves_nothing_of_the_normal_one() {
    CheckResult result =
        unit()
            .wire("W1,J1-A,P2-1")
            .wire("W2,J1-A,S1-1")
            .wire("W3,P2-1,S1-2")
            .wire("W4,J1-B,P2-2")
            .contact("S1,CLEAR,3,4")
            .contact("S1,CAUGHT,1,2")
            .readsIn("S1=CAUGHT", "J1-A", "P2-1", "beep")
            .readsIn("S1=CAUGHT", "J1-B", "P2-2", "beep")
            .check();
    assertTrue(
        unproven(result).contains("join J1-A P2-1: no reading joins J1-A to P2-1"),
        unproven(result)::toString);
    assertEquals(
        new Tally(5, 1), result.coverage().joins(), "J1-B to P2-2 has nothing to do with S1");
  }

  @Test
  void nets_tied_together_are_held_apart_from_the_rest_and_not_from_each_other() {
    CheckResult result = threeGoodWires().reads("J1-A+J1-B", "REST", "OL").check();
    assertEquals(new Tally(3, 2), result.coverage().isolation());
    CheckResult groups = threeGoodWires().reads("J1-A+J1-B", "P2-3", "OL").check();
    assertEquals(new Tally(3, 2), groups.coverage().isolation());
    CheckResult sameNet =
        unit()
            .wire("W1,J1-A,P2-1")
            .wire("W2,J1-B,P2-2")
            .reads("J1-A", "P2-1", "0.1")
            .reads("J1-B", "P2-2", "0.1")
            .reads("J1-A+P2-1", "REST", "OL")
            .check();
    assertEquals(new Tally(1, 1), sameNet.coverage().isolation(), "two points of one net");
  }

  @Test
  void wires_in_parallel_and_in_a_loop_say_why_they_are_not_proven() {
    CheckResult result =
        unit()
            .wire("W1,J1-A,P2-1")
            .wire("W2,P2-1,J1-A")
            .wire("W3,J1-B,P2-2")
            .wire("W4,P2-2,P3-2")
            .wire("W5,P3-2,J1-B")
            .reads("J1-A", "P2-1", "beep")
            .reads("J1-B", "P2-2", "beep")
            .reads("P2-2", "P3-2", "beep")
            .reads("J1-A", "REST", "OL")
            .check();
    assertEquals(
        List.of(
            "wire W1: in parallel with W2: continuity can't tell them apart",
            "wire W2: in parallel with W1: continuity can't tell them apart",
            "wire W3: part of a loop: continuity beeps with it missing; lift one end and read again",
            "wire W4: part of a loop: continuity beeps with it missing; lift one end and read again",
            "wire W5: part of a loop: continuity beeps with it missing; lift one end and read again"),
        unproven(result));
  }

  private UnitUnderTest ringOfJumpers() {
    return unit()
        .wire("W1,J1-A,TB1-1")
        .link("TB1,1,2")
        .link("TB1,2,3")
        .link("TB1,3,1")
        .reads("J1-A", "TB1-1", "0.1")
        .reads("TB1-1", "TB1-2", "0.002")
        .reads("TB1-2", "TB1-3", "0.002")
        .reads("TB1-3", "TB1-1", "0.002");
  }

  @Test
  void of_a_ring_of_jumpers_one_may_be_missing_and_all_beep() {
    assertEquals(
        List.of(
            "the link TB1-1/2: part of a loop: continuity beeps with it missing; lift one end and read again",
            "the link TB1-2/3: part of a loop: continuity beeps with it missing; lift one end and read again",
            "the link TB1-3/1: part of a loop: continuity beeps with it missing; lift one end and read again"),
        unproven(ringOfJumpers().check()));
  }

  @Test
  void a_jumper_of_a_ring_is_proven_with_another_lifted() {
    CheckResult result =
        ringOfJumpers()
            .readsIn("TB1-1/2=LIFTED", "TB1-2", "TB1-3", "0.002")
            .readsIn("TB1-1/2=LIFTED", "TB1-3", "TB1-1", "0.002")
            .readsIn("TB1-2/3=lifted", "TB1-2", "TB1-1", "0.002")
            .check();
    assertEquals(List.of(), unproven(result));
  }

  @Test
  void a_group_read_across_proves_the_wires_that_all_its_points_need() {
    UnitUnderTest unit =
        unit()
            .wire("W1,J1-A,P2-1")
            .wire("W2,P2-1,P3-1")
            .wire("W3,P3-1,P4-1")
            .reads("J1-A+P2-1", "P4-1", "0.1");
    CheckResult result = unit.check();
    assertEquals(new Tally(3, 2), result.coverage().wires(), "W1 is between the tied points");
    assertEquals(
        List.of("wire W1: no good reading goes through it"),
        unproven(result).stream().filter(one -> one.startsWith("wire")).toList());
  }

  private CheckResult slipped(int from, int step) {
    // Joins and gaps by turns of three, so that a value fits no row but its own.
    UnitUnderTest unit = unit();
    String[] values = new String[12];
    for (int row = 0; row < 12; row++) {
      unit.wire("W" + row + ",J1-" + (row + 1) + ",P2-" + (row + 1));
      values[row] = row % 3 == 0 ? "OL" : "0.1";
    }
    for (int row = 0; row < 12; row++) {
      int shown = row < from ? row : Math.floorMod(row + step, 12);
      boolean join = row % 3 != 0;
      unit.reads(
          "J1-" + (row + 1),
          join ? "P2-" + (row + 1) : "P2-" + ((row + 1) % 12 + 1),
          values[shown]);
    }
    return unit.check();
  }

  @Test
  void values_a_row_late_are_one_slip_of_the_sheet() {
    for (int step : new int[] {1, -1}) {
      CheckResult result = slipped(4, step);
      List<RowSlip> slips =
          RowSlip.find(result.circuit(), PublishedLimits.of(result.circuit()), result.comparison());
      assertEquals(1, slips.size());
      assertEquals(step, slips.get(0).step());
      assertEquals(result.comparison().failing(), slips.get(0).mended());
      assertTrue(slips.get(0).chance() > 0 && slips.get(0).chance() <= 1);
      assertTrue(slips.get(0).rows().containsAll(slips.get(0).mended()));
    }
  }

  /** Its reading may be of the part or of a short beside it. Plain reasoning, no source. */
  @Test
  void nets_that_a_part_of_unknown_ohms_joins_can_not_be_shown_apart_and_others_can() {
    UnitUnderTest unknown =
        new UnitUnderTest(folder.resolve("unknown"))
            .withoutInsulationTest()
            .wire("W1,J1-1,R1-1")
            .part("R1,1,2,resistor,,")
            .reads("R1-1", "R1-2", "470");
    assertEquals(1, unknown.check().coverage().unprovable().size());
    UnitUnderTest stated =
        new UnitUnderTest(folder.resolve("stated"))
            .withoutInsulationTest()
            .wire("W1,J1-1,R1-1")
            .part("R1,1,2,resistor,470,5,")
            .reads("R1-1", "R1-2", "470");
    assertEquals(List.of(), stated.check().coverage().unprovable());
    UnitUnderTest insulated =
        new UnitUnderTest(folder.resolve("insulated"))
            .wire("W1,J1-1,R1-1")
            .part("R1,1,2,resistor,470,5,")
            .reads("R1-1", "R1-2", "470");
    assertTrue(insulated.check().coverage().unprovable().get(0).insulation());
  }
}

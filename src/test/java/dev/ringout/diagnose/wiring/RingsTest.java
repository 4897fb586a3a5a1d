package dev.ringout.diagnose.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.ringout.check.CheckResult;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.Predictor;
import dev.ringout.diagnose.wiring.Neighbours.WireEnd;
import dev.ringout.diagnose.wiring.Slip.Put;
import dev.ringout.harness.Wire;
import dev.ringout.standards.Tables;
import dev.ringout.support.PublishedLimits;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Ends at P1 of wires J1-1 to P1-1, J1-2 to P1-2 and so on, all of them read open. Of k ends there
 * are (k − 1)! rings, counted by hand.
 */
class RingsTest {
  @TempDir Path folder;

  private SlipCosts costs(Circuit circuit) {
    return new SlipCosts(circuit, new Neighbours(circuit), Tables.published());
  }

  /** The rings of a unit with so many broken wires, and one good beside them. */
  private Rings rings(int broken, String... read) {
    UnitUnderTest unit = new UnitUnderTest(folder.resolve(broken + "-" + String.join("_", read)));
    for (int wire = 1; wire <= broken + 1; wire++) {
      unit.wire("W" + wire + ",J1-" + wire + ",P1-" + wire);
    }
    for (int wire = 1; wire <= broken; wire++) {
      unit.reads("J1-" + wire, "P1-" + wire, "OL");
    }
    for (String one : read) {
      String[] words = one.split(" ", -1);
      unit.reads("J1-" + words[0], "P1-" + words[1], words[2]);
    }
    CheckResult result = unit.check();
    Circuit circuit = result.circuit();
    JoinLimits limits = PublishedLimits.of(circuit);
    List<WireEnd> ends = new ArrayList<>();
    for (int wire = 0; wire < broken; wire++) {
      ends.add(new WireEnd(wire, Wire.End.TO));
    }
    return Rings.of(
        circuit,
        Evidence.of(
            circuit, new Predictor(circuit, limits.resistances()), result.comparison().inForce()),
        new Neighbours(circuit).pinsOf("P1"),
        ends);
  }

  /** Where each ring puts its ends: {@code 1>2} for W1 in P1-2. */
  private static Set<Set<String>> puts(Rings rings, Circuit circuit) {
    Set<Set<String>> all = new HashSet<>();
    for (List<Put> ring : rings.all()) {
      Set<String> puts = new HashSet<>();
      ring.forEach(put -> puts.add((put.wire() + 1) + ">" + circuit.point(put.to()).pin()));
      all.add(puts);
    }
    return all;
  }

  private Circuit circuit(int broken) {
    UnitUnderTest unit = new UnitUnderTest(folder.resolve("circuit" + broken));
    for (int wire = 1; wire <= broken + 1; wire++) {
      unit.wire("W" + wire + ",J1-" + wire + ",P1-" + wire);
    }
    return Circuit.of(unit.harness());
  }

  @Test
  void three_ends_may_be_in_a_ring_either_way_round() {
    assertEquals(
        Set.of(Set.of("1>2", "2>3", "3>1"), Set.of("1>3", "3>2", "2>1")),
        puts(rings(3), circuit(3)));
  }

  @Test
  void a_place_that_reads_open_from_an_end_is_not_its_place() {
    assertEquals(Set.of(Set.of("1>3", "3>2", "2>1")), puts(rings(3, "1 2 OL"), circuit(3)));
    assertEquals(Set.of(), puts(rings(3, "1 2 OL", "1 3 OL"), circuit(3)));
    assertEquals(
        Set.of(),
        puts(rings(3, "1 2 OL", "2 1 OL"), circuit(3)),
        "the last goes round to the first");
  }

  @Test
  void of_four_ends_there_are_eight_rings_of_three_and_six_of_four() {
    assertEquals(14, rings(4).all().size());
    assertEquals(14, puts(rings(4), circuit(4)).size());
  }

  @Test
  void longer_rings_than_of_six_are_not_tried_in_any_order() {
    assertEquals(40 + 90 + 144 + 120, rings(6).all().size());
    assertEquals(70 + 210 + 504 + 840, rings(7).all().size());
    assertEquals(112 + 420 + 1344 + 3360, rings(8).all().size());
    assertEquals(0, rings(9).all().size());
  }

  @Test
  void what_was_read_is_followed_round_however_long() {
    Rings nine =
        rings(
            9, "1 4 0.1", "4 2 0.1", "2 9 0.1", "9 3 0.1", "3 7 0.1", "7 5 0.1", "5 8 0.1",
            "8 6 0.1", "6 1 0.1");
    assertEquals(
        Set.of(Set.of("1>4", "4>2", "2>9", "9>3", "3>7", "7>5", "5>8", "8>6", "6>1")),
        puts(nine, circuit(9)));
    assertEquals(Double.POSITIVE_INFINITY, leastUntried(nine, 9));
  }

  @Test
  void an_end_that_answers_at_one_place_is_in_no_ring_with_it_elsewhere() {
    assertEquals(
        Set.of(Set.of("1>2", "2>3", "3>1")),
        puts(rings(3, "1 2 0.1"), circuit(3)),
        "W1 was read to be in P1-2");
    assertEquals(
        Set.of(Set.of("1>2", "2>1")),
        puts(rings(3, "1 2 0.1", "2 1 0.1"), circuit(3)),
        "two in each other's places, and nothing with the third");
  }

  @Test
  void of_nine_ends_those_that_answer_nowhere_are_tried_in_any_order() {
    Rings open = rings(9, "1 4 0.1", "4 2 0.1", "2 10 0.1");
    assertEquals(
        40 + 90 + 144 + 120,
        open.all().size(),
        "the rings of six ends; W2 is in P1-10, a good pin");
  }

  @Test
  void an_end_that_answers_at_two_places_says_nothing() {
    Rings two = rings(9, "1 2 0.1", "1 3 0.1", "2 3 0.1", "3 1 0.1");
    assertFalse(
        puts(two, circuit(9)).stream()
            .anyMatch(ring -> ring.contains("1>2") || ring.contains("1>3")),
        "what goes through W1 is not told by two places");
  }

  private double leastUntried(Rings rings, int broken) {
    List<WireEnd> ends = new ArrayList<>();
    Set<Integer> wires = new HashSet<>();
    for (int wire = 0; wire < broken; wire++) {
      ends.add(new WireEnd(wire, Wire.End.TO));
      wires.add(wire);
    }
    return rings.leastUntried(ends, wires, costs(circuit(9)));
  }

  @Test
  void rings_that_were_not_tried_cost_at_least_what_the_shortest_of_them_does() {
    SlipCosts costs = costs(circuit(9));
    assertEquals(Double.POSITIVE_INFINITY, leastUntried(rings(6), 6));
    assertEquals(costs.ofRing(7), leastUntried(rings(7), 7), 1e-9);
    assertEquals(
        costs.ofRing(8),
        leastUntried(rings(8), 8),
        1e-9,
        "a ring of seven leaves one to account for, which costs more");
    assertEquals(
        Double.POSITIVE_INFINITY,
        leastUntried(rings(8, "1 2 0.1", "2 1 0.1"), 8),
        "of eight ends two answered: six are left");
  }

  @Test
  void of_more_than_eight_ends_each_one_must_be_accounted_for() {
    SlipCosts costs = costs(circuit(9));
    assertEquals(costs.ofRing(9), leastUntried(rings(9), 9), 1e-9);
    assertEquals(
        costs.ofRing(7),
        leastUntried(rings(9, "1 2 0.1", "2 1 0.1"), 9),
        1e-9,
        "seven answered nowhere");
  }

  @Test
  void the_few_ends_that_another_arrangement_leaves_are_tried_in_any_order() {
    Rings nine = rings(9);
    List<WireEnd> left =
        List.of(
            new WireEnd(0, Wire.End.TO), new WireEnd(1, Wire.End.TO), new WireEnd(2, Wire.End.TO));
    nine.beside(left);
    nine.beside(left);
    assertEquals(2, nine.all().size());
  }
}

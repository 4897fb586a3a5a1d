package dev.ringout.diagnose.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.wiring.Arrangements.Supposed;
import dev.ringout.diagnose.wiring.Search.Explanation;
import dev.ringout.diagnose.wiring.Search.NearMiss;
import dev.ringout.harness.Wire;
import dev.ringout.standards.Tables;
import dev.ringout.support.PublishedLimits;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Which sets of slips explain the readings of small units, the cheapest first; worked out by hand.
 * That nothing cheaper is overlooked is held against brute force in {@link
 * BruteForceReferenceTest}.
 */
class SearchTest {
  private static final double EXACT = 1e-9;

  @TempDir Path folder;

  /** A unit whose failing readings are to be explained together. */
  record Puzzle(SlippedUnit unit, ListedUnit listed, Comparison comparison, List<Judged> failing) {
    static Puzzle of(UnitUnderTest written) {
      CheckResult result = written.check();
      ListedUnit listed =
          ListedUnit.of(result.circuit(), PublishedLimits.of(result.circuit()), Tables.published());
      return new Puzzle(
          new SlippedUnit(result.circuit()),
          listed,
          result.comparison(),
          result.comparison().failing());
    }

    Search search(double mostCost, boolean arrangements) {
      Evidence evidence = Evidence.of(listed.circuit(), listed.predictor(), comparison.inForce());
      List<Supposed> supposed =
          arrangements
              ? Arrangements.of(
                      listed.circuit(),
                      listed.neighbours(),
                      listed.costs(),
                      evidence,
                      comparison.inForce(),
                      failing)
                  .supposed()
              : List.of();
      return new Search(
          listed.circuit(),
          evidence,
          listed.costs(),
          supposed,
          new Candidates(
              listed.circuit(), listed.neighbours(), evidence, supposed, Set.of(), List.of()),
          mostCost);
    }

    Search.Result solved() {
      return search(Search.ANY_COST, true).explain(failing);
    }

    double cost(Slip... slips) {
      double cost = 0;
      for (Slip slip : slips) {
        cost += listed.costs().of(slip);
      }
      return cost;
    }

    Slip open(String wire) {
      return new Slip.Missing(unit.conductor(wire));
    }

    Slip moved(String wire, Wire.End end, String to) {
      return new Slip.Moved(unit.conductor(wire), end, unit.point(to));
    }
  }

  private UnitUnderTest cable() {
    return new UnitUnderTest(folder)
        .wire("W1,J1-1,P1-1")
        .wire("W2,J1-2,P1-2")
        .wire("W3,J2-1,P2-1")
        .pin("P1,3,20");
  }

  private static Set<Set<Slip>> sets(Search.Result result) {
    Set<Set<Slip>> sets = new HashSet<>();
    result.explanations().forEach(one -> sets.add(Set.copyOf(one.slips())));
    return sets;
  }

  private static void cheapestFirst(Puzzle puzzle, Search.Result result) {
    double before = 0;
    double least = result.explanations().get(0).cost();
    int size = result.explanations().get(0).slips().size();
    for (Explanation one : result.explanations()) {
      assertEquals(puzzle.cost(one.slips().toArray(new Slip[0])), one.cost(), EXACT);
      assertTrue(one.cost() >= before, "in the order of their costs");
      double margin = one.slips().size() <= size ? 7 : 5;
      assertTrue(one.cost() <= least + margin, "as unlikely as e^-5 is not worth a word");
      before = one.cost();
    }
  }

  @Test
  void a_join_that_is_not_there_is_an_open_wire_before_all_else() {
    Puzzle puzzle = Puzzle.of(cable().reads("J1-1", "P1-1", "OL"));
    Search.Result result = puzzle.solved();
    assertTrue(result.complete());
    assertEquals(List.of(puzzle.open("W1")), result.explanations().get(0).slips());
    assertTrue(
        sets(result).contains(Set.of(puzzle.moved("W1", Wire.End.TO, "P1-3"))),
        "or it sits in the spare cavity, which nobody has read");
    cheapestFirst(puzzle, result);
  }

  @Test
  void two_wires_that_are_found_at_each_other_s_pins_are_crossed_at_one_of_both_ends() {
    Puzzle puzzle =
        Puzzle.of(
            cable()
                .reads("J1-1", "P1-1", "OL")
                .reads("J1-2", "P1-2", "OL")
                .reads("J1-1", "P1-2", "0.1")
                .reads("J1-2", "P1-1", "0.1"));
    Search.Result result = puzzle.solved();
    int w1 = puzzle.unit().conductor("W1");
    int w2 = puzzle.unit().conductor("W2");
    Set<Slip> best = new HashSet<>(result.explanations().get(0).slips());
    best.addAll(result.explanations().get(1).slips());
    assertEquals(
        Set.of(
            new Slip.Crossed(w1, Wire.End.FROM, w2, Wire.End.FROM),
            new Slip.Crossed(w1, Wire.End.TO, w2, Wire.End.TO)),
        best);
    assertEquals(result.explanations().get(0).cost(), result.explanations().get(1).cost(), 1);
    cheapestFirst(puzzle, result);
  }

  @Test
  void two_wires_that_are_open_each_by_itself_are_one_set_of_two() {
    Puzzle puzzle = Puzzle.of(cable().reads("J1-1", "P1-1", "OL").reads("J2-1", "P2-1", "OL"));
    Search.Result result = puzzle.solved();
    assertEquals(
        Set.of(puzzle.open("W1"), puzzle.open("W3")),
        Set.copyOf(result.explanations().get(0).slips()));
    assertEquals(
        puzzle.cost(puzzle.open("W1"), puzzle.open("W3")),
        result.explanations().get(0).cost(),
        EXACT);
    assertEquals(
        sets(result).size(), result.explanations().size(), "no set is found a second time");
    cheapestFirst(puzzle, result);
  }

  @Test
  void what_costs_more_than_is_asked_for_is_not_looked_for_and_what_costs_just_so_much_is() {
    Puzzle puzzle = Puzzle.of(cable().reads("J1-1", "P1-1", "OL"));
    double open = puzzle.cost(puzzle.open("W1"));
    Search.Result found = puzzle.search(open, false).explain(puzzle.failing());
    assertEquals(Set.of(Set.of(puzzle.open("W1"))), sets(found));
    assertTrue(found.complete());
    Search.Result none = puzzle.search(open - 0.01, false).explain(puzzle.failing());
    assertEquals(List.of(), none.explanations());
  }

  @Test
  void the_story_that_came_next_is_kept_with_what_speaks_against_it() {
    Puzzle puzzle = Puzzle.of(cable().reads("J1-1", "P1-1", "OL").reads("J1-1", "P1-3", "0.1"));
    Search.Result result = puzzle.solved();
    assertEquals(
        List.of(puzzle.moved("W1", Wire.End.TO, "P1-3")), result.explanations().get(0).slips());
    NearMiss next = result.runnerUp().orElseThrow();
    assertEquals(List.of(puzzle.open("W1")), next.slips());
    assertEquals(1, next.against().size());
    assertEquals(puzzle.unit().point("P1-3"), next.against().get(0).probing().to()[0]);
    assertEquals(next.cost() + 1, next.score(), EXACT);
    assertEquals(puzzle.cost(puzzle.open("W1")), next.cost(), EXACT);
  }

  @Test
  void a_part_of_the_best_story_is_no_other_story() {
    Puzzle puzzle = Puzzle.of(cable().reads("J1-1", "P1-1", "OL").reads("J2-1", "P2-1", "OL"));
    Set<Slip> best = Set.copyOf(puzzle.solved().explanations().get(0).slips());
    puzzle
        .solved()
        .runnerUp()
        .ifPresent(next -> assertFalse(best.containsAll(next.slips()), next.toString()));
  }

  @Test
  void whether_one_slip_is_enough_is_told_without_finding_all() {
    Puzzle one = Puzzle.of(cable().reads("J1-1", "P1-1", "OL").reads("J1-1", "P1-3", "0.1"));
    assertTrue(one.search(Search.ANY_COST, false).oneSlipExplains(one.failing()));
    Puzzle two =
        Puzzle.of(
            new UnitUnderTest(folder.resolve("two"))
                .wire("W1,J1-1,P1-1")
                .wire("W3,J2-1,P2-1")
                .reads("J1-1", "P1-1", "OL")
                .reads("J2-1", "P2-1", "OL"));
    assertFalse(two.search(Search.ANY_COST, false).oneSlipExplains(two.failing()));
  }

  @Test
  void a_good_unit_is_explained_by_nothing_at_no_cost() {
    Puzzle puzzle = Puzzle.of(cable().reads("J1-1", "P1-1", "0.1"));
    Search.Result result = puzzle.solved();
    assertEquals(List.of(new Explanation(List.of(), 0)), result.explanations());
    assertTrue(result.complete());
  }

  @Test
  void unlisted_joins_of_three_wires_are_told_in_the_least_number_of_bridges() {
    Puzzle puzzle =
        Puzzle.of(
            new UnitUnderTest(folder)
                .wire("W1,J1-1,P1-1")
                .wire("W2,J1-2,P1-2")
                .wire("W3,J1-3,P1-3")
                .reads("J1-1", "P1-1", "0.1")
                .reads("J1-2", "P1-2", "0.1")
                .reads("J1-3", "P1-3", "0.1")
                .reads("J1-1", "J1-2", "0.1")
                .reads("J1-2", "J1-3", "0.1")
                .reads("J1-1", "J1-3", "0.1"));
    Search.Result result = puzzle.solved();
    List<Slip> best = result.explanations().get(0).slips();
    assertEquals(2, best.size(), "two bridges join three nets: " + best);
    assertTrue(best.stream().allMatch(slip -> slip.asBridged().isPresent()), best.toString());
    cheapestFirst(puzzle, result);
  }

  /** Beside what is likely, each other pin of the item where the wire's end may sit. */
  @Test
  void every_single_slip_that_explains_all_is_told_unless_it_is_far_less_likely() {
    Puzzle puzzle = Puzzle.of(cable().pin("P1,4,20").pin("J1,7,20").reads("J1-1", "P1-1", "OL"));
    Set<Set<Slip>> told = sets(puzzle.solved());
    double least = puzzle.solved().explanations().get(0).cost();
    for (String spare : List.of("P1-3", "P1-4")) {
      Slip moved = puzzle.moved("W1", Wire.End.TO, spare);
      assertEquals(puzzle.cost(moved) <= least + 7, told.contains(Set.of(moved)), spare);
    }
    Slip atOtherEnd = puzzle.moved("W1", Wire.End.FROM, "J1-7");
    assertEquals(puzzle.cost(atOtherEnd) <= least + 7, told.contains(Set.of(atOtherEnd)));
  }

  @Test
  void a_hand_that_was_one_cavity_out_is_one_slip_and_cheaper_than_each_end_for_itself() {
    UnitUnderTest written = new UnitUnderTest(folder);
    for (int pin = 1; pin <= 3; pin++) {
      written.wire("W" + pin + ",J1-" + pin + ",P1-" + pin);
      written.reads("J1-" + pin, "P1-" + pin, "OL");
      written.reads("J1-" + pin, "P1-" + (pin + 1), "0.1");
    }
    Puzzle puzzle = Puzzle.of(written.pin("P1,4,20"));
    Search.Result result = puzzle.solved();
    List<Slip> best = result.explanations().get(0).slips();
    assertEquals(1, best.size(), best.toString());
    assertEquals(3, best.get(0).misplaced().size());
    cheapestFirst(puzzle, result);
    Search.Result oneByOne = puzzle.search(Search.ANY_COST, false).explain(puzzle.failing());
    assertTrue(oneByOne.explanations().get(0).slips().size() >= 3);
    assertTrue(
        oneByOne.explanations().get(0).cost() > result.explanations().get(0).cost(),
        "three hands that slip alike are less likely than one");
  }

  /** More slips than a set may have: one after the other, the best of each step. */
  @Test
  void a_long_row_of_opens_is_found_step_by_step_and_said_to_be_perhaps_not_the_only_story() {
    UnitUnderTest written = new UnitUnderTest(folder);
    for (int pin = 1; pin <= 9; pin++) {
      written.wire("W" + pin + ",J" + pin + "-1,P" + pin + "-1");
      written.reads("J" + pin + "-1", "P" + pin + "-1", "OL");
    }
    Puzzle puzzle = Puzzle.of(written.pin("P5,2,20"));
    Search.Result result = puzzle.search(Search.ANY_COST, false).explain(puzzle.failing());
    assertFalse(result.complete());
    assertEquals(1, result.explanations().size());
    Set<String> opens = new TreeSet<>();
    for (Slip slip : result.explanations().get(0).slips()) {
      opens.add(
          puzzle
              .unit()
              .circuit()
              .conductors()
              .get(slip.asMissing().orElseThrow().conductor())
              .label());
    }
    assertEquals(9, opens.size());
    assertEquals(
        puzzle.cost(result.explanations().get(0).slips().toArray(new Slip[0])),
        result.explanations().get(0).cost(),
        EXACT);
    Search.Result cheap = puzzle.search(30, false).explain(puzzle.failing());
    assertEquals(List.of(), cheap.explanations(), "not where only what is cheap is wanted");
  }

  @Test
  void steps_are_taken_only_where_there_are_readings_enough_to_go_by() {
    UnitUnderTest written = new UnitUnderTest(folder);
    written.wire("W1,J1-1,P1-1").wire("W2,J1-2,P1-2");
    written.reads("J1-1", "P1-1", "OL").reads("J1-1", "P1-1", "0.1").reads("J1-2", "P1-2", "OL");
    Puzzle puzzle = Puzzle.of(written);
    Search.Result result = puzzle.search(Search.ANY_COST, false).explain(puzzle.failing());
    assertEquals(List.of(puzzle.open("W2")), result.explanations().get(0).slips());
  }

  private static Judged toMendOf(List<Judged> readings) {
    return new Search.Node(0, List.of(), 0, 0, readings).first();
  }

  /** The nearer to a place, the more a reading says; of two alike the sheet's first. */
  @Test
  void an_open_is_mended_before_a_join_a_join_before_ohms_and_what_was_read_to_the_rest_last() {
    Puzzle puzzle =
        Puzzle.of(
            cable()
                .part("R1,1,2,resistor,470,5,")
                .reads("J2-1", "REST", "0.1")
                .reads("R1-1", "R1-2", "900")
                .reads("J1-1", "J1-2", "0.1")
                .reads("J1-1", "J2-1", "0.1")
                .reads("J1-1", "P1-1", "OL")
                .reads("J1-2", "P1-2", "OL"));
    List<Judged> all = puzzle.failing();
    assertEquals(6, all.size());
    assertEquals(all.get(4), toMendOf(all), "the first open");
    assertEquals(all.get(2), toMendOf(all.subList(0, 4)), "the first join");
    assertEquals(all.get(1), toMendOf(all.subList(0, 2)), "the ohms of a part");
    assertEquals(all.get(0), toMendOf(all.subList(0, 1)));
  }

  @Test
  void a_story_of_a_reading_at_other_points_is_one_of_the_test_and_not_of_the_unit() {
    Puzzle puzzle = Puzzle.of(cable().reads("J1-1", "P1-1", "OL").reads("J1-2", "P1-2", "OL"));
    Judged one = puzzle.failing().get(0);
    Judged other = puzzle.failing().get(1);
    Slip misread = new Slip.Misread(one, true, puzzle.unit().point("J2-1"));
    Slip exchanged = new Slip.Exchanged(one, other, 1);
    for (Slip slip : List.of(misread, exchanged)) {
      assertTrue(new Explanation(List.of(slip), 1).isOfTheTest());
      assertTrue(new Explanation(List.of(puzzle.open("W1"), slip), 1).isOfTheTest());
    }
    assertFalse(new Explanation(List.of(puzzle.open("W1"), puzzle.open("W2")), 1).isOfTheTest());
    assertFalse(new Explanation(List.of(), 0).isOfTheTest());
  }

  @Test
  void of_the_stories_that_leave_readings_the_nearest_is_told() {
    Puzzle puzzle =
        Puzzle.of(
            cable()
                .reads("J1-1", "P1-1", "OL")
                .reads("J1-1", "P1-3", "0.1")
                .reads("J2-1", "P2-1", "OL"));
    Search.Result result = puzzle.solved();
    Explanation best = result.explanations().get(0);
    NearMiss next = result.runnerUp().orElseThrow();
    assertEquals(
        Set.of(puzzle.moved("W1", Wire.End.TO, "P1-3"), puzzle.open("W3")),
        Set.copyOf(best.slips()));
    // The open of W3 alone is a part of the best, and both opens cost more than what they explain.
    assertEquals(List.of(puzzle.open("W1")), next.slips());
    assertEquals(puzzle.cost(puzzle.open("W1")) + 2, next.score(), EXACT);
  }
}

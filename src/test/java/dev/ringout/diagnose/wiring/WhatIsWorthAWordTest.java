package dev.ringout.diagnose.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.diagnose.wiring.Search.Explanation;
import dev.ringout.diagnose.wiring.SearchTest.Puzzle;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Which stories of several faults are told, and how far the search goes for them: counted from the
 * stories of one fault alone, since faults at items of their own know nothing of each other.
 */
class WhatIsWorthAWordTest {
  /** As unlikely as e^-7 beside the best is not worth a word where both are of as many slips. */
  private static final double MARGIN_OF_SIZE = 7;

  private static final int MOST_EXPLANATIONS = 400;
  private static final double EXACT = 1e-9;

  @TempDir Path folder;

  /** So many wires at items of their own, each open, with spare cavities beside both ends. */
  private Puzzle opens(int count) {
    UnitUnderTest unit = new UnitUnderTest(folder.resolve("" + count));
    for (int i = 1; i <= count; i++) {
      String from = "J" + i;
      String to = "P" + i;
      unit.wire("W" + i + "," + from + "-1," + to + "-1");
      unit.pin(to + ",2,20").pin(from + ",2,20").pin(to + ",3,20");
      unit.reads(from + "-1", to + "-1", "OL");
    }
    return Puzzle.of(unit);
  }

  private double[] costsOfOne() {
    return opens(1).solved().explanations().stream().mapToDouble(Explanation::cost).toArray();
  }

  /** How many ways there are to choose one story for each fault within the margin. */
  private static long ways(double[] costs, int faults, double left) {
    if (faults == 0) {
      return 1;
    }
    long ways = 0;
    for (double cost : costs) {
      double more = cost - costs[0];
      if (more <= left) {
        ways += ways(costs, faults - 1, left - more);
      }
    }
    return ways;
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4})
  void of_faults_far_apart_every_combination_is_told_that_is_likely_enough(int faults) {
    double[] one = costsOfOne();
    Search.Result all = opens(faults).solved();
    assertTrue(all.complete());
    assertEquals(ways(one, faults, MARGIN_OF_SIZE), all.explanations().size());
    assertEquals(faults * one[0], all.explanations().get(0).cost(), EXACT);
  }

  @Test
  void stories_of_as_many_slips_as_the_best_are_told_farther_than_those_of_more() {
    List<Explanation> all = opens(4).solved().explanations();
    double least = all.get(0).cost();
    assertTrue(all.get(all.size() - 1).cost() > least + Search.MARGIN);
    assertTrue(
        all.stream().allMatch(story -> story.slips().size() == 4 || story.cost() <= least + 5));
  }

  /** With so many stories none is certain; they come in their order. */
  @Test
  void the_likeliest_four_hundred_are_told_and_no_more() {
    assertTrue(ways(costsOfOne(), 5, MARGIN_OF_SIZE) > MOST_EXPLANATIONS);
    Search.Result some = opens(5).solved();
    assertEquals(MOST_EXPLANATIONS, some.explanations().size());
    double before = 0;
    for (Explanation story : some.explanations()) {
      assertTrue(story.cost() >= before, story.toString());
      before = story.cost();
    }
  }

  /**
   * A set that must still grow dearer than what is asked for is never opened: else sets of six
   * would take more tries than a search has that looks for what is cheap.
   */
  @ParameterizedTest
  @ValueSource(ints = {4, 5, 6})
  void what_is_still_to_be_mended_is_reckoned_with_before_it_is_tried(int faults) {
    Puzzle puzzle = opens(faults);
    double best = puzzle.solved().explanations().get(0).cost();
    Search.Result bounded = puzzle.search(best + EXACT, true).explain(puzzle.failing());
    assertTrue(bounded.complete(), "it came to its end by itself");
    assertEquals(1, bounded.explanations().size());
  }

  /** What is cheap is found at once; who has all the time tries fifteen times as much. */
  @Test
  void a_search_for_what_is_cheap_gives_up_sooner_and_says_so() {
    Puzzle puzzle = opens(6);
    Search.Result all = puzzle.solved();
    assertTrue(all.complete());
    assertEquals(MOST_EXPLANATIONS, all.explanations().size());
    Search.Result hurried = puzzle.search(1e6, true).explain(puzzle.failing());
    assertFalse(hurried.complete());
    assertTrue(hurried.explanations().size() < MOST_EXPLANATIONS);
  }

  /** One hand that was a cavity out may yet mend what looks like five faults. */
  @Test
  void what_a_hand_may_have_put_in_the_wrong_row_is_not_reckoned_wire_by_wire() {
    UnitUnderTest unit = new UnitUnderTest(folder).wire("W9,J9-1,P9-1").reads("J9-1", "P9-1", "OL");
    for (int pin = 1; pin <= 5; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P1-" + pin);
      unit.reads("J1-" + pin, "P1-" + pin, "OL").reads("J1-" + pin, "P1-" + (pin + 1), "0.1");
    }
    Puzzle puzzle = Puzzle.of(unit.pin("P1,6,20"));
    Explanation best = puzzle.solved().explanations().get(0);
    assertEquals(2, best.slips().size(), best.toString());
    assertTrue(best.slips().contains(puzzle.open("W9")));
    Search.Result bounded = puzzle.search(best.cost() + EXACT, true).explain(puzzle.failing());
    assertEquals(Set.copyOf(best.slips()), Set.copyOf(bounded.explanations().get(0).slips()));
  }

  /** Each reads joined with something among all the rest: with each other, as the other says. */
  @Test
  void two_points_that_are_each_joined_with_the_rest_are_joined_with_each_other() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    for (int pin = 1; pin <= 11; pin++) {
      unit.wire("W" + pin + ",J1-" + pin + ",P1-" + pin);
    }
    Puzzle puzzle = Puzzle.of(unit.reads("J1-1", "REST", "0.1").reads("J1-9", "REST", "0.1"));
    Slip bridge = new Slip.Bridged(puzzle.unit().point("J1-1"), puzzle.unit().point("J1-9"));
    List<Explanation> told = puzzle.solved().explanations();
    Explanation one =
        told.stream().filter(story -> story.slips().contains(bridge)).findFirst().orElseThrow();
    assertEquals(List.of(bridge), one.slips());
    assertEquals(puzzle.cost(bridge), one.cost(), EXACT);
    assertTrue(one.cost() < told.get(told.size() - 1).cost());
  }
}

package dev.ringout.lot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The statistics against worked examples that others published, each with its source. */
class PublishedStatisticsTest {

  /** P. J. Rousseeuw, M. Hubert, Robust statistics for outlier detection, WIREs 1 (2011) 73-79. */
  @Test
  void one_wild_value_of_five_moves_neither_the_middle_nor_the_spread() {
    double[] good = {6.27, 6.34, 6.25, 6.31, 6.28};
    double[] wild = {6.27, 6.34, 6.25, 63.1, 6.28};
    assertEquals(6.28, Robust.median(good), 1e-12);
    assertEquals(6.28, Robust.median(wild), 1e-12);
    assertEquals(0.03, Robust.medianAbsoluteDeviation(good), 1e-12);
    assertEquals(0.03, Robust.medianAbsoluteDeviation(wild), 1e-12);
  }

  /** The factors for few values, against samples drawn here: the mean of the spread is right. */
  @Test
  void the_spread_of_few_normal_values_is_right_on_average() {
    Robust robust = new Robust();
    Random random = new Random(26);
    for (int n : new int[] {2, 3, 4, 5, 6, 7, 8, 9, 10, 15, 20, 30}) {
      double sum = 0;
      int samples = 40_000;
      for (int i = 0; i < samples; i++) {
        sum += robust.spread(random.doubles(n).map(x -> random.nextGaussian()).toArray());
      }
      assertEquals(1, sum / samples, 0.025, n + " values");
    }
  }

  /**
   * P. F. Velleman, D. C. Hoaglin, Applications, Basics, and Computing of Exploratory Data
   * Analysis, 1981, p. 224: deaths from sport parachuting; the parts as R's medpolish gives them.
   */
  @Test
  void a_median_polish_takes_the_published_table_apart() {
    double[][] table = {{14, 15, 14}, {7, 4, 7}, {8, 2, 10}, {15, 9, 10}, {0, 2, 0}};
    MedianPolish polish = MedianPolish.of(table, 3);
    double[] rows = {6, -1, 0, 2, -8};
    for (int row = 0; row < 5; row++) {
      assertEquals(rows[row], polish.ofRow(row), 1e-12, "row " + row);
    }
    double[] columns = {8, 7, 8};
    for (int column = 0; column < 3; column++) {
      assertEquals(columns[column], polish.ofColumn(column), 1e-12, "column " + column);
    }
    double[][] rest = {{0, 2, 0}, {0, -2, 0}, {0, -5, 2}, {5, 0, 0}, {0, 3, 0}};
    for (int row = 0; row < 5; row++) {
      for (int column = 0; column < 3; column++) {
        assertEquals(rest[row][column], polish.rest(row, column), 1e-12);
      }
    }
  }

  @Test
  void a_median_polish_leaves_out_what_is_not_there() {
    double[][] table = {{1, Double.NaN}, {2, 5}, {3, 6}};
    MedianPolish polish = MedianPolish.of(table, 2);
    assertArrayEquals(new double[] {0, 0}, polish.restOfColumn(1), 1e-12);
    assertTrue(Double.isNaN(polish.rest(0, 1)));
  }

  /** Hollander and Wolfe, Nonparametric Statistical Methods, 1973, p. 116; p as R gives it. */
  @Test
  void three_groups_that_do_not_differ() {
    double p =
        RankTests.groupsDiffer(
            List.of(
                new double[] {2.9, 3.0, 2.5, 2.6, 3.2},
                new double[] {3.8, 2.7, 4.0, 2.4},
                new double[] {2.8, 3.4, 3.7, 2.2, 2.0}));
    assertEquals(0.68, p, 0.0005);
  }

  @Test
  void groups_of_values_that_are_all_alike_do_not_differ() {
    double[] same = {1, 1, 1};
    assertEquals(1, RankTests.groupsDiffer(List.of(same, same)), 0);
  }

  /** By hand: of ten values two alike take 6 of 990 off the divisor. */
  @Test
  void ties_make_a_difference_between_groups_a_little_larger() {
    double h = 12 / 110.0 * (10 * 10 / 4.0 + 26 * 26 / 4.0 + 19 * 19 / 2.0) - 33;
    double p =
        RankTests.groupsDiffer(
            List.of(new double[] {1, 2, 3, 4}, new double[] {5, 6, 7, 8}, new double[] {9, 10}));
    assertEquals(Math.exp(-h / 2), p, 1e-9, "two degrees of freedom");
    double tied =
        RankTests.groupsDiffer(
            List.of(new double[] {1, 2, 2, 4}, new double[] {5, 6, 7, 8}, new double[] {9, 10}));
    assertEquals(Math.exp(-h / (1 - 6 / 990.0) / 2), tied, 1e-9);
  }

  /**
   * Hollander and Wolfe, 1973, p. 187: the Hunter L values of tuna and a panel's scores. S is 16 of
   * 36 pairs; by the normal distribution with its correction p = 2 Φ(-15/√92).
   */
  @Test
  void a_rise_that_chance_may_well_bring() {
    double[] light = {44.4, 45.9, 41.9, 53.3, 44.7, 44.1, 50.7, 45.2, 60.1};
    double[] panel = {2.6, 3.1, 2.5, 5.0, 3.6, 4.0, 5.2, 2.8, 3.8};
    assertEquals(0.1179, RankTests.drifts(light, panel), 0.0005);
  }

  @Test
  void a_rise_at_every_step_is_none_of_chance() {
    double[] times = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10};
    double[] values = Arrays.stream(times).map(time -> 3 + 0.25 * time).toArray();
    values[4] = 90;
    assertTrue(RankTests.drifts(times, values) < 0.01);
    assertEquals(0.25, RankTests.slope(times, values), 1e-12, "one wild value does not turn it");
  }

  @Test
  void of_one_day_there_is_no_drift() {
    double[] day = {5, 5, 5};
    assertEquals(1, RankTests.drifts(day, new double[] {1, 2, 3}), 0);
    assertEquals(0, RankTests.slope(day, new double[] {1, 2, 3}), 0);
  }

  /** NIST/SEMATECH e-Handbook of Statistical Methods 7.2.4.2: 4 of 20, limits of 90 %. */
  @Test
  void the_exact_limits_of_a_proportion() {
    Proportion four = Proportion.of(4, 20, 0.10);
    assertEquals(0.071354, four.lowShare(), 5e-7);
    assertEquals(0.401029, four.highShare(), 1e-6);
    assertEquals(0.2, four.share(), 0);
  }

  /**
   * None of 60: three in sixty is the old rule for 95 % on one side; on both it is 1 -
   * 0.025^(1/60).
   */
  @Test
  void none_of_many_is_not_never() {
    Proportion none = Proportion.of(0, 60);
    assertEquals(0, none.lowShare(), 0);
    assertEquals(1 - Math.pow(0.025, 1 / 60.0), none.highShare(), 1e-9);
    Proportion all = Proportion.of(60, 60);
    assertEquals(1, all.highShare(), 0);
    assertEquals(0, Proportion.of(0, 0).share(), 0);
  }

  /** B. Iglewicz and D. C. Hoaglin's 3.5, and more where there are more values to be wild. */
  @Test
  void the_more_values_there_are_the_farther_one_must_stand_out() {
    assertEquals(3.5, Spreads.limitScore(20), 0);
    assertEquals(4.056, Spreads.limitScore(1000), 0.005);
    assertTrue(Spreads.limitScore(300_000) > 5);
  }

  /** Tables of nothing but chance: at most one in twenty is to have a value that stands out. */
  @Test
  void good_lots_of_any_size_hardly_ever_have_a_join_that_stands_out() {
    Random random = new Random(9);
    for (int[] size : new int[][] {{5, 8}, {6, 60}, {10, 16}, {20, 60}, {50, 8}}) {
      int lots = 600;
      int wild = 0;
      for (int lot = 0; lot < lots; lot++) {
        wild += hasAnyThatStandsOut(size[0], size[1], random) ? 1 : 0;
      }
      assertTrue(wild <= lots * 0.08, wild + " of " + lots + " lots of " + size[0] + " units");
    }
  }

  private static boolean hasAnyThatStandsOut(int units, int joins, Random random) {
    double[][] table = new double[units][joins];
    for (double[] row : table) {
      Arrays.setAll(row, join -> random.nextGaussian());
    }
    MedianPolish polish = MedianPolish.of(table, joins);
    double[] spreads = Spreads.spreads(polish, units, joins);
    double limit = Spreads.limitScore((long) units * joins);
    return IntStream.range(0, joins)
        .anyMatch(
            join ->
                Arrays.stream(polish.restOfColumn(join))
                    .anyMatch(rest -> Math.abs(rest) > limit * spreads[join]));
  }

  /** By brute force: throws of the dice that put so many on one of six sides. */
  @Test
  void that_faults_meet_at_one_place_by_chance_is_not_taken_for_less_likely_than_it_is() {
    Random random = new Random(6);
    int met = 0;
    int throwsOfDice = 20_000;
    for (int i = 0; i < throwsOfDice; i++) {
      int[] sides = new int[6];
      for (int die = 0; die < 5; die++) {
        sides[random.nextInt(6)]++;
      }
      met += Arrays.stream(sides).anyMatch(side -> side >= 3) ? 1 : 0;
    }
    double bound = SharedFault.byChance(3, 5, 6);
    assertEquals((double) met / throwsOfDice, bound, 0.01);
    assertEquals(1, SharedFault.byChance(2, 2, 1), 0, "where there is one place all meet");
  }
}

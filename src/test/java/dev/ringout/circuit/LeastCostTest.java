package dev.ringout.circuit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Pairs of least cost, against trying all of them. */
class LeastCostTest {
  private static int least(int[][] costs, int row, boolean[] taken) {
    if (row == costs.length) {
      return 0;
    }
    int least = Integer.MAX_VALUE;
    for (int column = 0; column < costs.length; column++) {
      if (!taken[column]) {
        taken[column] = true;
        least = Math.min(least, costs[row][column] + least(costs, row + 1, taken));
        taken[column] = false;
      }
    }
    return least;
  }

  @Test
  void no_other_pairing_costs_less() {
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      int size = 1 + random.nextInt(6);
      int[][] costs = new int[size][size];
      for (int[] row : costs) {
        Arrays.setAll(row, column -> random.nextInt(10));
      }
      int[] columnOf = LeastCost.assignment(costs);
      int sum = 0;
      for (int row = 0; row < size; row++) {
        sum += costs[row][columnOf[row]];
      }
      assertEquals(size, Arrays.stream(columnOf).distinct().count(), "seed " + seed);
      assertEquals(least(costs, 0, new boolean[size]), sum, "seed " + seed);
    }
  }

  @Test
  void one_has_no_choice() {
    assertArrayEquals(new int[] {0}, LeastCost.assignment(new int[][] {{7}}));
  }
}

package dev.ringout.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.support.ResistorUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Resistance between two terminals of wires against closed forms. */
class NetworksTest {
  private static final double TOLERANCE = 1e-9;

  private static ResistorUnit unit() {
    return new ResistorUnit();
  }

  /** Series: R = Σr (G. S. Ohm). */
  @Test
  void a_chain_is_the_sum_of_its_wires() {
    ResistorUnit chain = unit();
    for (int i = 0; i < 200; i++) {
      chain.resistor("" + i, "" + (i + 1), 1 + i % 3);
    }
    assertEquals(200 + 66 * 3 + 1, chain.between("0", "200"), 1e-6);
  }

  /** Parallel: 1/R = Σ1/r. */
  @Test
  void wires_side_by_side_share_the_current() {
    assertEquals(
        1 / (1 / 0.3 + 1 / 0.6 + 1 / 0.2),
        unit()
            .resistor("a", "b", 0.3)
            .resistor("a", "b", 0.6)
            .resistor("b", "a", 0.2)
            .between("a", "b"),
        TOLERANCE);
  }

  /** A star's arms are read two at a time. */
  @Test
  void a_star_reads_two_of_its_arms() {
    assertEquals(
        5,
        unit().resistor("m", "1", 2).resistor("m", "2", 3).resistor("m", "3", 7).between("1", "2"),
        TOLERANCE);
  }

  /** Star to delta (A. E. Kennelly, 1899): a delta of 3r reads as a star of r. */
  @Test
  void a_delta_of_thrice_the_arms_reads_as_the_star() {
    assertEquals(
        2,
        unit().resistor("1", "2", 3).resistor("2", "3", 3).resistor("3", "1", 3).between("1", "3"),
        TOLERANCE);
  }

  /** A ring of n ones read over k of them: k(n − k)/n. */
  @ParameterizedTest
  @CsvSource({"3,1", "7,3", "12,6", "200,50"})
  void a_ring_reads_both_ways_round_at_once(int wires, int apart) {
    ResistorUnit ring = unit();
    for (int i = 0; i < wires; i++) {
      ring.resistor("" + i, "" + (i + 1) % wires, 1);
    }
    assertEquals(
        apart * (wires - apart) / (double) wires, ring.between("0", "" + apart), TOLERANCE);
  }

  /**
   * Complete graph: 2/n (D. J. Klein and M. Randić, Journal of Mathematical Chemistry 12, 1993).
   */
  @ParameterizedTest
  @ValueSource(ints = {4, 5, 20})
  void all_joined_to_all_read_two_nths(int points) {
    ResistorUnit all = unit();
    for (int i = 0; i < points; i++) {
      for (int j = i + 1; j < points; j++) {
        all.resistor("" + i, "" + j, 1);
      }
    }
    assertEquals(2.0 / points, all.between("0", "" + (points - 1)), TOLERANCE);
  }

  /** A balanced Wheatstone bridge does not see its middle branch. */
  @Test
  void a_balanced_bridge_does_not_see_its_middle() {
    for (double middle : new double[] {0.01, 1, 50}) {
      ResistorUnit bridge =
          unit()
              .resistor("a", "u", 1)
              .resistor("u", "b", 2)
              .resistor("a", "w", 10)
              .resistor("w", "b", 20)
              .resistor("u", "w", middle);
      assertEquals(1 / (1 / 3.0 + 1 / 30.0), bridge.between("a", "b"), TOLERANCE);
    }
  }

  /** An unbalanced bridge by star and delta: arms 1, 2, 3, 4 and middle 5 read 157/69. */
  @Test
  void an_unbalanced_bridge_agrees_with_star_and_delta() {
    // Delta a-u-w (1, 3, 5) as star: 1·3/9, 1·5/9, 3·5/9.
    double top = 3 / 9.0;
    double left = 5 / 9.0 + 2;
    double right = 15 / 9.0 + 4;
    ResistorUnit bridge =
        unit()
            .resistor("a", "u", 1)
            .resistor("a", "w", 3)
            .resistor("u", "w", 5)
            .resistor("u", "b", 2)
            .resistor("w", "b", 4);
    assertEquals(top + left * right / (left + right), bridge.between("a", "b"), TOLERANCE);
  }

  /** Cube: 5/6 over the body, 3/4 over a face, 7/12 along an edge (a textbook problem). */
  @ParameterizedTest
  @CsvSource({"7,0.8333333333333333", "3,0.75", "1,0.5833333333333333"})
  void a_cube_reads_five_sixths_three_quarters_and_seven_twelfths(String to, double ohms) {
    assertEquals(
        ohms,
        unit()
            .ones(
                "0-1", "0-2", "0-4", "1-3", "1-5", "2-3", "2-6", "3-7", "4-5", "4-6", "5-7", "6-7")
            .between("0", to),
        TOLERANCE);
  }

  /** Octahedron: 5/12 along an edge (R. M. Foster: points less one over edges), 1/2 across. */
  @ParameterizedTest
  @CsvSource({"2,0.4166666666666667", "1,0.5"})
  void an_octahedron_reads_five_twelfths_and_one_half(String to, double ohms) {
    assertEquals(
        ohms,
        unit()
            .ones(
                "0-2", "0-3", "0-4", "0-5", "1-2", "1-3", "1-4", "1-5", "2-4", "4-3", "3-5", "5-2")
            .between("0", to),
        TOLERANCE);
  }

  /** The Petersen graph: 3/5 between neighbours (Foster), 4/5 between all others. */
  @ParameterizedTest
  @CsvSource({"1,0.6", "7,0.8"})
  void the_petersen_graph_reads_three_and_four_fifths(String to, double ohms) {
    ResistorUnit petersen = unit();
    for (int i = 0; i < 5; i++) {
      petersen
          .resistor("" + i, "" + (i + 1) % 5, 1)
          .resistor("" + i, "" + (i + 5), 1)
          .resistor("" + (i + 5), "" + ((i + 2) % 5 + 5), 1);
    }
    assertEquals(ohms, petersen.between("0", to), TOLERANCE);
  }

  /**
   * A ladder of ones, n sections long, reads a ratio of neighbouring Fibonacci numbers, F(2n+1)
   * over F(2n) (A. M. Morgan-Voyce, "Ladder-network analysis using Fibonacci numbers", IRE
   * Transactions on Circuit Theory 6, 1959).
   */
  @ParameterizedTest
  @CsvSource({"1,2,1", "2,5,3", "3,13,8", "6,233,144"})
  void a_ladder_reads_a_ratio_of_fibonacci_numbers(int sections, double over, double under) {
    ResistorUnit ladder = unit();
    for (int i = 0; i < sections; i++) {
      ladder.resistor("u" + i, "u" + (i + 1), 1).resistor("u" + (i + 1), "d", 1);
    }
    assertEquals(over / under, ladder.between("u0", "d"), TOLERANCE);
  }
}

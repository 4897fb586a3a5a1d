package dev.ringout.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.support.ResistorUnit;
import dev.ringout.units.OhmsRange;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What holds for resistances in any network, on random ones; the seed is in every message. */
class ResistancePropertiesTest {
  private static final int UNITS = 150;

  private record Edge(int from, int to, double ohms) {}

  private static List<Edge> random(Random random) {
    int points = 2 + random.nextInt(12);
    List<Edge> edges = new ArrayList<>();
    for (int point = 1; point < points; point++) {
      edges.add(new Edge(point, random.nextInt(point), ohms(random)));
    }
    for (int more = random.nextInt(12); more > 0; more--) {
      int from = random.nextInt(points);
      int to = random.nextInt(points);
      if (from != to) {
        edges.add(new Edge(from, to, ohms(random)));
      }
    }
    return edges;
  }

  private static double ohms(Random random) {
    return 0.01 + random.nextDouble();
  }

  private static ResistorUnit unit(List<Edge> edges) {
    ResistorUnit unit = new ResistorUnit();
    edges.forEach(edge -> unit.resistor("" + edge.from(), "" + edge.to(), edge.ohms()));
    return unit;
  }

  private static int points(List<Edge> edges) {
    return edges.stream().mapToInt(edge -> Math.max(edge.from(), edge.to())).max().orElse(0) + 1;
  }

  private static double[][] all(List<Edge> edges) {
    Circuit circuit = unit(edges).circuit();
    Resistances resistances = ResistorUnit.resistances(circuit);
    int points = points(edges);
    double[][] ohms = new double[points][points];
    for (int i = 0; i < points; i++) {
      for (int j = 0; j < points; j++) {
        ohms[i][j] = ResistorUnit.between(circuit, resistances, "" + i, "" + j).highOhms();
      }
    }
    return ohms;
  }

  /** By Gauss elimination on the whole Laplacian: shares nothing with the program. */
  private static double bySimpleElimination(List<Edge> edges, int one, int other) {
    int points = points(edges);
    double[][] rows = new double[points][points + 1];
    for (Edge edge : edges) {
      rows[edge.from()][edge.from()] += 1 / edge.ohms();
      rows[edge.to()][edge.to()] += 1 / edge.ohms();
      rows[edge.from()][edge.to()] -= 1 / edge.ohms();
      rows[edge.to()][edge.from()] -= 1 / edge.ohms();
    }
    rows[other] = new double[points + 1];
    rows[other][other] = 1;
    rows[one][points] = 1;
    for (int i = 0; i < points; i++) {
      int best = i;
      for (int k = i; k < points; k++) {
        best = Math.abs(rows[k][i]) > Math.abs(rows[best][i]) ? k : best;
      }
      double[] swap = rows[i];
      rows[i] = rows[best];
      rows[best] = swap;
      for (int k = 0; k < points; k++) {
        double share = rows[k][i] / rows[i][i];
        for (int c = i; k != i && c <= points; c++) {
          rows[k][c] -= share * rows[i][c];
        }
      }
    }
    return rows[one][points] / rows[one][one];
  }

  @Test
  void every_pair_agrees_with_plain_elimination() {
    for (int seed = 0; seed < UNITS; seed++) {
      List<Edge> edges = random(new Random(seed));
      double[][] ohms = all(edges);
      for (int i = 0; i < ohms.length; i++) {
        for (int j = 0; j < ohms.length; j++) {
          if (i != j) {
            assertEquals(
                bySimpleElimination(edges, i, j), ohms[i][j], 1e-9, "seed " + seed + i + "/" + j);
          }
        }
      }
    }
  }

  /** Rayleigh's monotonicity law: without a wire nothing reads lower. */
  @Test
  void taking_a_wire_away_never_lowers_a_reading() {
    for (int seed = 0; seed < UNITS; seed++) {
      Random random = new Random(seed);
      List<Edge> edges = random(random);
      double[][] with = all(edges);
      int extra = random.nextInt(edges.size());
      List<Edge> fewer = new ArrayList<>(edges);
      fewer.remove(extra);
      if (points(fewer) != points(edges)) {
        continue;
      }
      Circuit circuit = unit(fewer).circuit();
      Resistances resistances = ResistorUnit.resistances(circuit);
      Nets nets = circuit.normal();
      for (int i = 0; i < with.length; i++) {
        for (int j = 0; j < with.length; j++) {
          Point one = new Point("N", "" + i);
          Point other = new Point("N", "" + j);
          if (!circuit.harness().points().contains(one)
              || !circuit.harness().points().contains(other)) {
            continue;
          }
          if (nets.of(circuit.index(one)) == nets.of(circuit.index(other))) {
            double without =
                resistances
                    .between(circuit.index(one), circuit.index(other), SwitchState.normal())
                    .highOhms();
            assertTrue(without >= with[i][j] - 1e-9, "seed " + seed + ": " + i + "/" + j);
          }
        }
      }
    }
  }

  /** Resistance is a distance (Klein and Randić, 1993). */
  @Test
  void no_way_over_a_third_point_reads_less_than_straight() {
    for (int seed = 0; seed < UNITS; seed++) {
      double[][] ohms = all(random(new Random(seed)));
      for (double[] row : ohms) {
        for (int j = 0; j < ohms.length; j++) {
          for (int k = 0; k < ohms.length; k++) {
            assertTrue(row[k] <= row[j] + ohms[j][k] + 1e-9, "seed " + seed);
          }
        }
      }
    }
  }

  /**
   * R. M. Foster, 1949: over all wires, what is read across each over its own, is points less 1.
   */
  @Test
  void the_shares_of_all_wires_add_up_to_the_points_less_one() {
    for (int seed = 0; seed < UNITS; seed++) {
      List<Edge> edges = random(new Random(seed));
      double[][] ohms = all(edges);
      double sum =
          edges.stream().mapToDouble(edge -> ohms[edge.from()][edge.to()] / edge.ohms()).sum();
      assertEquals(points(edges) - 1, sum, 1e-8, "seed " + seed);
    }
  }

  @Test
  void the_order_of_the_list_does_not_matter() {
    for (int seed = 0; seed < UNITS; seed++) {
      Random random = new Random(seed);
      List<Edge> edges = random(random);
      List<Integer> order = new ArrayList<>();
      for (int i = 0; i < edges.size(); i++) {
        order.add(i);
      }
      Collections.shuffle(order, random);
      ResistorUnit unit = unit(edges);
      String last = "" + (points(edges) - 1);
      assertEquals(unit.between("0", last), unit.inOrder(order).between("0", last), 1e-10);
    }
  }

  /** A long cable through many splices, and a long row of double wires: nothing overflows. */
  @Test
  void a_net_may_be_of_any_length() {
    int length = 60_000;
    ResistorUnit chain = new ResistorUnit();
    ResistorUnit doubled = new ResistorUnit();
    for (int i = 0; i < length; i++) {
      chain.resistor("" + i, "" + (i + 1), 1);
      if (i < length / 10) {
        doubled.resistor("" + i, "" + (i + 1), 1).resistor("" + i, "" + (i + 1), 1);
      }
    }
    Circuit circuit = chain.circuit();
    Resistances resistances = ResistorUnit.resistances(circuit);
    for (int i = 1; i <= length; i *= 3) {
      OhmsRange range = ResistorUnit.between(circuit, resistances, "0", "" + i);
      assertEquals(i, range.lowOhms(), 1e-6 * i);
    }
    assertEquals(length / 20.0, doubled.between("0", "" + length / 10), 1e-6 * length);
  }

  @Test
  void a_ring_of_thousands_is_one_block_and_is_solved_at_once() {
    int wires = 5_000;
    ResistorUnit ring = new ResistorUnit();
    for (int i = 0; i < wires; i++) {
      ring.resistor("" + i, "" + (i + 1) % wires, 1);
    }
    assertEquals(wires / 4.0, ring.between("0", "" + wires / 2), 1e-5);
  }
}

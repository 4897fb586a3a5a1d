package dev.ringout.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.harness.Harness;
import dev.ringout.sheet.Row;
import dev.ringout.sheet.TabularFile;
import dev.ringout.source.Problems;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.BiconnectivityInspector;
import org.jgrapht.graph.Multigraph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nets and cut edges against a textbook, a reference library and a list that others made. */
class NetsTest {
  @TempDir Path folder;

  /**
   * Source: R. Sedgewick and K. Wayne, Algorithms, 4th edition, section 4.1, the graph tinyG: 13
   * vertices, 13 edges, three components {0…6}, {7, 8}, {9…12}.
   */
  @Test
  void the_textbook_graph_has_three_components() {
    String edges = "0-5 4-3 0-1 9-12 6-4 5-4 0-2 11-12 9-10 0-6 7-8 9-11 5-3";
    UnitUnderTest unit = new UnitUnderTest(folder);
    int number = 0;
    for (String edge : edges.split(" ", -1)) {
      String[] ends = edge.split("-", -1);
      unit.wire("W" + number++ + ",V-" + ends[0] + ",V-" + ends[1]);
    }
    Circuit circuit = Circuit.of(unit.harness());
    Nets nets = circuit.normal();

    assertEquals(3, nets.count());
    List<Integer> sizes = new ArrayList<>();
    for (int net = 0; net < nets.count(); net++) {
      sizes.add(nets.pointsOf(net).length);
    }
    assertEquals(List.of(7, 2, 4), sizes);
  }

  /** A chain, whose every wire is a cut edge: one stack frame a point would overflow. */
  @Test
  void a_net_of_fifty_thousand_points_in_a_chain_is_no_trouble() {
    UnitUnderTest unit = new UnitUnderTest(folder);
    int wires = 50_000;
    for (int wire = 0; wire < wires; wire++) {
      unit.wire("W" + wire + ",V-" + wire + ",V-" + (wire + 1));
    }
    Nets nets = Circuit.of(unit.harness()).normal();

    assertEquals(1, nets.count());
    for (int wire = 0; wire < wires; wire++) {
      assertTrue(nets.isCutEdge(wire));
    }
  }

  /** Reference library: JGraphT's BiconnectivityInspector, which finds cut edges by another way. */
  @Test
  void cut_edges_agree_with_the_graph_library_on_random_graphs() {
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      int points = 2 + random.nextInt(20);
      int wires = 1 + random.nextInt(30);
      Graph<Integer, Integer> graph = new Multigraph<>(null, null, false);
      UnitUnderTest unit = new UnitUnderTest(folder.resolve("seed" + seed));
      for (int point = 0; point < points; point++) {
        graph.addVertex(point);
        unit.pin("V," + point + ",");
      }
      for (int wire = 0; wire < wires; wire++) {
        int from = random.nextInt(points);
        int to = (from + 1 + random.nextInt(points - 1)) % points;
        graph.addEdge(from, to, wire);
        unit.wire("W" + wire + ",V-" + from + ",V-" + to);
      }
      Set<Integer> expected = new BiconnectivityInspector<>(graph).getBridges();
      Nets nets = Circuit.of(unit.harness()).normal();
      Set<Integer> found = new TreeSet<>();
      for (int wire = 0; wire < wires; wire++) {
        if (nets.isCutEdge(wire)) {
          found.add(wire);
        }
      }
      assertEquals(new TreeSet<>(expected), found, "seed " + seed);
    }
  }

  /**
   * Source: Wiring_C2Mega.xls, sheet Power, of the self-driving trike project elcano/elcano (MIT
   * licence): 42 wires, 63 end names, 21 nets; the nets of Post 1, Post 10 and Post 8 have 7, 7 and
   * 5 ends. Worked out by hand for this project; the list lies beside the project, not in it.
   */
  @Test
  void a_real_power_list_has_the_nets_that_were_worked_out_by_hand() throws Exception {
    Path list = Path.of("../shared/lists/self-driving-trike/Wiring_C2Mega.xls");
    assumeTrue(Files.exists(list), "the list is not here");
    List<Row> rows = new ArrayList<>();
    Problems problems = new Problems();
    try (TabularFile file = TabularFile.open(list, "list", problems)) {
      for (var sheet : file.sheets()) {
        if (sheet.name().equals("Power")) {
          sheet.forEachRow(rows::add);
        }
      }
    }
    UnitUnderTest unit = new UnitUnderTest(folder);
    int[] ends = endColumns(rows);
    Set<String> names = new HashSet<>();
    int wires = 0;
    for (Row row : rows.subList(headingIndex(rows) + 1, rows.size())) {
      String from = name(row, ends[0]);
      String to = name(row, ends[1]);
      if (!from.isEmpty() && !to.isEmpty()) {
        wires++;
        names.add(from);
        names.add(to);
        unit.wire("W" + wires + ",\"E:" + from + "\",\"E:" + to + "\"");
      }
    }
    assertEquals(42, wires);
    assertEquals(63, names.size());
    Harness harness = unit.harness();
    Nets nets = Circuit.of(harness).normal();
    assertEquals(21, nets.count());
    int[] sizes = new int[nets.count()];
    for (int net = 0; net < sizes.length; net++) {
      sizes[net] = nets.pointsOf(net).length;
    }
    Arrays.sort(sizes);
    assertEquals(7, sizes[sizes.length - 1]);
    assertEquals(7, sizes[sizes.length - 2]);
    assertEquals(5, sizes[sizes.length - 3]);
  }

  private static int headingIndex(List<Row> rows) {
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).cells().stream().anyMatch(cell -> cell.text().strip().equals("End 1"))) {
        return i;
      }
    }
    throw new AssertionError("no heading row");
  }

  private static int[] endColumns(List<Row> rows) {
    Row heading = rows.get(headingIndex(rows));
    int[] columns = new int[2];
    for (int column = 1; column <= heading.cells().size(); column++) {
      String text = heading.cell(column).text().strip();
      if (text.equals("End 1")) {
        columns[0] = column;
      } else if (text.equals("End 2")) {
        columns[1] = column;
      }
    }
    return columns;
  }

  private static String name(Row row, int column) {
    return row.cell(column).text().strip().replace('"', ' ');
  }
}

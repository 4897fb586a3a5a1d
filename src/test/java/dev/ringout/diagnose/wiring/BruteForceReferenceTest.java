package dev.ringout.diagnose.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Judged;
import dev.ringout.harness.Wire;
import dev.ringout.standards.Tables;
import dev.ringout.support.PublishedLimits;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The search against brute force, by the definition of a diagnosis (R. Reiter, "A Theory of
 * Diagnosis from First Principles", Artificial Intelligence 32, 1987): of all sets of up to three
 * slips that are consistent with every reading, none is cheaper than what the search finds, and
 * what it finds is consistent. What is consistent is told here by a union of points that shares
 * nothing with the search. Sets that misplace one wire at both ends are left out: where an open
 * wire and a short explain their readings apart from each other, the two are not explained
 * together.
 */
class BruteForceReferenceTest {
  private static final int UNITS = 100;
  private static final int MOST_SLIPS = 3;

  @TempDir Path folder;

  @Test
  void no_three_slips_of_different_wires_are_cheaper_than_the_one_found() {
    int compared = 0;
    for (int seed = 0; seed < UNITS; seed++) {
      compared += compare(seed) ? 1 : 0;
    }
    assertTrue(compared > UNITS * 0.8, compared + " of " + UNITS + " units showed anything");
  }

  private boolean compare(int seed) {
    Random random = new Random(seed);
    UnitUnderTest unit = new UnitUnderTest(folder.resolve("" + seed));
    int wires = 3 + random.nextInt(2);
    for (int wire = 1; wire <= wires; wire++) {
      String to = random.nextInt(3) == 0 ? "TB1-" + (1 + random.nextInt(2)) : "P2-" + wire;
      unit.wire("W" + wire + ",J1-" + wire + "," + to);
    }
    unit.link(",TB1-1,TB1-2").pin("J1," + (wires + 1) + ",").pin("P2," + (wires + 1) + ",");
    Circuit circuit = unit.reads("J1-1", "J1-2", "").check().circuit();
    ListedUnit listed = ListedUnit.of(circuit, PublishedLimits.of(circuit), Tables.published());
    SlipCosts costs = listed.costs();
    List<Slip> universe = new ArrayList<>(universe(circuit));
    universe.sort(Comparator.comparingDouble(costs::of));
    List<Slip> planted = new ArrayList<>();
    for (int i = 1 + random.nextInt(MOST_SLIPS); i > 0; i--) {
      planted.add(universe.get(random.nextInt(universe.size())));
    }
    int[] truth = joined(circuit, planted);
    if (Arrays.equals(truth, joined(circuit, List.of()))) {
      return false;
    }
    for (int one = 0; one < circuit.size(); one++) {
      for (int other = one + 1; other < circuit.size(); other++) {
        unit.reads(
            circuit.point(one).toString(),
            circuit.point(other).toString(),
            truth[one] == truth[other] ? "0.2" : "OL");
      }
    }
    CheckResult result = unit.check();
    WiringFaults found =
        WiringFaults.of(WiringReadings.of(listed, result.comparison()), WiringFaults.ANY_COST);
    List<Judged> failing = result.comparison().failing();
    double cost = found.costOf(failing);
    AllSets sets = new AllSets(circuit, universe, costs, truth, cost);
    double least = sets.least();
    assertTrue(
        cost <= least + 1e-9,
        () ->
            "seed %d: found %s at %f, planted %s, cheapest %s at %f"
                .formatted(seed, found.slips(), cost, planted, sets.cheapest, least));
    boolean ofTheSheet =
        found.slips().stream()
            .anyMatch(slip -> slip.asMisread().isPresent() || slip.asExchanged().isPresent());
    if (!ofTheSheet) {
      assertEquals(
          Arrays.toString(truth),
          Arrays.toString(joined(circuit, found.slips())),
          "seed " + seed + ": " + found.slips());
    }
    return true;
  }

  /** Every open, every end at every pin of its item, every two ends crossed, every bridge. */
  private static List<Slip> universe(Circuit circuit) {
    List<Slip> all = new ArrayList<>();
    int conductors = circuit.conductors().size();
    for (int one = 0; one < conductors; one++) {
      all.add(new Slip.Missing(one));
      if (!circuit.conductors().get(one).label().startsWith("W")) {
        continue;
      }
      for (Wire.End end : Wire.End.values()) {
        int at = circuit.at(one, end);
        for (int pin = 0; pin < circuit.size(); pin++) {
          if (pin != at && ref(circuit, pin).equals(ref(circuit, at))) {
            all.add(new Slip.Moved(one, end, pin));
          }
        }
        for (int other = one + 1; other < conductors; other++) {
          for (Wire.End otherEnd : Wire.End.values()) {
            if (circuit.conductors().get(other).label().startsWith("W")
                && circuit.at(other, otherEnd) != at
                && ref(circuit, circuit.at(other, otherEnd)).equals(ref(circuit, at))) {
              all.add(new Slip.Crossed(one, end, other, otherEnd));
            }
          }
        }
      }
    }
    for (int one = 0; one < circuit.size(); one++) {
      for (int other = one + 1; other < circuit.size(); other++) {
        if (ref(circuit, one).equals(ref(circuit, other))) {
          all.add(new Slip.Bridged(one, other));
        }
      }
    }
    return all;
  }

  private static String ref(Circuit circuit, int point) {
    return circuit.point(point).ref();
  }

  /** Sets of slips tried in the order of the universe, those that are not cheaper left out. */
  private static final class AllSets {
    private final Circuit circuit;
    private final List<Slip> universe;
    private final SlipCosts costs;
    private final int[] truth;
    private double least;
    private List<Slip> cheapest = List.of();

    /**
     * Where to look.
     *
     * @param universe cheapest first
     * @param bound what is to be undercut
     */
    AllSets(Circuit circuit, List<Slip> universe, SlipCosts costs, int[] truth, double bound) {
      this.circuit = circuit;
      this.universe = universe;
      this.costs = costs;
      this.truth = truth;
      this.least = bound;
    }

    /** The least cost below the bound of any set that makes the truth; else the bound. */
    double least() {
      extend(List.of(), 0, 0);
      return least;
    }

    private void extend(List<Slip> chosen, double cost, int from) {
      for (int i = from; i < universe.size(); i++) {
        Slip slip = universe.get(i);
        double more = cost + costs.of(slip);
        if (more >= least - 1e-9) {
          return;
        }
        if (chosen.stream()
            .anyMatch(one -> !Collections.disjoint(one.misplaced(), slip.misplaced()))) {
          continue;
        }
        List<Slip> slips = new ArrayList<>(chosen);
        slips.add(slip);
        if (makes(circuit, slips, truth)) {
          least = more;
          cheapest = slips;
        } else if (slips.size() < MOST_SLIPS) {
          extend(slips, more, i + 1);
        }
      }
    }
  }

  private static boolean makes(Circuit circuit, List<Slip> slips, int[] truth) {
    return Arrays.equals(joined(circuit, slips), truth);
  }

  /** For each point the first point that it is joined to, by laying label over label. */
  private static int[] joined(Circuit circuit, List<Slip> slips) {
    int conductors = circuit.conductors().size();
    int[][] ends = new int[conductors][];
    for (int i = 0; i < conductors; i++) {
      ends[i] = new int[] {circuit.from(i), circuit.to(i)};
    }
    List<int[]> edges = new ArrayList<>();
    Set<Integer> gone = new HashSet<>();
    for (Slip slip : slips) {
      if (slip instanceof Slip.Missing missing) {
        gone.add(missing.conductor());
      } else if (slip instanceof Slip.Moved moved) {
        ends[moved.wire()][side(moved.end())] = moved.to();
      } else if (slip instanceof Slip.Crossed crossed) {
        int first = ends[crossed.wire()][side(crossed.end())];
        ends[crossed.wire()][side(crossed.end())] =
            ends[crossed.otherWire()][side(crossed.otherEnd())];
        ends[crossed.otherWire()][side(crossed.otherEnd())] = first;
      } else if (slip instanceof Slip.Rearranged many) {
        many.puts().forEach(put -> ends[put.wire()][side(put.end())] = put.to());
      } else if (slip instanceof Slip.Bridged bridged) {
        edges.add(new int[] {bridged.one(), bridged.other()});
      }
    }
    for (int i = 0; i < conductors; i++) {
      if (!gone.contains(i)) {
        edges.add(ends[i]);
      }
    }
    int[] label = new int[circuit.size()];
    Arrays.setAll(label, point -> point);
    for (int round = 0; round < label.length; round++) {
      for (int[] edge : edges) {
        int least = Math.min(label[edge[0]], label[edge[1]]);
        label[edge[0]] = least;
        label[edge[1]] = least;
      }
    }
    return label;
  }

  private static int side(Wire.End end) {
    return end == Wire.End.FROM ? 0 : 1;
  }
}

package dev.ringout.plan;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.harness.SwitchState;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.Tables;
import dev.ringout.support.PublishedLimits;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A plan by brute force: each wire taken out of the unit, and each two nets bridged, must change
 * what some step shows. What is joined is told by laying label over label.
 */
class PlanBruteForceTest {
  private static final int UNITS = 200;

  @TempDir Path folder;

  @Test
  void every_wire_taken_out_and_every_two_nets_bridged_show_in_some_step() {
    for (int seed = 0; seed < UNITS; seed++) {
      Circuit circuit = unit(seed);
      TestPlan plan =
          Planner.plan(
              circuit,
              PublishedLimits.of(circuit),
              new HandMovements(Tables.published()),
              PlanOptions.ALL);
      assertTrue(plan.coverage().isComplete(), "seed " + seed + " " + plan.coverage());
      String good = shown(circuit, plan, -1, -1, -1);
      for (int wire = 0; wire < circuit.conductors().size(); wire++) {
        if (circuit.conductors().get(wire) instanceof Conductor.OfWire) {
          String without = shown(circuit, plan, wire, -1, -1);
          assertTrue(
              !without.equals(good),
              "seed " + seed + ": without " + circuit.conductors().get(wire).label());
        }
      }
      for (int one = 0; one < circuit.normal().count(); one++) {
        for (int other = one + 1; other < circuit.normal().count(); other++) {
          int from = circuit.normal().pointsOf(one)[0];
          int to = circuit.normal().pointsOf(other)[0];
          String bridged = shown(circuit, plan, -1, from, to);
          assertTrue(
              !bridged.equals(good),
              "seed " + seed + ": " + circuit.point(from) + " to " + circuit.point(to));
        }
      }
    }
  }

  /** Up to ten wires between two connectors and a strip, in parallel, in loops, with a switch. */
  private Circuit unit(int seed) {
    Random random = new Random(seed);
    UnitUnderTest unit = new UnitUnderTest(folder.resolve("" + seed));
    int wires = 3 + random.nextInt(8);
    for (int wire = 1; wire <= wires; wire++) {
      String from = "J1-" + (1 + random.nextInt(5));
      String to = random.nextBoolean() ? "TB1-" + (1 + random.nextInt(4)) : "P2-" + wire;
      unit.wire("W" + wire + "," + from + "," + to);
    }
    if (random.nextBoolean()) {
      unit.link("TB1,1,2").pin("TB1,1,").pin("TB1,2,");
    }
    if (random.nextBoolean()) {
      unit.wire("WS,J1-1,S1-1").wire("WT,P2-1,S1-2").contact("S1,CLEAR,1,2").contact("S1,SET,,");
    }
    unit.pin("J1,8,").pin("J1,9,");
    return unit.reads("J1-9", "J1-8", "").check().circuit();
  }

  /** For each step whether its two sides are joined. */
  private static String shown(Circuit circuit, TestPlan plan, int off, int one, int other) {
    StringBuilder shown = new StringBuilder();
    for (Step step : plan.steps()) {
      SwitchState state = step.probing().state();
      int[] now = labels(circuit, state, off, one, other, step);
      Set<Integer> from = new TreeSet<>();
      Arrays.stream(step.probing().from()).forEach(point -> from.add(now[point]));
      boolean joined;
      if (step.probing().toRest()) {
        int[] listed = labels(circuit, state, -1, -1, -1, step);
        int own = listed[step.probing().from()[0]];
        joined = false;
        for (int point = 0; point < now.length; point++) {
          joined |= listed[point] != own && from.contains(now[point]);
        }
      } else {
        joined = Arrays.stream(step.probing().to()).anyMatch(point -> from.contains(now[point]));
      }
      shown.append(joined ? 'x' : '.');
    }
    return shown.toString();
  }

  private static int[] labels(
      Circuit circuit, SwitchState state, int off, int one, int other, Step step) {
    int[] label = new int[circuit.size()];
    Arrays.setAll(label, point -> point);
    for (int round = 0; round < label.length; round++) {
      for (int c = 0; c < circuit.conductors().size(); c++) {
        if (c != off && circuit.isClosed(c, state)) {
          join(label, circuit.from(c), circuit.to(c));
        }
      }
      if (one >= 0) {
        join(label, one, other);
      }
      for (int point : step.probing().from()) {
        join(label, step.probing().from()[0], point);
      }
    }
    return label;
  }

  private static void join(int[] label, int one, int other) {
    int least = Math.min(label[one], label[other]);
    label[one] = least;
    label[other] = least;
  }
}

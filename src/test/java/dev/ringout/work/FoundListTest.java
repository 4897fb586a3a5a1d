package dev.ringout.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.PublishedLimits;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wiring;
import dev.ringout.intake.ReadUnit;
import dev.ringout.plan.GoodUnit;
import dev.ringout.plan.PlanOptions;
import dev.ringout.plan.Planner;
import dev.ringout.plan.Step;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.Tables;
import dev.ringout.words.FoundListWords;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The sample bridge's list built anew from its readings. */
class FoundListTest {
  private static final Path BRIDGE = Path.of("harness-samples/swing-bridge/junction-box.xlsx");

  private static Circuit bridge() {
    return Circuit.of(ReadUnit.of(BRIDGE));
  }

  private static List<Reading> fullReadings(Circuit circuit) {
    JoinLimits limits = PublishedLimits.of(circuit);
    List<Step> steps =
        Planner.plan(circuit, limits, new HandMovements(Tables.published()), PlanOptions.ALL)
            .steps();
    return GoodUnit.readings(circuit, steps).readings();
  }

  private static Set<Set<Point>> nets(Circuit circuit) {
    Set<Set<Point>> nets = new HashSet<>();
    for (int net = 0; net < circuit.normal().count(); net++) {
      Set<Point> points = new HashSet<>();
      for (int point : circuit.normal().pointsOf(net)) {
        points.add(circuit.point(point));
      }
      if (points.size() > 1) {
        nets.add(points);
      }
    }
    return nets;
  }

  @Test
  void from_the_full_readings_the_same_nets_come_back() throws Exception {
    Circuit circuit = bridge();
    FoundList found = FoundList.of(new ReadingSet(fullReadings(circuit), List.of()));
    Set<Set<Point>> nets = new HashSet<>();
    found.nets().forEach(net -> nets.add(new HashSet<>(net.points())));
    assertEquals(nets(circuit), nets);
  }

  @Test
  void from_some_of_the_readings_nothing_is_invented() throws Exception {
    Circuit circuit = bridge();
    List<Reading> all = new ArrayList<>(fullReadings(circuit));
    Random random = new Random(5);
    for (int round = 0; round < 20; round++) {
      Collections.shuffle(all, random);
      FoundList found =
          FoundList.of(
              new ReadingSet(List.copyOf(all.subList(0, random.nextInt(all.size()))), List.of()));
      for (FoundList.Net net : found.nets()) {
        assertTrue(
            nets(circuit).stream().anyMatch(listed -> listed.containsAll(net.points())),
            net.toString());
      }
      assertTrue(found.pairs().heldApart() <= found.pairs().all());
    }
  }

  @Test
  void each_join_names_the_cell_that_shows_it_and_what_it_does_not_prove() throws Exception {
    Circuit circuit = bridge();
    Wiring found =
        FoundListWords.wiring(FoundList.of(new ReadingSet(fullReadings(circuit), List.of())));
    assertTrue(
        found.wires().stream()
            .allMatch(
                wire -> wire.note().contains("plan!Continuity!") && wire.name().startsWith("F")),
        found.wires().toString());
    assertTrue(
        found.wires().stream()
            .filter(wire -> wire.from().toString().equals("J1-A"))
            .allMatch(wire -> wire.note().contains("which wires make this net of 6 points")),
        "J1-A");
  }
}

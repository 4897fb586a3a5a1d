package dev.ringout.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wiring;
import dev.ringout.plan.GoodUnit;
import dev.ringout.plan.PlanOptions;
import dev.ringout.plan.Planner;
import dev.ringout.plan.Step;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Meter;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.Side;
import dev.ringout.source.Place;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.Tables;
import dev.ringout.support.PublishedLimits;
import dev.ringout.support.ReadUnit;
import dev.ringout.words.FoundListWords;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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

  /** The same readings as somebody wrote them down, one a row. */
  private static List<Reading> written(List<Reading> readings) {
    List<Reading> written = new ArrayList<>();
    for (Reading one : readings) {
      Place cell = new Place("sheet.xlsx", "Continuity", written.size() + 2, 7);
      written.add(
          new Reading(
              one.kind(),
              one.step(),
              one.from(),
              one.to(),
              one.state(),
              one.measured(),
              one.meter(),
              one.volts(),
              one.seconds(),
              one.time(),
              one.by(),
              one.note(),
              cell));
    }
    return written;
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
        FoundListWords.wiring(
            FoundList.of(new ReadingSet(written(fullReadings(circuit)), List.of())));
    assertTrue(
        found.wires().stream()
            .allMatch(
                wire ->
                    wire.note().contains("sheet.xlsx!Continuity!G") && wire.name().startsWith("F")),
        found.wires().toString());
    assertTrue(
        found.wires().stream()
            .filter(wire -> wire.from().toString().equals("J1-A"))
            .allMatch(wire -> wire.note().contains("which wires make this net of 6 points")),
        "J1-A");
  }

  private static Side at(String ref, String pin) {
    return new Side.Points(List.of(new Point(ref, pin)));
  }

  private static FoundList of(Measured measured, Meter meter) {
    Reading reading =
        new Reading(
            Reading.Kind.CONTINUITY,
            "1",
            at("J1", "A"),
            at("P1", "1"),
            SwitchState.normal(),
            measured,
            meter,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Optional.empty(),
            "",
            "",
            new Place("r.csv", "", 2, 4));
    return FoundList.of(new ReadingSet(List.of(reading), List.of()));
  }

  private static Meter meter(double leadOhms, double accuracyOhms) {
    return new Meter(
        OptionalDouble.of(leadOhms),
        0,
        OptionalDouble.empty(),
        0,
        0,
        accuracyOhms,
        OptionalDouble.empty());
  }

  private static void assertJoined(FoundList found) {
    assertEquals(1, found.nets().size());
    assertEquals(List.of(), found.unsure());
  }

  private static void assertNotSure(FoundList found) {
    assertEquals(List.of(), found.nets());
    assertEquals(1, found.unsure().size());
    assertEquals(0, found.pairs().heldApart());
  }

  private static void assertShowsNothing(FoundList found) {
    assertEquals(List.of(), found.nets());
    assertEquals(List.of(), found.unsure());
    assertEquals(0, found.pairs().heldApart());
  }

  /** The limits of a harness file that gives none: 1 Ω and 100 kΩ (common practice, no source). */
  @Test
  void a_value_joins_up_to_one_ohm_and_holds_apart_from_a_hundred_kilohms_on() {
    assertJoined(of(new Measured.Value(1, 0.005), Meter.UNKNOWN));
    assertNotSure(of(new Measured.Value(1.02, 0.005), Meter.UNKNOWN));
    assertNotSure(of(new Measured.Value(99e3, 500), Meter.UNKNOWN));
    assertEquals(
        1, of(new Measured.Value(100e3, 500), Meter.UNKNOWN).pairs().heldApart(), "100 kΩ");
  }

  @Test
  void what_the_meter_may_be_off_and_its_leads_count_as_they_do_in_a_check() {
    assertJoined(of(new Measured.Value(1.02, 0.005), meter(0, 0.05)));
    assertJoined(of(new Measured.Value(1.2, 0.005), meter(0.3, 0)));
    assertJoined(of(new Measured.LessThan(1.2), meter(0.3, 0)));
    assertNotSure(of(new Measured.Value(1.2, 0.005), meter(0, 0.05)));
  }

  /** A value of whole kilohms was anything below 500 Ω: no joint was shown. */
  @Test
  void a_meter_too_coarse_to_tell_a_joint_shows_nothing() {
    assertShowsNothing(of(new Measured.Value(0, 500), Meter.UNKNOWN));
    assertJoined(of(new Measured.Value(0, 0.5), Meter.UNKNOWN));
  }

  @Test
  void over_range_shows_apart_unless_the_range_ends_below_what_counts_as_open() {
    assertEquals(
        1, of(new Measured.OverRange(OptionalDouble.empty()), Meter.UNKNOWN).pairs().heldApart());
    assertEquals(
        1, of(new Measured.OverRange(OptionalDouble.of(40e6)), Meter.UNKNOWN).pairs().heldApart());
    assertShowsNothing(of(new Measured.OverRange(OptionalDouble.of(400)), Meter.UNKNOWN));
  }

  @Test
  void what_is_read_next_is_a_point_of_each_net_that_is_not_held_apart() {
    FoundList found = of(new Measured.Value(82, 0.5), Meter.UNKNOWN);
    assertEquals(
        List.of(
            new FoundList.Next(new Point("J1", "A"), 1),
            new FoundList.Next(new Point("P1", "1"), 1)),
        found.next());
    assertEquals(
        "J1-A to REST: not held apart from 1 other net",
        FoundListWords.sentence(found.next().get(0)));
  }
}

package dev.ringout.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.compare.Comparison;
import dev.ringout.plan.PlanOptions.Isolation;
import dev.ringout.plan.Step.Purpose;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.Tables;
import dev.ringout.support.PublishedLimits;
import dev.ringout.support.UnitUnderTest;
import dev.ringout.words.LeftOutSentences;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How many steps a plan takes, and which. */
class FewestStepsTest {
  @TempDir Path folder;

  private static final HandMovements MOVEMENTS = new HandMovements(Tables.published());

  private static JoinLimits limits(Circuit circuit) {
    return PublishedLimits.of(circuit);
  }

  private static TestPlan plan(Circuit circuit, PlanOptions options) {
    return Planner.plan(circuit, limits(circuit), MOVEMENTS, options);
  }

  private static PlanOptions with(Isolation isolation, Set<String> only, Set<String> touched) {
    return new PlanOptions(isolation, false, false, only, touched, Optional.empty());
  }

  /** Nets of so many points each, at connectors J1, J2 … pin by pin. */
  private Circuit nets(int count, int points) {
    UnitUnderTest unit =
        new UnitUnderTest(folder.resolve(count + "x" + points)).withoutInsulationTest();
    for (int net = 1; net <= count; net++) {
      if (points == 1) {
        unit.pin("J1," + net + ",");
      }
      for (int point = 2; point <= points; point++) {
        unit.wire(
            "W" + net + "x" + point + ",J" + (point - 1) + "-" + net + ",J" + point + "-" + net);
      }
    }
    if (points == 1) {
      unit.wire("W,J2-1,J2-2");
    }
    return unit.reads(points == 1 ? "J2-1" : "J1-1", "J2-2", "").check().circuit();
  }

  @Test
  void joins_take_a_tree_of_each_net_and_isolation_one_step_less_than_there_are_nets() {
    Circuit circuit = nets(7, 4);
    List<Step> steps = plan(circuit, with(Isolation.REST, Set.of(), Set.of())).steps();
    assertEquals(7 * 3, count(steps, Purpose.JOIN));
    assertEquals(7 - 1, count(steps, Purpose.APART));
  }

  @Test
  void a_fixture_holds_nets_apart_in_the_logarithm_of_their_number() {
    Circuit circuit = nets(9, 2);
    List<Step> steps = plan(circuit, with(Isolation.FIXTURE, Set.of(), Set.of())).steps();
    assertEquals(4, count(steps, Purpose.APART));
  }

  private static long count(List<Step> steps, Purpose purpose) {
    return steps.stream().filter(step -> step.purpose() == purpose).count();
  }

  /** W. H. Kautz 1974, by the values of the table of test theory in the standards folder. */
  @ParameterizedTest
  @CsvSource({"2,64,7", "2,65,8", "5,20,9", "10,128,16"})
  void with_a_probe_on_every_point_kautz_s_minimum_is_reached(int points, int nets, int steps) {
    assertEquals(steps, MultiProbe.of(nets(nets, points)).count());
  }

  @Test
  void what_is_chained_and_halved_shows_every_open_and_every_short() {
    Random random = new Random(7);
    Circuit circuit = nets(11, 3);
    MultiProbe probes = MultiProbe.of(circuit);
    for (int point = 0; point < circuit.size(); point++) {
      int off = point;
      boolean seen =
          probes.chains().stream()
              .flatMap(List::stream)
              .anyMatch(pair -> pair[0] == off || pair[1] == off);
      assertTrue(seen, circuit.point(point) + " may be off and no chain would show it");
    }
    for (int i = 0; i < 200; i++) {
      int one = random.nextInt(circuit.normal().count());
      int other = random.nextInt(circuit.normal().count());
      int from = circuit.normal().pointsOf(one)[0];
      int to = circuit.normal().pointsOf(other)[0];
      boolean parted =
          probes.halves().stream()
              .anyMatch(
                  half ->
                      (half.from().contains(from) && half.to().contains(to))
                          || (half.from().contains(to) && half.to().contains(from)));
      assertEquals(one != other, parted);
    }
  }

  @Test
  void two_wires_in_parallel_take_a_step_each_with_the_other_lifted_at_its_screw() {
    UnitUnderTest unit = new UnitUnderTest(folder).withoutInsulationTest();
    unit.wire("W1,J1-A,TB1-1").wire("W2,J1-A,TB1-1").wire("W3,J1-B,TB1-2");
    Circuit circuit = unit.reads("J1-A", "J1-B", "").check().circuit();
    TestPlan plan = plan(circuit, with(Isolation.REST, Set.of(), Set.of()));
    Set<String> states = new TreeSet<>();
    plan.steps().stream()
        .filter(step -> step.purpose() == Purpose.LOOP)
        .forEach(step -> states.add(step.ofWhat() + " " + step.probing().state()));
    assertEquals(Set.of("W1 W2=LIFTED", "W2 W1=LIFTED"), states);
    assertTrue(plan.coverage().isComplete(), plan.coverage().toString());
  }

  @Test
  void a_ring_of_jumpers_takes_a_step_each_with_another_of_them_lifted() {
    UnitUnderTest unit = new UnitUnderTest(folder).withoutInsulationTest();
    unit.wire("W1,J1-A,TB1-1").link("TB1,1,2").link("TB1,2,3").link("TB1,3,1");
    Circuit circuit = unit.reads("J1-A", "TB1-1", "").check().circuit();
    TestPlan plan = plan(circuit, with(Isolation.REST, Set.of(), Set.of()));
    assertEquals(3, count(plan.steps(), Purpose.LOOP), plan.steps().toString());
    assertTrue(plan.coverage().isComplete(), plan.coverage().toString());
  }

  private static List<String> said(TestPlan plan) {
    LeftOutSentences sentences = new LeftOutSentences(plan.circuit());
    return plan.leftOut().stream().map(one -> one.match(sentences)).toList();
  }

  /** Which of two wires of one name is lifted no sheet can say. */
  @Test
  void two_parallel_wires_of_one_name_are_left_out_with_the_reason() {
    UnitUnderTest unit = new UnitUnderTest(folder).withoutInsulationTest();
    unit.wire("W1,J1-A,TB1-1").wire("W1,J1-A,TB1-1").wire("W3,J1-B,TB1-2");
    Circuit circuit = unit.reads("J1-A", "J1-B", "").check().circuit();
    TestPlan plan = plan(circuit, with(Isolation.REST, Set.of(), Set.of()));
    assertEquals(0, count(plan.steps(), Purpose.LOOP));
    assertTrue(said(plan).get(0).contains("in parallel with W1"), said(plan).toString());
  }

  /** 16 AWG of 10 m beside another: without it the reading would be twice as high. */
  @Test
  void two_long_wires_in_parallel_are_proven_by_their_ohms() {
    UnitUnderTest unit = new UnitUnderTest(folder).withoutInsulationTest();
    unit.wire("W1,J1-A,P1-A,16,10 m").wire("W2,J1-A,P1-A,16,10 m");
    Circuit circuit = unit.reads("J1-A", "P1-A", "").check().circuit();
    TestPlan plan = plan(circuit, with(Isolation.REST, Set.of(), Set.of()));
    assertEquals(1, plan.steps().size(), plan.steps().toString());
    assertTrue(plan.coverage().isComplete(), plan.coverage().toString());
  }

  @Test
  void only_the_nets_of_one_connector_are_planned() {
    UnitUnderTest unit = new UnitUnderTest(folder).withoutInsulationTest();
    unit.wire("W1,J1-A,P1-A").wire("W2,J2-A,P2-A").wire("W3,J3-A,P2-B");
    Circuit circuit = unit.reads("J1-A", "P1-A", "").check().circuit();
    List<Step> steps = plan(circuit, with(Isolation.REST, Set.of("J3"), Set.of())).steps();
    assertEquals(
        List.of("J3-A P2-B", "J3-A REST"),
        steps.stream().map(step -> text(circuit, step)).toList());
  }

  @Test
  void after_rework_every_wire_of_each_opened_connector_is_read_again() {
    UnitUnderTest unit = new UnitUnderTest(folder).withoutInsulationTest();
    unit.wire("W1,J1-A,P1-A").wire("W2,J1-B,P2-A").wire("W3,J3-A,P3-A");
    Circuit circuit = unit.reads("J1-A", "P1-A", "").check().circuit();
    List<Step> steps = plan(circuit, with(Isolation.REST, Set.of(), Set.of("W1"))).steps();
    List<String> words = steps.stream().map(step -> text(circuit, step)).toList();
    assertTrue(words.contains("J1-A P1-A") && words.contains("J1-B P2-A"), words.toString());
    assertFalse(words.contains("J3-A P3-A"), words.toString());
  }

  private static String text(Circuit circuit, Step step) {
    String from = Planner.side(circuit, step.probing().from());
    String to = step.probing().toRest() ? "REST" : Planner.side(circuit, step.probing().to());
    return from.compareTo(to) < 0 || step.probing().toRest() ? from + " " + to : to + " " + from;
  }

  @Test
  void after_half_of_the_readings_the_other_half_is_planned_and_proves_the_rest() {
    Circuit circuit = nets(6, 3);
    List<Step> all = plan(circuit, with(Isolation.REST, Set.of(), Set.of())).steps();
    for (int taken = 0; taken <= all.size(); taken++) {
      List<Reading> readings = GoodUnit.readings(circuit, all.subList(0, taken)).readings();
      Comparison after =
          Comparison.of(circuit, limits(circuit), new ReadingSet(readings, List.of()));
      TestPlan rest =
          plan(
              circuit,
              new PlanOptions(
                  Isolation.REST, false, false, Set.of(), Set.of(), Optional.of(after)));
      assertTrue(rest.coverage().isComplete(), taken + " " + rest.coverage());
      assertTrue(
          rest.steps().size() <= all.size() - taken + 1,
          taken + " taken, " + rest.steps().size() + " planned");
    }
  }

  @Test
  void the_walk_takes_no_more_movements_than_the_list() {
    for (int nets = 3; nets < 12; nets++) {
      TestPlan plan = plan(nets(nets, 4), PlanOptions.ALL);
      assertTrue(plan.moves() <= plan.movesAsListed(), plan.moves() + " " + plan.movesAsListed());
    }
  }
}

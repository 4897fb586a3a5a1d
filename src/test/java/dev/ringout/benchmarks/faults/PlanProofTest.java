package dev.ringout.benchmarks.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.check.Checker;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.compare.Comparison;
import dev.ringout.plan.PlanOptions;
import dev.ringout.plan.PlanOptions.Isolation;
import dev.ringout.plan.Planner;
import dev.ringout.plan.TestPlan;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.Tables;
import dev.ringout.support.PublishedLimits;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * What a plan proves, by a meter at a rig that shares nothing with the planner: the filled sheet of
 * a good unit conforms, and no fault that direct current sees passes.
 */
class PlanProofTest {
  private static final int UNITS = 10;

  private static TestPlan plan(Rig paper, Isolation isolation) {
    Circuit circuit = Circuit.of(Paper.of(paper));
    JoinLimits limits = PublishedLimits.of(circuit);
    return Planner.plan(
        circuit,
        limits,
        new HandMovements(Tables.published()),
        new PlanOptions(isolation, true, false, Set.of(), Set.of(), Optional.empty()));
  }

  private static Checker checker(Rig paper) {
    return Checker.of(Paper.of(paper), Tables.published());
  }

  private static CheckResult check(Checker checker, ReadingSet readings) {
    return checker.check(readings, Optional.empty(), List.of());
  }

  /** Whether a reading contradicts the paper; what explains it is not asked. */
  private static boolean fails(Checker checker, ReadingSet readings) {
    return !Comparison.of(checker.circuit(), checker.limits(), readings).failing().isEmpty();
  }

  @Test
  void the_filled_sheet_of_a_good_unit_conforms_and_proves_everything() {
    for (int seed = 0; seed < UNITS; seed++) {
      Rig paper = RandomRig.of(new Random(seed), 20 + seed * 3);
      for (Isolation isolation : List.of(Isolation.REST, Isolation.FIXTURE, Isolation.INSULATION)) {
        TestPlan plan = plan(paper, isolation);
        CheckResult result = check(checker(paper), PlannedSheet.filled(plan, paper, paper.copy()));
        String about = "seed " + seed + " " + isolation;
        assertEquals(List.of(), result.comparison().failing(), about);
        assertTrue(result.coverage().isComplete(), about + " " + result.coverage().unproven());
        assertEquals(CheckResult.Verdict.CONFORMS, result.verdict(), about);
      }
    }
  }

  @Test
  void no_single_fault_that_direct_current_sees_passes() {
    int planted = 0;
    for (int seed = 0; seed < UNITS; seed++) {
      Rig paper = RandomRig.of(new Random(seed), 30);
      TestPlan plan = plan(paper, Isolation.REST);
      Checker checker = checker(paper);
      for (Kind kind : Kind.values()) {
        Rig bench = paper.copy();
        if (kind == Kind.NONE
            || kind.isOfTheTest()
            || !new Planter(bench, new Random(seed)).plant(kind)) {
          continue;
        }
        planted++;
        assertTrue(
            fails(checker, PlannedSheet.filled(plan, paper, bench)),
            "seed " + seed + " " + kind + " passes");
      }
    }
    assertTrue(planted > UNITS * 10, planted + " faults planted");
  }

  /** Whatever a shop leaves out of the sheet: what is proven is shown by what was read. */
  @Test
  void the_fewest_readings_that_conform_show_every_fault_that_direct_current_sees() {
    List<String> passed = new ArrayList<>();
    int planted = 0;
    for (int seed = 0; seed < 3; seed++) {
      Rig paper = RandomRig.of(new Random(seed), 20);
      // A contact as good as new adds nothing to a wire's ohms that a meter would show.
      paper.joints.stream()
          .filter(one -> one.kind == Rig.JointKind.CONTACT)
          .forEach(one -> one.ohms = 0.0001);
      TestPlan plan = plan(paper, Isolation.REST);
      Checker checker = checker(paper);
      List<Integer> fewest = fewest(checker, plan, paper, new Random(seed));
      for (Rig bench : benches(paper, seed)) {
        planted++;
        if (conforms(checker, plan, paper, bench, fewest)) {
          passed.add("seed " + seed + ": " + changed(paper, bench));
        }
      }
    }
    assertEquals(List.of(), passed);
    assertTrue(planted > UNITS * 2, planted + " faults planted");
  }

  /** The numbers of the readings that are left when any more would make it incomplete. */
  private static List<Integer> fewest(Checker checker, TestPlan plan, Rig paper, Random random) {
    List<Integer> all = IntStream.range(0, plan.steps().size()).boxed().toList();
    List<Integer> order = new ArrayList<>(all);
    Collections.shuffle(order, random);
    List<Integer> left = new ArrayList<>(all);
    for (Integer one : order) {
      List<Integer> without = left.stream().filter(other -> !other.equals(one)).toList();
      if (conforms(checker, plan, paper, paper, without)) {
        left = without;
      }
    }
    return left;
  }

  private static boolean conforms(
      Checker checker, TestPlan plan, Rig paper, Rig bench, List<Integer> kept) {
    List<Reading> filled = PlannedSheet.filled(plan, paper, bench.copy()).readings();
    ReadingSet readings = new ReadingSet(kept.stream().map(filled::get).toList(), List.of());
    return !fails(checker, readings)
        && check(checker, readings).verdict() == CheckResult.Verdict.CONFORMS;
  }

  private static List<String> joints(Rig rig) {
    List<String> joints = new ArrayList<>();
    rig.joints.forEach(
        one ->
            joints.add(
                one.name + " " + rig.points.get(one.ends[0]) + " " + rig.points.get(one.ends[1])));
    return joints;
  }

  private static String changed(Rig paper, Rig bench) {
    List<String> before = joints(paper);
    List<String> after = joints(bench);
    List<String> gone = new ArrayList<>(before);
    gone.removeAll(after);
    after.removeAll(before);
    return gone + " -> " + after;
  }

  /**
   * A unit with each kind of fault, and one with each end of a wire at each other point of its net
   * that a switch can part from its own.
   */
  private static List<Rig> benches(Rig paper, int seed) {
    List<Rig> benches = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      Rig bench = paper.copy();
      if (kind != Kind.NONE
          && !kind.isOfTheTest()
          && new Planter(bench, new Random(seed)).plant(kind)) {
        benches.add(bench);
      }
    }
    for (Rig.Joint wire : paper.wires()) {
      for (int end = 0; end < 2; end++) {
        for (int point : paper.nodes(Map.of()).membersOf(wire.ends[end])) {
          Rig bench = paper.copy();
          bench.joint(wire.name).ends[end] = point;
          if (!bench.fingerprint().equals(paper.fingerprint())) {
            benches.add(bench);
          }
        }
      }
    }
    return benches;
  }
}

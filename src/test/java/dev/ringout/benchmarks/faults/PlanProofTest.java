package dev.ringout.benchmarks.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.harness.Harness;
import dev.ringout.plan.PlanOptions;
import dev.ringout.plan.PlanOptions.Isolation;
import dev.ringout.plan.Planner;
import dev.ringout.plan.TestPlan;
import dev.ringout.readings.ReadingSet;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.Tables;
import dev.ringout.support.PublishedLimits;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * What a plan proves, by a meter at a rig that shares nothing with the planner: the filled sheet of
 * a good unit conforms, and no fault that direct current sees passes.
 */
class PlanProofTest {
  private static final int UNITS = 40;

  private static TestPlan plan(Rig paper, Isolation isolation) {
    Circuit circuit = Circuit.of(Paper.of(paper));
    JoinLimits limits = PublishedLimits.of(circuit);
    return Planner.plan(
        circuit,
        limits,
        new HandMovements(Tables.published()),
        new PlanOptions(isolation, true, false, Set.of(), Set.of(), Optional.empty()));
  }

  private static CheckResult check(TestPlan plan, Rig paper, Rig bench) {
    Harness harness = Paper.of(paper);
    ReadingSet readings = PlannedSheet.filled(plan, paper, bench);
    return CheckResult.of(harness, readings, List.of());
  }

  @Test
  void the_filled_sheet_of_a_good_unit_conforms_and_proves_everything() {
    for (int seed = 0; seed < UNITS; seed++) {
      Rig paper = RandomRig.of(new Random(seed), 20 + seed * 2);
      for (Isolation isolation : List.of(Isolation.REST, Isolation.FIXTURE, Isolation.INSULATION)) {
        TestPlan plan = plan(paper, isolation);
        CheckResult result = check(plan, paper, paper.copy());
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
      for (Kind kind : Kind.values()) {
        Rig bench = paper.copy();
        if (kind == Kind.NONE
            || kind.isOfTheTest()
            || !new Planter(bench, new Random(seed)).plant(kind)) {
          continue;
        }
        planted++;
        CheckResult result = check(plan, paper, bench);
        assertFalse(
            result.comparison().failing().isEmpty(), "seed " + seed + " " + kind + " passes");
      }
    }
    assertTrue(planted > UNITS * 10, planted + " faults planted");
  }
}

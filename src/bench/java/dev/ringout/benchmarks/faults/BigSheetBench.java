package dev.ringout.benchmarks.faults;

import dev.ringout.check.CheckResult;
import dev.ringout.circuit.Circuit;
import dev.ringout.plan.PlanOptions;
import dev.ringout.plan.PlanOptions.Isolation;
import dev.ringout.plan.Planner;
import dev.ringout.plan.TestPlan;
import dev.ringout.readings.ReadingSet;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.Tables;
import dev.ringout.support.PublishedLimits;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * How long a check of big units takes that hold four faults, read by the steps of their own plan:
 * processor time of the check by itself, in the order in which the units come, so that the first is
 * that of a program which has just begun. Arguments: the seed, how many units.
 */
public final class BigSheetBench {
  private BigSheetBench() {}

  /** Prints a row for each unit, and the summary. */
  public static void main(String[] args) {
    long seed = args.length > 0 ? Long.parseLong(args[0]) : 61;
    int units = args.length > 1 ? Integer.parseInt(args[1]) : 40;
    List<List<Kind>> kinds = Trial.mixed(seed, units, 4);
    double[] seconds = new double[units];
    int cut = 0;
    for (int unit = 0; unit < units; unit++) {
      Rig paper = new Rig();
      Rig bench = paper;
      boolean isPlanted = false;
      for (int attempt = 0; !isPlanted; attempt++) {
        Random random = new Random((seed * 100_000 + unit) * 1000 + attempt);
        paper = RandomRig.of(random, Trial.BIG);
        bench = paper.copy();
        Planter planter = new Planter(bench, random);
        isPlanted = kinds.get(unit).stream().allMatch(planter::plant);
      }
      ReadingSet sheet = PlannedSheet.filled(plan(paper), paper, bench);
      long start = ProcessorTime.nanos();
      CheckResult result = CheckResult.of(Paper.of(paper), sheet, List.of());
      seconds[unit] = (ProcessorTime.nanos() - start) / 1e9;
      boolean isCut = !result.diagnosis().searchComplete();
      cut += isCut ? 1 : 0;
      System.out.printf(
          Locale.ROOT,
          "%d %s: %d readings, %.2f s%s%n",
          unit,
          kinds.get(unit),
          sheet.readings().size(),
          seconds[unit],
          isCut ? ", cut short" : "");
    }
    Arrays.sort(seconds);
    System.out.printf(
        Locale.ROOT,
        "%d units: median %.2f s, 90th %.2f s, most %.2f s, cut short %d%n",
        units,
        seconds[units / 2],
        seconds[units * 9 / 10],
        seconds[units - 1],
        cut);
  }

  private static TestPlan plan(Rig paper) {
    Circuit circuit = Circuit.of(Paper.of(paper));
    return Planner.plan(
        circuit,
        PublishedLimits.of(circuit),
        new HandMovements(Tables.published()),
        new PlanOptions(Isolation.REST, true, false, Set.of(), Set.of(), Optional.empty()));
  }
}

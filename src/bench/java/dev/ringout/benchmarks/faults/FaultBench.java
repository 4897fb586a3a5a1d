package dev.ringout.benchmarks.faults;

import dev.ringout.benchmarks.faults.Sheet.Habit;
import dev.ringout.check.CheckResult;
import dev.ringout.diagnose.Fault;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Plants every kind of slip in random units, reads them by three habits and prints how the
 * diagnoses fare. Arguments: seed, units for each row of the table; then, for a look at single
 * units, what to plant ({@code ONE} of each kind, {@code MANY} at once, {@code BIG} units, or a
 * kind) and the habit: each unit that is not exact is then told on standard error.
 */
public final class FaultBench {

  private FaultBench() {}

  /** Prints the table. */
  public static void main(String[] args) {
    long seed = args.length > 0 ? Long.parseLong(args[0]) : 1;
    int units = args.length > 1 ? Integer.parseInt(args[1]) : 20;
    boolean verbose = args.length > 2;
    String only = verbose && !args[2].equals("ALL") ? args[2] : "";
    System.out.println(
        "| planted | habit | units | exact | among alternatives | wrong | not shown | missed |"
            + " false alarms | median s | 99th s | readings to certainty | not reached | exact then |");
    System.out.println(
        "| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    for (Habit habit : Habit.values()) {
      if (args.length > 3 && !habit.name().equals(args[3])) {
        continue;
      }
      for (Kind kind : Kind.values()) {
        if (only.isEmpty() || kind.name().equals(only) || only.equals("ONE")) {
          row(kind.words(), habit, seed, units, List.of(List.of(kind)), verbose);
        }
      }
      for (int count = 2; count <= 4; count++) {
        if (only.isEmpty() || only.equals("MANY")) {
          List<List<Kind>> mixed = Trial.mixed(seed, 2 * units, count);
          row(count + " of any kind", habit, seed, 2 * units, mixed, verbose);
        }
      }
      if (habit != Habit.FULL_MATRIX && (only.isEmpty() || only.equals("BIG"))) {
        int few = Math.max(2, units / 5);
        row(
            "4 in " + Trial.BIG + " wires",
            habit,
            seed,
            few,
            Trial.mixed(seed, few, 4),
            Trial.BIG,
            verbose);
      }
    }
  }

  private static void row(
      String name, Habit habit, long seed, int units, List<List<Kind>> kinds, boolean verbose) {
    int mostWires = habit == Habit.FULL_MATRIX ? 100 : 200;
    row(name, habit, seed, units, kinds, mostWires, verbose);
  }

  private static void row(
      String name,
      Habit habit,
      long seed,
      int units,
      List<List<Kind>> kinds,
      int mostWires,
      boolean verbose) {
    int exact = 0;
    int among = 0;
    int wrong = 0;
    int unseen = 0;
    int missed = 0;
    int falseAlarms = 0;
    int unreached = 0;
    int exactAtLast = 0;
    int[] readings = new int[units];
    double[] seconds = new double[units];
    for (int unit = 0; unit < units; unit++) {
      List<Kind> planted = kinds.get(unit % kinds.size());
      List<Kind> real = planted.equals(List.of(Kind.NONE)) ? List.of() : planted;
      Trial trial = Trial.of(seed * 100_000 + unit, real, habit, mostWires);
      Outcome outcome = trial.judge();
      exact += outcome.exact() ? 1 : 0;
      among += outcome.among() && !outcome.exact() ? 1 : 0;
      wrong += outcome.wrong() ? 1 : 0;
      unseen += outcome.unseen() ? 1 : 0;
      missed += outcome.missed() ? 1 : 0;
      falseAlarms += outcome.falseAlarm() ? 1 : 0;
      unreached += outcome.readingsToCertainty() < 0 ? 1 : 0;
      exactAtLast += outcome.exactAtLast() ? 1 : 0;
      readings[unit] =
          outcome.readingsToCertainty() < 0 ? Integer.MAX_VALUE : outcome.readingsToCertainty();
      seconds[unit] = outcome.seconds();
      if (verbose && (!outcome.exact() || outcome.readingsToCertainty() < 0)) {
        System.err.println(
            name
                + " unit "
                + unit
                + " "
                + planted
                + (outcome.wrong() ? " WRONG" : outcome.unseen() ? " unseen" : " among"));
        explain(trial);
      }
    }
    Arrays.sort(seconds);
    Arrays.sort(readings);
    System.out.printf(
        Locale.ROOT,
        "| %s | %s | %d | %d | %d | %d | %d | %d | %d | %.3f | %.3f | %d | %d | %d |%n",
        name,
        habit.name().toLowerCase(Locale.ROOT).replace('_', ' '),
        units,
        exact,
        among,
        wrong,
        unseen,
        missed,
        falseAlarms,
        seconds[units / 2],
        seconds[(int) Math.min(units - 1, units * 0.99)],
        readings[units / 2],
        unreached,
        exactAtLast);
  }

  private static void explain(Trial trial) {
    System.err.print(Planted.of(trial));
    CheckResult result = trial.check();
    for (Fault fault : result.diagnosis().faults().stream().limit(8).toList()) {
      System.err.println(
          "   => "
              + fault.getClass().getSimpleName()
              + " "
              + fault.finding().certainty()
              + " "
              + fault.points()
              + (fault instanceof Fault.Miswire m
                  ? m.pattern()
                      + " "
                      + m.moves().stream()
                          .map(v -> v.wire().name() + ":" + v.from() + ">" + v.to())
                          .toList()
                  : fault instanceof Fault.Open o
                      ? o.suspects().stream().map(s -> s.label()).toList()
                      : "")
              + " alternatives "
              + fault.finding().alternatives().stream().limit(4).toList());
    }
    result.diagnosis().unexplained().stream()
        .limit(4)
        .forEach(
            one ->
                System.err.println(
                    "   ? " + one.reading().subject() + " " + one.reading().measured().text()));
    result.diagnosis().next().stream()
        .limit(2)
        .forEach(one -> System.err.println("   next " + one.from() + " to " + one.to()));
    if (!result.diagnosis().searchComplete()) {
      System.err.println("   search cut short");
    }
  }
}

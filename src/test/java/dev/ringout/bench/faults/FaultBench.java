package dev.ringout.bench.faults;

import dev.ringout.bench.faults.Sheet.Habit;
import dev.ringout.check.CheckResult;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.Fault;
import dev.ringout.harness.Harness;
import dev.ringout.readings.ReadingSet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;

/**
 * Plants every kind of slip in random units, reads them by three habits and prints how the
 * diagnoses fare. Arguments: seed, units for each row of the table.
 */
public final class FaultBench {
  private static final int MOST_TRIES = 1000;

  private FaultBench() {}

  /** One unit diagnosed. */
  record Outcome(
      boolean exact,
      boolean among,
      boolean missed,
      boolean falseAlarm,
      boolean unseen,
      double seconds) {
    boolean wrong() {
      return !among && !unseen;
    }
  }

  /** One unit as it was planted. */
  record Trial(Rig paper, Rig bench, List<Kind> planted, Sheet sheet) {
    static Trial of(long seed, List<Kind> kinds, Habit habit) {
      for (int attempt = 0; attempt < MOST_TRIES; attempt++) {
        Random random = new Random(seed * 1000 + attempt);
        int wires =
            habit == Habit.FULL_MATRIX
                ? 20 * Math.max(1, kinds.size()) + random.nextInt(20)
                : 20 * Math.max(1, kinds.size()) + random.nextInt(100);
        Rig paper = RandomRig.of(random, wires);
        Rig bench = paper.copy();
        Planter planter = new Planter(bench, random);
        if (kinds.stream().allMatch(planter::plant)) {
          return new Trial(paper, bench, kinds, new Sheet(paper, bench).read(habit));
        }
      }
      throw new IllegalStateException("no room for " + kinds);
    }

    CheckResult check() {
      Harness harness = Paper.of(paper);
      return CheckResult.of(
          harness, new ReadingSet(sheet.readings("readings.xlsx"), List.of()), List.of());
    }

    Outcome judge() {
      check();
      long start = System.nanoTime();
      CheckResult result = check();
      double seconds = (System.nanoTime() - start) / 1e9;
      List<Fault> faults = result.diagnosis().faults();
      Referee referee = new Referee(paper, bench);
      boolean exact = faults.size() <= planted.size() && referee.isExact(faults);
      boolean among = exact || referee.isAmongAlternatives(faults);
      Set<Judged> accounted = new HashSet<>(result.diagnosis().unexplained());
      faults.forEach(fault -> accounted.addAll(fault.finding().readings()));
      result
          .comparison()
          .contradictions()
          .forEach(
              one -> {
                accounted.add(one.apart());
                accounted.addAll(one.joins());
              });
      boolean missed = !accounted.containsAll(result.comparison().failing());
      boolean falseAlarm = planted.isEmpty() && !faults.isEmpty();
      boolean unseen = !planted.isEmpty() && sheet.different() == 0 && !among;
      return new Outcome(exact, among, missed, falseAlarm, unseen, seconds);
    }
  }

  /** Prints the table. */
  public static void main(String[] args) {
    long seed = args.length > 0 ? Long.parseLong(args[0]) : 1;
    int units = args.length > 1 ? Integer.parseInt(args[1]) : 20;
    boolean verbose = args.length > 2;
    String only = verbose ? args[2] : "";
    System.out.println(
        "| planted | habit | units | exact | among alternatives | wrong | not shown | missed |"
            + " false alarms | median s | 99th s |");
    System.out.println("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    for (Habit habit : Habit.values()) {
      if (!only.isEmpty() && args.length > 3 && !habit.name().equals(args[3])) {
        continue;
      }
      for (Kind kind : Kind.values()) {
        if (only.isEmpty() || kind.name().equals(only) || only.equals("ONE")) {
          if (!kind.isOfTheTest()) {
            row(kind.words(), habit, seed, units, List.of(List.of(kind)), verbose);
          }
        }
      }
      for (int count = 2; count <= 4; count++) {
        if (only.isEmpty() || only.equals("MANY")) {
          row(count + " of any kind", habit, seed, units, mixed(seed, units, count), verbose);
        }
      }
    }
  }

  private static List<List<Kind>> mixed(long seed, int units, int count) {
    Random random = new Random(seed + count);
    List<Kind> ofTheUnit =
        Arrays.stream(Kind.values())
            .filter(kind -> kind != Kind.NONE && !kind.isOfTheTest())
            .toList();
    List<List<Kind>> mixed = new ArrayList<>();
    for (int unit = 0; unit < units; unit++) {
      List<Kind> kinds = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        kinds.add(ofTheUnit.get(random.nextInt(ofTheUnit.size())));
      }
      mixed.add(kinds);
    }
    return mixed;
  }

  private static void row(
      String name, Habit habit, long seed, int units, List<List<Kind>> kinds, boolean verbose) {
    int exact = 0;
    int among = 0;
    int wrong = 0;
    int unseen = 0;
    int missed = 0;
    int falseAlarms = 0;
    double[] seconds = new double[units];
    for (int unit = 0; unit < units; unit++) {
      List<Kind> planted = kinds.get(unit % kinds.size());
      List<Kind> real = planted.equals(List.of(Kind.NONE)) ? List.of() : planted;
      Trial trial = Trial.of(seed * 100_000 + unit, real, habit);
      Outcome outcome = trial.judge();
      exact += outcome.exact() ? 1 : 0;
      among += outcome.among() && !outcome.exact() ? 1 : 0;
      wrong += outcome.wrong() ? 1 : 0;
      unseen += outcome.unseen() ? 1 : 0;
      missed += outcome.missed() ? 1 : 0;
      falseAlarms += outcome.falseAlarm() ? 1 : 0;
      seconds[unit] = outcome.seconds();
      if (verbose && !outcome.exact()) {
        System.err.println(
            name
                + " unit "
                + unit
                + " "
                + planted
                + (outcome.wrong() ? " WRONG" : outcome.unseen() ? " unseen" : " among"));
        if (outcome.wrong() || habit != Habit.SHEET) {
          explain(trial);
        }
      }
    }
    Arrays.sort(seconds);
    System.out.printf(
        Locale.ROOT,
        "| %s | %s | %d | %d | %d | %d | %d | %d | %d | %.3f | %.3f |%n",
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
        seconds[(int) Math.min(units - 1, units * 0.99)]);
  }

  private static void explain(Trial trial) {
    for (Rig.Joint joint : trial.paper().joints) {
      trial.bench().joints.stream()
          .filter(one -> one.name.equals(joint.name))
          .findFirst()
          .ifPresentOrElse(
              now -> {
                if (!Arrays.equals(now.ends, joint.ends)
                    || now.ohms != joint.ohms
                    || !now.position.equals(joint.position)) {
                  System.err.println(
                      "   " + text(trial.paper(), joint) + " -> " + text(trial.bench(), now));
                }
              },
              () -> System.err.println("   " + text(trial.paper(), joint) + " is gone"));
    }
    trial.bench().joints.stream()
        .filter(one -> one.kind == Rig.JointKind.BRIDGE)
        .forEach(one -> System.err.println("   + " + text(trial.bench(), one)));
    trial
        .bench()
        .leaks
        .forEach(
            leak ->
                System.err.println(
                    "   leak "
                        + trial.bench().points.get(leak.from())
                        + " "
                        + trial.bench().points.get(leak.to())));
    CheckResult result = trial.check();
    result.comparison().failing().stream()
        .limit(12)
        .forEach(
            one ->
                System.err.println(
                    "   ! "
                        + one.reading().subject()
                        + " "
                        + one.reading().measured().text()
                        + " "
                        + one.outcome()));
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
              + fault.finding().alternatives().size());
    }
    result.diagnosis().unexplained().stream()
        .limit(4)
        .forEach(
            one ->
                System.err.println(
                    "   ? " + one.reading().subject() + " " + one.reading().measured().text()));
    if (!result.diagnosis().searchComplete()) {
      System.err.println("   search cut short");
    }
  }

  private static String text(Rig rig, Rig.Joint joint) {
    return joint.name
        + " "
        + rig.points.get(joint.ends[0])
        + " "
        + rig.points.get(joint.ends[1])
        + " "
        + joint.position
        + (rig.poor.contains(joint.name) ? " poor" : "");
  }
}

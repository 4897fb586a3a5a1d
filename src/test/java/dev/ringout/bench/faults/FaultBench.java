package dev.ringout.bench.faults;

import dev.ringout.bench.faults.Sheet.Habit;
import dev.ringout.check.CheckResult;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.NextReading;
import dev.ringout.harness.Harness;
import dev.ringout.readings.ReadingSet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * Plants every kind of slip in random units, reads them by three habits and prints how the
 * diagnoses fare. Arguments: seed, units for each row of the table; then, for a look at single
 * units, what to plant ({@code ONE} of each kind, {@code MANY} at once, {@code BIG} units, or a
 * kind) and the habit: each unit that is not exact is then told on standard error.
 */
public final class FaultBench {
  private static final int MOST_TRIES = 1000;
  private static final int MOST_READINGS = 12;
  private static final int BIG = 2000;

  private FaultBench() {}

  /** One unit diagnosed. */
  record Outcome(
      boolean exact,
      boolean among,
      boolean missed,
      boolean falseAlarm,
      boolean unseen,
      double seconds,
      int readingsToCertainty,
      boolean exactAtLast) {
    boolean wrong() {
      return !among && !unseen;
    }
  }

  /** One unit as it was planted. */
  record Trial(Rig paper, Rig bench, List<Kind> planted, Sheet sheet) {
    static Trial of(long seed, List<Kind> kinds, Habit habit, int mostWires) {
      for (int attempt = 0; attempt < MOST_TRIES; attempt++) {
        Random random = new Random(seed * 1000 + attempt);
        int least = mostWires >= BIG ? mostWires : 20 * Math.max(1, kinds.size());
        Rig paper = RandomRig.of(random, least + random.nextInt(Math.max(1, mostWires - least)));
        Rig bench = paper.copy();
        Planter planter = new Planter(bench, random);
        if (kinds.stream().allMatch(planter::plant)) {
          Sheet sheet = new Sheet(paper, bench).read(habit);
          kinds.forEach(kind -> sheet.spoil(kind, random));
          boolean shows = kinds.stream().noneMatch(Kind::isOfTheTest) || sheet.different() > 0;
          if (shows) {
            return new Trial(paper, bench, kinds, sheet);
          }
        }
      }
      throw new IllegalStateException("no room for " + kinds);
    }

    CheckResult check() {
      Harness harness = Paper.of(paper);
      CheckResult result =
          CheckResult.of(
              harness, new ReadingSet(sheet.readings("readings.xlsx"), List.of()), List.of());
      return planted.contains(Kind.PAPER)
          ? result.heldAgainst(Map.of("second.xlsx", result))
          : result;
    }

    /** What is wrong with the test or the paper is said of them. */
    private boolean isOfItsKind(List<Fault> faults) {
      return planted.stream()
          .allMatch(
              kind ->
                  switch (kind) {
                    case ROW_SLIP -> has(faults, Fault.SlippedRows.class);
                    case WRONG_PIN -> has(faults, Fault.Misread.class);
                    case LEADS -> has(faults, Fault.LeadsNotNulled.class);
                    case PAPER -> has(faults, Fault.OnPaper.class);
                    default -> true;
                  });
    }

    private static boolean has(List<Fault> faults, Class<? extends Fault> kind) {
      return faults.stream().anyMatch(kind::isInstance);
    }

    private static boolean isCertain(Fault fault) {
      return fault.finding().certainty() == Certainty.CERTAIN
          || fault instanceof Fault.OfTheTest
          || (fault instanceof Fault.LowInsulation low && !low.places().isEmpty());
    }

    /** Makes the reading that is asked for until all is certain; how many that took, or -1. */
    private int followNext(CheckResult first) {
      CheckResult result = first;
      for (int more = 0; more < MOST_READINGS; more++) {
        if (result.diagnosis().faults().stream().allMatch(Trial::isCertain)) {
          return more;
        }
        Optional<NextReading> next =
            result.diagnosis().next().stream()
                .filter(
                    one ->
                        one.purpose() == NextReading.Purpose.TELL_APART
                            || one.purpose() == NextReading.Purpose.CONFIRM)
                .findFirst();
        if (next.isEmpty()) {
          return -1;
        }
        sheet.add(next.get());
        result = check();
      }
      return -1;
    }

    Outcome judge() {
      check();
      long start = System.nanoTime();
      CheckResult result = check();
      double seconds = (System.nanoTime() - start) / 1e9;
      List<Fault> faults = result.diagnosis().faults();
      Referee referee = new Referee(paper, bench);
      boolean exact =
          faults.size() <= planted.size() && referee.isExact(faults) && isOfItsKind(faults);
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
      // Another story that gives every reading made: what is not in it this sheet does not show.
      boolean unseen =
          !planted.isEmpty()
              && !among
              && faults.size() <= planted.size()
              && sheet.joinsAsIn(referee.reported(faults));
      int more = exact && faults.stream().allMatch(Trial::isCertain) ? 0 : followNext(result);
      CheckResult last = more > 0 ? check() : result;
      boolean exactAtLast =
          last.diagnosis().faults().size() <= planted.size()
              && referee.isExact(last.diagnosis().faults());
      return new Outcome(exact, among, missed, falseAlarm, unseen, seconds, more, exactAtLast);
    }
  }

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
          List<List<Kind>> mixed = mixed(seed, 2 * units, count);
          row(count + " of any kind", habit, seed, 2 * units, mixed, verbose);
        }
      }
      if (habit != Habit.FULL_MATRIX && (only.isEmpty() || only.equals("BIG"))) {
        int few = Math.max(2, units / 5);
        row("4 in " + BIG + " wires", habit, seed, few, mixed(seed, few, 4), BIG, verbose);
      }
    }
  }

  static List<List<Kind>> mixed(long seed, int units, int count) {
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

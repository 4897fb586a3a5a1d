package dev.ringout.benchmarks.faults;

import dev.ringout.benchmarks.faults.Sheet.Habit;
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
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/** One unit as it was planted. */
record Trial(Rig paper, Rig bench, List<Kind> planted, Sheet sheet) {
  private static final int MOST_TRIES = 1000;
  private static final int MOST_READINGS = 12;

  /** Wires of a unit that counts as big. */
  static final int BIG = 2000;

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
        ? result.comparedWith(Map.of("second.xlsx", result))
        : result;
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
    long start = ProcessorTime.nanos();
    CheckResult result = check();
    double seconds = (ProcessorTime.nanos() - start) / 1e9;
    List<Fault> faults = result.diagnosis().faults();
    Referee referee = new Referee(paper, bench);
    boolean exact =
        faults.size() <= planted.size()
            && referee.isExact(faults)
            && planted.stream().allMatch(kind -> kind.isSaidIn(faults));
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

  /** Units with this many slips each, of any kind that a unit can have. */
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
}

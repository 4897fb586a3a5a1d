package dev.ringout.lot;

import dev.ringout.check.CheckResult;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.Fault;
import dev.ringout.source.Problem;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * One unit of a lot, as far as its siblings matter to it.
 *
 * @param name its serial number, or its file where none is stated
 * @param files in which its readings stand
 * @param failedBefore whether a reading failed that another replaced or a rework overtook, or a
 *     fault was found by the readings before
 * @param failing how many readings in force fail
 * @param conceded how many out of limits an inspector accepts
 * @param notProven how many things no reading shows
 * @param notTested how many steps are blank
 * @param values what its joins read
 * @param unread how many cells can't be understood, so that their rows are left out
 * @param problems what was odd or wrong in its files
 */
public record LotUnit(
    String name,
    List<String> files,
    CheckResult.Verdict verdict,
    List<Fault> faults,
    boolean failedBefore,
    int failing,
    int conceded,
    int notProven,
    int notTested,
    Origin origin,
    Map<Join, JoinValue> values,
    int unread,
    List<Problem> problems) {
  /** What is given can't be changed afterwards. */
  public LotUnit {
    files = List.copyOf(files);
    faults = List.copyOf(faults);
    values = Collections.unmodifiableMap(values);
    problems = List.copyOf(problems);
  }

  /**
   * A unit by what its check found.
   *
   * @param wasFaulty whether an earlier check of it, with less readings, found a fault
   */
  public static LotUnit of(String name, List<String> files, CheckResult result, boolean wasFaulty) {
    return new LotUnit(
        name,
        files,
        result.verdict(),
        result.diagnosis().faults(),
        wasFaulty || hasFailedBefore(result),
        result.comparison().failing().size(),
        result.comparison().conceded().size(),
        result.coverage().unproven().size(),
        result.comparison().with(Outcome.NOT_TESTED).size(),
        Origin.of(result),
        JoinValue.of(result.circuit(), result.comparison().inForce()),
        result.readings().unread().size(),
        result.problems());
  }

  private static boolean hasFailedBefore(CheckResult result) {
    return Stream.concat(
            result.comparison().replaced().stream().map(one -> one.earlier()),
            result.comparison().overtaken().stream())
        .anyMatch(
            judged ->
                // Of what was taken back nobody knows any more whether it failed.
                judged.outcome().fails() || judged.reading().measured().isTakenBack());
  }

  /** Whether it conforms by nobody's word, and nothing ever failed on the way. */
  public boolean passedAtOnce() {
    return verdict == CheckResult.Verdict.CONFORMS && !failedBefore && conceded == 0;
  }

  /** Whether its test has an end: it conforms, or is faulty. */
  public boolean isFinished() {
    return verdict != CheckResult.Verdict.INCOMPLETE;
  }
}

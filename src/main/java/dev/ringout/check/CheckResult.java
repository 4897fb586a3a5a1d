package dev.ringout.check;

import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Coverage;
import dev.ringout.compare.Outcome;
import dev.ringout.compare.ValueVerdict;
import dev.ringout.diagnose.Diagnosis;
import dev.ringout.harness.Harness;
import dev.ringout.readings.ReadingSet;
import dev.ringout.review.Review;
import dev.ringout.source.Problem;
import dev.ringout.source.Severity;
import dev.ringout.standards.Tables;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that a check finds.
 *
 * @param doubts what makes the verdict less than the values alone, what it waits for first
 * @param problems what was odd in the files without stopping the check
 */
public record CheckResult(
    Circuit circuit,
    ReadingSet readings,
    Comparison comparison,
    Coverage coverage,
    Diagnosis diagnosis,
    Review review,
    List<Doubt.Raised> doubts,
    List<Problem> problems) {

  /** The verdict on the unit. */
  public enum Verdict {
    /** No fault, and everything is proven. */
    CONFORMS,
    /** Something is wrong. */
    FAULTS,
    /** No fault seen, but not everything is proven. */
    INCOMPLETE;

    /** The word used in machine-readable output. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Compares a unit's readings with its paper. */
  public static CheckResult of(Harness harness, ReadingSet readings, List<Problem> problems) {
    return of(harness, readings, Tables.published(), problems);
  }

  /** Compares a unit's readings with its paper, by the tables given. */
  public static CheckResult of(
      Harness harness, ReadingSet readings, Tables tables, List<Problem> problems) {
    return of(harness, readings, tables, Optional.empty(), problems);
  }

  /**
   * Compares a unit's readings with its paper.
   *
   * @param statedDay the day of the test as whoever writes the record gives it
   */
  public static CheckResult of(
      Harness harness,
      ReadingSet readings,
      Tables tables,
      Optional<LocalDate> statedDay,
      List<Problem> problems) {
    return Checker.of(harness, tables).check(readings, statedDay, problems);
  }

  /**
   * The same, once other units of the same list have been checked: what they have too is likelier
   * wrong on paper.
   *
   * @param others their results, by their files
   */
  public CheckResult comparedWith(Map<String, CheckResult> others) {
    Map<String, Diagnosis> diagnoses = new LinkedHashMap<>();
    others.forEach((file, result) -> diagnoses.put(file, result.diagnosis()));
    return new CheckResult(
        circuit,
        readings,
        comparison,
        coverage,
        diagnosis.comparedWith(diagnoses),
        review,
        doubts,
        problems);
  }

  /** A doubt about the meter's leads, where nearly every reading is high. */
  public Optional<Doubt.LeadsNotNulled> leadDoubt() {
    return doubts.stream().flatMap(one -> one.doubt().ofLeads().stream()).findFirst();
  }

  /** How many things the list demands that are not shown: the verdict waits for them. */
  public long waitsFor() {
    return doubts.stream().filter(Doubt.Raised::withholds).count();
  }

  /** The values of the joins against what their wires account for. */
  public Values values() {
    return Values.of(comparison, diagnosis);
  }

  /** What must be said about the insulation readings beside their verdicts. */
  public List<InsulationNote> insulationNotes() {
    return InsulationNotes.of(circuit, comparison);
  }

  /** What people wrote beside readings. */
  public List<Noted> noted() {
    return Noted.of(circuit, readings.readings());
  }

  /** The harness that was checked. */
  public Harness harness() {
    return circuit.harness();
  }

  /** Faults before gaps: blank never passes, and a fault is never hidden by a blank. */
  public Verdict verdict() {
    if (!comparison.failing().isEmpty()
        || !comparison.contradictions().isEmpty()
        || !diagnosis.faults().isEmpty()) {
      return Verdict.FAULTS;
    }
    return isProven() && waitsFor() == 0 ? Verdict.CONFORMS : Verdict.INCOMPLETE;
  }

  /**
   * Whether the values show all that they must, whatever is in doubt about the test itself, and
   * whether they fail or not. Of nothing nothing is shown.
   */
  public boolean isProven() {
    return circuit.size() > 0
        && problems.stream().noneMatch(problem -> problem.severity() == Severity.ERROR)
        && coverage.isComplete()
        && readings.unread().isEmpty()
        && comparison.with(Outcome.NOT_TESTED).isEmpty()
        && comparison.with(Outcome.NOT_JUDGED).isEmpty()
        && comparison.inForce().stream().noneMatch(one -> one.value() == ValueVerdict.LOW);
  }
}

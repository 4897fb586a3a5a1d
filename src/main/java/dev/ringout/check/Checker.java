package dev.ringout.check;

import dev.ringout.check.Doubt.Raised;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Coverage;
import dev.ringout.compare.Requirements;
import dev.ringout.diagnose.run.Diagnoser;
import dev.ringout.harness.Harness;
import dev.ringout.readings.ReadingSet;
import dev.ringout.review.Review;
import dev.ringout.source.Problem;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.Tables;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Checks units of one list: what hangs on the list alone is worked out once.
 *
 * <p>Not for use by several threads at once.
 */
public final class Checker {
  private final Circuit circuit;
  private final Tables tables;
  private final Review review;
  private final JoinLimits limits;
  private final Requirements requirements;

  private Checker(Harness harness, Tables tables) {
    this.circuit = Circuit.of(harness);
    this.tables = tables;
    // Waivers belong to the review; a check shows everything that the paper is blamed for.
    this.review = Review.of(circuit, tables, CopperWire.published(), List.of(), Optional.empty());
    this.limits = JoinLimits.of(circuit, tables);
    this.requirements = Requirements.of(circuit, limits);
  }

  /** A checker of units that are made to a list, by the tables given. */
  public static Checker of(Harness harness, Tables tables) {
    return new Checker(harness, tables);
  }

  /** The list as a circuit. */
  public Circuit circuit() {
    return circuit;
  }

  /** The limits of its joins. */
  public JoinLimits limits() {
    return limits;
  }

  /**
   * Everything that the readings of a unit show.
   *
   * @param statedDay the day of the test as whoever writes the record gives it
   */
  public CheckResult check(
      ReadingSet readings, Optional<LocalDate> statedDay, List<Problem> problems) {
    Comparison comparison = Comparison.of(circuit, limits, readings, statedDay);
    List<Raised> doubts = Doubts.of(circuit.harness(), readings, comparison, statedDay);
    Coverage coverage = requirements.shownBy(comparison);
    boolean leadsInDoubt = doubts.stream().anyMatch(one -> one.doubt().ofLeads().isPresent());
    return new CheckResult(
        circuit,
        readings,
        comparison,
        coverage,
        Diagnoser.diagnose(circuit, limits, comparison, coverage, tables, leadsInDoubt),
        review,
        doubts,
        problems);
  }
}

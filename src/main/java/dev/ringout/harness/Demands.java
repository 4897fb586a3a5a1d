package dev.ringout.harness;

import java.util.Optional;
import java.util.Set;

/**
 * What a list demands of a test besides its values.
 *
 * @param insulationTest whether insulation is part of the proof
 * @param words what a word without a value may prove; absent: a join for which no limit can be
 *     computed, and nothing else
 * @param calibration whether the instruments must be shown to be in calibration
 * @param serialNumber whether the unit must be named by its serial number
 * @param testDay whether the day of the test must be stated
 * @param independentInspector whether an inspector who is not the tester must be named
 */
public record Demands(
    boolean insulationTest,
    Optional<Set<WordUse>> words,
    Calibration calibration,
    boolean serialNumber,
    boolean testDay,
    boolean independentInspector) {

  /** What a list demands that says nothing of it. */
  public static final Demands USUAL =
      new Demands(true, Optional.empty(), Calibration.ONCE_NAMED, false, false, false);

  /** What a word such as {@code OK} may stand for. */
  public enum WordUse {
    /** Two points joined. */
    JOINS,
    /** Two nets apart, by continuity. */
    GAPS,
    /** Insulation as good as it must be. */
    INSULATION
  }

  /** Whether a verdict waits for calibration. */
  public enum Calibration {
    /** Required once a job names the day on which an instrument is due. */
    ONCE_NAMED,
    /** Required. */
    REQUIRED,
    /** Shown, never waited for. */
    NOT_REQUIRED
  }

  /** Whether the list says that a word may stand for so much. */
  public boolean allows(WordUse use) {
    return words.map(uses -> uses.contains(use)).orElse(false);
  }
}

package dev.ringout.diagnose;

import dev.ringout.circuit.Expected;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Reading;
import java.util.List;

/**
 * A reading to take next.
 *
 * @param kind with which meter
 * @param from one side as written on a test sheet
 * @param to the other side
 * @param answers what it may show and what that would mean, likeliest first; empty where it only
 *     proves something
 */
public record NextReading(
    Reading.Kind kind,
    String from,
    String to,
    SwitchState state,
    Purpose purpose,
    NextReason why,
    List<Answer> answers) {

  /** What it is for: the more urgent first. */
  public enum Purpose {
    /** Tells explanations of a fault apart. */
    TELL_APART,
    /** Confirms a fault that is already certain. */
    CONFIRM,
    /** Was on the sheet and is blank. */
    NOT_TESTED,
    /** Proves what no reading has proven. */
    PROVE
  }

  /**
   * One thing that a reading may show.
   *
   * @param shows what is between the two sides then
   * @param poorly joined, but by way of a poor joint
   * @param odds how likely it is, from 0 to 1
   * @param meanings the explanations left then, likeliest first
   */
  public record Answer(
      Expected shows, boolean poorly, double odds, List<List<SlipFact>> meanings) {}
}

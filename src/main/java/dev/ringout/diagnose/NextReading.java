package dev.ringout.diagnose;

import dev.ringout.harness.SwitchState;

/**
 * A reading to take next.
 *
 * @param from one side as written on a test sheet
 * @param to the other side
 */
public record NextReading(String from, String to, SwitchState state, Purpose purpose, String why) {

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
}

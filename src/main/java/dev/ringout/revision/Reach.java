package dev.ringout.revision;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;

/**
 * Whether an end that moves gets to where it goes.
 *
 * @param wire the wire as the later revision has it
 * @param from where the end was
 * @param to where it goes
 * @param why in words
 */
public record Reach(Wire wire, Point from, Point to, Verdict verdict, String why) {
  /** What can be told. */
  public enum Verdict {
    /** Within one item, or a longer wire goes the same way. */
    REACHES,
    /** It is shorter than what is listed for the way. */
    TOO_SHORT,
    /** Nothing listed tells: try it before anything is cut. */
    UNKNOWN
  }
}

package dev.ringout.revision;

import dev.ringout.harness.Point;
import java.util.List;

/**
 * Nets that join other points than before.
 *
 * @param before their points as the earlier revision joins them
 * @param after their points as the later joins them
 */
public record NetChange(Kind kind, List<List<Point>> before, List<List<Point>> after) {
  /** What became of the nets. */
  public enum Kind {
    /** One became several. */
    SPLIT,
    /** Several became one. */
    JOINED,
    /** Several became several others. */
    REARRANGED,
    /** It reaches an item that is new. */
    GAINED,
    /** It no longer reaches an item that is gone. */
    LOST,
    /** None of its points was there before. */
    ADDED,
    /** None of its points is there any more. */
    REMOVED
  }
}

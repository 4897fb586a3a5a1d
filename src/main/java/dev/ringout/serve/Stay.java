package dev.ringout.serve;

import java.time.Duration;

/**
 * How long somebody who signed in stays in.
 *
 * @param idle without doing anything
 * @param whole whatever is done
 */
public record Stay(Duration idle, Duration whole) {
  /** Half an hour, and a long shift. */
  public static final Stay USUAL = new Stay(Duration.ofMinutes(30), Duration.ofHours(12));
}

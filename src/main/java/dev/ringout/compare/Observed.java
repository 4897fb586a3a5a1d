package dev.ringout.compare;

/** What a reading shows of the two sides, whatever was expected. */
public enum Observed {
  /** At or below the limit: joined. */
  JOINED,
  /** Between the limit and {@code open min}. */
  RESISTIVE,
  /** At or above {@code open min}: not joined. */
  APART,
  /** The reading does not say. */
  UNKNOWN
}

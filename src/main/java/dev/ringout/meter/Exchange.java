package dev.ringout.meter;

/**
 * One line of the talk with a meter.
 *
 * @param millis since it was opened
 * @param text as it went, control characters and all; of a long line its beginning
 */
public record Exchange(long millis, Kind kind, String text) {

  /** Which way it went. */
  public enum Kind {
    /** To the meter. */
    SENT,
    /** From the meter. */
    RECEIVED,
    /** From the meter, and belonging to nothing that was asked: never a reading. */
    DROPPED,
    /** The link itself: opened, closed, gone, cleared. */
    LINK
  }
}

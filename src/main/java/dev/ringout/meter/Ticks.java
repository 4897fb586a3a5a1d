package dev.ringout.meter;

import java.time.Instant;

/** The clock of a meter: a time for the record, and one that only goes on for waiting. */
public interface Ticks {
  /** The time of day. */
  Instant now();

  /** Milliseconds since some moment; never set back. */
  long millis();
}

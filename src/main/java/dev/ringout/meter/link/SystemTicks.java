package dev.ringout.meter.link;

import dev.ringout.meter.Ticks;
import java.time.Instant;

/** The machine's own clock: a reading is of a moment. */
public final class SystemTicks implements Ticks {
  /** The one clock there is. */
  public SystemTicks() {
    // It keeps nothing.
  }

  @Override
  public Instant now() {
    return Instant.now();
  }

  @Override
  public long millis() {
    return System.nanoTime() / 1_000_000;
  }
}

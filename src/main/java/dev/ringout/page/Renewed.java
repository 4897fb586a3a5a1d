package dev.ringout.page;

import dev.ringout.bench.Refused;
import dev.ringout.meter.Ticks;
import java.util.Optional;

/**
 * What is made anew when it is asked for. Pages ask every few seconds, and a bench has readings to
 * keep meanwhile: what takes long is made so seldom that it takes a tenth of the time at most.
 */
final class Renewed<T> {
  private static final long AT_ONCE_MILLIS = 500;
  private static final int OF_THE_TIME = 10;

  private final Ticks ticks;
  private Optional<T> made = Optional.empty();
  private long until;

  Renewed(Ticks ticks) {
    this.ticks = ticks;
  }

  /** Makes it. */
  interface Maker<T> {
    /** As it is now. */
    T make() throws Refused;
  }

  /** As it is now, or as it was a moment ago. */
  synchronized T get(Maker<T> maker) throws Refused {
    long began = ticks.millis();
    if (made.isEmpty() || began >= until) {
      T now = maker.make();
      long took = ticks.millis() - began;
      until = took < AT_ONCE_MILLIS ? began : began + took * OF_THE_TIME;
      made = Optional.of(now);
      return now;
    }
    return made.get();
  }
}

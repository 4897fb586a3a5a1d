package dev.ringout.meter;

import dev.ringout.readings.Measured;
import java.time.Instant;
import java.util.Optional;

/**
 * What a meter said at one moment.
 *
 * @param askedMillis when it was asked, or of a meter that talks by itself when its line before
 *     ended: not before then was it measured
 * @param millis when it had been said
 * @param at the time of day then
 * @param raw as it came
 */
public record Sample(long askedMillis, long millis, Instant at, String raw, Shown shown) {
  /** The ohms; absent where it said none. */
  public Optional<Measured> measured() {
    return shown.resistance().map(Shown.Resistance::measured);
  }

  /** Whether it said ohms; below every number there are none. */
  public boolean isValue() {
    return measured().map(one -> !one.equals(OhmsNumber.belowRange())).orElse(false);
  }
}

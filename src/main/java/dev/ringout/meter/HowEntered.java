package dev.ringout.meter;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** How a reading came in. */
public enum HowEntered {
  /** Read off by a person and typed. */
  TYPED,
  /** Taken by itself once it had settled after the probes were seen open. */
  SETTLED,
  /** Taken by a key, a pedal or a button. */
  KEY,
  /** Sent by the meter's own key. */
  METER_KEY;

  /** As it is kept. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static Optional<HowEntered> of(String word) {
    return Stream.of(values()).filter(one -> one.word().equals(word)).findFirst();
  }
}

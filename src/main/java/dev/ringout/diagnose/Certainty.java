package dev.ringout.diagnose;

import java.util.Locale;

/** How sure an explanation is. */
public enum Certainty {
  /** No other explanation of the same size fits the readings made. */
  CERTAIN,
  /** The most probable of several. */
  LIKELY,
  /** One of several, none of them probable. */
  POSSIBLE;

  /** The same where something leaves a doubt: then it is not certain. */
  public Certainty inDoubt() {
    return this == CERTAIN ? LIKELY : this;
  }

  /** The word used in every output. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}

package dev.ringout.support;

import dev.ringout.harness.Limits;

/** Limits for tests that are about something else. */
public final class PlainLimits {
  private PlainLimits() {}

  /** The limits. */
  public static Limits of() {
    return Limits.usual(0.1).toBuilder().tolerancePercent(20).build();
  }
}

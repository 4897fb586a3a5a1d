package dev.ringout.support;

import dev.ringout.harness.Demands;
import dev.ringout.harness.Limits;
import dev.ringout.units.Length;
import java.util.OptionalDouble;

/** Limits for tests that are about something else. */
public final class PlainLimits {
  private PlainLimits() {}

  /** The limits. */
  public static Limits of() {
    return new Limits(
        OptionalDouble.empty(),
        1,
        1e5,
        0.005,
        0.1,
        0,
        20,
        20,
        1e8,
        500,
        new Length(0),
        new Length(0),
        Demands.USUAL);
  }
}

package dev.ringout.words;

import dev.ringout.units.Ohms;
import java.util.OptionalDouble;

/** The limits of a reading as they are said at the bench: {@code 6–18 mΩ}, {@code ≥ 100 kΩ}. */
public final class LimitWords {
  private LimitWords() {}

  /** The words; of a reading that has to be open whatever the meter's range, that it has. */
  public static String of(OptionalDouble least, OptionalDouble most) {
    if (least.isPresent() && most.isPresent()) {
      return Ohms.said(least.getAsDouble(), most.getAsDouble());
    }
    if (most.isPresent()) {
      return "≤ " + Ohms.said(most.getAsDouble());
    }
    return least.isPresent() ? "≥ " + Ohms.said(least.getAsDouble()) : "open";
  }
}

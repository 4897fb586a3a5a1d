package dev.ringout.diagnose;

import java.util.Locale;

/** In which way a part is not as listed. */
public enum PartFault {
  /** Not there, burnt out, or one of its leads is off. */
  MISSING,
  /** Its ends are exchanged. */
  REVERSED,
  /** It is there, with another value or condition. */
  OTHER_VALUE,
  /** It lies across other points. */
  OTHER_POINTS;

  /** The word used in machine-readable output. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}

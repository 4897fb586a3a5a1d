package dev.ringout.diagnose;

import java.util.Locale;

/** In which way a switch does not close what it should. */
public enum SwitchFault {
  /** It stays as in one position: it is not reached, jammed, or its contact never makes. */
  STUCK,
  /** One contact stays closed in every position. */
  WELDED,
  /** What should be closed in one of its two positions is closed in the other. */
  OTHER_WAY;

  /** The word used in machine-readable output. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}

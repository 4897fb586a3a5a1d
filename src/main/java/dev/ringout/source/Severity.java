package dev.ringout.source;

import java.util.Locale;

/** How much a problem or a remark matters. */
public enum Severity {
  /** The input can't be used as it stands. */
  ERROR,
  /** Read, but a person should look. */
  WARNING,
  /** Said for the record, such as blanks that were ignored. */
  NOTE;

  /** The word used in every output. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}

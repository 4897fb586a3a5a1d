package dev.ringout.diagnose;

import java.util.Locale;

/** By which one mistake many wire ends sit in the wrong place. */
public enum Arrangement {
  /** Three ends or more of one item, each in the next one's place. */
  RING,
  /** A run of ends one cavity out, a spare eaten at its end. */
  SHIFTED,
  /** A whole insert numbered from the wrong face. */
  MIRRORED,
  /** One row of an insert numbered from the wrong end. */
  MIRRORED_ROW,
  /** A whole insert some steps round: another key. */
  ROTATED,
  /** Two plugs in each other's place: every end of one answers at the same pin of the other. */
  PLUGS_CROSSED;

  /** The word used in machine-readable output and in the table of costs. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}

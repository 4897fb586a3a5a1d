package dev.ringout.imports.list;

import java.util.Locale;

/** How sure a column's meaning is. */
public enum ColumnCertainty {
  /** The user said so: nothing overrules it. */
  SAID,
  /** The heading is a word of the trade and nothing else. */
  CERTAIN,
  /** The heading holds a word of the trade, or the cells look like it. */
  LIKELY,
  /** By its position alone. */
  POSSIBLE;

  /** The word used in every output. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}

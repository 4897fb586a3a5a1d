package dev.ringout.imports.list;

import java.util.Locale;

/**
 * A column of a list and how it is understood.
 *
 * @param index counted from 1
 * @param heading as written, its two rows in one; empty where there is none
 * @param unit the unit in the heading, or empty
 * @param item for {@link Role#POINTS} and {@link Role#PIN} the item that the heading names; for
 *     {@link Role#SIGNAL} the item whose name it is; or empty
 * @param known whether the heading holds a word of the trade
 */
public record ListColumn(
    int index,
    String heading,
    Role role,
    String unit,
    String item,
    boolean known,
    ColumnCertainty certainty) {

  /** The same column in another role. */
  public ListColumn as(Role other, ColumnCertainty sure) {
    return new ListColumn(index, heading, other, unit, item, known, sure);
  }

  /** The same column as one of an item's. */
  public ListColumn of(String otherItem) {
    return new ListColumn(index, heading, role, unit, otherItem, known, certainty);
  }

  /** The heading without regard to case and blanks. */
  public String key() {
    return heading.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").strip();
  }
}

package dev.ringout.imports.list;

import dev.ringout.cells.CellText;
import dev.ringout.sheet.Row;
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
 * @param grammar how its texts name points, where it holds any
 */
public record ListColumn(
    int index,
    String heading,
    Role role,
    String unit,
    String item,
    boolean known,
    ColumnCertainty certainty,
    Grammar grammar) {

  /** In place of a unit: the item was said by the user. */
  public static final String OF_ITEM = "of";

  /** In place of a unit: the heading calls it a port, the pin of an end or what holds pins. */
  public static final String PORT = "port";

  /** In place of a unit: the heading is one side of a strip, whose terminal stands between. */
  public static final String SIDE = "side";

  /** In place of a unit: the heading is one of bridges between terminals. */
  public static final String BRIDGE = "bridge";

  /** In place of a unit: the heading is one of nets. */
  public static final String NETS = "nets";

  /** A column whose texts are points each as it looks. */
  public ListColumn(
      int index,
      String heading,
      Role role,
      String unit,
      String item,
      boolean known,
      ColumnCertainty certainty) {
    this(index, heading, role, unit, item, known, certainty, Grammar.AS_IT_LOOKS);
  }

  /** The same column in another role. */
  public ListColumn as(Role other, ColumnCertainty sure) {
    return new ListColumn(index, heading, other, unit, item, known, sure, grammar);
  }

  /** The same column as one of an item's. */
  public ListColumn of(String otherItem) {
    return new ListColumn(index, heading, role, unit, otherItem, known, certainty, grammar);
  }

  /** The same column with its points written so. */
  public ListColumn written(Grammar otherGrammar) {
    return new ListColumn(index, heading, role, unit, item, known, certainty, otherGrammar);
  }

  /** Its cell in a row as it stands there, cleaned and nothing more. */
  public String textIn(Row row) {
    return CellText.clean(row.cell(index).text());
  }

  /** Whether the user said whose pins it holds: that counts for more than any title. */
  public boolean namesItem() {
    return isSaid() && !item.isEmpty() && unit.equals(OF_ITEM);
  }

  /** Whether the heading is one of bridges between terminals. */
  public boolean isBridge() {
    return unit.equals(BRIDGE);
  }

  /** Whether the heading is one of nets. */
  public boolean isOfNets() {
    return unit.equals(NETS);
  }

  /** Whether the heading is one side of a strip. */
  public boolean isSide() {
    return unit.equals(SIDE);
  }

  /** Whether the heading calls it a port. */
  public boolean isPort() {
    return unit.equals(PORT);
  }

  /** Whether the user said what it is. */
  public boolean isSaid() {
    return certainty == ColumnCertainty.SAID;
  }

  /** Whether another heading differs, if at all, by the number at its end: {@code Node 2}. */
  public boolean isNumberedLike(ListColumn other) {
    String stem = stem();
    return !stem.isBlank() && !stem.equals(key()) && stem.equals(other.stem());
  }

  private String stem() {
    return key().replaceFirst("\\d+$", "");
  }

  /** The heading without regard to case and blanks. */
  public String key() {
    return heading.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").strip();
  }
}

package dev.ringout.imports.list;

import java.util.Locale;

/**
 * What speaks for or against one way to read a table.
 *
 * @param kind what was found
 * @param points how much it counts; below 0 against
 * @param count how many of something
 * @param of of how many
 * @param what a heading or a name, or empty
 */
public record Evidence(Kind kind, int points, int count, int of, String what) {

  /** What can be found. */
  public enum Kind {
    /** The user said so. */
    SAID,
    /** Words of the trade name both ends. */
    BOTH_ENDS_NAMED,
    /** Words of the trade name one end. */
    ONE_END_NAMED,
    /** No word of the trade names an end. */
    NO_END_NAMED,
    /** Beside each of two columns of devices a heading names its pins. */
    PINS_BESIDE_ITEMS,
    /** Marks under a heading of bridges are taken to join terminals that follow one another. */
    BRIDGES_BY_MARKS,
    /** Headings count the points of a chain: {@code Via 1}, {@code Via 2}. */
    CHAIN_HEADED,
    /** Headings name items, or an item and its pins. */
    ITEMS_IN_HEADINGS,
    /** Under headings that may be devices nearly all cells are called as pins are. */
    PINS_UNDER_NAMES,
    /** Columns taken for pins, though their headings name no item. */
    HEADINGS_UNKNOWN,
    /** Words of the trade name a net and its pins. */
    NETS_NAMED,
    /** The column of names may be of signals rather than of nets. */
    SIGNALS_NAMED,
    /** Ends that look like points or names of things. */
    ENDS_LOOK_LIKE_POINTS,
    /** Ends that look like neither. */
    ENDS_LOOK_LIKE_NOTHING,
    /** Ends that are pins whose item is not named. */
    ITEM_UNKNOWN,
    /** Nothing but the sheet's name says whose pins are listed. */
    ITEM_UNNAMED,
    /** Each pin of an item stands once. */
    PINS_ONCE,
    /** Pins of one item stand again and again. */
    PINS_AGAIN,
    /** Points with three and more far ends. */
    MANY_FAR_ENDS,
    /** Ends that are joined to themselves. */
    SELF,
    /** Wires found at both their ends. */
    FOUND_AT_BOTH_ENDS,
    /** Wire numbers that stand at two pins each. */
    NUMBERS_TWICE,
    /** Wire numbers that do not. */
    NUMBERS_NOT_TWICE,
    /** Nets with several points. */
    NETS_OF_SEVERAL,
    /** Rows that leave out a point of the chain. */
    POINTS_LEFT_OUT,
    /** Rows with several points. */
    ROWS_OF_SEVERAL,
    /** A column that looks like a part of the answer is not used. */
    COLUMN_UNUSED,
    /**
     * A column that may change what the wires are is not used: a bridge, a part between, a level.
     */
    COLUMN_MATTERS,
    /** Headings of measurements. */
    MEASUREMENTS,
    /** The title speaks of changes. */
    TITLE_OF_CHANGES,
    /** Several columns of a row hold points of one and the same item. */
    ONE_ITEM_ACROSS,
    /** Several columns of a row hold the same text, as names of signals are. */
    SAME_TEXT_ACROSS,
    /** Names beside the pins of one row that differ. */
    NAMES_DIFFER,
    /** Cells that are quantities. */
    QUANTITIES,
    /** Headings of a list of parts to buy. */
    PARTS_LIST,
    /** No column tells of a wire: no number, gauge, colour, length, signal or pin. */
    NOTHING_OF_WIRES,
    /** Rows outside the table look like the rows in it. */
    ROWS_OUTSIDE,
    /** A number after a name may be a pin or a part of the name. */
    NUMBER_MAY_BE_PIN,
    /** Cores are named; they may be the terminals at both ends. */
    CORES_MAY_BE_PINS,
    /** What stands beside pins may be their names, or what they go to. */
    NAMES_MAY_BE_ENDS,
    /** A terminal may be one end's pin, or the strip's own. */
    TERMINAL_BETWEEN,
    /** The far ends are not listed. */
    FAR_ENDS_MISSING,
    /** Several columns of pins belong to one item. */
    ITEM_TWICE,
    /** A table with the same headings is read so for certain. */
    SAME_HEADINGS;

    /** Whether it is about the wires that a way makes, and not about the words of its headings. */
    public boolean isOfWires() {
      return switch (this) {
        case ENDS_LOOK_LIKE_NOTHING,
            ITEM_UNKNOWN,
            PINS_AGAIN,
            MANY_FAR_ENDS,
            SELF,
            NUMBERS_NOT_TWICE,
            POINTS_LEFT_OUT,
            ONE_ITEM_ACROSS,
            SAME_TEXT_ACROSS,
            NAMES_DIFFER,
            QUANTITIES,
            ROWS_OUTSIDE ->
            true;
        default -> false;
      };
    }

    /** The word used in machine-readable output: {@code pins-once}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}

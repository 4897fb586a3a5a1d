package dev.ringout.imports.list;

import dev.ringout.source.Problem;
import java.util.Locale;

/**
 * Something suspect in a list.
 *
 * @param kind what sort of thing it is
 * @param problem where it is and what was found
 */
public record Finding(Kind kind, Problem problem) {

  /** The sorts of mess, each described in {@code docs/reference/import.md}. */
  public enum Kind {
    DATE("a date that was a pin"),
    TIME("a time that was a point"),
    EXPONENT("a number with an exponent that was a name"),
    LEADING_ZERO("a leading zero lost"),
    SIGN("a sign that may have been a dash or a polarity"),
    LONG_NUMBER("a number with more digits than a spreadsheet keeps"),
    BOOLEAN("TRUE or FALSE that was a letter"),
    ERROR_VALUE("an error value"),
    NO_RESULT("a formula without a result"),
    FILL_DRAG("a series that a fill handle made"),
    CASE_TWIN("two spellings that differ in case alone"),
    HIDDEN("hidden rows, columns or sheets"),
    FILTERED("a filtered view"),
    STRUCK("struck-through text"),
    COMMENT("a comment on a cell"),
    RED("red text"),
    BLANKS("blanks that can't be seen"),
    DASH("dashes and quotes that only look alike"),
    DITTO("marks for \"as above\""),
    CARRIED("blanks carried down"),
    MERGED("merged cells"),
    SEVERAL("several points in a cell"),
    RANGE("a range of pins"),
    NO_PIN("an end without a pin"),
    NO_END("a wire without an end"),
    STOWED("a wire end that is stowed"),
    GAUGE("a gauge that is none"),
    LENGTH("a length without a unit, or none"),
    ONE_SIDED("a wire listed at one end only"),
    ENDS_DIFFER("two ends of a wire that disagree"),
    PIN_TWICE("a pin with two far ends"),
    WIRE_TWICE("a wire number used twice"),
    DUPLICATE("a row given twice"),
    MARKS("marks whose meaning must be asked"),
    NAMES("rows that share a name"),
    NAMES_DIFFER("two names in one row"),
    ALIAS("two names for one point or item"),
    CODE("a code without a meaning"),
    HEADING("a column that is not understood"),
    NO_WIRES("a sheet without wires");

    private final String says;

    Kind(String says) {
      this.says = says;
    }

    /** What it is, in words. */
    public String says() {
      return says;
    }

    /** The word used in machine-readable output: {@code one-sided}. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}

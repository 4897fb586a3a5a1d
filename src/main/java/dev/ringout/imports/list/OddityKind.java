package dev.ringout.imports.list;

import java.util.Locale;

/** The sorts of mess, each described in {@code docs/reference/import.md}. */
public enum OddityKind {
  /** A date that was a pin. */
  DATE,
  /** A time that was a point. */
  TIME,
  /** A number with an exponent that was a name. */
  EXPONENT,
  /** A leading zero lost. */
  LEADING_ZERO,
  /** A sign that may have been a dash or a polarity. */
  SIGN,
  /** A number with more digits than a spreadsheet keeps. */
  LONG_NUMBER,
  /** TRUE or FALSE that was a letter. */
  BOOLEAN,
  /** An error value. */
  ERROR_VALUE,
  /** A formula without a result. */
  NO_RESULT,
  /** A series that a fill handle made. */
  FILL_DRAG,
  /** Two spellings that differ in case alone. */
  CASE_TWIN,
  /** Hidden rows, columns or sheets. */
  HIDDEN,
  /** A filtered view. */
  FILTERED,
  /** Struck-through text. */
  STRUCK,
  /** A comment on a cell. */
  COMMENT,
  /** Red text. */
  RED,
  /** A fill whose meaning the list does not say. */
  FILL,
  /** Blanks that can't be seen. */
  BLANKS,
  /** Dashes and quotes that only look alike. */
  DASH,
  /** Marks for "as above". */
  DITTO,
  /** Blanks carried down. */
  CARRIED,
  /** Merged cells. */
  MERGED,
  /** Several points in a cell. */
  SEVERAL,
  /** A range of pins. */
  RANGE,
  /** An end without a pin. */
  NO_PIN,
  /** A wire without an end. */
  NO_END,
  /** A wire end that is stowed. */
  STOWED,
  /** A gauge that is none. */
  GAUGE,
  /** A length without a unit, or none. */
  LENGTH,
  /** A wire listed at one end only. */
  ONE_SIDED,
  /** Two ends of a wire that disagree. */
  ENDS_DIFFER,
  /** A pin with two far ends. */
  PIN_TWICE,
  /** A wire number used twice. */
  WIRE_TWICE,
  /** A row given twice. */
  DUPLICATE,
  /** Marks whose meaning must be asked. */
  MARKS,
  /** Rows that share a name. */
  NAMES,
  /** Two names in one row. */
  NAMES_DIFFER,
  /** Two names for one point or item. */
  ALIAS,
  /** A code without a meaning. */
  CODE,
  /** Two values for a fact of the header. */
  HEADER,
  /** A column that is not understood. */
  HEADING,
  /** A sheet without wires. */
  NO_WIRES,
  /** Cells of which nothing is made. */
  NOT_USED,
  /** What the list itself leaves open. */
  IN_DOUBT,
  /** A table that can be read in several ways. */
  UNDECIDED,
  /** A reference that leads nowhere. */
  REFERENCE,
  /** Modules of which a unit has some. */
  MODULES,
  /** Parts that are not read. */
  PARTS;

  /** The word used in machine-readable output: {@code one-sided}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}

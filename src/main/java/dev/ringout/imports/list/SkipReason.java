package dev.ringout.imports.list;

import java.util.Locale;

/** Why a row was skipped. */
public enum SkipReason {
  /** Its ends, or most of it, are struck through. */
  STRUCK_THROUGH(false),
  /** A remark says so. */
  SAYS_DELETED(false),
  /** Its ends are filled with a colour that the list explains as deleted. */
  FILL_MEANS_DELETED(false),
  /** The user says that it is no wire. */
  SAID_TO_BE_NO_WIRE(false),
  /** A cell that the wire needs could not be read. */
  CELL_NOT_READ(true),
  /** A far pin stands without its item. */
  FAR_PIN_WITHOUT_ITEM(true),
  /** A wire number or its gauge, and no ends. */
  WIRE_WITHOUT_ENDS(true),
  /** A range of pins has one far end. */
  RANGE_WITH_ONE_FAR_END(true),
  /** A far end and no pin here. */
  NO_PIN_HERE(true),
  /** A terminal and no conductor. */
  NO_CONDUCTOR(true),
  /** The legend does not explain the row's code. */
  CODE_NOT_EXPLAINED(true),
  /** Several points at both ends, and not as many. */
  SEVERAL_AT_BOTH_ENDS(true),
  /** An end that the list itself leaves open. */
  END_IN_DOUBT(true),
  /** The row stands for others that are left out. */
  ROWS_LEFT_OUT(true),
  /** A wire with one end. */
  NO_OTHER_END(true),
  /** Nobody said that its marks are wires. */
  MARKS_NOT_TAKEN(false),
  /** Another row is the same wire. */
  SAME_ONCE_MORE(false),
  /** A reference of the connection is empty, or leads nowhere. */
  REFERENCE_LEADS_NOWHERE(true),
  /** An end names no point, or one of several. */
  POINT_NOT_CLEAR(true),
  /** It is a connection of an assembly part, not of the harness. */
  OF_ASSEMBLY_PART(true),
  /** Both its ends are one point. */
  TO_ITSELF(true),
  /** It belongs to a module that was not asked for. */
  MODULE_NOT_CHOSEN(false);

  private final boolean lost;

  SkipReason(boolean lost) {
    this.lost = lost;
  }

  /** Whether there probably was a wire. */
  public boolean lost() {
    return lost;
  }

  /** The word used in machine-readable output: {@code no-other-end}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}

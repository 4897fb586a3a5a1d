package dev.ringout.compare;

/** A reading's verdict. */
public enum Outcome {
  CONFORMS,
  /** Out of limits, and accepted by an inspector's word. */
  ACCEPTED,
  /** Should be joined, is not. */
  OPEN,
  /** Should be apart, is joined. */
  UNEXPECTED_JOIN,
  /** A poor joint where a join was expected, a leak where none was. */
  RESISTIVE,
  LOW_INSULATION,
  /** A part between the sides does not read as listed. */
  PART_VALUE,
  NOT_TESTED,
  /** Made, but proves nothing. */
  NOT_JUDGED;

  /** Whether it is as it should be, or accepted as it is. */
  public boolean passes() {
    return this == CONFORMS || this == ACCEPTED;
  }

  /** Whether something is wrong. */
  public boolean fails() {
    return switch (this) {
      case OPEN, UNEXPECTED_JOIN, RESISTIVE, LOW_INSULATION, PART_VALUE -> true;
      case CONFORMS, ACCEPTED, NOT_TESTED, NOT_JUDGED -> false;
    };
  }
}

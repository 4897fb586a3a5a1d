package dev.ringout.compare;

/** What a join's value says against what its wires account for. */
public enum ValueVerdict {
  /** Within what the wires account for. */
  AS_EXPECTED,
  /** More than they account for. */
  HIGH,
  /** Less than they can have. */
  LOW,
  /** The meter is too coarse for so little: twice as much would have read alike. */
  CANT_TELL,
  /** No number was read, or none can be computed. */
  NOT_COMPARED
}

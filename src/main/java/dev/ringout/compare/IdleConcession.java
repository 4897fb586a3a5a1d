package dev.ringout.compare;

import dev.ringout.readings.Concession;

/**
 * An inspector's word that covers no reading.
 *
 * @param why what keeps it from covering one
 */
public record IdleConcession(Concession concession, Why why) {

  /** Why it covers none. */
  public enum Why {
    /** No reading of those points, in that state, of that kind is out of limits. */
    NO_SUCH_READING,
    /** The value is further out than is accepted, or the reading shows no value. */
    NOT_SO_FAR,
    /** Its last day is over, or the day of the test is not known. */
    EXPIRED,
    /** It is for other serial numbers, or the unit's is not stated. */
    OTHER_UNIT,
    /** Who accepts is the tester. */
    BY_THE_TESTER,
    /** Who took the reading is not stated: it may be who accepts it. */
    TESTER_NOT_STATED
  }
}

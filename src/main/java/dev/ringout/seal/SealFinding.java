package dev.ringout.seal;

/**
 * What looking at a sealed record showed of one thing.
 *
 * @param about what was looked at: a file's name, a key's fingerprint, or nothing
 * @param detail what more there is to say, or nothing
 */
public record SealFinding(Kind kind, String about, String detail) {

  /** How a thing stands to what was sealed. */
  public enum State {
    AS_SEALED,
    DIFFERS,
    NOT_SHOWN,
    /** Nothing that was sealed, and worth knowing. */
    NOTE
  }

  /** Every kind of finding. */
  public enum Kind {
    SIGNATURE_GOOD(State.AS_SEALED),
    SIGNATURE_MISSING(State.DIFFERS),
    SIGNATURE_WRONG(State.DIFFERS),
    SIGNATURE_BY_ANOTHER_KEY(State.DIFFERS),
    SIGNATURE_BY_A_KEY_NOT_GIVEN(State.NOT_SHOWN),
    NOT_SIGNED(State.NOT_SHOWN),
    /** By the shop's list of keys {@code about} is somebody's: {@code detail} says whose. */
    KEY_LISTED(State.AS_SEALED),
    /** So it was when it was signed, as who signed says; the key was withdrawn since. */
    KEY_WITHDRAWN_SINCE(State.AS_SEALED),
    KEY_WITHDRAWN_BEFORE(State.DIFFERS),
    KEY_NOT_YET(State.DIFFERS),
    KEY_NO_LONGER(State.DIFFERS),
    /** The key does not count for ever, and the seal does not say when it was signed. */
    KEY_AT_NO_TIME(State.NOT_SHOWN),
    KEY_NOT_LISTED(State.DIFFERS),
    /** The seal is of {@code about}; the record's file is {@code detail}. */
    SEAL_OF_ANOTHER_RECORD(State.DIFFERS),
    RECORD_SAME(State.AS_SEALED),
    RECORD_OTHER_BYTES(State.DIFFERS),
    RECORD_UNREADABLE(State.DIFFERS),
    DIGEST_SAME(State.AS_SEALED),
    DIGEST_NOT_SHOWN(State.DIFFERS),
    DIGEST_OTHER(State.DIFFERS),
    INPUT_SAME(State.AS_SEALED),
    INPUT_OTHER_BYTES(State.DIFFERS),
    INPUT_MISSING(State.NOT_SHOWN),
    /** It lies neither beside the record nor where inputs are said to be. */
    INPUT_ELSEWHERE(State.NOT_SHOWN),
    INPUT_UNREADABLE(State.NOT_SHOWN),
    /** A table lies in a folder of which every table was an input, and was none. */
    INPUT_ADDED(State.DIFFERS),
    KEPT_SAME(State.AS_SEALED),
    /** A file of a list. */
    KEPT_OTHER_BYTES(State.DIFFERS),
    /** Files of a list were added, renamed or put in another order. */
    KEPT_OTHER_FILES(State.DIFFERS),
    /** A test whose entries are not those of the last hash that was sealed. */
    KEPT_OTHER_ENTRIES(State.DIFFERS),
    /** A test that the store itself shows to be changed: {@code detail} says where. */
    KEPT_NOT_AS_WRITTEN(State.DIFFERS),
    /** The store has the list or the unit, and not this of it. */
    KEPT_GONE(State.DIFFERS),
    /** No store was found, or none in which it could be looked for: {@code detail} says why. */
    KEPT_NOT_FOUND(State.NOT_SHOWN),
    /** The store {@code detail} has no such list. */
    KEPT_NO_SUCH_LIST(State.NOT_SHOWN),
    /** The store {@code detail} has no such unit of such a list. */
    KEPT_NO_SUCH_UNIT(State.NOT_SHOWN),
    /** So many tests as {@code detail} says were added to the unit. */
    KEPT_TESTS_SINCE(State.NOTE),
    /** So many entries as {@code detail} says were added to the test. */
    KEPT_ENTRIES_SINCE(State.NOTE),
    /** {@code detail} is wrong with what was added behind what was sealed. */
    KEPT_WRONG_SINCE(State.NOTE),
    EARLIER_SAME(State.AS_SEALED),
    EARLIER_OTHER_BYTES(State.DIFFERS),
    EARLIER_MISSING(State.NOT_SHOWN),
    EARLIER_UNREADABLE(State.NOT_SHOWN),
    EARLIER_SEAL_SAME(State.AS_SEALED),
    EARLIER_SEAL_OTHER_BYTES(State.DIFFERS),
    EARLIER_SEAL_MISSING(State.NOT_SHOWN),
    EARLIER_SEAL_UNUSABLE(State.DIFFERS),
    /** This seal is of the time before seals held those before them. */
    EARLIER_SEAL_NOT_HELD(State.NOT_SHOWN),
    EARLIER_SIGNATURE_GOOD(State.AS_SEALED),
    EARLIER_SIGNATURE_WRONG(State.DIFFERS),
    EARLIER_SIGNATURE_BY_A_KEY_NOT_GIVEN(State.NOT_SHOWN),
    /** The record that was asked for is signed, and vouches for one that is not. */
    EARLIER_SIGNATURE_MISSING(State.DIFFERS),
    EARLIER_NOT_SIGNED(State.NOT_SHOWN),
    /** What the seal says of {@code about}, that one's own seal says too. */
    HISTORY_SAME(State.AS_SEALED),
    /** The seal beside {@code about} is of {@code detail}, or of other bytes. */
    HISTORY_OTHER_RECORD(State.DIFFERS),
    /** The verdict of {@code about} is {@code detail}. */
    HISTORY_OTHER_VERDICT(State.DIFFERS),
    HISTORY_OTHER_RECORDS_BEFORE(State.DIFFERS),
    /** {@code detail} failed in {@code about} or before it, and is not kept. */
    HISTORY_FAILED_VALUE_MISSING(State.DIFFERS),
    HISTORY_OTHER_NOTES(State.DIFFERS),
    /** {@code detail} goes on from {@code about}: the later one stands. */
    CONTINUED(State.NOTE),
    /** {@code detail} goes on from {@code about} too, and not by way of this record. */
    FORKED(State.NOT_SHOWN),
    FORKED_BY_A_KEY_NOT_GIVEN(State.NOTE),
    /** {@code about} is of the same unit and list, and in no history with this record. */
    UNIT_ELSEWHERE(State.NOTE);

    private final State state;

    Kind(State state) {
      this.state = state;
    }
  }

  /** A finding that needs no more words. */
  public static SealFinding of(Kind kind, String about) {
    return new SealFinding(kind, about, "");
  }

  /** How it stands to what was sealed. */
  public State state() {
    return kind.state;
  }
}

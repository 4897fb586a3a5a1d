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
    NOT_SHOWN
  }

  /** Every kind of finding. */
  public enum Kind {
    SIGNATURE_GOOD(State.AS_SEALED),
    SIGNATURE_MISSING(State.DIFFERS),
    SIGNATURE_WRONG(State.DIFFERS),
    SIGNATURE_BY_ANOTHER_KEY(State.DIFFERS),
    SIGNATURE_BY_A_KEY_NOT_GIVEN(State.NOT_SHOWN),
    NOT_SIGNED(State.NOT_SHOWN),
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
    INPUT_UNREADABLE(State.NOT_SHOWN),
    EARLIER_SAME(State.AS_SEALED),
    EARLIER_OTHER_BYTES(State.DIFFERS),
    EARLIER_MISSING(State.NOT_SHOWN),
    EARLIER_UNREADABLE(State.NOT_SHOWN);

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

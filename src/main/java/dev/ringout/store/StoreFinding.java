package dev.ringout.store;

/**
 * What is not as it was written.
 *
 * @param session its id; empty where no session is meant
 * @param seq of the entry; 0 where the session or the list as a whole is meant
 */
public record StoreFinding(String unit, String session, String file, int seq, Kind kind) {
  /** Of an entry, or with 0 of a session as a whole. */
  public static StoreFinding of(StoredUnit unit, Session session, int seq, Kind kind) {
    return new StoreFinding(unit.serial(), session.id(), session.file(), seq, kind);
  }

  /** What is wrong. */
  public enum Kind {
    /** The fields of an entry do not give its hash. */
    ENTRY_CHANGED,
    /** An entry is not there, or stands elsewhere. */
    ENTRY_MISSING,
    /** Its hash is not the one on which the next was built. */
    CHAIN_BROKEN,
    /** The last entry is not the one with which a session ends. */
    END_MISSING,
    /** A session of the unit is not there. */
    SESSION_MISSING,
    /** An entry that is as it was written, and that this program can make nothing of. */
    NOT_UNDERSTOOD,
    /** A signature does not match the entries before it. */
    SIGNATURE_WRONG,
    /** A session goes on in one way in one store and in another in the other. */
    TWO_HISTORIES,
    /** Something that was decided of people elsewhere, and that nobody has said to take. */
    DECIDED_ELSEWHERE,
    /** A test was read by a clock that ran behind the tests before it, or is ahead of now. */
    CLOCK_WRONG,
    /** The store's own pages are not sound, {@code file} says how. */
    DAMAGED,
    /** Rows of a table, so many as {@code seq}, belong to nothing that is there. */
    WITHOUT_OWNER,
    /** The bytes of a list do not give its digest. */
    LIST_CHANGED,
    /** A list, or its file, is called what no test of it says. */
    LIST_RENAMED
  }
}

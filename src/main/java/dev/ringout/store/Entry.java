package dev.ringout.store;

/**
 * One thing that happened in a session. It is never changed and never taken away.
 *
 * @param seq its place in the session, from 1
 * @param at when, as written; empty where nothing says so
 * @param who by whom; empty where nothing says so
 * @param kind as it is kept
 * @param previous the hash of the entry before, in hexadecimal; of the first the session's own
 */
public record Entry(
    int seq, String at, String who, String kind, String body, String previous, String hash) {

  /** Whether it is of a kind. */
  public boolean is(EntryKind other) {
    return kind.equals(other.word());
  }

  /**
   * What is to become an entry.
   *
   * @param at when, as written; empty where nothing says so
   * @param who by whom; empty where nothing says so
   */
  public record Draft(EntryKind kind, String at, String who, String body) {}
}

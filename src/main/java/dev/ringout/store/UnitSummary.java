package dev.ringout.store;

/**
 * A unit with how it stood when it was last read.
 *
 * @param session the id of the last
 * @param sessions how many tests it has
 * @param started the day of the last, as written; empty where nothing says so
 * @param who took the readings of the last
 * @param verdict what was shown then
 */
public record UnitSummary(
    StoredUnit unit, String session, int sessions, String started, String who, Shown verdict) {
  /**
   * A verdict as it is kept.
   *
   * @param body of its entry; empty where there is none
   * @param asWritten whether its hash is that of its fields
   */
  public record Shown(String body, boolean asWritten) {}
}

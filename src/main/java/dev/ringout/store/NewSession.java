package dev.ringout.store;

import java.util.List;

/**
 * A test to be kept.
 *
 * @param session as it would be, were it the unit's first
 * @param fileAsTyped its name where another sheet of the unit has the same one
 */
public record NewSession(
    HarnessFile harness,
    String serial,
    Session session,
    String fileAsTyped,
    List<Entry.Draft> entries) {
  /** What is given can't be changed afterwards. */
  public NewSession {
    entries = List.copyOf(entries);
  }
}

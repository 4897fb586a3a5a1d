package dev.ringout.store;

import java.util.List;

/**
 * What all chains of a store say.
 *
 * @param digest of all sessions and lists: the same for two stores that hold the same
 */
public record StoreState(
    long lists,
    long units,
    long sessions,
    long entries,
    String digest,
    List<StoreFinding> findings) {
  /** What is given can't be changed afterwards. */
  public StoreState {
    findings = List.copyOf(findings);
  }
}

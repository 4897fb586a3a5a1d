package dev.ringout.revision;

import java.util.Map;

/**
 * An item that has another name, or whose pins have.
 *
 * @param pins old pin to new pin, of those that differ
 * @param agreeing how many wire ends of the old item meet the same far ends at the new
 * @param ends how many wire ends the item has, in the revision where it has more
 * @param asTold whether the user said so
 */
public record Rename(
    String oldRef,
    String newRef,
    Map<String, String> pins,
    int agreeing,
    int ends,
    boolean asTold) {

  /** Whether the item itself has another name. */
  public boolean ofItem() {
    return !oldRef.equals(newRef);
  }
}

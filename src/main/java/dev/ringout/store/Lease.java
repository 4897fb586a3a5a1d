package dev.ringout.store;

/**
 * Who leads a test at a station. Whoever adds to it there shows the fence, and the store adds
 * nothing where that is an earlier one: so a program that was thought gone, and wakes up late, adds
 * nothing behind its successor.
 *
 * @param session the test's id
 * @param station at which it is led; each station has its own lease on a test
 * @param fence grows whenever somebody else leads there
 * @param silentSeconds for how long nothing was heard of it, by the store's own clock
 * @param asked which step is asked there; empty where none is, or nobody said so yet
 * @param askedSeconds for how long
 */
public record Lease(
    String session,
    String station,
    String who,
    int fence,
    long silentSeconds,
    String asked,
    long askedSeconds) {
  /** So long it is good without a sign of life; one comes with each entry, and three in this. */
  static final int SECONDS = 30;

  /** Whether its time is over: then another station may take it over, with a word. */
  public boolean isSilent() {
    return silentSeconds > SECONDS;
  }
}

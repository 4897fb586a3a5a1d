package dev.ringout.serve;

/**
 * A browser that was let in.
 *
 * @param number tells it from others
 * @param who signed in with it; empty at a bench that only its own machine opens
 * @param since what its {@code who} was known by then: whoever knows people says whether that is
 *     still so
 */
public record Guest(int number, String who, int since) {}

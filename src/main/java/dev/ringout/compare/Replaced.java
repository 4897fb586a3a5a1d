package dev.ringout.compare;

/**
 * A reading that a later one of the same points, state and kind replaces. Both stay in the record.
 *
 * @param changed whether the two say different things: a repair, or a contradiction
 */
public record Replaced(Judged earlier, Judged later, boolean changed) {}

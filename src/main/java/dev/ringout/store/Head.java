package dev.ringout.store;

/**
 * Where a session ends for now.
 *
 * @param seq of its last entry
 * @param hash of its last entry
 */
public record Head(int seq, String hash) {}

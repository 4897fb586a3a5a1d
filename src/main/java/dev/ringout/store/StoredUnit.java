package dev.ringout.store;

/**
 * A unit of a store.
 *
 * @param key the digest of its serial number as it is compared
 * @param harness the digest of the list that it is made to
 */
public record StoredUnit(
    String serial, String key, String harness, String title, String drawing, String revision) {}

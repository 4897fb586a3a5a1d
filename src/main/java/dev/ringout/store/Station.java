package dev.ringout.store;

/**
 * What a station carries into every test.
 *
 * @param added when it was kept
 * @param body rows of the sheet Job: a name and a value a line
 */
public record Station(String name, String added, String body) {}

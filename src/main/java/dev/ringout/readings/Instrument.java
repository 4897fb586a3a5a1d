package dev.ringout.readings;

/**
 * What a job sheet says of one meter.
 *
 * @param use what it was used for; both kinds where the sheet names one instrument alone
 * @param name as written, or empty
 * @param number as written, or empty
 * @param calibrationDue as written, or empty
 */
public record Instrument(String use, String name, String number, String calibrationDue) {}

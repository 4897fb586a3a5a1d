package dev.ringout.harness;

import dev.ringout.source.Place;
import java.util.OptionalDouble;

/**
 * A crimp as it was made, in the order of the sheet; one with a pull is a pull-test sample.
 *
 * @param wire the wire's number
 * @param contact the contact's part number or size, or empty
 * @param stripMillimetres how far the wire was stripped
 * @param pullNewtons the measured pull; absent where the crimp was not pulled
 * @param standard the standard that the pull is held against, or empty
 */
public record Crimp(
    String wire,
    String contact,
    String tool,
    String positioner,
    String setting,
    OptionalDouble stripMillimetres,
    OptionalDouble pullNewtons,
    String standard,
    Place place) {}

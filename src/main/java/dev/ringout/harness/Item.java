package dev.ringout.harness;

import dev.ringout.source.Place;

/** Anything that has points: connector, strip, splice, stud, switch, relay or part. */
public record Item(
    String ref,
    String kind,
    String part,
    String arrangement,
    String location,
    String mates,
    String note,
    Place place) {}

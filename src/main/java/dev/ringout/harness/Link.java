package dev.ringout.harness;

import dev.ringout.source.Place;

/** A joint without a wire: strip jumper, bus bar, splice barrel, internal bridge. */
public record Link(Point from, Point to, String note, Place place) {}

package dev.ringout.harness;

import dev.ringout.source.Place;

/** A joint without a wire: strip jumper, bus bar, splice barrel, internal bridge. */
public record Link(Point from, Point to, String note, Place place) {
  /** As a sheet names it: {@code TB1-4/5}. */
  public String name() {
    return from.ref().equals(to.ref()) ? from + "/" + to.pin() : from + "/" + to;
  }
}

package dev.ringout.support;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Place;
import dev.ringout.units.Gauge;
import dev.ringout.units.Length;
import java.util.Optional;

/** Wires with a gauge and a length and nothing else, for tests. */
public final class PlainWires {
  private PlainWires() {}

  /** One wire. */
  public static Wire of(
      String name, Point from, Point to, Gauge gauge, double metres, Place place) {
    return Wire.of(name, from, to, place)
        .madeOf(
            Wire.Make.UNSAID.ofGauge(Optional.of(gauge)).ofLength(Optional.of(new Length(metres))));
  }
}

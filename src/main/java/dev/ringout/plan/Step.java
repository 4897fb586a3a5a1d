package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.Probing;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Meter;
import dev.ringout.readings.Reading;
import dev.ringout.readings.Side;
import dev.ringout.source.Place;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One reading to take.
 *
 * @param number its place in the order, from 1
 * @param probing where the probes go and how the switches stand
 * @param expected what a good unit shows
 * @param minOhms the least that passes; absent where any low value does
 * @param maxOhms the most that passes; absent where any high value does
 * @param volts direct current, of an insulation test
 * @param purpose what it proves
 * @param ofWhat the wire, part or contact that it is about, or empty
 * @param samePoint whether its first probe stays where the step before had a probe
 */
public record Step(
    int number,
    Reading.Kind kind,
    Probing probing,
    Expected expected,
    OptionalDouble minOhms,
    OptionalDouble maxOhms,
    OptionalDouble volts,
    Purpose purpose,
    String ofWhat,
    boolean samePoint) {

  /** What a step proves. */
  public enum Purpose {
    /** A wire, link or net in one piece. */
    JOIN,
    /** A wire that others go around. */
    LOOP,
    /** A switch contact closed, or open. */
    CONTACT,
    /** A part as listed. */
    PART,
    /** Nets apart. */
    APART
  }

  /**
   * The reading once a meter has shown something.
   *
   * @param place its cell, or nowhere: then it is known by its step
   */
  public Reading read(Circuit circuit, Measured measured, Place place) {
    return new Reading(
        kind,
        "" + number,
        side(circuit, probing.from()),
        probing.toRest() ? new Side.Rest() : side(circuit, probing.to()),
        probing.state(),
        measured,
        Meter.UNKNOWN,
        volts,
        OptionalDouble.empty(),
        Optional.empty(),
        "",
        "",
        place);
  }

  private static Side side(Circuit circuit, int[] points) {
    return new Side.Points(Arrays.stream(points).mapToObj(circuit::point).toList());
  }

  Step at(int place, boolean stays) {
    return new Step(
        place, kind, probing, expected, minOhms, maxOhms, volts, purpose, ofWhat, stays);
  }

  Step probedAt(Probing other) {
    return new Step(
        number, kind, other, expected, minOhms, maxOhms, volts, purpose, ofWhat, samePoint);
  }
}

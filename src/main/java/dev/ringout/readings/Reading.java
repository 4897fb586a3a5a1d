package dev.ringout.readings;

import dev.ringout.harness.SwitchState;
import dev.ringout.source.Place;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One row of a test sheet.
 *
 * @param meter what is known of the meter
 * @param volts the insulation test voltage that was applied
 * @param seconds how long it was applied
 * @param time as written; compared as an instant where it is one
 * @param place the cell of the reading
 */
public record Reading(
    Kind kind,
    String step,
    Side from,
    Side to,
    SwitchState state,
    Measured measured,
    Meter meter,
    OptionalDouble volts,
    OptionalDouble seconds,
    Optional<TimeOfReading> time,
    String by,
    String note,
    Place place) {

  /**
   * A row.
   *
   * @throws IllegalArgumentException where its volts are no number: nothing could be held against
   *     them
   */
  public Reading {
    if (volts.isPresent() && Double.isNaN(volts.getAsDouble())) {
      throw new IllegalArgumentException("volts that are no number");
    }
  }

  /** Which test. */
  public enum Kind {
    CONTINUITY,
    INSULATION
  }

  /** The same probing with the meter's leads exchanged, and what was read then. */
  public Reading reversed(Measured measuredThen, Place placeThen) {
    return with(to, from, state, measuredThen, placeThen);
  }

  /** The same value as if it had been read where another row's probes belong. */
  public Reading at(Reading row) {
    return with(row.from, row.to, row.state, measured, place);
  }

  /** The same row with another value. */
  public Reading saying(Measured other) {
    return with(from, to, state, other, place);
  }

  /** The same reading with another meter. */
  public Reading with(Meter other) {
    return new Reading(
        kind, step, from, to, state, measured, other, volts, seconds, time, by, note, place);
  }

  /** The same reading with the volts of its whole sheet. */
  public Reading at(OptionalDouble voltsOfSheet) {
    return new Reading(
        kind, step, from, to, state, measured, meter, voltsOfSheet, seconds, time, by, note, place);
  }

  private Reading with(
      Side otherFrom,
      Side otherTo,
      SwitchState otherState,
      Measured otherMeasured,
      Place otherPlace) {
    return new Reading(
        kind,
        step,
        otherFrom,
        otherTo,
        otherState,
        otherMeasured,
        meter,
        volts,
        seconds,
        time,
        by,
        note,
        otherPlace);
  }

  /**
   * Whether it is the same reading, however it is written: of the same cell, or where it stands in
   * no file, of the same step of the same plan.
   */
  public boolean isSameAs(Reading other) {
    return place.equals(other.place) && (!place.isNowhere() || isOfStep(other));
  }

  private boolean isOfStep(Reading other) {
    return kind == other.kind && step.equals(other.step);
  }

  /** A number that is the same for what {@link #isSameAs} calls the same reading. */
  public int identity() {
    return place.isNowhere() ? 31 * step.hashCode() + kind.name().hashCode() : place.hashCode();
  }

  /** From, to and state in one line: {@code J1-A to P2-1 (S1=OPEN)}. */
  public String subject() {
    return from + " to " + to + (state.isNormal() ? "" : " (" + state + ")");
  }
}

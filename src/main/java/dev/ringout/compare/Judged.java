package dev.ringout.compare;

import dev.ringout.circuit.Expected;
import dev.ringout.circuit.JoinLimits.JoinLimit;
import dev.ringout.circuit.Probing;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.units.OhmsRange;

/**
 * A reading with its verdict.
 *
 * @param value for a join: what its value says beyond that it is one
 * @param seen the resistances between the two sides that the reading leaves possible: the meter's
 *     uncertainty to either side, the leads taken off; anything where it is no number
 * @param limit the highest value that counted as joined
 * @param why for what was not judged: why not
 * @param touchedSince the nets that were touched after it was taken: of them it proves nothing
 */
public record Judged(
    Reading reading,
    Probing probing,
    Expected expected,
    Observed observed,
    Outcome outcome,
    ValueVerdict value,
    OhmsRange seen,
    JoinLimit limit,
    String why,
    TouchedNets touchedSince) {

  /** The same reading with another verdict. */
  Judged as(Observed otherObserved, Outcome otherOutcome, String otherWhy) {
    return new Judged(
        reading,
        probing,
        expected,
        otherObserved,
        otherOutcome,
        value,
        seen,
        limit,
        otherWhy,
        touchedSince);
  }

  /** The same reading, some nets of whose other side have been touched since. */
  Judged before(TouchedNets touched) {
    return touched.isEmpty()
        ? this
        : new Judged(
            reading, probing, expected, observed, outcome, value, seen, limit, why, touched);
  }

  /** Whether it shows its two sides joined as they should be. */
  boolean provesJoin() {
    return reading.kind() == Reading.Kind.CONTINUITY
        && outcome.passes()
        && expected instanceof Expected.Joined;
  }

  /** Whether it holds its two sides apart: open, or through parts that show no direct join. */
  boolean provesApart() {
    return observed == Observed.APART
        || (outcome.passes()
            && expected instanceof Expected.ThroughParts parts
            && parts.holdsApart(seen));
  }

  /** The least that the sides may have: what was read, or what it was more than. */
  double atLeastOhms() {
    if (reading.measured() instanceof Measured.Value value) {
      return value.ohms();
    }
    if (reading.measured() instanceof Measured.MoreThan more) {
      return more.ohms();
    }
    if (reading.measured() instanceof Measured.OverRange over) {
      return over.rangeOhms().orElse(0);
    }
    // A word that the list lets count says "good", whatever the limit.
    return reading.measured() instanceof Measured.Word ? Double.POSITIVE_INFINITY : 0;
  }

  /** Whether it shows the insulation between its two sides to be as good as is asked of them. */
  boolean provesInsulation() {
    return reading.kind() == Reading.Kind.INSULATION && outcome.passes();
  }

  /** A reading is known by its cell. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Judged judged && reading.place().equals(judged.reading.place());
  }

  @Override
  public int hashCode() {
    return reading.place().hashCode();
  }
}

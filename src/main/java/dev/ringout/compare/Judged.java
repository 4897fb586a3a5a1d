package dev.ringout.compare;

import dev.ringout.circuit.Expected;
import dev.ringout.circuit.JoinLimits.JoinLimit;
import dev.ringout.circuit.Probing;
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
    String why) {

  /** The same reading with another verdict. */
  Judged as(Observed otherObserved, Outcome otherOutcome, String otherWhy) {
    return new Judged(
        reading, probing, expected, otherObserved, otherOutcome, value, seen, limit, otherWhy);
  }

  /** Whether it shows its two sides joined as they should be. */
  boolean provesJoin() {
    return reading.kind() == Reading.Kind.CONTINUITY
        && outcome == Outcome.CONFORMS
        && expected instanceof Expected.Joined;
  }

  /** Whether it holds its two sides apart: open, or through parts that show no direct join. */
  boolean provesApart() {
    return observed == Observed.APART
        || (outcome == Outcome.CONFORMS && expected instanceof Expected.ThroughParts);
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

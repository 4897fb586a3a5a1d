package dev.ringout.compare;

import dev.ringout.circuit.Expected;
import dev.ringout.circuit.JoinLimits.JoinLimit;
import dev.ringout.circuit.Probing;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.units.OhmsRange;
import java.util.Optional;

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
    Optional<NotJudged> why,
    TouchedNets touchedSince) {

  /** The same reading with another verdict. */
  Judged as(Observed otherObserved, Outcome otherOutcome) {
    return as(otherObserved, otherOutcome, Optional.empty());
  }

  /** The same reading, of which nothing can be said. */
  Judged notJudged(NotJudged reason) {
    return as(Observed.UNKNOWN, Outcome.NOT_JUDGED, Optional.of(reason));
  }

  private Judged as(Observed otherObserved, Outcome otherOutcome, Optional<NotJudged> otherWhy) {
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
    return reading.kind() == Reading.Kind.CONTINUITY && outcome.passes() && expected.isJoined();
  }

  /**
   * Whether it shows a join by the benefit of the doubt alone: above its limit, by less than the
   * digit that a display of which nothing is said may be off.
   */
  public boolean joinsWithinADigit() {
    return provesJoin()
        && reading
            .measured()
            .value()
            .filter(value -> value.ohms() - reading.meter().uncertaintyOhms(value) > limit.ohms())
            .isPresent();
  }

  /** Whether it holds its two sides apart: open, or through parts that show no direct join. */
  boolean provesApart() {
    return observed == Observed.APART
        || (outcome.passes()
            && expected.throughParts().filter(parts -> parts.holdsApart(seen)).isPresent());
  }

  /** The least that the sides may have: what was read, or what it was more than. */
  double atLeastOhms() {
    return reading.measured().match(AtLeast.CASES);
  }

  /** By what an insulation reading is at least: {@code OL} without a range says nothing. */
  private static final class AtLeast implements Measured.Cases<Double> {
    static final AtLeast CASES = new AtLeast();

    @Override
    public Double value(Measured.Value measured) {
      return measured.ohms();
    }

    @Override
    public Double belowZero(Measured.BelowZero measured) {
      return 0.0;
    }

    @Override
    public Double takenBack(Measured.TakenBack measured) {
      return 0.0;
    }

    @Override
    public Double moreThan(Measured.MoreThan measured) {
      return measured.ohms();
    }

    @Override
    public Double lessThan(Measured.LessThan measured) {
      return 0.0;
    }

    @Override
    public Double overRange(Measured.OverRange measured) {
      return measured.rangeOhms().orElse(0);
    }

    /** A word that the list lets count says "good", whatever the limit. */
    @Override
    public Double word(Measured.Word measured) {
      return Double.POSITIVE_INFINITY;
    }

    @Override
    public Double notTested(Measured.NotTested measured) {
      return 0.0;
    }
  }

  /** Whether it shows the insulation between its two sides to be as good as is asked of them. */
  boolean provesInsulation() {
    return reading.kind() == Reading.Kind.INSULATION && outcome.passes();
  }

  /** Known by its reading, whatever the verdict: one reading judged anew is the same one. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Judged judged && reading.isSameAs(judged.reading);
  }

  @Override
  public int hashCode() {
    return reading.identity();
  }
}

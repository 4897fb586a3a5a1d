package dev.ringout.compare;

import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;

/**
 * {@code OL} and {@code >200 M} where a high value is wanted.
 *
 * @param leastOhms what is asked
 * @param test of which kind the reading is: on continuity {@code OL} will do without a range
 */
record AtLeastSoMuch(double leastOhms, Reading.Kind test) {
  private static final Verdict GOOD = Verdict.of(Observed.APART, Outcome.CONFORMS);

  Verdict moreThan(Measured.MoreThan more) {
    return more.ohms() >= leastOhms
        ? GOOD
        : Verdict.notJudged(new NotJudged.MoreThanTooLittle(more, leastOhms, test));
  }

  Verdict overRange(Measured.OverRange over) {
    if (over.rangeOhms().isEmpty()) {
      return test == Reading.Kind.CONTINUITY
          ? GOOD
          : Verdict.notJudged(new NotJudged.RangeNotStated());
    }
    double rangeOhms = over.rangeOhms().getAsDouble();
    return rangeOhms >= leastOhms
        ? GOOD
        : Verdict.notJudged(new NotJudged.RangeTooLow(rangeOhms, leastOhms, test));
  }
}

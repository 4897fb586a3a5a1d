package dev.ringout.compare;

import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.harness.Part;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import java.util.List;

/**
 * A reading where parts alone join the two sides.
 *
 * @param expected what they may read together
 * @param parts the parts themselves
 */
record PartVerdict(MeterReading reading, ThroughParts expected, List<Part> parts)
    implements Measured.Cases<Verdict> {
  private AtLeastSoMuch open() {
    return new AtLeastSoMuch(reading.limits().openMinOhms(), Reading.Kind.CONTINUITY);
  }

  @Override
  public Verdict value(Measured.Value value) {
    Observed observed = reading.observe(value);
    boolean mayBeJoin = observed == Observed.JOINED || !expected.isAboveJoin(reading.seen());
    if (expected.allows(reading.seen()) && !(expected.mayBeAnything() && mayBeJoin)) {
      return reading.isTooCoarse(value, expected.halfWidthOhms())
              || (observed == Observed.JOINED && expected.lowOhms() > reading.limit().ohms())
          ? coarse(value)
          : Verdict.of(Observed.RESISTIVE, Outcome.CONFORMS);
    }
    if (observed == Observed.APART && expected.mayBeOpen()) {
      return Verdict.of(observed, Outcome.CONFORMS);
    }
    boolean joined =
        observed == Observed.JOINED
            || (expected.lowOhms() > reading.seen().highOhms()
                && reading.observeUnlisted(value) == Observed.JOINED);
    return joined
        ? Verdict.of(Observed.JOINED, Outcome.UNEXPECTED_JOIN)
        : Verdict.of(observed, Outcome.PART_VALUE);
  }

  /** A value that by itself is a join's is one, however coarse; another one tells nothing. */
  private Verdict coarse(Measured.Value value) {
    return value.ohms() <= reading.limit().ohms()
        ? Verdict.of(Observed.JOINED, Outcome.UNEXPECTED_JOIN)
        : reading.tooCoarse(value);
  }

  @Override
  public Verdict belowZero(Measured.BelowZero below) {
    return Verdict.notJudged(new NotJudged.BelowZero(below));
  }

  @Override
  public Verdict takenBack(Measured.TakenBack taken) {
    return Verdict.notJudged(new NotJudged.TakenBack(taken));
  }

  @Override
  public Verdict moreThan(Measured.MoreThan more) {
    return expected.mayBeOpen() ? open().moreThan(more) : above(more, more.ohms());
  }

  @Override
  public Verdict overRange(Measured.OverRange over) {
    return expected.mayBeOpen()
        ? open().overRange(over)
        : above(over, over.rangeOhms().orElse(reading.limits().openMinOhms()));
  }

  private Verdict above(Measured measured, double atLeastOhms) {
    return atLeastOhms >= expected.highOhms()
        ? Verdict.of(Observed.APART, Outcome.PART_VALUE)
        : Verdict.notJudged(new NotJudged.NothingAboutPart(measured, parts));
  }

  @Override
  public Verdict lessThan(Measured.LessThan less) {
    return less.ohms() < expected.lowOhms()
        ? Verdict.of(Observed.RESISTIVE, Outcome.PART_VALUE)
        : Verdict.notJudged(new NotJudged.NoValueOfPart(less, parts));
  }

  @Override
  public Verdict word(Measured.Word word) {
    return switch (word.meaning()) {
      case PASS, BEEP -> Verdict.notJudged(new NotJudged.NoValueOfPart(word, parts));
      case FAIL -> Verdict.of(Observed.UNKNOWN, Outcome.PART_VALUE);
    };
  }

  @Override
  public Verdict notTested(Measured.NotTested blank) {
    return Verdict.notTested();
  }
}

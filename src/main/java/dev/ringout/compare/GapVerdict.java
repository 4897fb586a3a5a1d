package dev.ringout.compare;

import dev.ringout.harness.Demands.WordUse;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;

/** A reading where the list joins nothing. */
record GapVerdict(MeterReading reading) implements Measured.Cases<Verdict> {
  private AtLeastSoMuch high() {
    return new AtLeastSoMuch(reading.limits().openMinOhms(), Reading.Kind.CONTINUITY);
  }

  @Override
  public Verdict value(Measured.Value value) {
    Observed observed = reading.observeUnlisted(value);
    return Verdict.of(
        observed,
        switch (observed) {
          case JOINED -> Outcome.UNEXPECTED_JOIN;
          case APART -> Outcome.CONFORMS;
          case RESISTIVE, UNKNOWN -> Outcome.RESISTIVE;
        });
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
    return high().moreThan(more);
  }

  @Override
  public Verdict lessThan(Measured.LessThan less) {
    return less.ohms() <= reading.limit().ohms()
        ? Verdict.of(Observed.JOINED, Outcome.UNEXPECTED_JOIN)
        : Verdict.of(Observed.RESISTIVE, Outcome.RESISTIVE);
  }

  @Override
  public Verdict overRange(Measured.OverRange over) {
    return high().overRange(over);
  }

  @Override
  public Verdict word(Measured.Word word) {
    if (word.meaning() != Measured.Meaning.PASS) {
      return Verdict.of(Observed.JOINED, Outcome.UNEXPECTED_JOIN);
    }
    return reading.limits().demands().allows(WordUse.GAPS)
        ? Verdict.of(Observed.APART, Outcome.CONFORMS)
        : Verdict.notJudged(new NotJudged.WordForValue(word));
  }

  @Override
  public Verdict notTested(Measured.NotTested blank) {
    return Verdict.notTested();
  }
}

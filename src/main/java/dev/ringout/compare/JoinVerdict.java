package dev.ringout.compare;

import dev.ringout.harness.Demands.WordUse;
import dev.ringout.harness.Limits;
import dev.ringout.readings.Measured;

/** A reading where the list joins the two sides. */
record JoinVerdict(MeterReading reading) implements Measured.Cases<Verdict> {
  private static final Verdict GOOD = Verdict.of(Observed.JOINED, Outcome.CONFORMS);
  private static final Verdict OPEN = Verdict.of(Observed.APART, Outcome.OPEN);

  private double limitOhms() {
    return reading.limit().ohms();
  }

  private Limits limits() {
    return reading.limits();
  }

  @Override
  public Verdict value(Measured.Value value) {
    Observed observed = reading.observe(value);
    if (observed == Observed.JOINED && reading.isTooCoarse(value, limitOhms())) {
      return reading.tooCoarse(value);
    }
    if (observed == Observed.JOINED && reading.isLessThanLeads(value)) {
      return Verdict.notJudged(
          new NotJudged.LessThanLeads(value, reading.limit().leads().lowOhms()));
    }
    return Verdict.of(
        observed,
        switch (observed) {
          case JOINED -> Outcome.CONFORMS;
          case APART -> Outcome.OPEN;
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
    if (more.ohms() >= limits().openMinOhms()) {
      return OPEN;
    }
    return more.ohms() >= limitOhms()
        ? Verdict.of(Observed.RESISTIVE, Outcome.RESISTIVE)
        : Verdict.notJudged(new NotJudged.MayBeWithinLimit(more, limitOhms()));
  }

  @Override
  public Verdict lessThan(Measured.LessThan less) {
    return less.ohms() <= limitOhms()
        ? GOOD
        : Verdict.notJudged(new NotJudged.MayBeAboveLimit(less, limitOhms()));
  }

  /** Whatever the range, it is above any limit for a joint. */
  @Override
  public Verdict overRange(Measured.OverRange over) {
    return OPEN;
  }

  @Override
  public Verdict word(Measured.Word word) {
    if (word.meaning() == Measured.Meaning.FAIL) {
      return OPEN;
    }
    boolean enough =
        limits()
            .demands()
            .words()
            .map(uses -> uses.contains(WordUse.JOINS))
            .orElse(!reading.limit().expected().isKnown());
    return enough ? GOOD : Verdict.notJudged(new NotJudged.WordForJoin(word, limitOhms()));
  }

  @Override
  public Verdict notTested(Measured.NotTested blank) {
    return Verdict.notTested();
  }
}

package dev.ringout.compare;

import dev.ringout.circuit.InsulationLimits.InsulationLimit;
import dev.ringout.harness.Demands.WordUse;
import dev.ringout.harness.Limits;
import dev.ringout.harness.Part;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import java.util.List;
import java.util.OptionalDouble;

/** An insulation reading by its value; what its volts make of that besides. */
record InsulationVerdict(InsulationLimit limit, Limits limits) implements Measured.Cases<Verdict> {
  private static final Verdict GOOD = Verdict.of(Observed.APART, Outcome.CONFORMS);

  /** What a tester shows across a join, for it divides hundreds of volts by its own limit. */
  private static final double NOTHING_OHMS = 1000;

  private static final Verdict JOINED = Verdict.of(Observed.JOINED, Outcome.LOW_INSULATION);
  private static final Verdict LOW = Verdict.of(Observed.UNKNOWN, Outcome.LOW_INSULATION);

  /**
   * The verdict of a reading.
   *
   * @param throughParts whether parts, and nothing else, join the two sides
   * @param parts they
   */
  Verdict of(Reading reading, boolean throughParts, List<Part> parts) {
    Verdict verdict = reading.measured().match(this);
    if (verdict.outcome() != Outcome.CONFORMS) {
      return throughParts ? Verdict.notJudged(new NotJudged.PartsBetween(parts)) : verdict;
    }
    OptionalDouble volts = reading.volts();
    if (volts.isEmpty()) {
      return Verdict.notJudged(new NotJudged.VoltsNotStated());
    }
    return volts.getAsDouble() < limit.leastVolts()
        ? Verdict.notJudged(new NotJudged.VoltsTooLow(volts.getAsDouble(), limit.leastVolts()))
        : verdict;
  }

  private AtLeastSoMuch high() {
    return new AtLeastSoMuch(limit.minOhms(), Reading.Kind.INSULATION);
  }

  @Override
  public Verdict value(Measured.Value value) {
    if (value.ohms() >= limit.minOhms()) {
      return GOOD;
    }
    if (value.ohms() >= limits.openMinOhms()) {
      return Verdict.of(Observed.APART, Outcome.LOW_INSULATION);
    }
    return isNothing(value) ? JOINED : LOW;
  }

  /** Whether the tester shows nothing, to digits that would show a leak. */
  private static boolean isNothing(Measured.Value value) {
    return value.ohms() - value.halfDigitOhms() <= 0
        && value.ohms() + value.halfDigitOhms() <= NOTHING_OHMS;
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
    return less.ohms() <= limit.minOhms()
        ? LOW
        : Verdict.notJudged(new NotJudged.InsulationMayBeEnough(less));
  }

  @Override
  public Verdict overRange(Measured.OverRange over) {
    return high().overRange(over);
  }

  @Override
  public Verdict word(Measured.Word word) {
    return switch (word.meaning()) {
      case PASS ->
          limits.demands().allows(WordUse.INSULATION)
              ? GOOD
              : Verdict.notJudged(new NotJudged.WordForValue(word));
      case FAIL -> LOW;
      case BEEP -> Verdict.notJudged(new NotJudged.BeepForInsulation());
    };
  }

  @Override
  public Verdict notTested(Measured.NotTested blank) {
    return Verdict.notTested();
  }
}

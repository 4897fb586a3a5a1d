package dev.ringout.compare;

import dev.ringout.harness.Part;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import java.util.List;

/** Why a reading that was made proves nothing. Each kind holds its facts; {@code words} says it. */
public sealed interface NotJudged {

  /** What is made of it, by its kind: a writer that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /** A good value above the range that the job sheet gives for the meter. */
  record BeyondRange(Measured measured, double rangeOhms) implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.beyondRange(this);
    }
  }

  /** Below zero, which no resistance is. */
  record BelowZero(Measured measured) implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.belowZero(this);
    }
  }

  /** Taken back by who read it. */
  record TakenBack(Measured measured) implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.takenBack(this);
    }
  }

  /** Less than the leads alone have, which are said to be in the readings. */
  record LessThanLeads(Measured measured, double leadOhms) implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.lessThanLeads(this);
    }
  }

  /** A word where a join's value is due. */
  record WordForJoin(Measured measured, double limitOhms) implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.wordForJoin(this);
    }
  }

  /** Less than so much, which is more than the limit of a join. */
  record MayBeAboveLimit(Measured measured, double limitOhms) implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.mayBeAboveLimit(this);
    }
  }

  /** More than so much, which is less than the limit of a join. */
  record MayBeWithinLimit(Measured measured, double limitOhms) implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.mayBeWithinLimit(this);
    }
  }

  /**
   * A value that may be off by more than what it is held against.
   *
   * @param mostOhms the most that it may be
   */
  record TooCoarse(double ohms, double mostOhms) implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.tooCoarse(this);
    }
  }

  /** A word where a value of nets apart is due. */
  record WordForValue(Measured measured) implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.wordForValue(this);
    }
  }

  /** Over a range that nothing states, where so much is asked. */
  record RangeNotStated() implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.rangeNotStated(this);
    }
  }

  /**
   * Over a range that is below what is asked.
   *
   * @param leastOhms what is asked: {@code open min}, or that of the insulation
   */
  record RangeTooLow(double rangeOhms, double leastOhms, Reading.Kind test) implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.rangeTooLow(this);
    }
  }

  /** More than so much, which is less than what is asked. */
  record MoreThanTooLittle(Measured measured, double leastOhms, Reading.Kind test)
      implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.moreThanTooLittle(this);
    }
  }

  /** A word, or less than so much, where a part's value is due. */
  record NoValueOfPart(Measured measured, List<Part> parts) implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noValueOfPart(this);
    }
  }

  /** A value of a join that any of some parts at its net may have by itself. */
  record MayBeThePart(Measured measured, List<Part> parts) implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.mayBeThePart(this);
    }
  }

  /** More than so much, which the part may be. */
  record NothingAboutPart(Measured measured, List<Part> parts) implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.nothingAboutPart(this);
    }
  }

  /** An insulation reading between two sides of one net. */
  record OneNet() implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.oneNet(this);
    }
  }

  /** An insulation reading through parts. */
  record PartsBetween(List<Part> parts) implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.partsBetween(this);
    }
  }

  /** An insulation reading of which nothing states the volts. */
  record VoltsNotStated() implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.voltsNotStated(this);
    }
  }

  /** An insulation reading at fewer volts than the limit asks for. */
  record VoltsTooLow(double volts, double leastVolts) implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.voltsTooLow(this);
    }
  }

  /** Less than so much, which is more than the insulation limit. */
  record InsulationMayBeEnough(Measured measured) implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.insulationMayBeEnough(this);
    }
  }

  /** A beep where insulation is due. */
  record BeepForInsulation() implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.beepForInsulation(this);
    }
  }

  /** Neither way through a diode conducts, and nothing shows that this meter opens one. */
  record DiodeNotOpened() implements NotJudged {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.diodeNotOpened(this);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link BeyondRange}. */
    T beyondRange(BeyondRange reason);

    /** See {@link BelowZero}. */
    T belowZero(BelowZero reason);

    /** See {@link TakenBack}. */
    T takenBack(TakenBack reason);

    /** See {@link LessThanLeads}. */
    T lessThanLeads(LessThanLeads reason);

    /** See {@link WordForJoin}. */
    T wordForJoin(WordForJoin reason);

    /** See {@link MayBeAboveLimit}. */
    T mayBeAboveLimit(MayBeAboveLimit reason);

    /** See {@link MayBeWithinLimit}. */
    T mayBeWithinLimit(MayBeWithinLimit reason);

    /** See {@link TooCoarse}. */
    T tooCoarse(TooCoarse reason);

    /** See {@link WordForValue}. */
    T wordForValue(WordForValue reason);

    /** See {@link RangeNotStated}. */
    T rangeNotStated(RangeNotStated reason);

    /** See {@link RangeTooLow}. */
    T rangeTooLow(RangeTooLow reason);

    /** See {@link MoreThanTooLittle}. */
    T moreThanTooLittle(MoreThanTooLittle reason);

    /** See {@link NoValueOfPart}. */
    T noValueOfPart(NoValueOfPart reason);

    /** See {@link MayBeThePart}. */
    T mayBeThePart(MayBeThePart reason);

    /** See {@link NothingAboutPart}. */
    T nothingAboutPart(NothingAboutPart reason);

    /** See {@link OneNet}. */
    T oneNet(OneNet reason);

    /** See {@link PartsBetween}. */
    T partsBetween(PartsBetween reason);

    /** See {@link VoltsNotStated}. */
    T voltsNotStated(VoltsNotStated reason);

    /** See {@link VoltsTooLow}. */
    T voltsTooLow(VoltsTooLow reason);

    /** See {@link InsulationMayBeEnough}. */
    T insulationMayBeEnough(InsulationMayBeEnough reason);

    /** See {@link BeepForInsulation}. */
    T beepForInsulation(BeepForInsulation reason);

    /** See {@link DiodeNotOpened}. */
    T diodeNotOpened(DiodeNotOpened reason);
  }
}

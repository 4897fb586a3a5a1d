package dev.ringout.check;

import dev.ringout.compare.LeadResistance;
import dev.ringout.readings.Instrument;
import dev.ringout.readings.Reading;
import dev.ringout.source.Place;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What makes a verdict less than its values alone: who, when, with what, and which unit. Each kind
 * holds its facts; the writers put them into words.
 */
public sealed interface Doubt {

  /** What is made of it, by its kind: a writer that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /** The doubt where it is one about the meter's leads. */
  default Optional<LeadsNotNulled> ofLeads() {
    return Optional.empty();
  }

  /**
   * A doubt as it stands in a result.
   *
   * @param withholds whether the list demands it settled: then the verdict waits for it
   */
  record Raised(Doubt doubt, boolean withholds) {}

  /** Nearly all readings are off by what a pair of leads may have. */
  record LeadsNotNulled(LeadResistance.AllOff leads) implements Doubt {
    @Override
    public Optional<LeadsNotNulled> ofLeads() {
      return Optional.of(this);
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.leadsNotNulled(this);
    }
  }

  /** An instrument was used after its calibration had run out. */
  record CalibrationExpired(Instrument instrument, LocalDate dueDay, LocalDate testDay)
      implements Doubt {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.calibrationExpired(this);
    }
  }

  /** Nothing says until when an instrument is in calibration. */
  record CalibrationNotStated(String file, Instrument instrument) implements Doubt {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.calibrationNotStated(this);
    }
  }

  /** What stands as the day on which an instrument is due is no day. */
  record CalibrationNotADay(Instrument instrument, String text) implements Doubt {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.calibrationNotADay(this);
    }
  }

  /**
   * Nothing says on which day a file's readings were taken.
   *
   * @param instrument the one of which it can't be told whether it was in calibration
   */
  record TestDayNotStated(String file, Optional<Instrument> instrument) implements Doubt {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.testDayNotStated(this);
    }
  }

  /** What stands as the day of the test is no day. */
  record TestDayNotADay(Place place, String text) implements Doubt {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.testDayNotADay(this);
    }
  }

  /** Nothing says which unit was tested. */
  record SerialNumberNotStated() implements Doubt {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.serialNumberNotStated(this);
    }
  }

  /** The list is for other units than the one that was tested. */
  record NotEffective(String serial, String effectivity) implements Doubt {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.notEffective(this);
    }
  }

  /** For which units the list is can't be told. */
  record EffectivityNotUnderstood(String text) implements Doubt {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.effectivityNotUnderstood(this);
    }
  }

  /** Nobody else has looked at it. */
  record TesterIsInspector(String name) implements Doubt {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.testerIsInspector(this);
    }
  }

  /** The list demands an inspector, and a file names none. */
  record NoInspector(String file) implements Doubt {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noInspector(this);
    }
  }

  /** The list demands an inspector who is not the tester, and a file does not say who tested. */
  record NoTester(String file) implements Doubt {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noTester(this);
    }
  }

  /**
   * Values above the range that their job gives for the instrument.
   *
   * @param count how many
   * @param first the cell of the first
   */
  record BeyondRange(Reading.Kind kind, int count, Place first, double rangeOhms) implements Doubt {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.beyondRange(this);
    }
  }

  /**
   * Joins above their limit by no more than one digit of a meter of whose accuracy nothing is said.
   *
   * @param count how many
   * @param first the cell of the first
   */
  record WithinADigit(int count, Place first) implements Doubt {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.withinADigit(this);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link LeadsNotNulled}. */
    T leadsNotNulled(LeadsNotNulled doubt);

    /** See {@link CalibrationExpired}. */
    T calibrationExpired(CalibrationExpired doubt);

    /** See {@link CalibrationNotStated}. */
    T calibrationNotStated(CalibrationNotStated doubt);

    /** See {@link CalibrationNotADay}. */
    T calibrationNotADay(CalibrationNotADay doubt);

    /** See {@link TestDayNotStated}. */
    T testDayNotStated(TestDayNotStated doubt);

    /** See {@link TestDayNotADay}. */
    T testDayNotADay(TestDayNotADay doubt);

    /** See {@link SerialNumberNotStated}. */
    T serialNumberNotStated(SerialNumberNotStated doubt);

    /** See {@link NotEffective}. */
    T notEffective(NotEffective doubt);

    /** See {@link EffectivityNotUnderstood}. */
    T effectivityNotUnderstood(EffectivityNotUnderstood doubt);

    /** See {@link TesterIsInspector}. */
    T testerIsInspector(TesterIsInspector doubt);

    /** See {@link NoInspector}. */
    T noInspector(NoInspector doubt);

    /** See {@link NoTester}. */
    T noTester(NoTester doubt);

    /** See {@link BeyondRange}. */
    T beyondRange(BeyondRange doubt);

    /** See {@link WithinADigit}. */
    T withinADigit(WithinADigit doubt);
  }
}

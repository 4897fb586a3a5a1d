package dev.ringout.readings;

import dev.ringout.units.Ohms;
import java.util.OptionalDouble;

/**
 * What the meter said. Not measured, over range and a word without a number are kinds of their own.
 */
public sealed interface Measured {

  /** As shown to the user. */
  String text();

  /** Whether a value or a word was written at all. */
  default boolean made() {
    return true;
  }

  /**
   * A number.
   *
   * @param halfDigitOhms half of the last digit written: {@code 0.1} was anything from 0.05 to 0.15
   */
  record Value(double ohms, double halfDigitOhms) implements Measured {
    @Override
    public String text() {
      return Ohms.text(ohms);
    }
  }

  /** {@code >200 M}: more than so much. */
  record MoreThan(double ohms) implements Measured {
    @Override
    public String text() {
      return "> " + Ohms.text(ohms);
    }
  }

  /** {@code <0.1}: less than so much. */
  record LessThan(double ohms) implements Measured {
    @Override
    public String text() {
      return "< " + Ohms.text(ohms);
    }
  }

  /**
   * {@code OL}: above the meter's range, which the job sheet may give.
   *
   * @param typed as written on the sheet: {@code OPEN}, {@code ∞}
   */
  record OverRange(OptionalDouble rangeOhms, String typed) implements Measured {
    /** Written {@code OL}. */
    public OverRange(OptionalDouble rangeOhms) {
      this(rangeOhms, "OL");
    }

    @Override
    public String text() {
      return typed;
    }
  }

  /** What a word without a number says. */
  enum Meaning {
    /** The meter sounded: joined. */
    BEEP,
    /** As it should be. */
    PASS,
    /** Not as it should be. */
    FAIL
  }

  /**
   * A word without a number.
   *
   * @param typed as written on the sheet: {@code OK}, {@code ✓}; never another word for it
   */
  record Word(Meaning meaning, String typed) implements Measured {
    @Override
    public String text() {
      return typed;
    }
  }

  /** Blank or {@code N/T}. Never a pass. */
  record NotTested() implements Measured {
    @Override
    public String text() {
      return "not tested";
    }

    @Override
    public boolean made() {
      return false;
    }
  }
}

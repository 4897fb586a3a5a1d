package dev.ringout.readings;

import dev.ringout.units.Ohms;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the meter said. Not measured, over range and a word without a number are kinds of their own.
 */
public sealed interface Measured {

  /** What is made of it, by its kind: a use that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /** As shown to the user. */
  String text();

  /** Whether a value or a word was written at all. */
  default boolean made() {
    return true;
  }

  /** The number that was read; absent where it is none. */
  default Optional<Value> value() {
    return Optional.empty();
  }

  /** Whether it is below zero, which no resistance is. */
  default boolean isBelowZero() {
    return false;
  }

  /** Whether it was taken back. */
  default boolean isTakenBack() {
    return false;
  }

  /** What it was more than; absent where the meter said no such thing. */
  default Optional<MoreThan> moreThan() {
    return Optional.empty();
  }

  /** What it was less than; absent where the meter said no such thing. */
  default Optional<LessThan> lessThan() {
    return Optional.empty();
  }

  /** Whether it was above a range that nobody gave. */
  default boolean isAboveUnknownRange() {
    return false;
  }

  /** The least that it was: infinite for {@code OL} without a range, nothing for a word. */
  default double atLeastOhms() {
    return 0;
  }

  /** The most that it was: infinite where it is more than so much, or a word. */
  default double atMostOhms() {
    return Double.POSITIVE_INFINITY;
  }

  /** The number written that it was, or was more than; absent where none such stands there. */
  default OptionalDouble writtenAtLeastOhms() {
    return OptionalDouble.empty();
  }

  /** Whether it is above the meter's range. */
  default boolean isOverRange() {
    return false;
  }

  /** The same on a meter of a range: {@code OL} is above it. */
  default Measured within(OptionalDouble rangeOhms) {
    return this;
  }

  /** Whether it is a word without a number. */
  default boolean isWord() {
    return false;
  }

  /**
   * A number.
   *
   * @param halfDigitOhms half of the last digit written: {@code 0.1} was anything from 0.05 to 0.15
   */
  record Value(double ohms, double halfDigitOhms) implements Measured {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.value(this);
    }

    @Override
    public Optional<Value> value() {
      return Optional.of(this);
    }

    @Override
    public double atLeastOhms() {
      return ohms;
    }

    @Override
    public double atMostOhms() {
      return ohms;
    }

    @Override
    public OptionalDouble writtenAtLeastOhms() {
      return OptionalDouble.of(ohms);
    }

    @Override
    public String text() {
      return Ohms.text(ohms);
    }
  }

  /**
   * Below zero, or less than a number that is. No resistance is: something else drove the meter,
   * such as voltage on the circuit, or its leads were nulled too far. Of the two sides it says
   * nothing, so it is no number to anyone who asks for one.
   *
   * @param shown as shown to the user
   */
  record BelowZero(double ohms, String shown) implements Measured {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.belowZero(this);
    }

    @Override
    public boolean isBelowZero() {
      return true;
    }

    @Override
    public String text() {
      return shown;
    }
  }

  /** {@code >200 M}: more than so much. */
  record MoreThan(double ohms) implements Measured {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.moreThan(this);
    }

    @Override
    public Optional<MoreThan> moreThan() {
      return Optional.of(this);
    }

    @Override
    public double atLeastOhms() {
      return ohms;
    }

    @Override
    public OptionalDouble writtenAtLeastOhms() {
      return OptionalDouble.of(ohms);
    }

    @Override
    public String text() {
      return "> " + Ohms.text(ohms);
    }
  }

  /** {@code <0.1}: less than so much. */
  record LessThan(double ohms) implements Measured {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.lessThan(this);
    }

    @Override
    public Optional<LessThan> lessThan() {
      return Optional.of(this);
    }

    @Override
    public double atMostOhms() {
      return ohms;
    }

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
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.overRange(this);
    }

    @Override
    public boolean isAboveUnknownRange() {
      return rangeOhms.isEmpty();
    }

    @Override
    public double atLeastOhms() {
      return rangeOhms.orElse(Double.POSITIVE_INFINITY);
    }

    /** Written {@code OL}. */
    public OverRange(OptionalDouble rangeOhms) {
      this(rangeOhms, "OL");
    }

    @Override
    public boolean isOverRange() {
      return true;
    }

    @Override
    public Measured within(OptionalDouble otherRangeOhms) {
      return new OverRange(otherRangeOhms, typed);
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
    public <T> T match(Cases<T> cases) {
      return cases.word(this);
    }

    @Override
    public boolean isWord() {
      return true;
    }

    @Override
    public String text() {
      return typed;
    }
  }

  /** Blank or {@code N/T}. Never a pass. */
  record NotTested() implements Measured {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.notTested(this);
    }

    @Override
    public String text() {
      return "not tested";
    }

    @Override
    public boolean made() {
      return false;
    }
  }

  /**
   * Taken back by who read it: neither it nor what was read of the same points before counts.
   *
   * @param typed as written on the sheet, with what it was: {@code taken back: 0.31}
   */
  record TakenBack(String typed) implements Measured {
    /** How it begins, however it goes on. */
    public static final String WORDS = "taken back";

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.takenBack(this);
    }

    @Override
    public boolean isTakenBack() {
      return true;
    }

    @Override
    public String text() {
      return typed;
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link Value}. */
    T value(Value measured);

    /** See {@link BelowZero}. */
    T belowZero(BelowZero measured);

    /** See {@link MoreThan}. */
    T moreThan(MoreThan measured);

    /** See {@link LessThan}. */
    T lessThan(LessThan measured);

    /** See {@link OverRange}. */
    T overRange(OverRange measured);

    /** See {@link Word}. */
    T word(Word measured);

    /** See {@link NotTested}. */
    T notTested(NotTested measured);

    /** See {@link TakenBack}. */
    T takenBack(TakenBack measured);
  }
}

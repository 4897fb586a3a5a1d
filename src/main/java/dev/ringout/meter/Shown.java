package dev.ringout.meter;

import dev.ringout.readings.Measured;
import java.util.Optional;
import java.util.OptionalDouble;

/** What one line of a meter says. */
public sealed interface Shown {
  /** More volts than any insulation tester has. */
  double MOST_VOLTS = 20_000;

  /** No value is said in so many letters; what is longer is noise, and would take its time. */
  int MOST_LETTERS = 256;

  /** What is made of it, by its kind. */
  <T> T match(Cases<T> cases);

  /** The resistance; absent where it says none. */
  default Optional<Resistance> resistance() {
    return Optional.empty();
  }

  /** Whether the meter has no value now. */
  default boolean isNoValue() {
    return false;
  }

  /** Whether it can be read at all. */
  default boolean isReadable() {
    return true;
  }

  /** The unit of something else than ohms; absent where it is ohms, or nothing. */
  default Optional<String> otherUnit() {
    return Optional.empty();
  }

  /** Whether it is ohms of an insulation tester without the volts of the test. */
  default boolean lacksVolts() {
    return false;
  }

  /**
   * Ohms.
   *
   * @param measured never a word, and never nothing
   * @param volts that an insulation tester put on, where it says so
   */
  record Resistance(Measured measured, OptionalDouble volts) implements Shown {
    /** Of a meter that says no volts. */
    public Resistance(Measured measured) {
      this(measured, OptionalDouble.empty());
    }

    @Override
    public Optional<Resistance> resistance() {
      return Optional.of(this);
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.resistance(this);
    }
  }

  /** The meter has no value now: it changes its range, or says 9.91E37. */
  record NoValue() implements Shown {
    @Override
    public boolean isNoValue() {
      return true;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.noValue(this);
    }
  }

  /** The display is held, or shows the least or the most so far: not what the probes touch now. */
  record Held(String word) implements Shown {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.held(this);
    }
  }

  /** Volts, amperes, degrees: the meter is not set to ohms. */
  record OtherQuantity(String unit) implements Shown {
    @Override
    public Optional<String> otherUnit() {
      return Optional.of(unit);
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.otherQuantity(this);
    }
  }

  /** Ohms of an insulation tester that says no volts: insulation is judged at some. */
  record WithoutVolts() implements Shown {
    @Override
    public boolean lacksVolts() {
      return true;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.withoutVolts(this);
    }
  }

  /** No line of a meter, or one that could be read in two ways. */
  record Unreadable() implements Shown {
    @Override
    public boolean isReadable() {
      return false;
    }

    @Override
    public <T> T match(Cases<T> cases) {
      return cases.unreadable(this);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link Resistance}. */
    T resistance(Resistance shown);

    /** See {@link NoValue}. */
    T noValue(NoValue shown);

    /** See {@link Held}. */
    T held(Held shown);

    /** See {@link OtherQuantity}. */
    T otherQuantity(OtherQuantity shown);

    /** See {@link WithoutVolts}. */
    T withoutVolts(WithoutVolts shown);

    /** See {@link Unreadable}. */
    T unreadable(Unreadable shown);
  }
}

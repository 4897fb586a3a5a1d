package dev.ringout.meter;

import dev.ringout.readings.Measured;
import dev.ringout.units.Numbers;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One value of a meter, as it is kept: what the meter said goes before what was understood.
 *
 * @param raw the meter's own text, or what was typed
 * @param measured what that says
 * @param volts that an insulation tester put on, where it says so
 * @param at when it had been said
 * @param meter which meter said it
 * @param entered how it came in
 */
public record MeterReading(
    String raw,
    Measured measured,
    OptionalDouble volts,
    Instant at,
    MeterIdentity meter,
    HowEntered entered) {
  private static final int FIELDS = 9;

  /** Whether it was above the meter's range. */
  public boolean isOverRange() {
    return measured.isOverRange();
  }

  /**
   * All of it that can't be derived again, for an entry of a store. What was understood is not
   * among it: that is read from the raw text each time.
   */
  public List<String> fields() {
    return List.of(
        raw,
        isOverRange() ? "over" : "",
        volts.isPresent() ? Numbers.plain(volts.getAsDouble()) : "",
        at.toString(),
        meter.address(),
        meter.text(),
        meter.profile(),
        meter.practice() ? "practice" : "",
        entered.word());
  }

  /**
   * The reading that was kept as {@link #fields}; absent where they are none.
   *
   * @param read what makes a value of the raw text, given the profile that it was read by
   */
  public static Optional<MeterReading> of(List<String> fields, Reader read) {
    if (fields.size() != FIELDS) {
      return Optional.empty();
    }
    Optional<Measured> measured = read.measured(fields.get(0), fields.get(6));
    Optional<HowEntered> how = HowEntered.of(fields.get(8));
    if (measured.isEmpty() || how.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new MeterReading(
              fields.get(0),
              measured.get(),
              fields.get(2).isEmpty()
                  ? OptionalDouble.empty()
                  : OptionalDouble.of(Double.parseDouble(fields.get(2))),
              Instant.parse(fields.get(3)),
              new MeterIdentity(
                  fields.get(4), fields.get(5), fields.get(6), fields.get(7).equals("practice")),
              how.get()));
    } catch (NumberFormatException | DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** Makes a value of what a meter said. */
  public interface Reader {
    /** The value; absent where the text is none. */
    Optional<Measured> measured(String raw, String profile);
  }
}

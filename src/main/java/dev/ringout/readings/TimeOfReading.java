package dev.ringout.readings;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * When a reading was taken, by the operator's clock.
 *
 * @param at a time of day alone stands on the first day of the epoch
 */
public record TimeOfReading(LocalDateTime at) implements Comparable<TimeOfReading> {
  /** The day; absent where only the time of day was written. */
  public Optional<LocalDate> day() {
    return Optional.of(at.toLocalDate()).filter(day -> !day.equals(LocalDate.EPOCH));
  }

  /** As far as it was noted: a time of day alone without the day that it does not have. */
  public String text() {
    return (day().isPresent() ? at : at.toLocalTime()).toString().replace('T', ' ');
  }

  @Override
  public int compareTo(TimeOfReading other) {
    return at.compareTo(other.at);
  }
}

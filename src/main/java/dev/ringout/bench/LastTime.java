package dev.ringout.bench;

import dev.ringout.check.TestDay;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.TimeOfReading;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * The latest time that anything read of a unit gives. Which of two readings stands is told by their
 * times, wherever they are read; so what comes after another is written as later, though a clock
 * was set back, or that of another bench goes otherwise.
 */
final class LastTime {
  private LocalDateTime last = LocalDateTime.MIN;

  LastTime(ReadingSet readings) {
    Optional<LocalDate> day = TestDay.of(readings, Optional.empty());
    day.ifPresent(one -> later(one.atStartOfDay()));
    for (Reading reading : readings.readings()) {
      reading.time().ifPresent(time -> later(at(time, day)));
    }
  }

  /** A time of day alone may be of the last day. */
  private static LocalDateTime at(TimeOfReading time, Optional<LocalDate> day) {
    return time.day().isPresent() || day.isEmpty()
        ? time.at()
        : day.get().atTime(time.at().toLocalTime());
  }

  private void later(LocalDateTime other) {
    last = other.isAfter(last) ? other : last;
  }

  /** One more was read. */
  void read(TimeOfReading time) {
    later(time.at());
  }

  /** The time of a reading that comes now: later than all others, to the second. */
  LocalDateTime next(LocalDateTime clock) {
    LocalDateTime second = clock.truncatedTo(ChronoUnit.SECONDS);
    return second.isAfter(last) || last.equals(LocalDateTime.MIN)
        ? second
        : last.truncatedTo(ChronoUnit.SECONDS).plusSeconds(1);
  }
}

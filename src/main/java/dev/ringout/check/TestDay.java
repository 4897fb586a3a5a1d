package dev.ringout.check;

import dev.ringout.readings.Day;
import dev.ringout.readings.Job;
import dev.ringout.readings.Jobs;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.readings.TimeOfReading;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The day of the test: the last that the job sheet, the times of its readings and whoever writes
 * the record give. A calibration that ran out between two of them had run out for some reading.
 */
public final class TestDay {
  private final Optional<LocalDate> stated;
  private final Map<String, LocalDate> lastReading = new HashMap<>();

  private TestDay(Optional<LocalDate> stated) {
    this.stated = stated;
  }

  /** The days of some readings, by their files. */
  static TestDay byFile(ReadingSet readings, Optional<LocalDate> stated) {
    TestDay days = new TestDay(stated);
    Jobs jobs = new Jobs(readings.jobs());
    for (Reading reading : readings.readings()) {
      if (reading.measured().made()) {
        String file = jobs.of(reading.place()).map(Job::file).orElse(reading.place().file());
        reading
            .time()
            .flatMap(TimeOfReading::day)
            .ifPresent(day -> days.lastReading.merge(file, day, TestDay::later));
      }
    }
    return days;
  }

  /** The last day that anything gives. */
  public static Optional<LocalDate> of(ReadingSet readings, Optional<LocalDate> stated) {
    TestDay days = byFile(readings, stated);
    return Stream.concat(
            readings.jobs().stream().flatMap(job -> days.of(job).stream()),
            Stream.concat(days.lastReading.values().stream(), stated.stream()))
        .max(LocalDate::compareTo);
  }

  /** The day of one file's readings. */
  Optional<LocalDate> of(Job job) {
    return Stream.of(Day.ofTest(job), Optional.ofNullable(lastReading.get(job.file())), stated)
        .flatMap(Optional::stream)
        .max(LocalDate::compareTo);
  }

  private static LocalDate later(LocalDate one, LocalDate other) {
    return one.isAfter(other) ? one : other;
  }
}

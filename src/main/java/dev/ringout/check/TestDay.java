package dev.ringout.check;

import dev.ringout.readings.Job;
import dev.ringout.readings.Jobs;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The day of the test: the last that the job sheet, the times of its readings and whoever writes
 * the record give. A calibration that ran out between two of them had run out for some reading.
 */
public final class TestDay {
  private static final List<String> NAMES =
      List.of("date", "date of test", "date of the test", "test date", "test day");

  /** A spreadsheet's day may have the time of day behind it. */
  private static final Pattern DAY =
      Pattern.compile("(\\d{4}-\\d{2}-\\d{2})(?:[T ]\\d{2}:\\d{2}(?::\\d{2})?)?");

  private final Optional<LocalDate> stated;
  private final Map<String, LocalDate> lastReading = new HashMap<>();

  TestDay(ReadingSet readings, Optional<LocalDate> stated) {
    this.stated = stated;
    Jobs jobs = new Jobs(readings.jobs());
    for (Reading reading : readings.readings()) {
      if (reading.measured().made()) {
        reading
            .time()
            .flatMap(time -> time.day())
            .ifPresent(
                day ->
                    lastReading.merge(
                        jobs.of(reading.place()).map(Job::file).orElse(reading.place().file()),
                        day,
                        TestDay::later));
      }
    }
  }

  /** The last day that anything gives. */
  public static Optional<LocalDate> of(ReadingSet readings, Optional<LocalDate> stated) {
    TestDay days = new TestDay(readings, stated);
    return Stream.concat(
            readings.jobs().stream().flatMap(job -> days.of(job).stream()),
            Stream.concat(days.lastReading.values().stream(), stated.stream()))
        .max(LocalDate::compareTo);
  }

  /** The day of one file's readings. */
  Optional<LocalDate> of(Job job) {
    Stream<LocalDate> written =
        written(job).stream().flatMap(name -> day(job.value(name)).stream());
    return Stream.of(
            written, Optional.ofNullable(lastReading.get(job.file())).stream(), stated.stream())
        .flatMap(one -> one)
        .max(LocalDate::compareTo);
  }

  /** The rows of a job sheet that give the day of the test. */
  static List<String> written(Job job) {
    return NAMES.stream().filter(name -> !job.value(name).isEmpty()).toList();
  }

  /** A day in ISO form; absent where a text is none. */
  static Optional<LocalDate> day(String text) {
    var matcher = DAY.matcher(text.strip());
    try {
      return matcher.matches() ? Optional.of(LocalDate.parse(matcher.group(1))) : Optional.empty();
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private static LocalDate later(LocalDate one, LocalDate other) {
    return one.isAfter(other) ? one : other;
  }
}

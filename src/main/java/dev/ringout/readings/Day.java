package dev.ringout.readings;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.regex.Pattern;

/** A day as a cell writes it: the one reading of it for calibrations, tests and reworks. */
public final class Day {
  /** A spreadsheet's day may have the time of day behind it. */
  private static final Pattern WRITTEN =
      Pattern.compile("(\\d{4}-\\d{2}-\\d{2})(?:[T ]\\d{2}:\\d{2}(?::\\d{2})?)?");

  private Day() {}

  /** A day in ISO form; absent where a text is none. */
  public static Optional<LocalDate> of(String text) {
    var matcher = WRITTEN.matcher(text.strip());
    try {
      return matcher.matches() ? Optional.of(LocalDate.parse(matcher.group(1))) : Optional.empty();
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** The day of the test that a job sheet gives; absent where it gives none, or what is no day. */
  public static Optional<LocalDate> ofTest(Job job) {
    return of(job.value(Job.DATE));
  }
}

package dev.ringout.cells;

import dev.ringout.readings.TimeOfReading;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times and days as people and spreadsheets write them. */
public final class TimeCell {
  /** How a time may be written, for messages. */
  public static final String SUCH_AS = "2026-11-25 14:30, or 14:30";

  private static final Pattern TIME =
      Pattern.compile(
          "(?:(?<y>\\d{4})-(?<m>\\d{1,2})-(?<d>\\d{1,2})"
              + "|(?<dd>\\d{1,2})\\.(?<mm>\\d{1,2})\\.(?<yy>\\d{4}))?"
              + "(?<gap>\\s*T\\s*|\\s*,\\s*|\\s+|)"
              + "(?:(?<h>\\d{1,2}):(?<min>\\d{2})(?::(?<s>\\d{2})(?:\\.(?<f>\\d{1,9}))?)?"
              + "(?:\\s*(?<half>[AaPp])\\.?[Mm]\\.?)?)?");

  private TimeCell() {}

  /**
   * {@code 2026-11-25 14:30}, {@code 25.11.2026 2:30 PM}, {@code 14:30} or {@code 2026-11-25}. With
   * slashes day and month can't be told apart; a zone would need all the others.
   */
  public static Optional<TimeOfReading> time(String text) {
    Matcher match = TIME.matcher(Blanks.strip(text));
    if (!match.matches() || Blanks.strip(text).isEmpty()) {
      return Optional.empty();
    }
    boolean dated = match.group("y") != null || match.group("yy") != null;
    boolean timed = match.group("h") != null;
    try {
      LocalDate day =
          match.group("y") != null
              ? LocalDate.of(number(match, "y"), number(match, "m"), number(match, "d"))
              : match.group("yy") != null
                  ? LocalDate.of(number(match, "yy"), number(match, "mm"), number(match, "dd"))
                  : LocalDate.EPOCH;
      Optional<LocalTime> time = timed ? timeOfDay(match) : Optional.of(LocalTime.MIDNIGHT);
      // A day and a time that run into each other are a slip of the key.
      return time.filter(at -> !(dated && timed) || !match.group("gap").isEmpty())
          .map(at -> new TimeOfReading(day.atTime(at)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static int number(Matcher match, String group) {
    return Integer.parseInt(match.group(group));
  }

  private static Optional<LocalTime> timeOfDay(Matcher match) {
    int hour = number(match, "h");
    String half = match.group("half");
    if (half != null) {
      if (hour < 1 || hour > 12) {
        return Optional.empty();
      }
      hour = hour % 12 + (half.equalsIgnoreCase("p") ? 12 : 0);
    }
    String seconds = match.group("s");
    String fraction = match.group("f");
    int nanos = fraction == null ? 0 : Integer.parseInt((fraction + "00000000").substring(0, 9));
    return Optional.of(
        LocalTime.of(
            hour, number(match, "min"), seconds == null ? 0 : Integer.parseInt(seconds), nanos));
  }

  /** {@code 2027-03-31}; what a spreadsheet adds for midnight is left off. */
  public static Understood<LocalDate> day(String text) {
    try {
      return Understood.as(LocalDate.parse(text.strip().split("T", -1)[0]));
    } catch (DateTimeParseException e) {
      return Understood.not("\"" + text + "\" is not a date; write one such as 2027-03-31");
    }
  }
}

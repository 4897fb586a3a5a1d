package dev.ringout.words;

import dev.ringout.readings.Noted;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What was said of a unit, told again. */
public final class NotedWords {
  private NotedWords() {}

  /** When it was, to the minute, UTC; as written where that is no moment. */
  public static String when(String at) {
    try {
      LocalDateTime utc = LocalDateTime.ofInstant(Instant.parse(at), ZoneOffset.UTC);
      return utc.truncatedTo(ChronoUnit.MINUTES).toString().replace('T', ' ');
    } catch (DateTimeException e) {
      return at;
    }
  }

  /** What a photograph shows, for who can't see it. */
  public static String shows(Noted.Photograph photograph, int number) {
    String points = photograph.points().isEmpty() ? "" : ", at " + photograph.points();
    return name(number)
        + (photograph.text().isEmpty() ? " (without words)" : ": " + photograph.text())
        + points;
  }

  /** What stands below a photograph. */
  public static String caption(Noted.Photograph photograph, int number) {
    return shows(photograph, number) + ". " + source(photograph);
  }

  /** What stands in the place of a photograph that can't be shown. */
  public static String notShown(Noted.Photograph photograph, int number, String why) {
    String type = photograph.type().isEmpty() ? "" : " (kept as " + photograph.type() + ")";
    return shows(photograph, number)
        + ". It is not shown here: "
        + why
        + type
        + ". "
        + source(photograph);
  }

  private static String moment(String at) {
    String when = when(at);
    return when.equals(at) ? at : when + " UTC";
  }

  private static String name(int number) {
    return "Photograph " + number;
  }

  private static String source(Noted.Photograph photograph) {
    return Stream.of(photograph.who(), moment(photograph.at()), "SHA-256 " + photograph.sha256())
            .filter(one -> !one.isEmpty())
            .collect(Collectors.joining(", "))
        + ".";
  }
}

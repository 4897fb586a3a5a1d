package dev.ringout.intake;

import dev.ringout.readings.TimeOfReading;
import dev.ringout.sheet.Cell;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/** Times and days as people and spreadsheets write them. */
final class TimeCell {
  private TimeCell() {}

  /** What stands in a cell in which a date is welcome; a time may be stored as a number too. */
  static String text(Entry entry, Column column) {
    Cell cell = entry.cell(column.name());
    return cell.kind() == Cell.Kind.DATE || cell.kind() == Cell.Kind.NUMBER
        ? cell.text()
        : entry.text(column.name());
  }

  /** {@code 2026-11-25 14:30}, {@code 14:30} or {@code 2026-11-25}. */
  static Optional<TimeOfReading> time(String text) {
    String iso = text.replaceFirst("^(\\d{4}-\\d{2}-\\d{2})\\s+", "$1T");
    try {
      if (iso.indexOf('T') > 0) {
        return Optional.of(new TimeOfReading(LocalDateTime.parse(iso)));
      }
      if (iso.indexOf(':') > 0) {
        LocalTime time = LocalTime.parse(iso.length() == 4 ? "0" + iso : iso);
        return Optional.of(new TimeOfReading(LocalDate.EPOCH.atTime(time)));
      }
      return Optional.of(new TimeOfReading(LocalDate.parse(iso).atStartOfDay()));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** {@code 2027-03-31}; what a spreadsheet adds for midnight is left off. */
  static Understood<LocalDate> day(String text) {
    try {
      return Understood.as(LocalDate.parse(text.strip().split("T", -1)[0]));
    } catch (DateTimeParseException e) {
      return Understood.not("\"" + text + "\" is no day; expected one such as 2027-03-31");
    }
  }
}

package dev.ringout.sheet;

import dev.ringout.units.Numbers;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.apache.poi.ss.usermodel.DateUtil;

/** Numbers and dates of workbooks as text. */
final class Numerals {
  private static final DateTimeFormatter DATE_TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ss", Locale.ROOT);

  private Numerals() {}

  /** A stored number, as a date where the cell shows one. */
  static Cell cell(double number, boolean shownAsDate, boolean dates1904) {
    if (shownAsDate && DateUtil.isValidExcelDate(number)) {
      return new Cell(Cell.Stored.DATE, dateText(number, dates1904));
    }
    // A damaged file may store what is no number, or is beyond all numbers.
    return Double.isFinite(number)
        ? new Cell(Cell.Stored.NUMBER, Numbers.plain(number))
        : new Cell(Cell.Stored.ERROR, Double.toString(number));
  }

  private static String dateText(double number, boolean dates1904) {
    LocalDateTime time = DateUtil.getLocalDateTime(number, dates1904, true);
    if (number < 1) {
      return time.toLocalTime().toString();
    }
    boolean wholeDay = number == Math.rint(number);
    return wholeDay ? time.toLocalDate().toString() : DATE_TIME.format(time);
  }
}

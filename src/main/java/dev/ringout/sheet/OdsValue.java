package dev.ringout.sheet;

import dev.ringout.units.Numbers;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;

/**
 * What a cell of an OpenDocument spreadsheet stores beside its text (OASIS OpenDocument 1.3 part 3,
 * 19.385 {@code office:value-type}). What is not understood is an error of the cell.
 */
final class OdsValue {
  private static final long SECONDS_OF_A_DAY = 86_400;

  /** A number with what no one reads as a unit: signs, brackets, groups of digits, an exponent. */
  private static final Pattern NUMBER_SHOWN =
      Pattern.compile(
          "[\\s\\p{Zs}\\p{Sc}()+\u2212-]*[0-9.,'\\p{Zs}]*[0-9][0-9.,'\\p{Zs}]*(?:E[+-]?[0-9]+)?[\\s\\p{Zs}\\p{Sc})%-]*");

  private OdsValue() {}

  /**
   * The cell.
   *
   * @param attribute a value by the attribute's name, or empty
   * @param shown the text of the cell
   * @return absent where the cell is text or nothing
   */
  static Optional<Cell> cell(UnaryOperator<String> attribute, String shown) {
    String type = attribute.apply("office:value-type");
    String value = attribute.apply("office:value");
    return switch (type) {
      case "", "string", "void" -> Optional.empty();
      case "float", "currency" -> Optional.of(number(value, shown));
      case "percentage" ->
          Optional.of(typed(value, number -> Cell.text(Numbers.plain(number * 100) + "%")));
      case "date" -> Optional.of(date(attribute.apply("office:date-value")));
      case "time" -> Optional.of(time(attribute.apply("office:time-value")));
      case "boolean" -> Optional.of(truth(attribute.apply("office:boolean-value")));
      default -> Optional.of(error(type));
    };
  }

  private static Cell error(String stored) {
    return new Cell(Cell.Stored.ERROR, stored.isEmpty() ? "no value" : stored);
  }

  private static Cell typed(String stored, DoubleFunction<Cell> made) {
    OptionalDouble number = StoredNumber.of(stored);
    return number.isPresent() ? made.apply(number.getAsDouble()) : error(stored);
  }

  /** Some programs store TRUE from another format as a formula with the number 1. */
  private static Cell number(String stored, String shown) {
    if (shown.equals("TRUE") || shown.equals("FALSE")) {
      return new Cell(Cell.Stored.BOOLEAN, shown);
    }
    return typed(
        stored,
        number -> {
          Cell cell = new Cell(Cell.Stored.NUMBER, Numbers.plain(number));
          boolean same =
              shown.isBlank()
                  || (NUMBER_SHOWN.matcher(shown).matches() && ShownText.mayBe(shown, number));
          return same ? cell : cell.shownAs(shown);
        });
  }

  private static Cell date(String stored) {
    try {
      return new Cell(
          Cell.Stored.DATE,
          stored.indexOf('T') < 0
              ? LocalDate.parse(stored).toString()
              : LocalDateTime.parse(stored).toString());
    } catch (DateTimeException e) {
      return error(stored);
    }
  }

  private static Cell time(String stored) {
    try {
      long seconds = Math.floorMod(Duration.parse(stored).toSeconds(), SECONDS_OF_A_DAY);
      return new Cell(Cell.Stored.DATE, LocalTime.ofSecondOfDay(seconds).toString());
    } catch (DateTimeException e) {
      return error(stored);
    }
  }

  private static Cell truth(String stored) {
    return switch (stored) {
      case "true", "1" -> new Cell(Cell.Stored.BOOLEAN, "TRUE");
      case "false", "0" -> new Cell(Cell.Stored.BOOLEAN, "FALSE");
      default -> error(stored);
    };
  }
}

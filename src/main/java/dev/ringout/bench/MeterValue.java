package dev.ringout.bench;

import dev.ringout.meter.HowEntered;
import dev.ringout.meter.MeterReading;
import dev.ringout.readings.Measured;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;

/**
 * A value as a row of the sheet has it.
 *
 * @param cell what stands in the cell of the reading
 * @param how it came in
 * @param raw the meter's own text, or what was typed
 * @param volts that an insulation tester put on, where it says so
 */
record MeterValue(String cell, HowEntered how, String raw, OptionalDouble volts) {

  /** What a meter said. */
  static MeterValue of(MeterReading reading) {
    return new MeterValue(
        cell(reading.measured()), reading.entered(), reading.raw(), reading.volts());
  }

  /** What somebody read off. */
  static MeterValue typed(String text) {
    return typed(text, OptionalDouble.empty());
  }

  /** What somebody read off an insulation tester that stood at other volts. */
  static MeterValue typed(String text, OptionalDouble volts) {
    return new MeterValue(text, HowEntered.TYPED, text, volts);
  }

  boolean isTyped() {
    return how == HowEntered.TYPED;
  }

  /** How it came in, as a sheet has it. */
  String entered() {
    return switch (how) {
      case TYPED -> "typed";
      case SETTLED -> "settled by itself";
      case KEY -> "taken by a key";
      case METER_KEY -> "sent by the meter's key";
    };
  }

  /** The value with the digits that the meter gave, in ohms. */
  static String cell(Measured measured) {
    if (measured.isOverRange()) {
      return "OL";
    }
    return measured
        .value()
        .map(value -> digits(value) + " Ω")
        .or(() -> measured.moreThan().map(more -> ">" + plain(more.ohms()) + " Ω"))
        .orElseGet(measured::text);
  }

  private static String digits(Measured.Value value) {
    if (value.halfDigitOhms() <= 0) {
      return plain(value.ohms());
    }
    int places = (int) Math.round(-Math.log10(2 * value.halfDigitOhms()));
    BigDecimal ohms = BigDecimal.valueOf(value.ohms());
    return places < 0
        ? ohms.setScale(places, RoundingMode.HALF_EVEN).toString()
        : ohms.setScale(Math.min(places, 15), RoundingMode.HALF_EVEN).toPlainString();
  }

  private static String plain(double ohms) {
    return BigDecimal.valueOf(ohms).toPlainString();
  }
}

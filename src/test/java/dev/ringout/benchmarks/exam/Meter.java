package dev.ringout.benchmarks.exam;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;

/**
 * A meter as it lies on a bench, and what the job sheet says of it.
 *
 * @param step one step of its last digit on its lowest range, ohms
 * @param counts so many steps a range has
 * @param share of the reading, and {@code digits} of the last digit: how far it may be off
 * @param leads what its leads have that is in the readings
 * @param drift by how much they have more at the end of the sheet
 * @param leadsTold what the job sheet says of the leads, or empty
 * @param accuracyTold what it says of the accuracy, or empty
 */
record Meter(
    double step,
    int counts,
    double share,
    double digits,
    double leads,
    double drift,
    String leadsTold,
    String accuracyTold) {
  static final String OVER = "OL";
  private static final double RANGE_OHMS = 40e6;

  /** How a meter is used. */
  enum Use {
    MILLIOHMS,
    MILLIOHMS_UNTOLD,
    LEADS_TOLD,
    DRIFTING,
    HAND_HELD_NULLED,
    HAND_HELD_TOLD,
    HAND_HELD_UNTOLD,
    FOUR_WIRE,
    FEW_STEPS;

    boolean isHandHeld() {
      return name().startsWith("HAND");
    }
  }

  static Meter of(Use use, Random random) {
    double leads = 0.1 + 0.25 * random.nextDouble();
    return switch (use) {
      case MILLIOHMS -> new Meter(0.001, 6000, 0.005, 2, 0, 0, "nulled", "0.5 % + 2 digits");
      case MILLIOHMS_UNTOLD -> new Meter(0.001, 6000, 0.002, 1, 0, 0, "nulled", "");
      case LEADS_TOLD ->
          new Meter(0.001, 6000, 0.003, 2, leads, 0, text(leads, 0.01) + " Ω", "0.3 % + 2 digits");
      case DRIFTING ->
          new Meter(
              0.001,
              6000,
              0.003,
              2,
              0,
              0.01 + 0.03 * random.nextDouble(),
              "nulled",
              "0.3 % + 2 digits");
      case HAND_HELD_NULLED -> new Meter(0.1, 4000, 0.005, 1, 0, 0, "nulled", "");
      case HAND_HELD_TOLD ->
          new Meter(0.1, 4000, 0.005, 2, leads, 0, text(leads, 0.1) + " Ω", "0.5 % + 2 digits");
      case FOUR_WIRE -> new Meter(0.0001, 20000, 0.001, 3, 0, 0, "nulled", "0.1 % + 3 digits");
      case FEW_STEPS -> new Meter(0.01, 2000, 0.008, 2, 0, 0, "nulled", "0.8 % + 2 digits");
      case HAND_HELD_UNTOLD -> new Meter(0.1, 4000, 0.008, 1, leads, 0, "", "");
    };
  }

  /** What it shows. */
  String shows(double ohms, double progress, Random random) {
    double value = ohms + leads + drift * progress;
    if (value > RANGE_OHMS) {
      return OVER;
    }
    double digit = step;
    while (value > digit * counts) {
      digit *= 10;
    }
    value += (2 * random.nextDouble() - 1) * 0.7 * (share * value + digits * digit);
    value = Math.max(0, value);
    if (value >= 1e6) {
      return text(value / 1e6, digit / 1e6) + " MΩ";
    }
    return value >= 10_000 ? text(value / 1e3, digit / 1e3) + " kΩ" : text(value, digit);
  }

  /** A number to a digit. */
  static String text(double value, double digit) {
    int places = Math.max(0, (int) Math.round(-Math.log10(digit)));
    return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
  }

  /** What an insulation tester shows, in MΩ. */
  static String insulation(double ohms, Random random) {
    double good = 1e9 * (1 + 8 * random.nextDouble());
    double all = Double.isInfinite(ohms) ? good : 1 / (1 / ohms + 1 / good);
    double mega = all / 1e6;
    return mega >= 10 ? text(mega, 1) : text(mega, mega >= 1 ? 0.01 : 0.001);
  }

  /** How far it can be off at so many ohms, its display included. */
  double mayBeOff(double ohms) {
    double digit = step;
    while (ohms > digit * counts) {
      digit *= 10;
    }
    return digit + share * ohms + digits * digit + leads * 0.2 + drift;
  }
}

package dev.ringout.units;

import java.util.List;

/** Resistances as text. */
public final class Ohms {
  private static final List<Unit> SAID =
      List.of(
          new Unit("mΩ", 1e-3),
          new Unit("Ω", 1),
          new Unit("kΩ", 1e3),
          new Unit("MΩ", 1e6),
          new Unit("GΩ", 1e9));

  private Ohms() {}

  private record Unit(String name, double ohms) {
    String number(double value) {
      return Numbers.rounded(value / ohms, 3);
    }
  }

  /** As people say it, with milliohms too: {@code 42 mΩ}, {@code 100 kΩ}. */
  public static String said(double ohms) {
    Unit unit = unit(ohms);
    return Double.isInfinite(ohms) ? "open" : unit.number(ohms) + " " + unit.name;
  }

  /** From one to another, the unit said once: {@code 6–18 mΩ}. */
  public static String said(double least, double most) {
    Unit unit = unit(most);
    return unit.number(least) + "–" + unit.number(most) + " " + unit.name;
  }

  /** The largest unit of which there is one at least: what rounds to 1000 mΩ is 1 Ω. */
  private static Unit unit(double ohms) {
    Unit fitting = SAID.get(0);
    for (Unit unit : SAID) {
      if (Math.abs(ohms) >= 0.9995 * unit.ohms) {
        fitting = unit;
      }
    }
    return fitting;
  }

  /** Three significant digits with the prefix that suits: {@code 0.042 Ω}, {@code 2.2 kΩ}. */
  public static String text(double ohms) {
    if (Double.isInfinite(ohms)) {
      return "open";
    }
    double size = Math.abs(ohms);
    if (size >= 1e9) {
      return Numbers.rounded(ohms / 1e9, 3) + " GΩ";
    }
    if (size >= 1e6) {
      return Numbers.rounded(ohms / 1e6, 3) + " MΩ";
    }
    if (size >= 1e3) {
      return Numbers.rounded(ohms / 1e3, 3) + " kΩ";
    }
    return Numbers.rounded(ohms, 3) + " Ω";
  }
}

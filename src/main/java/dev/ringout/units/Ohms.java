package dev.ringout.units;

/** Resistances as text. */
public final class Ohms {
  private Ohms() {}

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

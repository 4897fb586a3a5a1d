package dev.ringout.benchmarks.weaken;

/** From so many ohms to so many. */
record Span(double low, double high) {
  /** Half a thousandth: as good as equal. */
  private static final double EQUAL = 5e-4;

  static Span of(double ohms) {
    return new Span(ohms, ohms);
  }

  /** Whether no value is in both. */
  boolean excludes(Span other) {
    return high < other.low * (1 - EQUAL) || other.high < low * (1 - EQUAL);
  }
}

package dev.ringout.units;

/**
 * The resistances that something may have.
 *
 * @param lowOhms the least
 * @param highOhms the most; infinite where nothing bounds it
 */
public record OhmsRange(double lowOhms, double highOhms) {
  /** Nothing is known. */
  public static final OhmsRange ANY = new OhmsRange(0, Double.POSITIVE_INFINITY);

  /** No resistance at all. */
  public static final OhmsRange NONE = new OhmsRange(0, 0);

  /** Whether there is an upper bound. */
  public boolean isKnown() {
    return Double.isFinite(highOhms);
  }

  /** In series with another. */
  public OhmsRange plus(OhmsRange other) {
    return new OhmsRange(lowOhms + other.lowOhms, highOhms + other.highOhms);
  }

  /** What is either in this range or in another, or between them. */
  public OhmsRange or(OhmsRange other) {
    return new OhmsRange(Math.min(lowOhms, other.lowOhms), Math.max(highOhms, other.highOhms));
  }

  /** The middle; what is likeliest where both ends are equally far off. */
  public double middleOhms() {
    return (lowOhms + highOhms) / 2;
  }

  /** From the middle to either end. */
  public double halfWidthOhms() {
    return (highOhms - lowOhms) / 2;
  }

  /** {@code 0.36 to 0.45 Ω}, or one value where the ends read alike. */
  public String text() {
    String low = Ohms.text(lowOhms);
    String high = Ohms.text(highOhms);
    if (low.equals(high)) {
      return low;
    }
    String lowUnit = low.substring(low.lastIndexOf(' ') + 1);
    boolean oneUnit = high.endsWith(" " + lowUnit) && low.indexOf(' ') > 0;
    return (oneUnit ? low.substring(0, low.lastIndexOf(' ')) : low) + " to " + high;
  }
}

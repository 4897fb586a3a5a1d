package dev.ringout.units;

/** The length of a wire. */
public record Length(double metres) {
  /** International foot (exact by definition since 1959). */
  public static final double METRES_PER_FOOT = 0.3048;
}

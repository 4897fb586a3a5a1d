package dev.ringout.lot;

import org.apache.commons.math3.distribution.BetaDistribution;

/**
 * So many of so many, and what of units made the same way that says.
 *
 * @param lowShare the least share that could well have given it, from 0 to 1
 * @param highShare the largest
 */
public record Proportion(int count, int of, double lowShare, double highShare) {
  /** Five in a hundred such ranges, at most, do not hold the true share. */
  private static final double OUTSIDE = 0.05;

  /** So many of so many, with exact limits of 95 %. */
  static Proportion of(int count, int of) {
    return of(count, of, OUTSIDE);
  }

  /** The exact limits of Clopper and Pearson (NIST/SEMATECH e-Handbook 7.2.4.2). */
  static Proportion of(int count, int of, double outside) {
    double low =
        count == 0
            ? 0
            : new BetaDistribution(null, count, of - count + 1.0)
                .inverseCumulativeProbability(outside / 2);
    double high =
        count == of
            ? 1
            : new BetaDistribution(null, count + 1.0, of - count)
                .inverseCumulativeProbability(1 - outside / 2);
    return new Proportion(count, of, low, high);
  }

  /** The share itself; of none 0. */
  public double share() {
    return of == 0 ? 0 : (double) count / of;
  }
}

package dev.ringout.standards;

import java.util.HashMap;
import java.util.Map;

/** By what the median absolute deviation of few values is too small on average. */
public final class MadFactors {
  /**
   * By what the standard deviation of many normally distributed values is more than their median
   * absolute deviation: one over the upper quartile of the standard normal distribution.
   */
  public static final double OF_MANY = 1.4826;

  /** Above the table, as its source gives it. */
  private static final double LESS = 0.8;

  private final Map<Integer, Double> few = new HashMap<>();

  private MadFactors(PublishedTable table) {
    for (Map<String, String> row : table.rows()) {
      few.put(
          Integer.valueOf(row.getOrDefault("values", "")),
          Double.valueOf(row.getOrDefault("factor", "")));
    }
  }

  /** The published factors. */
  public static MadFactors published() {
    return new MadFactors(PublishedTable.load(MadFactors.class, "mad-factors.csv"));
  }

  /** The factor for so many values, two or more. */
  public double of(int values) {
    return few.getOrDefault(values, values / (values - LESS));
  }
}

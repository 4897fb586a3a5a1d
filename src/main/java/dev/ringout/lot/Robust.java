package dev.ringout.lot;

import dev.ringout.standards.MadFactors;
import java.util.Arrays;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/** Middle and spread of values among which some may be wild. */
final class Robust {
  private final MadFactors factors = MadFactors.published();

  /** The middle value; of an even number the mean of the two in the middle. */
  static double median(double[] values) {
    return new Median().evaluate(values);
  }

  /** The median of how far the values are from their median. */
  static double medianAbsoluteDeviation(double[] values) {
    double middle = median(values);
    return median(Arrays.stream(values).map(value -> Math.abs(value - middle)).toArray());
  }

  /** What is the standard deviation where the values are normally distributed; of one value 0. */
  double spread(double[] values) {
    return values.length < 2
        ? 0
        : MadFactors.OF_MANY * factors.of(values.length) * medianAbsoluteDeviation(values);
  }
}

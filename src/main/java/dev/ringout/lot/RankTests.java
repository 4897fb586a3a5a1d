package dev.ringout.lot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.ranking.NaNStrategy;
import org.apache.commons.math3.stat.ranking.NaturalRanking;
import org.apache.commons.math3.stat.ranking.TiesStrategy;

/** What the order of values says, whatever their distribution. */
final class RankTests {
  private RankTests() {}

  /**
   * How likely groups that do not differ would differ so much: the test of Kruskal and Wallis, by
   * the distribution of χ², corrected for ties (W. J. Conover, Practical Nonparametric Statistics).
   *
   * @param groups two or more, none of them empty
   */
  static double groupsDiffer(List<double[]> groups) {
    double[] all = groups.stream().flatMapToDouble(Arrays::stream).toArray();
    double[] ranks = new NaturalRanking(NaNStrategy.FAILED, TiesStrategy.AVERAGE).rank(all);
    double n = all.length;
    double sum = 0;
    int at = 0;
    for (double[] group : groups) {
      double ofGroup = 0;
      for (int i = 0; i < group.length; i++) {
        ofGroup += ranks[at++];
      }
      sum += ofGroup * ofGroup / group.length;
    }
    double untied = 1 - Ties.of(all).cubes() / (n * n * n - n);
    if (untied == 0) {
      return 1;
    }
    double h = (12 / (n * (n + 1)) * sum - 3 * (n + 1)) / untied;
    return 1 - new ChiSquaredDistribution(null, groups.size() - 1.0).cumulativeProbability(h);
  }

  /**
   * How likely values that do not change with time would rise or fall so steadily: the test of Mann
   * and Kendall, by the normal distribution, corrected for ties in the values (NIST/SEMATECH
   * e-Handbook; R. O. Gilbert, Statistical Methods for Environmental Pollution Monitoring, 16.4).
   */
  static double drifts(double[] times, double[] values) {
    double s = 0;
    for (int i = 0; i < values.length; i++) {
      for (int j = i + 1; j < values.length; j++) {
        s += Math.signum(times[j] - times[i]) * Math.signum(values[j] - values[i]);
      }
    }
    double n = values.length;
    double variance = variance(n, values, times);
    if (variance <= 0) {
      return 1;
    }
    double z = s == 0 ? 0 : (s - Math.signum(s)) / Math.sqrt(variance);
    return 2 * new NormalDistribution(null, 0, 1).cumulativeProbability(-Math.abs(z));
  }

  /** Of the sum of signs, with ties in both (M. G. Kendall, Rank Correlation Methods, 4.8). */
  private static double variance(double n, double[] values, double[] times) {
    double whole = n * (n - 1) * (2 * n + 5);
    double pairs = n * (n - 1);
    double thirds = pairs * (n - 2);
    Ties inValues = Ties.of(values);
    Ties inTimes = Ties.of(times);
    return (whole - inValues.five() - inTimes.five()) / 18
        + inValues.pairs() * inTimes.pairs() / (2 * pairs)
        + (thirds == 0 ? 0 : inValues.thirds() * inTimes.thirds() / (9 * thirds));
  }

  /**
   * Sums over the sets of t equal values.
   *
   * @param cubes of t³ − t
   * @param five of t (t − 1) (2 t + 5)
   * @param pairs of t (t − 1)
   * @param thirds of t (t − 1) (t − 2)
   */
  private record Ties(double cubes, double five, double pairs, double thirds) {
    static Ties of(double[] values) {
      double[] sorted = values.clone();
      Arrays.sort(sorted);
      double cubes = 0;
      double five = 0;
      double pairs = 0;
      double thirds = 0;
      int begin = 0;
      for (int i = 1; i <= sorted.length; i++) {
        if (i == sorted.length || sorted[i] != sorted[begin]) {
          double t = i - begin;
          cubes += t * t * t - t;
          five += t * (t - 1) * (2 * t + 5);
          pairs += t * (t - 1);
          thirds += t * (t - 1) * (t - 2);
          begin = i;
        }
      }
      return new Ties(cubes, five, pairs, thirds);
    }
  }

  /** The middle one of the slopes between any two values of different times (Theil and Sen). */
  static double slope(double[] times, double[] values) {
    List<Double> slopes = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      for (int j = i + 1; j < values.length; j++) {
        if (times[i] != times[j]) {
          slopes.add((values[j] - values[i]) / (times[j] - times[i]));
        }
      }
    }
    return slopes.isEmpty()
        ? 0
        : Robust.median(slopes.stream().mapToDouble(Double::doubleValue).toArray());
  }
}

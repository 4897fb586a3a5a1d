package dev.ringout.lot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * The joins of all units as one table: what each unit has at all of its joins (leads, a warm day),
 * what each join has in all units, and what is left.
 *
 * @param levelsOhms by how much each unit is above the middle one, in the order of the units
 * @param limitScore from so many standard deviations on a value stands out
 */
record Spreads(List<JoinSpread> joins, List<Double> levelsOhms, double limitScore) {
  /**
   * B. Iglewicz, D. C. Hoaglin, How to Detect and Handle Outliers, 1993, as NIST/SEMATECH
   * e-Handbook 1.3.5.17 gives it.
   */
  private static final double LEAST_SCORE = 3.5;

  /** How many values of a lot in which nothing is wrong may stand out, on average. */
  private static final double BY_CHANCE = 0.05;

  static Spreads of(List<LotUnit> units) {
    TreeSet<Join> all = new TreeSet<>();
    units.forEach(unit -> all.addAll(unit.values().keySet()));
    List<Join> joins = List.copyOf(all);
    MedianPolish polish = MedianPolish.of(table(units, joins), joins.size());
    double[] spreads = spreads(polish, units.size(), joins.size());
    double limit = limitScore(units.stream().mapToLong(unit -> unit.values().size()).sum());
    List<JoinSpread> told = new ArrayList<>();
    for (int join = 0; join < joins.size(); join++) {
      told.add(spread(units, joins.get(join), join, polish, spreads[join], limit));
    }
    return new Spreads(
        List.copyOf(told),
        IntStream.range(0, units.size()).mapToObj(polish::ofRow).toList(),
        limit);
  }

  private static double[][] table(List<LotUnit> units, List<Join> joins) {
    double[][] table = new double[units.size()][joins.size()];
    for (int row = 0; row < table.length; row++) {
      for (int column = 0; column < joins.size(); column++) {
        JoinValue value = units.get(row).values().get(joins.get(column));
        table[row][column] = value == null ? Double.NaN : value.excessOhms();
      }
    }
    return table;
  }

  /** The more values there are, the farther the farthest of good ones is. */
  static double limitScore(long values) {
    double chance = BY_CHANCE / Math.max(2, values) / 2;
    return Math.max(
        LEAST_SCORE, new NormalDistribution(null, 0, 1).inverseCumulativeProbability(1 - chance));
  }

  /**
   * What the values of each join spread by, as a standard deviation. Few units may agree by chance:
   * no join is thought to be steadier than the middle one.
   */
  static double[] spreads(MedianPolish polish, int units, int joins) {
    Robust robust = new Robust();
    double[] own =
        IntStream.range(0, joins)
            .mapToDouble(join -> robust.spread(polish.restOfColumn(join)))
            .toArray();
    double[] told =
        IntStream.range(0, joins)
            .filter(join -> polish.restOfColumn(join).length >= Lot.LEAST_SIBLINGS)
            .mapToDouble(join -> own[join])
            .toArray();
    double usual = told.length == 0 ? 0 : Robust.median(told);
    double wider = wider(units, joins);
    return Arrays.stream(own).map(spread -> wider * Math.max(spread, usual)).toArray();
  }

  /**
   * By what the spread of what is left is widened: the parts of rows and columns have taken some of
   * it with them, and of few the spread itself is not well known. Found by good lots drawn at
   * random, of which one in twenty, at most, is to have a join that stands out.
   */
  private static double wider(double units, double joins) {
    if (units < 2 || joins < 2) {
      return 1;
    }
    return Math.sqrt(units * joins / ((units - 1) * (joins - 1)))
        * (1 + 2 / Math.min(units, joins));
  }

  private static JoinSpread spread(
      List<LotUnit> units,
      Join join,
      int column,
      MedianPolish polish,
      double spread,
      double limit) {
    double[] rest = polish.restOfColumn(column);
    double middle = Robust.median(rest);
    List<JoinSpread.OfUnit> values = new ArrayList<>();
    for (int row = 0; row < units.size(); row++) {
      JoinValue value = units.get(row).values().get(join);
      if (value != null) {
        double above = polish.rest(row, column) - middle;
        double scale = Math.max(spread, value.doubtOhms());
        double score = scale == 0 ? 0 : above / scale;
        values.add(
            new JoinSpread.OfUnit(
                units.get(row).name(),
                value,
                above,
                score,
                rest.length >= Lot.LEAST_SIBLINGS && Math.abs(score) > limit));
      }
    }
    double joinMiddle = polish.ofColumn(column) + middle;
    return new JoinSpread(
        join,
        joinMiddle,
        spread,
        joinMiddle + Arrays.stream(rest).min().orElse(0) - middle,
        joinMiddle + Arrays.stream(rest).max().orElse(0) - middle,
        values);
  }
}

package dev.ringout.diagnose.values;

import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.units.OhmsRange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * By how much the joins of a sheet read more and more from row to row: leads that warm or work
 * loose. The middle of all slopes between two rows (Theil and Sen), where the rows that rise
 * outnumber those that fall by more than chance would (Mann and Kendall).
 */
final class LeadTrend {
  private static final int LEAST_ROWS = 12;

  /** Of a larger sheet only so many rows, evenly spread, are compared two by two. */
  private static final int MOST_ROWS = 400;

  /** So many standard deviations are no chance. */
  private static final double NO_CHANCE = 3;

  private final Map<Judged, Double> gained = new HashMap<>();

  LeadTrend(Comparison comparison) {
    Map<String, List<Judged>> sheets = new LinkedHashMap<>();
    for (Judged judged : comparison.inForce()) {
      if (judged.expected().isJoined()
          && judged.outcome().passes()
          && judged.limit().expected().isKnown()
          && judged.reading().measured().value().isPresent()) {
        sheets
            .computeIfAbsent(judged.reading().place().file(), file -> new ArrayList<>())
            .add(judged);
      }
    }
    sheets.values().forEach(this::sheet);
  }

  private void sheet(List<Judged> rows) {
    double slope = slope(rows);
    for (int row = 0; row < rows.size(); row++) {
      gained.put(rows.get(row), slope * row);
    }
  }

  /** What the leads have gained in a reading since the first row; 0 where no trend is seen. */
  double gainedOhms(Judged judged) {
    return gained.getOrDefault(judged, 0.0);
  }

  private static double slope(List<Judged> rows) {
    int apart = (rows.size() + MOST_ROWS - 1) / MOST_ROWS;
    double[] off = new double[(rows.size() + apart - 1) / Math.max(1, apart)];
    for (int at = 0; at < off.length; at++) {
      Judged judged = rows.get(at * apart);
      OhmsRange expected = judged.limit().expected();
      off[at] = judged.seen().middleOhms() - expected.middleOhms();
    }
    int count = off.length;
    if (count < LEAST_ROWS) {
      return 0;
    }
    double[] slopes = new double[count * (count - 1) / 2];
    int next = 0;
    double rising = 0;
    for (int one = 0; one < count; one++) {
      for (int other = one + 1; other < count; other++) {
        rising += Math.signum(off[other] - off[one]);
        slopes[next++] = (off[other] - off[one]) / (other - one) / apart;
      }
    }
    double deviation = Math.sqrt(count * (count - 1.0) * (2.0 * count + 5) / 18);
    if (rising < NO_CHANCE * deviation) {
      return 0;
    }
    Arrays.sort(slopes);
    return slopes[slopes.length / 2];
  }
}

package dev.ringout.record;

import dev.ringout.check.CheckResult;
import dev.ringout.compare.Judged;
import dev.ringout.harness.NaturalOrder;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Joins: each reading as a share of its limit, a row for each item. */
final class JoinsChart {
  private static final double MOST_RATIO = 1.6;

  private JoinsChart() {}

  /** The drawing; absent where no join was read as a value. */
  static Optional<String> of(CheckResult result) {
    List<Map.Entry<String, List<Judged>>> rows = new ArrayList<>(byItem(result).entrySet());
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    rows.sort(Comparator.comparingDouble(row -> -worst(row.getValue())));
    rows = rows.subList(0, Math.min(Chart.MOST_ROWS, rows.size()));
    Chart chart = new Chart();
    double bottom = Chart.bottom(rows.size());
    for (double share = 0; share < MOST_RATIO; share += 0.5) {
      chart.grid(x(share), bottom, Text.of("%.0f %%", 100 * share), share == 1);
    }
    double y = Chart.firstRow();
    for (Map.Entry<String, List<Judged>> row : rows) {
      chart.svg.text(Chart.NAMES_MM - 2, y + 1, 2.8, "end", row.getKey());
      for (Judged judged : row.getValue()) {
        chart.dot(x(Math.min(share(judged), MOST_RATIO)), y, judged.outcome().fails());
      }
      y += Chart.ROW_MM;
    }
    return Optional.of(chart.drawing("Joins as shares of their limits, by item", bottom));
  }

  private static Map<String, List<Judged>> byItem(CheckResult result) {
    Map<String, List<Judged>> byItem = new TreeMap<>(NaturalOrder.INSTANCE);
    for (Judged judged : result.comparison().inForce()) {
      if (isValueOfJoin(judged)) {
        String ref = result.circuit().point(judged.probing().from()[0]).ref();
        byItem.computeIfAbsent(ref, key -> new ArrayList<>()).add(judged);
      }
    }
    return byItem;
  }

  private static boolean isValueOfJoin(Judged judged) {
    return judged.reading().kind() == Reading.Kind.CONTINUITY
        && judged.expected().isJoined()
        && judged.probing().isPair()
        && judged.reading().measured().value().isPresent();
  }

  private static double worst(List<Judged> some) {
    return some.stream().mapToDouble(JoinsChart::share).max().orElse(0);
  }

  private static double share(Judged judged) {
    double ohms = judged.reading().measured().value().map(Measured.Value::ohms).orElseThrow();
    return Math.max(0, ohms / judged.limit().ohms());
  }

  private static double x(double share) {
    return Chart.NAMES_MM + (Chart.WIDTH_MM - Chart.NAMES_MM - 6) * share / MOST_RATIO;
  }
}

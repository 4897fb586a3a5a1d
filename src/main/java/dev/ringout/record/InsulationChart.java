package dev.ringout.record;

import dev.ringout.check.CheckResult;
import dev.ringout.circuit.InsulationLimits;
import dev.ringout.compare.Judged;
import dev.ringout.readings.Reading;
import dev.ringout.units.Ohms;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Insulation: the lowest nets on a logarithmic scale, each with its limit. */
final class InsulationChart {
  private static final double LEAST_DECADE = 4;
  private static final double MOST_DECADE = 11;

  private InsulationChart() {}

  /** The drawing; absent where no insulation was read as so many ohms. */
  static Optional<String> of(CheckResult result) {
    List<Judged> lowest = lowest(result);
    if (lowest.isEmpty()) {
      return Optional.empty();
    }
    InsulationLimits limits = new InsulationLimits(result.circuit());
    Chart chart = new Chart();
    double bottom = Chart.bottom(lowest.size());
    for (double decade = LEAST_DECADE; decade <= MOST_DECADE; decade++) {
      chart.grid(x(Math.pow(10, decade)), bottom, Ohms.text(Math.pow(10, decade)), false);
    }
    double y = Chart.firstRow();
    for (Judged judged : lowest) {
      chart.svg.text(
          Chart.NAMES_MM - 2, y + 1, 2.6, "end", shortened(judged.reading().from().toString()));
      double limit = x(limits.of(judged.probing()).minOhms());
      chart.line(limit, y - 2, limit, y + 2, 0.7);
      if (judged.reading().measured().value().isPresent()) {
        chart.dot(x(ohms(judged)), y, judged.outcome().fails());
      } else {
        chart.svg.text(x(ohms(judged)), y + 1, 3, "middle", ">");
      }
      y += Chart.ROW_MM;
    }
    return Optional.of(chart.drawing("Insulation of the lowest nets", bottom));
  }

  private static List<Judged> lowest(CheckResult result) {
    return result.comparison().inForce().stream()
        .filter(one -> one.reading().kind() == Reading.Kind.INSULATION)
        .filter(one -> ohms(one) > 0)
        .sorted(Comparator.comparingDouble(InsulationChart::ohms))
        .limit(Chart.MOST_ROWS)
        .toList();
  }

  private static String shortened(String name) {
    return name.length() > 18 ? name.substring(0, 17) + "…" : name;
  }

  /** What it was at least; nothing where that is not said as a number. */
  private static double ohms(Judged judged) {
    double least = judged.reading().measured().atLeastOhms();
    return Double.isInfinite(least) ? 0 : least;
  }

  private static double x(double ohms) {
    double decade = Math.min(MOST_DECADE, Math.max(LEAST_DECADE, Math.log10(ohms)));
    return Chart.NAMES_MM
        + (Chart.WIDTH_MM - Chart.NAMES_MM - 8)
            * (decade - LEAST_DECADE)
            / (MOST_DECADE - LEAST_DECADE);
  }
}

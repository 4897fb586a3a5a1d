package dev.ringout.record;

import dev.ringout.circuit.Expected;
import dev.ringout.circuit.InsulationLimits;
import dev.ringout.circuit.UnitMap;
import dev.ringout.compare.Judged;
import dev.ringout.harness.NaturalOrder;
import dev.ringout.pictures.Html;
import dev.ringout.pictures.Svg;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.units.Ohms;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What people would rather look at than read. Told by shape and letter, never by tone alone. */
final class RecordCharts {
  private static final double WIDTH_MM = 180;
  private static final double NAMES_MM = 34;
  private static final double ROW_MM = 5;
  private static final int MOST_ROWS = 45;
  private static final double MOST_RATIO = 1.6;
  private static final double LEAST_DECADE = 4;
  private static final double MOST_DECADE = 11;

  private final Svg svg = new Svg();

  private RecordCharts() {}

  /** Joins: each reading as a share of its limit, a row for each item. */
  static String joins(TestRecord record) {
    Map<String, List<Judged>> byItem = new TreeMap<>(NaturalOrder.INSTANCE);
    for (Judged judged : record.result().comparison().inForce()) {
      boolean join =
          judged.reading().kind() == Reading.Kind.CONTINUITY
              && judged.expected() instanceof Expected.Joined
              && judged.probing().isPair()
              && judged.reading().measured() instanceof Measured.Value;
      if (join) {
        String ref = record.result().circuit().point(judged.probing().from()[0]).ref();
        byItem.computeIfAbsent(ref, key -> new ArrayList<>()).add(judged);
      }
    }
    if (byItem.isEmpty()) {
      return "";
    }
    List<Map.Entry<String, List<Judged>>> rows = new ArrayList<>(byItem.entrySet());
    rows.sort(Comparator.comparingDouble(row -> -worst(row.getValue())));
    rows = rows.subList(0, Math.min(MOST_ROWS, rows.size()));
    RecordCharts chart = new RecordCharts();
    double bottom = 8 + rows.size() * ROW_MM;
    for (double share = 0; share < MOST_RATIO; share += 0.5) {
      chart.grid(x(share), bottom, Text.of("%.0f %%", 100 * share), share == 1);
    }
    double y = 8 + ROW_MM / 2;
    for (Map.Entry<String, List<Judged>> row : rows) {
      chart.svg.text(NAMES_MM - 2, y + 1, 2.8, "end", row.getKey());
      for (Judged judged : row.getValue()) {
        double share = share(judged);
        chart.dot(x(Math.min(share, MOST_RATIO)), y, judged.outcome().fails());
      }
      y += ROW_MM;
    }
    return chart.svg.drawing("Joins as shares of their limits, by item", WIDTH_MM, bottom + 9);
  }

  private static double worst(List<Judged> some) {
    return some.stream().mapToDouble(RecordCharts::share).max().orElse(0);
  }

  private static double share(Judged judged) {
    double ohms = ((Measured.Value) judged.reading().measured()).ohms();
    return Math.max(0, ohms / judged.limit().ohms());
  }

  private static double x(double share) {
    return NAMES_MM + (WIDTH_MM - NAMES_MM - 6) * share / MOST_RATIO;
  }

  /** Insulation: the lowest nets on a logarithmic scale, each with its limit. */
  static String insulation(TestRecord record) {
    InsulationLimits limits = new InsulationLimits(record.result().circuit());
    List<Judged> some =
        record.result().comparison().inForce().stream()
            .filter(one -> one.reading().kind() == Reading.Kind.INSULATION)
            .filter(one -> ohms(one) > 0)
            .sorted(Comparator.comparingDouble(RecordCharts::ohms))
            .limit(MOST_ROWS)
            .toList();
    if (some.isEmpty()) {
      return "";
    }
    RecordCharts chart = new RecordCharts();
    double bottom = 8 + some.size() * ROW_MM;
    for (double decade = LEAST_DECADE; decade <= MOST_DECADE; decade++) {
      chart.grid(logX(Math.pow(10, decade)), bottom, Ohms.text(Math.pow(10, decade)), false);
    }
    double y = 8 + ROW_MM / 2;
    for (Judged judged : some) {
      chart.svg.text(
          NAMES_MM - 2, y + 1, 2.6, "end", shortened(judged.reading().from().toString()));
      double limit = logX(limits.of(judged.probing()).minOhms());
      chart.line(limit, y - 2, limit, y + 2, 0.7);
      if (judged.reading().measured() instanceof Measured.Value) {
        chart.dot(logX(ohms(judged)), y, judged.outcome().fails());
      } else {
        chart.svg.text(logX(ohms(judged)), y + 1, 3, "middle", ">");
      }
      y += ROW_MM;
    }
    return chart.svg.drawing("Insulation of the lowest nets", WIDTH_MM, bottom + 9);
  }

  private static String shortened(String name) {
    return name.length() > 18 ? name.substring(0, 17) + "…" : name;
  }

  private static double ohms(Judged judged) {
    Measured measured = judged.reading().measured();
    if (measured instanceof Measured.Value value) {
      return value.ohms();
    }
    if (measured instanceof Measured.MoreThan more) {
      return more.ohms();
    }
    return measured instanceof Measured.OverRange over ? over.rangeOhms().orElse(0) : 0;
  }

  private static double logX(double ohms) {
    double decade = Math.min(MOST_DECADE, Math.max(LEAST_DECADE, Math.log10(ohms)));
    return NAMES_MM
        + (WIDTH_MM - NAMES_MM - 8) * (decade - LEAST_DECADE) / (MOST_DECADE - LEAST_DECADE);
  }

  /**
   * The unit: items as boxes, wires between them as lines with their number, faults marked.
   *
   * @param faultsAt item to the numbers of its faults
   */
  static String map(UnitMap map, Map<String, String> faultsAt) {
    double height = Math.min(170, 40 + 9 * map.places().size());
    RecordCharts chart = new RecordCharts();
    for (UnitMap.Bundle bundle : map.bundles()) {
      double[] one = at(map, bundle.one(), height);
      double[] other = at(map, bundle.other(), height);
      chart.line(
          one[0],
          one[1],
          other[0],
          other[1],
          Math.min(1.6, 0.15 + 0.12 * Math.sqrt(bundle.wires())));
    }
    for (UnitMap.Mated mated : map.mated()) {
      double[] one = at(map, mated.one(), height);
      double[] other = at(map, mated.other(), height);
      chart.svg.add(
          "<path d=\"M%.2f %.2f L%.2f %.2f\" stroke=\"#000\" stroke-width=\"0.3\""
              + " stroke-dasharray=\"1.5 1.2\"/>",
          one[0], one[1], other[0], other[1]);
    }
    for (UnitMap.Bundle bundle : map.bundles()) {
      double[] one = at(map, bundle.one(), height);
      double[] other = at(map, bundle.other(), height);
      String cables = String.join(" ", bundle.cables());
      chart.onWhite(
          (one[0] + other[0]) / 2,
          (one[1] + other[1]) / 2,
          2.4,
          cables.isEmpty() ? "" + bundle.wires() : cables + ": " + bundle.wires());
    }
    for (String ref : map.places().keySet()) {
      double[] at = at(map, ref, height);
      double half = Math.max(5, 1.1 * ref.length() + 1.5);
      String faults = faultsAt.getOrDefault(ref, "");
      chart.svg.add(
          "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"6\" rx=\"1\" fill=\"#fff\""
              + " stroke=\"#000\" stroke-width=\"%s\"/>",
          at[0] - half, at[1] - 3, 2 * half, faults.isEmpty() ? "0.25" : "0.9");
      chart.svg.text(at[0], at[1] + 1.1, 3.2, "middle", ref);
      if (!faults.isEmpty()) {
        double wide = 2.4 + 1.6 * faults.length();
        chart.svg.add(
            "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"4.2\"/>",
            at[0] + half - 1, at[1] - 5.6, wide);
        chart.svg.add(
            "<text x=\"%.2f\" y=\"%.2f\" font-size=\"3\" text-anchor=\"middle\""
                + " fill=\"#fff\">%s</text>",
            at[0] + half - 1 + wide / 2, at[1] - 2.5, Html.escaped(faults));
      }
    }
    return chart.svg.drawing("Map of the unit", WIDTH_MM, height);
  }

  private static double[] at(UnitMap map, String ref, double height) {
    UnitMap.Place place = map.places().getOrDefault(ref, new UnitMap.Place(0, 0));
    return new double[] {12 + place.x() * (WIDTH_MM - 30), 8 + place.y() * (height - 16)};
  }

  private void grid(double x, double bottom, String words, boolean limit) {
    line(x, 6, x, bottom, limit ? 0.7 : 0.1);
    svg.text(x, bottom + 4, 2.6, "middle", words);
    if (limit) {
      svg.text(x, 4.5, 2.6, "middle", "limit");
    }
  }

  private void line(double x1, double y1, double x2, double y2, double width) {
    svg.add(
        "<path d=\"M%.2f %.2f L%.2f %.2f\" stroke=\"#000\" stroke-width=\"%.2f\"/>",
        x1, y1, x2, y2, width);
  }

  /** A ring that is good, a filled lozenge that fails. */
  private void dot(double x, double y, boolean fails) {
    if (fails) {
      svg.add("<path d=\"M%.2f %.2f l1.9 1.9 l-1.9 1.9 l-1.9 -1.9 Z\"/>", x, y - 1.9);
    } else {
      svg.add(
          "<circle cx=\"%.2f\" cy=\"%.2f\" r=\"0.9\" fill=\"none\" stroke=\"#000\""
              + " stroke-width=\"0.25\"/>",
          x, y);
    }
  }

  private void onWhite(double x, double y, double size, String words) {
    double wide = 0.62 * size * words.length() + 0.8;
    svg.add(
        "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" fill=\"#fff\"/>",
        x - wide / 2, y - size * 0.6, wide, size * 1.2);
    svg.text(x, y + size * 0.35, size, "middle", words);
  }
}

package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.readings.Meter;
import dev.ringout.readings.Reading;
import dev.ringout.units.OhmsRange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the leads seem to have had in each row of a sheet, more than is said of them: an amount that
 * is the same in all rows, or grows evenly from the first to the last. It is supposed where it
 * accounts for high values at less cost than as many poor joints, and leaves the rest as expected.
 *
 * @param noted whether the sheet says what the leads have, or that they were nulled
 * @param ohms what they seem to have more, by the middle one of the values that are too high
 * @param mended the failing readings that are as expected once that is taken off
 * @param comparison the readings with the leads taken off
 */
public record LeadEstimate(boolean noted, double ohms, List<Judged> mended, Comparison comparison) {
  private static final int LEAST_READINGS = 5;

  /** What a high value costs that no leads account for: −ln of how often a joint is poor. */
  private static final double POOR = 4.6;

  /** A value that would be too low is no common fault at all. */
  private static final double LOW = 6;

  /**
   * That leads were nulled or noted and have changed since, and for each 10 mΩ (common practice, no
   * source).
   */
  private static final double CHANGED = 2;

  private static final double CHANGED_EACH_OHM = 100;

  /**
   * That nothing is said of them, and for each ohm: most have 0.1 to 0.5 Ω (common practice, no
   * source).
   */
  private static final double UNTOLD = 1;

  private static final double UNTOLD_EACH_OHM = 4;

  /** By how much they may have grown from the first row to the last, in milliohms. */
  private static final int[] GROWTH_MILLIOHMS = {
    0, 2, 4, 6, 8, 10, 12, 15, 18, 22, 26, 30, 35, 40, 45, 50, 60, 70, 80, 100
  };

  /** One value: how much the leads may have had in it for it to be as expected. */
  private record Span(Judged judged, double at, double low, double high) {}

  private record Line(double start, double growth, double cost) {
    double at(double row) {
      return start + growth * row;
    }
  }

  /** The estimate, where leads account for failing readings. */
  public static Optional<LeadEstimate> of(
      Circuit circuit, JoinLimits limits, Comparison comparison) {
    Map<String, List<Judged>> sheets = new LinkedHashMap<>();
    for (Judged judged : comparison.inForce()) {
      if (judged.reading().kind() == Reading.Kind.CONTINUITY) {
        sheets
            .computeIfAbsent(judged.reading().place().file(), file -> new ArrayList<>())
            .add(judged);
      }
    }
    Map<Judged, Double> leads = new HashMap<>();
    boolean noted = true;
    for (List<Judged> sheet : sheets.values()) {
      Optional<Line> line = line(sheet);
      if (line.isPresent()) {
        for (int row = 0; row < sheet.size(); row++) {
          leads.put(sheet.get(row), line.get().at((double) row / sheet.size()));
        }
        noted &= sheet.get(0).reading().meter().leadOhms().isPresent();
      }
    }
    if (leads.isEmpty()) {
      return Optional.empty();
    }
    Comparison without = comparison.withLeads(circuit, limits, leads);
    Map<Judged, Judged> anew = new HashMap<>();
    without.inForce().forEach(judged -> anew.put(judged, judged));
    List<Judged> mended =
        comparison.with(Outcome.RESISTIVE).stream()
            .filter(judged -> judged.expected().isJoined())
            .filter(judged -> anew.getOrDefault(judged, judged).outcome().passes())
            .toList();
    return mended.isEmpty()
        ? Optional.empty()
        : Optional.of(new LeadEstimate(noted, middle(mended), mended, without));
  }

  /** By how much the middle one of some values is more than its wires account for. */
  private static double middle(List<Judged> readings) {
    double[] over =
        readings.stream()
            .mapToDouble(one -> one.seen().middleOhms() - one.limit().expected().middleOhms())
            .sorted()
            .toArray();
    return over[over.length / 2];
  }

  /** The likeliest line, where there is one that is more likely than none. */
  private static Optional<Line> line(List<Judged> sheet) {
    List<Span> spans = spans(sheet);
    boolean anyHigh = sheet.stream().anyMatch(LeadEstimate::isTooHigh);
    if (spans.size() < LEAST_READINGS || !anyHigh) {
      return Optional.empty();
    }
    boolean noted = sheet.get(0).reading().meter().leadOhms().isPresent();
    double without = cost(spans, new Line(0, 0, 0));
    Optional<Line> best = Optional.empty();
    for (int growth : GROWTH_MILLIOHMS) {
      for (int sign : new int[] {1, -1}) {
        Line line = best(spans, sign * growth / 1e3, noted);
        if (line.cost() < best.map(Line::cost).orElse(without)) {
          best = Optional.of(line);
        }
      }
    }
    return best;
  }

  private static boolean isTooHigh(Judged judged) {
    return judged.outcome() == Outcome.RESISTIVE && judged.value() == ValueVerdict.HIGH;
  }

  private static List<Span> spans(List<Judged> sheet) {
    List<Span> spans = new ArrayList<>();
    for (int row = 0; row < sheet.size(); row++) {
      Judged judged = sheet.get(row);
      OhmsRange expected = judged.limit().expected();
      if (!judged.expected().isJoined()
          || !expected.isKnown()
          || judged.value() == ValueVerdict.NOT_COMPARED) {
        continue;
      }
      double doubt = doubt(judged.reading());
      spans.add(
          new Span(
              judged,
              (double) row / sheet.size(),
              judged.seen().lowOhms() - doubt - expected.highOhms(),
              judged.seen().highOhms() + doubt - expected.lowOhms()));
    }
    return spans;
  }

  private static double doubt(Reading reading) {
    return reading.measured().value().map(reading.meter()::benefitOfTheDoubtOhms).orElse(0.0);
  }

  /** The likeliest start with such a growth: the cost changes only where a value's span ends. */
  private static Line best(List<Span> spans, double growth, boolean noted) {
    double[] starts =
        spans.stream()
            .mapToDouble(span -> span.low() - growth * span.at())
            .map(start -> Math.max(0, Math.max(start, -growth)))
            .sorted()
            .distinct()
            .toArray();
    double[] lows =
        spans.stream().mapToDouble(span -> span.low() - growth * span.at()).sorted().toArray();
    double[] highs =
        spans.stream().mapToDouble(span -> span.high() - growth * span.at()).sorted().toArray();
    Line best = new Line(0, growth, Double.POSITIVE_INFINITY);
    for (double start : starts) {
      // To a hair: the start is one of these ends.
      double tooHigh = lows.length - below(lows, start + 1e-9);
      double tooLow = below(highs, start - 1e-9);
      double most = Math.max(start, start + growth);
      double leads = noted ? CHANGED + most * CHANGED_EACH_OHM : UNTOLD + most * UNTOLD_EACH_OHM;
      double cost = leads + tooHigh * POOR + tooLow * LOW;
      if (cost < best.cost()) {
        best = new Line(start, growth, cost);
      }
    }
    return best;
  }

  /** How many are no more than a value. */
  private static int below(double[] sorted, double value) {
    int found = Arrays.binarySearch(sorted, value);
    int at = found < 0 ? -found - 1 : found;
    while (at < sorted.length && sorted[at] <= value) {
      at++;
    }
    return at;
  }

  private static double cost(List<Span> spans, Line line) {
    double cost = 0;
    for (Span span : spans) {
      double leads = line.at(span.at());
      cost += span.low() > leads ? POOR : span.high() < leads ? LOW : 0;
    }
    return cost;
  }

  /** A meter with so much more in its leads, a tenth more or less. */
  static Meter with(Meter meter, double ohms) {
    return new Meter(
        OptionalDouble.of(meter.leadOhms().orElse(0) + ohms),
        meter.leadsOffOhms() + ohms / 10,
        meter.celsius(),
        meter.accuracyShare(),
        meter.accuracyDigits(),
        meter.accuracyOhms(),
        meter.resolutionOhms());
  }
}

package dev.ringout.diagnose;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected.Joined;
import dev.ringout.circuit.Nets;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.Fault.Finding;
import dev.ringout.harness.Point;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Low insulation. Where most of the pins read at one connector are low, that is one finding:
 * moisture or dirt there is likelier than so many damaged wires (common practice, no source).
 */
final class LowInsulations {
  private static final int LEAST_FOR_ONE_CAUSE = 3;

  private final Circuit circuit;
  private final Comparison comparison;

  LowInsulations(Circuit circuit, Comparison comparison) {
    this.circuit = circuit;
    this.comparison = comparison;
  }

  List<Fault> faults(Set<Judged> explainedOtherwise) {
    List<Judged> low = new ArrayList<>(comparison.with(Outcome.LOW_INSULATION));
    low.removeAll(explainedOtherwise);
    List<Fault> faults = new ArrayList<>();
    while (low.size() >= LEAST_FOR_ONE_CAUSE) {
      List<String> items = sharedItems(low);
      if (items.isEmpty()) {
        break;
      }
      List<Judged> there =
          low.stream().filter(judged -> itemsOf(judged).contains(items.get(0))).toList();
      faults.add(atItem(items, there));
      low.removeAll(there);
    }
    low.forEach(judged -> faults.add(single(judged)));
    for (Judged judged : comparison.with(Outcome.RESISTIVE)) {
      if (!(judged.expected() instanceof Joined) && !explainedOtherwise.contains(judged)) {
        faults.add(single(judged));
      }
    }
    return faults;
  }

  /** The items at which the greatest share of what was read is low, if it is most of it. */
  private List<String> sharedItems(List<Judged> low) {
    Map<String, Integer> lowAt = count(low);
    Map<String, Integer> readAt =
        count(
            comparison.inForce().stream()
                .filter(judged -> judged.reading().kind() == Reading.Kind.INSULATION)
                .filter(judged -> judged.reading().measured().made())
                .toList());
    double most = 0.5;
    List<String> items = new ArrayList<>();
    for (Map.Entry<String, Integer> entry : lowAt.entrySet()) {
      double share = entry.getValue() / (double) readAt.getOrDefault(entry.getKey(), 1);
      if (entry.getValue() < LEAST_FOR_ONE_CAUSE || share < most) {
        continue;
      }
      if (share > most) {
        items.clear();
      }
      most = share;
      items.add(entry.getKey());
    }
    // Several items with the same share are the ends of one cable: keep those with the most low
    // pins.
    int highest = items.stream().mapToInt(item -> lowAt.getOrDefault(item, 0)).max().orElse(0);
    items.removeIf(item -> lowAt.getOrDefault(item, 0) < highest);
    return items;
  }

  private Map<String, Integer> count(List<Judged> readings) {
    Map<String, Integer> counts = new TreeMap<>();
    for (Judged judged : readings) {
      itemsOf(judged).forEach(item -> counts.merge(item, 1, Integer::sum));
    }
    return counts;
  }

  /** The items at which the nets that were read have points. */
  private Set<String> itemsOf(Judged judged) {
    Set<String> items = new TreeSet<>();
    for (int point : pointsOf(judged)) {
      items.add(circuit.point(point).ref());
    }
    return items;
  }

  private Set<Integer> pointsOf(Judged judged) {
    Nets nets = circuit.in(judged.reading().state());
    Set<Integer> points = new TreeSet<>();
    for (int from : judged.probing().from()) {
      for (int point : nets.pointsOf(nets.of(from))) {
        points.add(point);
      }
    }
    return points;
  }

  private Fault atItem(List<String> items, List<Judged> readings) {
    Set<Point> points = new LinkedHashSet<>();
    for (Judged judged : readings) {
      for (int point : pointsOf(judged)) {
        if (items.get(0).equals(circuit.point(point).ref())) {
          points.add(circuit.point(point));
        }
      }
    }
    int read =
        (int)
            comparison.inForce().stream()
                .filter(judged -> judged.reading().kind() == Reading.Kind.INSULATION)
                .filter(judged -> judged.reading().measured().made())
                .filter(judged -> itemsOf(judged).contains(items.get(0)))
                .count();
    return fault(readings, points.stream().sorted().toList(), items, read, Certainty.LIKELY);
  }

  private Fault single(Judged judged) {
    List<Point> points = judged.probing().points().mapToObj(circuit::point).distinct().toList();
    return fault(List.of(judged), points, List.of(), 1, Certainty.CERTAIN);
  }

  private static Fault fault(
      List<Judged> readings,
      List<Point> points,
      List<String> items,
      int pointsRead,
      Certainty certainty) {
    DoubleSummaryStatistics ohms =
        readings.stream()
            .mapToDouble(LowInsulations::ohms)
            .filter(Double::isFinite)
            .summaryStatistics();
    boolean measured = ohms.getCount() > 0;
    Reading first = readings.get(0).reading();
    return new Fault.LowInsulation(
        Finding.alone(certainty, readings, List.of()),
        points,
        items,
        pointsRead,
        measured ? OptionalDouble.of(ohms.getMin()) : OptionalDouble.empty(),
        measured ? OptionalDouble.of(ohms.getMax()) : OptionalDouble.empty(),
        first.kind() == Reading.Kind.INSULATION ? first.volts() : OptionalDouble.empty());
  }

  private static double ohms(Judged judged) {
    Measured measured = judged.reading().measured();
    if (measured instanceof Measured.Value value) {
      return value.ohms();
    }
    return measured instanceof Measured.LessThan less ? less.ohms() : Double.NaN;
  }
}

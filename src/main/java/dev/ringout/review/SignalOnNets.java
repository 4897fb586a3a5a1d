package dev.ringout.review;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** A signal name on two nets that meet at one connector. */
final class SignalOnNets implements Check {
  private static final Wire.End[] NO_ENDS = {};

  @Override
  public String rule() {
    return "signal-on-nets";
  }

  @Override
  public String about() {
    return "one signal name stands on one net of an item";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    findings.looked();
    record Key(String signal, String ref) {}
    Map<Key, Map<Integer, Point>> nets = new LinkedHashMap<>();
    Map<String, Map<String, Set<Integer>>> strips = new HashMap<>();
    List<Wire> wires = paper.harness().wires();
    for (int i = 0; i < wires.size(); i++) {
      Wire wire = wires.get(i);
      for (Wire.End end : wire.signal().isEmpty() ? NO_ENDS : Wire.End.values()) {
        Point point = wire.at(end);
        if (paper.isConnector(point.ref())) {
          nets.computeIfAbsent(
                  new Key(wire.signal().toUpperCase(Locale.ROOT), point.ref()),
                  key -> new LinkedHashMap<>(2))
              .putIfAbsent(paper.netOf(i), point);
        } else if (paper.isTerminal(point.ref())) {
          strips
              .computeIfAbsent(wire.signal().toUpperCase(Locale.ROOT), key -> new HashMap<>())
              .computeIfAbsent(point.ref(), key -> new HashSet<>())
              .add(paper.netOf(i));
        }
      }
    }
    nets.forEach(
        (key, points) -> {
          String signal = key.signal();
          if (points.size() > 1 && !meetOnAStrip(strips.getOrDefault(signal, Map.of()), points)) {
            say(signal, List.copyOf(points.values()), findings);
          }
        });
  }

  private static void say(String signal, List<Point> points, Findings findings) {
    findings.say(
        Severity.WARNING,
        points.get(0),
        Text.of(
            "%s stands on %d nets of %s: %s",
            signal,
            points.size(),
            points.get(0).ref(),
            points.stream().map(Point::toString).limit(4).collect(Collectors.joining(", "))),
        COMMON);
  }

  /** Whether the nets share a strip: then a jumper is missing there, which is another check's. */
  private static boolean meetOnAStrip(
      Map<String, Set<Integer>> strips, Map<Integer, Point> points) {
    return strips.values().stream()
        .anyMatch(nets -> points.keySet().stream().filter(nets::contains).count() > 1);
  }
}

package dev.ringout.review;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A signal name on two nets that meet at one connector. */
final class SignalOnNets implements Check {
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
    Map<String, Map<Integer, Point>> nets = new TreeMap<>();
    for (Wire wire : paper.harness().wires()) {
      if (wire.signal().isEmpty()) {
        continue;
      }
      for (Point point : List.of(wire.from(), wire.to())) {
        if (paper.isConnector(point.ref())) {
          nets.computeIfAbsent(
                  wire.signal().toUpperCase(Locale.ROOT) + "\t" + point.ref(),
                  key -> new TreeMap<>())
              .putIfAbsent(paper.nets().of(paper.circuit().index(point)), point);
        }
      }
    }
    nets.forEach(
        (key, points) -> {
          String signal = key.substring(0, key.indexOf('\t'));
          if (points.size() > 1 && !meetOnAStrip(paper, signal, points)) {
            Point point = points.values().iterator().next();
            findings.say(
                Severity.WARNING,
                point,
                Text.of(
                    "%s stands on %d nets of %s: %s",
                    signal,
                    points.size(),
                    point.ref(),
                    points.values().stream()
                        .map(Point::toString)
                        .limit(4)
                        .collect(Collectors.joining(", "))),
                COMMON);
          }
        });
  }

  /** Whether the nets share a strip: then a jumper is missing there, which is another check's. */
  private static boolean meetOnAStrip(Paper paper, String signal, Map<Integer, Point> points) {
    Set<String> strips = new HashSet<>();
    for (int net : points.keySet()) {
      Set<String> own = new HashSet<>();
      for (int point : paper.nets().pointsOf(net)) {
        String ref = paper.circuit().point(point).ref();
        boolean bears =
            paper.wiresAt(paper.circuit().point(point)).stream()
                .anyMatch(wire -> wire.signal().equalsIgnoreCase(signal));
        if (paper.isTerminal(ref) && bears) {
          own.add(ref);
        }
      }
      for (String ref : own) {
        if (!strips.add(ref)) {
          return true;
        }
      }
    }
    return false;
  }
}

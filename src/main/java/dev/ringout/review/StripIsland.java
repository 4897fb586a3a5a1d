package dev.ringout.review;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Terminals of one strip that should be joined by a jumper. */
final class StripIsland implements Check {
  @Override
  public String rule() {
    return "strip-island";
  }

  @Override
  public String about() {
    return "terminals of a strip with the same signal are joined";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    findings.looked();
    for (Map.Entry<String, Set<Point>> item : paper.pointsOf().entrySet()) {
      if (!paper.isTerminal(item.getKey())) {
        continue;
      }
      Map<String, List<Point>> bySignal = new TreeMap<>();
      for (Point point : item.getValue()) {
        for (Wire wire : paper.wiresAt(point)) {
          List<Point> points =
              bySignal.computeIfAbsent(
                  wire.signal().toUpperCase(Locale.ROOT), key -> new ArrayList<>());
          if (!points.contains(point)) {
            points.add(point);
          }
        }
      }
      bySignal.remove("");
      bySignal.forEach(
          (signal, points) ->
              points.stream()
                  .filter(point -> !paper.joined(points.get(0), point))
                  .findFirst()
                  .ifPresent(
                      apart ->
                          findings.say(
                              Severity.WARNING,
                              apart,
                              Text.of(
                                  "%s and %s both have %s, but nothing joins them: is a jumper missing?",
                                  points.get(0), apart, signal),
                              COMMON)));
    }
  }
}

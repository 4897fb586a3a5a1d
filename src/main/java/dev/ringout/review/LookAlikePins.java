package dev.ringout.review;

import dev.ringout.harness.Point;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Pins such as 1 and I, 0 and O on one item. */
final class LookAlikePins implements Check {
  @Override
  public String rule() {
    return "look-alike-pins";
  }

  @Override
  public String about() {
    return "no two pins of an item look alike";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    findings.looked();
    for (Map.Entry<String, Set<Point>> item : paper.pointsOf().entrySet()) {
      Map<String, TreeSet<String>> alike = new TreeMap<>();
      for (Point point : item.getValue()) {
        String look =
            point.pin().replace('I', '1').replace('l', '1').replace('O', '0').replace('o', '0');
        alike.computeIfAbsent(look, key -> new TreeSet<>()).add(point.pin());
      }
      for (TreeSet<String> pins : alike.values()) {
        if (pins.size() > 1) {
          findings.say(
              Severity.WARNING,
              new Point(item.getKey(), pins.first()),
              Text.of("%s has pins that look alike: %s", item.getKey(), String.join(", ", pins)),
              COMMON);
        }
      }
    }
  }
}

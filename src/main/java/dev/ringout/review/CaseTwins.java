package dev.ringout.review;

import dev.ringout.harness.Point;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Contacts that differ only in small and capital letters. */
final class CaseTwins implements Check {
  @Override
  public String rule() {
    return "case-twins";
  }

  @Override
  public String about() {
    return "items with both small and capital letters";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    findings.looked();
    for (Map.Entry<String, Set<Point>> item : paper.pointsOf().entrySet()) {
      Set<String> pins = item.getValue().stream().map(Point::pin).collect(Collectors.toSet());
      List<String> twins =
          pins.stream()
              .filter(pin -> !pin.equals(pin.toUpperCase(Locale.ROOT)))
              .filter(pin -> pins.contains(pin.toUpperCase(Locale.ROOT)))
              .sorted()
              .toList();
      if (!twins.isEmpty()) {
        findings.say(
            Severity.NOTE,
            item.getKey(),
            Text.of(
                "%s has contacts that differ only in small and capital letters: %s and the capitals",
                item.getKey(), String.join(", ", twins)),
            "MIL-DTL-38999 insert drawings: capital and small letters are different contacts");
      }
    }
  }
}

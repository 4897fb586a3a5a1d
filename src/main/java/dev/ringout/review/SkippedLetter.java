package dev.ringout.review;

import dev.ringout.harness.Point;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.Map;
import java.util.Set;

/** Letters that lettered inserts do not use. */
final class SkippedLetter implements Check {
  private static final String SKIPPED = "IOQlo";
  private static final String[] MEANT = {"J or 1", "0 or D", "O or 0, or G", "1 or L", "0 or a"};

  private static boolean isLetter(String pin) {
    return pin.length() == 1
        && Character.isLetter(pin.charAt(0))
        && SKIPPED.indexOf(pin.charAt(0)) < 0;
  }

  @Override
  public String rule() {
    return "skipped-letter";
  }

  @Override
  public String about() {
    return "no pin has a letter that inserts do not use";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    findings.looked();
    for (Map.Entry<String, Set<Point>> item : paper.pointsOf().entrySet()) {
      boolean lettered =
          item.getValue().stream().filter(point -> isLetter(point.pin())).count() >= 3;
      if (!paper.isConnector(item.getKey())
          || !lettered
          || paper.insert(item.getKey()).isPresent()) {
        continue;
      }
      for (Point point : item.getValue()) {
        int at = point.pin().length() == 1 ? SKIPPED.indexOf(point.pin()) : -1;
        if (at >= 0) {
          findings.say(
              Severity.WARNING,
              point,
              Text.of(
                  "lettered inserts do not use %s: is %s the contact %s?",
                  point.pin(), point, MEANT[at]),
              "MIL-DTL-38999 insert drawings: I, O and Q, small l and o are not used");
        }
      }
    }
  }
}

package dev.ringout.review;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;

/** Wires whose one end is stowed or not known. A wire without an end is refused on reading. */
final class OneEnded implements Check {
  @Override
  public String rule() {
    return "one-ended";
  }

  @Override
  public String about() {
    return "both ends of every wire are on a known point";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    findings.looked();
    for (Wire wire : paper.harness().wires()) {
      for (Wire.End end : Wire.End.values()) {
        Point point = wire.at(end);
        if (point.ref().equals("STOWED")) {
          findings.say(
              Severity.NOTE,
              point,
              wire,
              Text.of("%s ends on no contact here: cap it, and mark it", wire.name()),
              COMMON);
        } else if (point.pin().startsWith("?")) {
          findings.say(
              Severity.WARNING,
              point,
              wire,
              Text.of(
                  "the list does not say which terminal of %s takes %s", point.ref(), wire.name()),
              COMMON);
        }
      }
    }
  }
}

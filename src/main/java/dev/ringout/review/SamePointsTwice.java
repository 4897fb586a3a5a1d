package dev.ringout.review;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** Two wires between the same two points. */
final class SamePointsTwice implements Check {
  @Override
  public String rule() {
    return "same-points-twice";
  }

  @Override
  public String about() {
    return "no two wires join the same two points";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    findings.looked();
    Map<Set<Point>, Wire> first = new HashMap<>();
    for (Wire wire : paper.harness().wires()) {
      Wire before = first.putIfAbsent(Set.of(wire.from(), wire.to()), wire);
      if (before != null && !before.name().equals(wire.name())) {
        findings.say(
            Severity.WARNING,
            wire,
            Text.of(
                "%s and %s both join %s and %s: if that is meant, no continuity reading tells one from the other",
                before.name(), wire.name(), wire.from(), wire.to()),
            COMMON);
      }
    }
  }
}

package dev.ringout.review;

import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A wire number that stands on several wires. */
final class WireNumberTwice implements Check {
  @Override
  public String rule() {
    return "wire-number-twice";
  }

  @Override
  public String about() {
    return "a wire number names one wire";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    findings.looked();
    Map<String, List<Wire>> byName = new LinkedHashMap<>();
    for (Wire wire : paper.harness().wires()) {
      byName.computeIfAbsent(wire.name(), key -> new ArrayList<>(1)).add(wire);
    }
    for (List<Wire> same : byName.values()) {
      if (same.size() > 1) {
        findings.say(
            Severity.WARNING,
            same.get(0),
            Text.of(
                "the number %s is used for %d wires: %s",
                same.get(0).name(),
                same.size(),
                same.stream()
                    .limit(4)
                    .map(wire -> wire.from() + " to " + wire.to())
                    .collect(Collectors.joining(", "))),
            COMMON);
      }
    }
  }
}

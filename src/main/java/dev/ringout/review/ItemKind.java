package dev.ringout.review;

import dev.ringout.harness.NaturalOrder;
import dev.ringout.source.Severity;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.List;
import java.util.stream.Collectors;

/** Items of which neither the list nor the designator says what they are. */
final class ItemKind implements Check {
  @Override
  public String rule() {
    return "item-kind";
  }

  @Override
  public String about() {
    return "every item has a kind";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    findings.looked();
    List<String> unknown =
        paper.pointsOf().keySet().stream()
            .filter(ref -> !ref.equals("STOWED") && paper.kind(ref).isEmpty())
            .sorted(NaturalOrder.INSTANCE)
            .toList();
    if (!unknown.isEmpty()) {
      findings.say(
          Severity.NOTE,
          unknown.get(0),
          Text.of(
              "%s without a kind, and the letter does not say it: %s%s",
              Numbers.count(unknown.size(), "item"),
              unknown.stream().limit(8).collect(Collectors.joining(", ")),
              unknown.size() > 8 ? " …" : ""),
          "IEEE 315 and ASME Y14.44 class letters");
    }
  }
}

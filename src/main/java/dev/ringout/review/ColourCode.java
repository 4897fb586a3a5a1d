package dev.ringout.review;

import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Colours that no colour code has: mostly a slip of the pen. */
final class ColourCode implements Check {
  /** Words that stand beside colours. */
  private static final Set<String> OTHER =
      Set.of(
          "BARE", "BRAID", "CLEAR", "STRIPE", "STRIPED", "LIGHT", "DARK", "LT", "DK", "WITH", "AND",
          "TAN");

  @Override
  public String rule() {
    return "colour-code";
  }

  @Override
  public String about() {
    return "the colour is one of the code, in words or digits";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    Map<String, List<String>> unknown = new HashMap<>();
    for (Wire wire : paper.harness().wires()) {
      if (wire.color().isEmpty()) {
        continue;
      }
      findings.looked();
      for (String part :
          unknown.computeIfAbsent(wire.color(), color -> unknownParts(paper, color))) {
        findings.say(
            Severity.WARNING,
            wire,
            Text.of(
                "the colour %s of %s: %s is in no colour code", wire.color(), wire.name(), part),
            paper.rows("colour-codes").get(0).citation());
      }
    }
    findings.notRun("no wire has a colour");
  }

  private static List<String> unknownParts(Paper paper, String color) {
    List<String> unknown = new ArrayList<>();
    for (String part : color.toUpperCase(Locale.ROOT).split("[\\s/,;+-]+", -1)) {
      boolean digits = part.matches("\\d{1,4}");
      boolean known =
          digits
              || part.isEmpty()
              || OTHER.contains(part)
              || paper.rows("colour-codes").stream()
                  .anyMatch(
                      row ->
                          List.of(row.get("words").toUpperCase(Locale.ROOT).split(" ", -1))
                              .contains(part));
      if (!known) {
        unknown.add(part);
      }
    }
    return unknown;
  }
}

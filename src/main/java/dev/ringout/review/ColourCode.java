package dev.ringout.review;

import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.standards.ColourCodes;
import dev.ringout.units.Text;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Colours that no colour code has: mostly a slip of the pen. */
final class ColourCode implements Check {
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
    ColourCodes codes = paper.colourCodes();
    Map<String, List<String>> unknown = new HashMap<>();
    for (Wire wire : paper.harness().wires()) {
      if (wire.colour().isEmpty()) {
        continue;
      }
      findings.looked();
      for (String part : unknown.computeIfAbsent(wire.colour(), codes::unknownParts)) {
        findings.say(
            Severity.WARNING,
            wire,
            Text.of(
                "the colour %s of %s: %s is in no colour code", wire.colour(), wire.name(), part),
            codes.citation());
      }
    }
    findings.notRun(Lack.COLOURS);
  }
}

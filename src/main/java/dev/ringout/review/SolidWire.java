package dev.ringout.review;

import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Solid or solder-dipped wire in a crimp contact. Tin-coated strands are another thing. */
final class SolidWire implements Check {
  private static final Pattern BAD =
      Pattern.compile("(?i)\\bsolid\\b|\\bsolder[- ]dipped\\b|\\bpre-?tinned\\b|\\bends tinned\\b");

  @Override
  public String rule() {
    return "solid-wire";
  }

  @Override
  public String about() {
    return "no solid or tinned wire is crimped";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    for (Wire wire : paper.harness().wires()) {
      if (wire.type().isEmpty()) {
        continue;
      }
      findings.looked();
      Matcher bad = BAD.matcher(wire.type() + " " + wire.note());
      if (bad.find()
          && (paper.contact(wire, Wire.End.FROM).isPresent()
              || paper.contact(wire, Wire.End.TO).isPresent())) {
        findings.say(
            Severity.ERROR,
            wire,
            Text.of(
                "%s is \"%s\": crimp contacts take stranded wire that was not dipped in solder",
                wire.name(), bad.group()),
            "NASA-STD-8739.4: no solid or solder-tinned conductor is crimped");
      }
    }
    findings.notRun(Lack.WIRE_TYPES);
  }
}

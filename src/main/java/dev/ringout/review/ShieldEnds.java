package dev.ringout.review;

import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.Locale;
import java.util.regex.Pattern;

/** The ends at which a shield is landed, against the word in its note. */
final class ShieldEnds implements Check {
  private static final Pattern SHIELD = Pattern.compile("SHIELD|SHLD|SCREEN|BRAID|BARE");

  @Override
  public String rule() {
    return "shield-ends";
  }

  @Override
  public String about() {
    return "a shield is landed at the ends that the drawing says";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    for (Wire wire : paper.harness().wires()) {
      if (wire.note().isEmpty() && wire.signal().isEmpty()) {
        continue;
      }
      String says = (wire.note() + " " + wire.signal()).toUpperCase(Locale.ROOT);
      if (!SHIELD.matcher(says + " " + wire.colour().toUpperCase(Locale.ROOT)).find()) {
        continue;
      }
      int wanted =
          says.contains("BOTH ENDS")
              ? 2
              : says.contains("ONE END") ? 1 : says.contains("FLOAT") ? 0 : -1;
      if (wanted < 0) {
        continue;
      }
      findings.looked();
      int landed = 0;
      for (Wire.End end : Wire.End.values()) {
        landed +=
            wire.at(end).ref().equals("STOWED")
                    || wire.at(end).pin().toUpperCase(Locale.ROOT).contains("FLOAT")
                ? 0
                : 1;
      }
      if (landed != wanted) {
        findings.say(
            Severity.WARNING,
            wire,
            Text.of(
                "the shield %s is landed at %d of its ends; its note says %s",
                wire.name(),
                landed,
                wanted == 2 ? "both ends" : wanted == 1 ? "one end" : "floating"),
            COMMON);
      }
    }
    findings.notRun(Lack.SHIELD_NOTES);
  }
}

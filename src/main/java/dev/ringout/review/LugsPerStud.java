package dev.ringout.review;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.List;
import java.util.Map;

/** How many lugs stand on one stud; the sources disagree. */
final class LugsPerStud implements Check {
  private static final int MOST_AIRCRAFT = 4;
  private static final int MOST_MILITARY = 3;

  @Override
  public String rule() {
    return "lugs-per-stud";
  }

  @Override
  public String about() {
    return "no more lugs on a stud than the rules allow";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    for (Map.Entry<Point, List<Wire>> entry : paper.wiresAt().entrySet()) {
      int lugs = entry.getValue().size();
      if (!paper.isTerminal(entry.getKey().ref())) {
        continue;
      }
      findings.looked();
      if (lugs > MOST_AIRCRAFT) {
        findings.say(
            Severity.ERROR,
            entry.getKey(),
            Text.of(
                "%s has %d lugs; more than %d go on a bus across neighbouring studs (military equipment: %d)",
                entry.getKey(), lugs, MOST_AIRCRAFT, MOST_MILITARY),
            "FAA AC 43.13-1B chapter 11; US military equipment practice: three a stud, two where the terminal has two screws; jumpers not counted");
      } else if (lugs > MOST_MILITARY) {
        findings.say(
            Severity.WARNING,
            entry.getKey(),
            Text.of(
                "%s has %d lugs: allowed in aircraft (%d), not in military equipment (%d)",
                entry.getKey(), lugs, MOST_AIRCRAFT, MOST_MILITARY),
            "FAA AC 43.13-1B chapter 11 against US military equipment practice");
      }
    }
    findings.notRun(Lack.STUDS);
  }
}

package dev.ringout.review;

import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.standards.Tables.Entry;
import dev.ringout.units.Text;
import java.util.List;
import java.util.Optional;

/** The stud size of a lug against that of its terminal. */
final class LugStud implements Check {
  @Override
  public String rule() {
    return "lug-stud";
  }

  @Override
  public String about() {
    return "the hole of a lug fits the stud";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    for (Wire wire : paper.harness().wires()) {
      for (Wire.End end : Wire.End.values()) {
        Optional<Lug> lug = Lug.of(wire.contactAt(end));
        String stud = paper.pin(wire.at(end)).map(PinDetail::size).map(Lug::stud).orElse("");
        if (lug.isEmpty() || lug.get().stud().isEmpty() || stud.isEmpty()) {
          continue;
        }
        findings.looked();
        Optional<Entry> row = paper.lugRow(lug.get());
        if (!lug.get().stud().equals(stud)) {
          findings.say(
              Severity.ERROR,
              wire.at(end),
              wire,
              Text.of(
                  "%s has a lug for a %s stud, %s is a %s stud",
                  wire.name(), size(lug.get().stud()), wire.at(end), size(stud)),
              "FAA AC 43.13-1B chapter 11: the lug's hole is that of the stud");
        } else if (row.isPresent()
            && !List.of(row.get().get("studs").split(" ", -1)).contains(stud)) {
          findings.say(
              Severity.WARNING,
              wire.at(end),
              wire,
              Text.of("%s lugs are not made for a %s stud", lug.get().colour(), size(stud)),
              row.get().citation());
        }
      }
    }
    findings.notRun(Lack.LUG_AND_STUD_SIZES);
  }

  private static String size(String stud) {
    return stud.contains("/") ? stud + " in" : "#" + stud;
  }
}

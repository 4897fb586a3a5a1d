package dev.ringout.review;

import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.standards.ContactSizes.ContactSize;
import dev.ringout.standards.Tables.Entry;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.Optional;

/** The diameter over insulation against the grommet. */
final class InsulationGrommet implements Check {
  @Override
  public String rule() {
    return "insulation-grommet";
  }

  @Override
  public String about() {
    return "the grommet seals on the wire";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    for (Wire wire : paper.harness().wires()) {
      Optional<Entry> type = paper.wireType(wire).filter(row -> !row.get("diameter_in").isEmpty());
      for (Wire.End end : Wire.End.values()) {
        Optional<ContactSize> contact =
            type.isPresent() ? paper.contact(wire, end) : Optional.empty();
        if (contact.isEmpty() || contact.get().thickestWireInches().isEmpty()) {
          continue;
        }
        findings.looked();
        double diameter = type.get().number("diameter_in");
        double least = contact.get().thinnestWireInches().orElse(0);
        double most = contact.get().thickestWireInches().orElse(Double.MAX_VALUE);
        if (diameter < least || diameter > most) {
          findings.say(
              Severity.WARNING,
              wire.at(end),
              wire,
              Text.of(
                  "%s is %s in over its insulation; the grommet of a size %s cavity seals on %s to %s in",
                  wire.name(),
                  Numbers.plain(diameter),
                  contact.get().size(),
                  Numbers.plain(least),
                  Numbers.plain(most)),
              "MIL-DTL-38999 grommet limits, from memory; "
                  + type.get().get("type")
                  + (type.get().isFromMemory() ? ", from memory; " : "; ")
                  + contact.get().citation());
        }
      }
    }
    findings.notRun(Lack.WIRE_DIAMETERS);
  }
}

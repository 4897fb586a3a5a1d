package dev.ringout.review;

import dev.ringout.harness.Crimp;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.standards.ContactSizes.ContactSize;
import dev.ringout.standards.Tables.Entry;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.Optional;

/** How far each wire was stripped that the crimp log gives a length for. */
final class StripLength implements Check {
  @Override
  public String rule() {
    return "strip-length";
  }

  @Override
  public String about() {
    return "a wire is stripped as far as its contact asks";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    for (Crimp crimp : paper.harness().crimps()) {
      Optional<Wire> wire = paper.wire(crimp.wire());
      Optional<Entry> asked = asked(paper, crimp.contact());
      if (crimp.stripMillimetres().isEmpty() || wire.isEmpty() || asked.isEmpty()) {
        continue;
      }
      findings.looked();
      double stripped = crimp.stripMillimetres().getAsDouble();
      double least = asked.get().number("strip_min_mm");
      double most = asked.get().number("strip_max_mm");
      if (stripped < least || stripped > most) {
        findings.say(
            Severity.WARNING,
            wire.get(),
            Text.of(
                "%s is stripped %s mm; a size %s contact asks for %s to %s mm (%s)",
                crimp.wire(),
                Numbers.plain(stripped),
                asked.get().get("contact"),
                Numbers.plain(least),
                Numbers.plain(most),
                stripped < least
                    ? "strands may not fill the barrel: look in its inspection hole"
                    : "bare strands may stand outside the barrel"),
            asked.get().citation());
      }
    }
    findings.notRun(Lack.STRIP_LENGTHS);
  }

  /** The row of the contact itself, else of its size. */
  private static Optional<Entry> asked(Paper paper, String contact) {
    String size = paper.contactSize(contact).map(ContactSize::size).orElse(contact);
    Optional<Entry> own = row(paper, contact);
    return own.isPresent() ? own : row(paper, size);
  }

  private static Optional<Entry> row(Paper paper, String contact) {
    return paper.rows("strip-lengths").stream()
        .filter(row -> row.get("contact").equalsIgnoreCase(contact))
        .findFirst();
  }
}

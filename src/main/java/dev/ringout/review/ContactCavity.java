package dev.ringout.review;

import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.standards.ContactSizes.ContactSize;
import dev.ringout.units.Text;
import java.util.Optional;

/** The size of a contact against that of its cavity. */
final class ContactCavity implements Check {
  @Override
  public String rule() {
    return "contact-cavity";
  }

  @Override
  public String about() {
    return "the contact on a wire fits the cavity";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    for (Wire wire : paper.harness().wires()) {
      for (Wire.End end : Wire.End.values()) {
        Optional<ContactSize> contact = paper.contactSize(wire.contactAt(end));
        Optional<ContactSize> cavity =
            contact.isEmpty() ? Optional.empty() : paper.cavity(wire.at(end));
        if (contact.isEmpty() || cavity.isEmpty()) {
          continue;
        }
        findings.looked();
        if (!contact.get().size().equals(cavity.get().size())) {
          findings.say(
              Severity.ERROR,
              wire.at(end),
              wire,
              Text.of(
                  "%s has a size %s contact, the cavity is size %s",
                  wire.name(), contact.get().size(), cavity.get().size()),
              contact.get().citation());
        }
      }
    }
    findings.notRun(Lack.CONTACTS_AND_CAVITY_SIZES);
  }
}

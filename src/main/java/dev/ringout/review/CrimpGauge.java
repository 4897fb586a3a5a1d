package dev.ringout.review;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.standards.ContactSizes.ContactSize;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.Optional;

/** The wire's gauge against the wire range of the contact it is crimped into. */
final class CrimpGauge implements Check {
  @Override
  public String rule() {
    return "crimp-gauge";
  }

  @Override
  public String about() {
    return "the contact takes the gauge of its wire";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    int unchecked = 0;
    String firstUnchecked = "";
    for (Wire wire : paper.harness().wires()) {
      for (Wire.End end : Wire.End.values()) {
        Optional<ContactSize> contact =
            wire.gauge().isPresent() ? paper.contact(wire, end) : Optional.empty();
        Optional<Boolean> takes =
            contact.isPresent()
                ? paper.contactSizes().takes(contact.get(), wire.gauge().get())
                : Optional.empty();
        if (takes.isEmpty()) {
          boolean crimped =
              paper.isConnector(wire.at(end).ref()) && !wire.at(end).pin().equals(Point.SHELL);
          if (crimped) {
            unchecked++;
            firstUnchecked = firstUnchecked.isEmpty() ? wire.at(end).toString() : firstUnchecked;
          }
          continue;
        }
        findings.looked();
        if (!takes.get()) {
          sayWrongGauge(wire, end, contact.get(), findings);
        }
      }
    }
    if (unchecked > 0 && findings.hasLooked()) {
      sayUnchecked(unchecked, firstUnchecked, findings);
    }
    findings.notRun(Lack.GAUGES_AND_CONTACT_SIZES);
  }

  private static void sayWrongGauge(Wire wire, Wire.End end, ContactSize size, Findings findings) {
    findings.say(
        Findings.breach(size.fromMemory()),
        wire.at(end),
        wire,
        Text.of(
            "%s is %s; a size %s contact takes AWG %s to %s",
            wire.name(),
            wire.gaugeLabel(),
            size.size(),
            size.finest().size(),
            size.coarsest().size()),
        size.citation());
  }

  private static void sayUnchecked(int ends, String first, Findings findings) {
    findings.say(
        Severity.NOTE,
        first,
        Text.of(
            "%s of connectors, this one first, could not be checked: the gauge or a known contact is missing",
            Numbers.count(ends, "wire end")),
        COMMON);
  }
}

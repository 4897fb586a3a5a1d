package dev.ringout.review;

import dev.ringout.harness.Harness;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.standards.ContactSizes;
import dev.ringout.standards.ContactSizes.ContactSize;
import dev.ringout.units.Gauge;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The wire's gauge against the wire range of the contact it is crimped into. */
public final class CrimpGauge {
  /** The rule's id. */
  public static final String RULE = "crimp-gauge";

  private final ContactSizes contactSizes;
  private final Map<Point, PinDetail> pins = new HashMap<>();

  private CrimpGauge(Harness harness, ContactSizes contactSizes) {
    this.contactSizes = contactSizes;
    harness.pins().forEach(pin -> pins.put(pin.point(), pin));
  }

  /** A remark for each wire end whose contact does not take its gauge. */
  public static List<Remark> check(Harness harness, ContactSizes contactSizes) {
    CrimpGauge check = new CrimpGauge(harness, contactSizes);
    List<Remark> remarks = new ArrayList<>();
    for (Wire wire : harness.wires()) {
      for (Wire.End end : Wire.End.values()) {
        check.end(wire, end).ifPresent(remarks::add);
      }
    }
    return remarks;
  }

  private Optional<Remark> end(Wire wire, Wire.End end) {
    Optional<ContactSize> contact = contact(wire, end);
    if (wire.gauge().isEmpty() || contact.isEmpty()) {
      return Optional.empty();
    }
    Gauge gauge = wire.gauge().get();
    Optional<Boolean> takes = contactSizes.takes(contact.get(), gauge);
    if (takes.isEmpty() || takes.get()) {
      return Optional.empty();
    }
    ContactSize size = contact.get();
    return Optional.of(
        new Remark(
            RULE,
            Severity.ERROR,
            wire.at(end),
            wire,
            Text.of(
                "%s is %s; a size %s contact takes AWG %s to %s",
                wire.name(),
                gauge.label(),
                size.size(),
                size.finest().size(),
                size.coarsest().size()),
            size.citation()));
  }

  /** The contact named for the wire's end, else the one of the cavity, else the cavity's size. */
  private Optional<ContactSize> contact(Wire wire, Wire.End end) {
    Optional<ContactSize> named = contactSizes.find(wire.contactAt(end));
    if (named.isPresent()) {
      return named;
    }
    PinDetail pin = pins.get(wire.at(end));
    if (pin == null) {
      return Optional.empty();
    }
    Optional<ContactSize> listed = contactSizes.find(pin.contact());
    return listed.isPresent() ? listed : contactSizes.find(pin.size());
  }
}

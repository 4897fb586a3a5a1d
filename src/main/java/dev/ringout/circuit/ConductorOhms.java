package dev.ringout.circuit;

import dev.ringout.harness.Limits;
import dev.ringout.harness.Wire;
import dev.ringout.standards.WireOhms;
import dev.ringout.units.Gauge;
import dev.ringout.units.OhmsRange;
import java.util.Optional;

/**
 * What each conductor may add to a reading, at one temperature.
 *
 * <ul>
 *   <li>A wire: its copper by gauge, type and length, less the tolerance, to the most that its type
 *       allows and two contacts, plus the tolerance. Nothing is known without gauge and length.
 *   <li>A link: nothing to two contacts, plus the tolerance.
 *   <li>A closed switch contact: nothing to the limit {@code switch contact}.
 * </ul>
 */
final class ConductorOhms implements Conductor.Cases<OhmsRange> {
  private final Limits limits;
  private final WireOhms wires;
  private final double celsius;

  ConductorOhms(Limits limits, WireOhms wires, double celsius) {
    this.limits = limits;
    this.wires = wires;
    this.celsius = celsius;
  }

  OhmsRange of(Conductor conductor) {
    return conductor.match(this);
  }

  @Override
  public OhmsRange wire(Conductor.OfWire conductor) {
    return ofWire(conductor.wire(), conductor.wire().gauge());
  }

  @Override
  public OhmsRange link(Conductor.OfLink conductor) {
    return new OhmsRange(0, 2 * limits.contactOhms() * (1 + limits.tolerancePercent() / 100));
  }

  @Override
  public OhmsRange contact(Conductor.OfContact conductor) {
    return new OhmsRange(0, limits.switchContactOhms());
  }

  /** A wire as if it were of that gauge. */
  OhmsRange ofWire(Wire wire, Optional<Gauge> gauge) {
    double share = limits.tolerancePercent() / 100;
    double ends = 2 * limits.contactOhms();
    return copper(wire, gauge)
        .map(
            copper ->
                new OhmsRange(
                    Math.max(0, copper.lowOhms() * (1 - share)),
                    (copper.highOhms() + ends) * (1 + share)))
        .orElse(OhmsRange.ANY);
  }

  private Optional<OhmsRange> copper(Wire wire, Optional<Gauge> gauge) {
    if (gauge.isEmpty() || wire.length().isEmpty()) {
      return Optional.empty();
    }
    double metres = wire.length().get().metres();
    return wires
        .perMetre(gauge.get(), wire.type(), celsius)
        .map(one -> new OhmsRange(one.lowOhms() * metres, one.highOhms() * metres));
  }
}

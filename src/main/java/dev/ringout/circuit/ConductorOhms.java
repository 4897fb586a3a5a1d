package dev.ringout.circuit;

import dev.ringout.harness.Limits;
import dev.ringout.harness.Wire;
import dev.ringout.standards.WireOhms;
import dev.ringout.units.Gauge;
import dev.ringout.units.OhmsRange;
import java.util.List;
import java.util.Optional;

/**
 * What each conductor may add to a reading, at one temperature.
 *
 * <ul>
 *   <li>A wire: the least that its gauge, type and length let it have ({@link WireOhms}), less the
 *       tolerance, to the most and two contacts, plus the tolerance. Nothing is known without gauge
 *       and length, or of a metal of which no value is published.
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

  /** What a wire may add, as any make that it may be, as if it were of that gauge. */
  OhmsRange ofWire(Wire wire, Optional<Gauge> gauge) {
    return makes(wire, gauge).stream().reduce(OhmsRange::or).orElse(OhmsRange.ANY);
  }

  /** What a wire may add as each make that it may be, as if it were of that gauge. */
  List<OhmsRange> makes(Wire wire, Optional<Gauge> gauge) {
    if (gauge.isEmpty() || wire.length().isEmpty()) {
      return List.of();
    }
    double metres = wire.length().get().metres();
    double share = limits.tolerancePercent() / 100;
    double ends = 2 * limits.contactOhms();
    return wires.makes(gauge.get(), wire.making(), celsius).stream()
        .map(
            one ->
                new OhmsRange(
                    Math.max(0, one.lowOhms() * metres * (1 - share)),
                    (one.highOhms() * metres + ends) * (1 + share)))
        .toList();
  }

  /** Whether it is of a metal of which no value is published. */
  boolean isOfOtherMetal(Wire wire) {
    return wires.metalWithoutValue(wire.making()).isPresent();
  }
}

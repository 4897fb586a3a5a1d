package dev.ringout.circuit;

import dev.ringout.harness.Limits;
import dev.ringout.readings.Meter;
import dev.ringout.standards.WireOhms;
import dev.ringout.units.OhmsRange;
import java.util.HashMap;
import java.util.Map;

/**
 * What a reading between points that should be joined is held against.
 *
 * <p>The highest reading that counts as joined is given by the harness file, or computed where
 * every wire on the way has a gauge and a length ({@link Resistances}), or the fixed limit. A way
 * through links alone takes the fixed limit, where nothing is known but that it is short; so do
 * groups of points, of which any two may be joined.
 */
public final class JoinLimits {
  private final Circuit circuit;
  private final WireOhms wires;
  private final Map<Double, Resistances> byCelsius = new HashMap<>();

  /** Where a limit comes from. */
  public enum Basis {
    /** {@code closed max} in the harness file. */
    GIVEN,
    /** From gauges and lengths. */
    COMPUTED,
    /** Fixed: a wire on the way has no gauge or no length that the tables know. */
    NO_LENGTH,
    /** Fixed: no wire is on the way. */
    LINKS_ALONE,
    /** Fixed: points tied together were read. */
    GROUPS,
    /** Fixed: the two sides are not one net. */
    APART;

    /** Whether the fixed limit stands for want of a better one. */
    public boolean isFixed() {
      return this != GIVEN && this != COMPUTED;
    }
  }

  /**
   * A limit and where it comes from.
   *
   * @param ohms the highest reading that counts as joined, the leads in it
   * @param expected what the way between the points may have, the leads apart; anything where it
   *     can't be computed
   * @param leads what the leads may add
   */
  public record JoinLimit(double ohms, Basis basis, OhmsRange expected, OhmsRange leads) {}

  /** The limits of one circuit. */
  public JoinLimits(Circuit circuit, WireOhms wires) {
    this.circuit = circuit;
    this.wires = wires;
  }

  /** The resistances at a meter's temperature, else at the harness file's. */
  public Resistances resistances(Meter meter) {
    return byCelsius.computeIfAbsent(
        meter.celsius().orElse(circuit.harness().limits().celsius()),
        celsius -> new Resistances(circuit, wires, celsius));
  }

  /** The resistances at the harness file's temperature. */
  public Resistances resistances() {
    return resistances(Meter.UNKNOWN);
  }

  /** What wires may have by gauge and type. */
  public WireOhms wires() {
    return wires;
  }

  /** The limit for a reading between points that should be joined. */
  public JoinLimit of(Probing probing, Meter meter) {
    Limits limits = circuit.harness().limits();
    double nulled = meter.leadOhms().orElse(0);
    OhmsRange leads =
        meter.leadOhms().isPresent()
            ? new OhmsRange(nulled, nulled)
            : new OhmsRange(0, limits.meterOhms());
    OhmsRange expected = OhmsRange.ANY;
    Basis basis = Basis.GROUPS;
    if (probing.isPair()) {
      int from = probing.from()[0];
      int to = probing.to()[0];
      Nets nets = circuit.in(probing.state());
      Resistances resistances = resistances(meter);
      if (nets.of(from) != nets.of(to)) {
        basis = Basis.APART;
      } else if (!resistances.hasWire(from, to, probing.state())) {
        basis = Basis.LINKS_ALONE;
      } else {
        expected = resistances.between(from, to, probing.state());
        basis = expected.isKnown() ? Basis.COMPUTED : Basis.NO_LENGTH;
      }
    }
    if (limits.closedMaxOhms().isPresent()) {
      double given = limits.closedMaxOhms().getAsDouble() + nulled;
      return new JoinLimit(given, Basis.GIVEN, expected, leads);
    }
    double ohms =
        basis == Basis.COMPUTED
            ? expected.highOhms() + leads.highOhms()
            : limits.fixedClosedMaxOhms() + nulled;
    return new JoinLimit(ohms, basis, expected, leads);
  }
}

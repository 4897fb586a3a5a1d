package dev.ringout.circuit;

import dev.ringout.harness.Limits;
import dev.ringout.readings.Meter;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.Tables;
import dev.ringout.standards.WireOhms;
import dev.ringout.units.OhmsRange;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;

/**
 * What a reading between points that should be joined is held against.
 *
 * <p>The highest reading that counts as joined is given by the harness file, or computed where
 * every wire on the way has a gauge and a length ({@link Resistances}), or the fixed limit. A way
 * through links alone takes the fixed limit, where nothing is known but that it is short; so do
 * groups of points, of which any two may be joined.
 *
 * <p>Not for use by several threads at once.
 */
public final class JoinLimits {
  private final Circuit circuit;
  private final WireOhms wires;
  private final PartsBeside partsBeside;
  private final Map<Double, Resistances> byCelsius = new HashMap<>();

  /** One meter serves a whole sheet of readings: it need not be compared by what it is. */
  private final IdentityHashMap<Meter, OfMeter> byMeter = new IdentityHashMap<>();

  /** Where a limit comes from. */
  public enum Basis {
    /** {@code closed max} in the harness file. */
    GIVEN,
    /** From gauges and lengths. */
    COMPUTED,
    /** Fixed: a wire on the way has no gauge or no length that the tables know. */
    NO_LENGTH,
    /** Fixed: a wire on the way is of a metal of which no value is published. */
    OTHER_METAL,
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
   * @param leastOhms the least that may be read, the leads apart, parts beside the way counted too
   */
  public record JoinLimit(
      double ohms, Basis basis, OhmsRange expected, OhmsRange leads, double leastOhms) {}

  private JoinLimits(Circuit circuit, WireOhms wires) {
    this.circuit = circuit;
    this.wires = wires;
    this.partsBeside = new PartsBeside(circuit);
  }

  /** The limits of one circuit by the published values of copper and the tables given. */
  public static JoinLimits of(Circuit circuit, Tables tables) {
    return new JoinLimits(circuit, WireOhms.of(CopperWire.published(), tables));
  }

  /** The limits of another circuit by the same tables. */
  public JoinLimits on(Circuit other) {
    return new JoinLimits(other, wires);
  }

  /** The resistances at a meter's temperature, else at the harness file's. */
  public Resistances resistances(Meter meter) {
    return of(meter).resistances;
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
    return of(meter).limit(probing);
  }

  private OfMeter of(Meter meter) {
    return byMeter.computeIfAbsent(meter, OfMeter::new);
  }

  /** The limits for readings with one meter. */
  private final class OfMeter {
    private final double nulledOhms;
    private final OhmsRange leads;
    private final Resistances resistances;

    /** Limits that do not depend on the points. */
    private final Map<Basis, JoinLimit> fixed = new EnumMap<>(Basis.class);

    OfMeter(Meter meter) {
      nulledOhms = meter.leadOhms().orElse(0);
      leads =
          meter.leadOhms().isPresent()
              ? new OhmsRange(
                  Math.max(0, nulledOhms - meter.leadsOffOhms()), nulledOhms + meter.leadsOffOhms())
              : new OhmsRange(0, circuit.harness().limits().meterOhms());
      resistances =
          byCelsius.computeIfAbsent(
              meter.celsius().orElse(circuit.harness().limits().celsius()),
              celsius -> new Resistances(circuit, wires, celsius));
    }

    JoinLimit limit(Probing probing) {
      if (!probing.isPair()) {
        return limit(Basis.GROUPS);
      }
      int from = probing.from()[0];
      int to = probing.to()[0];
      Nets nets = circuit.in(probing.state());
      if (nets.of(from) != nets.of(to)) {
        return limit(Basis.APART);
      }
      if (!resistances.hasWire(from, to, probing.state())) {
        return limit(Basis.LINKS_ALONE);
      }
      OhmsRange expected = resistances.between(from, to, probing.state());
      if (expected.isKnown()) {
        return limit(
            Basis.COMPUTED,
            expected,
            partsBeside.leastOhms(expected, probing.state(), nets.of(from)));
      }
      return limit(
          resistances.hasOtherMetal(from, to, probing.state())
              ? Basis.OTHER_METAL
              : Basis.NO_LENGTH);
    }

    private JoinLimit limit(Basis basis) {
      return fixed.computeIfAbsent(basis, one -> limit(one, OhmsRange.ANY, 0));
    }

    private JoinLimit limit(Basis basis, OhmsRange expected, double leastOhms) {
      Limits limits = circuit.harness().limits();
      if (limits.closedMaxOhms().isPresent()) {
        double given = limits.closedMaxOhms().getAsDouble() + nulledOhms;
        return new JoinLimit(given, Basis.GIVEN, expected, leads, leastOhms);
      }
      double ohms =
          basis == Basis.COMPUTED
              ? expected.highOhms() + leads.highOhms()
              : limits.fixedClosedMaxOhms() + nulledOhms;
      return new JoinLimit(ohms, basis, expected, leads, leastOhms);
    }
  }
}

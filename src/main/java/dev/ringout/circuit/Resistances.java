package dev.ringout.circuit;

import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.standards.WireOhms;
import dev.ringout.units.Gauge;
import dev.ringout.units.OhmsRange;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a meter may read between two points of one net: the resistance of the whole network of
 * wires, links and closed contacts between them, from the least to the greatest that their
 * tolerances allow.
 *
 * <p>In a net without loops a short way is added up as it is; any other net is taken apart once
 * ({@link NetOhms}) and kept.
 *
 * <p>Not for use by several threads at once.
 */
public final class Resistances {
  private static final int LONG_WAY = 64;

  private final Circuit circuit;
  private final ConductorOhms conductorOhms;
  private final Map<SwitchState, Map<Integer, NetOhms>> byState = new HashMap<>();

  /** The resistances of a circuit whose wires are at one temperature. */
  public Resistances(Circuit circuit, WireOhms wires, double celsius) {
    this.circuit = circuit;
    this.conductorOhms = new ConductorOhms(circuit.harness().limits(), wires, celsius);
  }

  /**
   * What may be read between two points of one net; {@link OhmsRange#ANY} where a wire on the way,
   * or in a loop on the way, has no gauge or no length that the tables know.
   */
  public OhmsRange between(int one, int other, SwitchState state) {
    Nets nets = circuit.in(state);
    if (one == other) {
      return OhmsRange.NONE;
    }
    return isShortAndPlain(nets, one, other)
        ? along(nets, one, other)
        : net(nets, one, state).between(one, other);
  }

  /** What one conductor may add. */
  public OhmsRange of(int conductor) {
    return conductorOhms.of(circuit.conductors().get(conductor));
  }

  /** What a wire would add were it of another gauge. */
  public OhmsRange ofWireAs(Wire wire, Gauge gauge) {
    return conductorOhms.ofWire(wire, Optional.of(gauge));
  }

  /**
   * The least that could be read between two points of one net were one conductor missing: by the
   * resistances between its ends and the probes (Sherman and Morrison's formula on the Laplacian).
   *
   * @return infinite where nothing goes around it; absent where it can't be computed
   */
  public OptionalDouble leastWithout(int conductor, int one, int other, SwitchState state) {
    Nets nets = circuit.in(state);
    double own = Math.max(Block.LEAST_OHMS, of(conductor).lowOhms());
    OhmsRange all = between(one, other, state);
    if (!of(conductor).isKnown() || !all.isKnown()) {
      return OptionalDouble.empty();
    }
    if (nets.isBridge(conductor)) {
      return OptionalDouble.of(Double.POSITIVE_INFINITY);
    }
    int u = circuit.from(conductor);
    int w = circuit.to(conductor);
    double volts =
        (between(one, w, state).lowOhms()
                + between(other, u, state).lowOhms()
                - between(one, u, state).lowOhms()
                - between(other, w, state).lowOhms())
            / 2;
    double around = 1 - between(u, w, state).lowOhms() / own;
    return OptionalDouble.of(all.lowOhms() + volts * volts / own / around);
  }

  /** Whether the way between two points of one net leads over any wire. */
  public boolean hasWire(int one, int other, SwitchState state) {
    Nets nets = circuit.in(state);
    if (!isShortAndPlain(nets, one, other)) {
      return net(nets, one, state).hasWire(one, other);
    }
    int a = one;
    int b = other;
    while (a != b) {
      boolean fromOne = nets.depth(a) >= nets.depth(b);
      int conductor = nets.parentConductor(fromOne ? a : b);
      if (circuit.conductors().get(conductor) instanceof Conductor.OfWire) {
        return true;
      }
      a = fromOne ? nets.parent(a) : a;
      b = fromOne ? b : nets.parent(b);
    }
    return false;
  }

  /** The conductors that a reading between two points of one net depends on. */
  public int[] conductorsBetween(int one, int other, SwitchState state) {
    Nets nets = circuit.in(state);
    return isShortAndPlain(nets, one, other)
        ? nets.path(one, other).stream().mapToInt(Integer::intValue).toArray()
        : net(nets, one, state).conductorsBetween(one, other);
  }

  private NetOhms net(Nets nets, int point, SwitchState state) {
    return byState
        .computeIfAbsent(state, key -> new HashMap<>())
        .computeIfAbsent(nets.of(point), net -> new NetOhms(circuit, nets, net, conductorOhms));
  }

  private static boolean isShortAndPlain(Nets nets, int one, int other) {
    return !nets.hasLoops(nets.of(one)) && nets.depth(one) + nets.depth(other) <= LONG_WAY;
  }

  private OhmsRange along(Nets nets, int one, int other) {
    double low = 0;
    double high = 0;
    int a = one;
    int b = other;
    while (a != b) {
      boolean fromOne = nets.depth(a) >= nets.depth(b);
      OhmsRange step = of(nets.parentConductor(fromOne ? a : b));
      low += step.lowOhms();
      high += step.highOhms();
      if (fromOne) {
        a = nets.parent(a);
      } else {
        b = nets.parent(b);
      }
    }
    return Double.isFinite(high) ? new OhmsRange(low, high) : OhmsRange.ANY;
  }
}

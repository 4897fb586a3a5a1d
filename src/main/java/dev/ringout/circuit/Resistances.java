package dev.ringout.circuit;

import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.standards.WireOhms;
import dev.ringout.units.Gauge;
import dev.ringout.units.OhmsRange;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

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
  private final Map<SwitchState, Map<Integer, NetOhms>> withoutOne = new HashMap<>();

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

  /** The same for each make that it may be: solid, or of so many strands. */
  public List<OhmsRange> makesOfWireAs(Wire wire, Gauge gauge) {
    return conductorOhms.makes(wire, Optional.of(gauge));
  }

  /**
   * The least that could be read between two points of one net were one conductor missing.
   *
   * @return infinite where nothing goes around it; absent where it can't be computed
   */
  public OptionalDouble leastWithout(int conductor, int one, int other, SwitchState state) {
    OhmsRange all = between(one, other, state);
    if (!of(conductor).isKnown() || !all.isKnown()) {
      return OptionalDouble.empty();
    }
    if (of(conductor).lowOhms() <= 0 && !circuit.in(state).isCutEdge(conductor)) {
      return OptionalDouble.of(without(conductor, one, state).between(one, other).lowOhms());
    }
    double gain = gain(conductor, Double.POSITIVE_INFINITY, one, other, state, OhmsRange::lowOhms);
    return OptionalDouble.of(all.lowOhms() + gain);
  }

  /**
   * What a reading between two points of one net gains when one conductor on its way gains so much,
   * everything else being at its greatest; absent where it can't be computed.
   */
  public OptionalDouble gain(
      int conductor, double extraOhms, int one, int other, SwitchState state) {
    if (circuit.in(state).isCutEdge(conductor)) {
      return OptionalDouble.of(extraOhms);
    }
    OhmsRange own = of(conductor);
    boolean known =
        own.isKnown()
            && own.highOhms() > 0
            && between(circuit.from(conductor), circuit.to(conductor), state).isKnown();
    double gain =
        known ? gain(conductor, extraOhms, one, other, state, OhmsRange::highOhms) : Double.NaN;
    // Beyond a wire of unknown length nothing is known of the loop's own share either.
    return Double.isNaN(gain) ? OptionalDouble.empty() : OptionalDouble.of(gain);
  }

  /**
   * Where nothing goes around a conductor, all that it gains; in a loop, by the resistances between
   * its ends and the probes (Sherman and Morrison's formula on the Laplacian): x·i² / (1 + x·(1 −
   * R/r)/r), i being its share of the current, R what is read across it; without end i²·r / (1 −
   * R/r).
   */
  private double gain(
      int conductor,
      double extraOhms,
      int one,
      int other,
      SwitchState state,
      ToDoubleFunction<OhmsRange> end) {
    if (circuit.in(state).isCutEdge(conductor)) {
      return extraOhms;
    }
    int u = circuit.from(conductor);
    int w = circuit.to(conductor);
    double own = end.applyAsDouble(of(conductor));
    double volts =
        (end.applyAsDouble(between(one, w, state))
                + end.applyAsDouble(between(other, u, state))
                - end.applyAsDouble(between(one, u, state))
                - end.applyAsDouble(between(other, w, state)))
            / 2;
    double current = volts / own;
    double around = 1 - end.applyAsDouble(between(u, w, state)) / own;
    return Double.isInfinite(extraOhms)
        ? current * current * own / around
        : extraOhms * current * current / (1 + extraOhms / own * around);
  }

  /** Whether the way between two points of one net leads over any wire. */
  public boolean hasWire(int one, int other, SwitchState state) {
    Nets nets = circuit.in(state);
    if (!isShortAndPlain(nets, one, other)) {
      return net(nets, one, state).hasWire(one, other);
    }
    boolean[] found = new boolean[1];
    nets.eachOnWay(one, other, conductor -> found[0] |= circuit.isWire(conductor));
    return found[0];
  }

  /** Whether a wire on the way is of a metal of which no value is published. */
  public boolean hasOtherMetal(int one, int other, SwitchState state) {
    return Arrays.stream(conductorsBetween(one, other, state))
        .mapToObj(circuit.conductors()::get)
        .flatMap(conductor -> conductor.asWire().stream())
        .anyMatch(conductorOhms::isOfOtherMetal);
  }

  /** The conductors that a reading between two points of one net depends on. */
  public int[] conductorsBetween(int one, int other, SwitchState state) {
    Nets nets = circuit.in(state);
    return isShortAndPlain(nets, one, other)
        ? nets.path(one, other).stream().mapToInt(Integer::intValue).toArray()
        : net(nets, one, state).conductorsBetween(one, other);
  }

  /** The net of a point without one conductor that others go around. */
  private NetOhms without(int conductor, int point, SwitchState state) {
    Nets nets = circuit.in(state);
    return withoutOne
        .computeIfAbsent(state, key -> new HashMap<>())
        .computeIfAbsent(
            conductor,
            key -> NetOhms.without(conductor, circuit, nets, nets.of(point), conductorOhms));
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
    double[] sum = new double[2];
    nets.eachOnWay(
        one,
        other,
        conductor -> {
          OhmsRange step = of(conductor);
          sum[0] += step.lowOhms();
          sum[1] += step.highOhms();
        });
    return Double.isFinite(sum[1]) ? new OhmsRange(sum[0], sum[1]) : OhmsRange.ANY;
  }
}

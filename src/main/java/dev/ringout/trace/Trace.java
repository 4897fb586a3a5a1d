package dev.ringout.trace;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.InsulationLimits;
import dev.ringout.circuit.InsulationLimits.InsulationLimit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.JoinLimits.JoinLimit;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Predictor;
import dev.ringout.circuit.Probing;
import dev.ringout.circuit.Resistances;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Meter;
import dev.ringout.units.OhmsRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The net of a point in one state of the switches.
 *
 * @param steps every other point of the net, each after the one by which it is reached
 * @param loops conductors that close a loop: the net holds without them
 * @param parts what hangs on the net and leads to others
 * @param openContacts contacts that join the net to others in another state
 * @param insulation how the net is tested against the rest
 * @param between what lies between the point and a second one, where one was asked for
 */
public record Trace(
    Point start,
    SwitchState state,
    int points,
    List<Step> steps,
    List<Conductor> loops,
    List<Part> parts,
    List<OpenContact> openContacts,
    InsulationLimit insulation,
    Optional<Between> between) {

  /**
   * One step further.
   *
   * @param depth how many steps from the start
   * @param fromStart what a meter may read between the start and this point
   */
  public record Step(int depth, Conductor by, Point from, Point to, OhmsRange fromStart) {}

  /** A contact that is open in this state, and the position that closes it. */
  public record OpenContact(String ref, String position, Point here, Point there) {}

  /**
   * What lies between two points.
   *
   * @param way the conductors on one way; empty where nothing joins them
   * @param expected what a reading should find
   * @param limit what it is held against
   * @param joinedIn states, one switch moved, in which the two are joined
   */
  public record Between(
      Point to,
      List<Conductor> way,
      Expected expected,
      JoinLimit limit,
      List<String> partNames,
      List<SwitchState> joinedIn) {}

  /** Follows the net of a point, and looks for a second one if there is one. */
  public static Trace of(
      Circuit circuit, JoinLimits limits, Point start, Optional<Point> other, SwitchState state) {
    return new Tracer(circuit, limits, circuit.index(start), state).trace(other);
  }

  private static final class Tracer {
    private final Circuit circuit;
    private final JoinLimits limits;
    private final Resistances resistances;
    private final int start;
    private final SwitchState state;
    private final Nets nets;
    private final Map<Integer, List<Integer>> at = new TreeMap<>();

    Tracer(Circuit circuit, JoinLimits limits, int start, SwitchState state) {
      this.circuit = circuit;
      this.limits = limits;
      this.resistances = limits.resistances();
      this.start = start;
      this.state = state;
      this.nets = circuit.in(state);
      for (int conductor : nets.conductorsOf(nets.of(start))) {
        at.computeIfAbsent(circuit.from(conductor), key -> new ArrayList<>()).add(conductor);
        at.computeIfAbsent(circuit.to(conductor), key -> new ArrayList<>()).add(conductor);
      }
    }

    Trace trace(Optional<Point> other) {
      List<Step> steps = new ArrayList<>();
      Set<Integer> used = new HashSet<>();
      Set<Integer> seen = new HashSet<>(Set.of(start));
      // Depth first, so that every point stands under the one it hangs on; no recursion.
      List<int[]> open = new ArrayList<>();
      push(open, start, 0);
      while (!open.isEmpty()) {
        int[] next = open.remove(open.size() - 1);
        int from = next[0];
        int conductor = next[1];
        int to = circuit.from(conductor) == from ? circuit.to(conductor) : circuit.from(conductor);
        if (used.contains(conductor) || !seen.add(to)) {
          continue;
        }
        used.add(conductor);
        steps.add(
            new Step(
                next[2],
                circuit.conductors().get(conductor),
                circuit.point(from),
                circuit.point(to),
                resistances.between(start, to, state)));
        push(open, to, next[2]);
      }
      int net = nets.of(start);
      List<Conductor> loops = new ArrayList<>();
      for (int conductor : nets.conductorsOf(net)) {
        if (!used.contains(conductor)) {
          loops.add(circuit.conductors().get(conductor));
        }
      }
      List<Part> parts = new ArrayList<>();
      for (int part : nets.partsAt(net)) {
        parts.add(circuit.part(part));
      }
      return new Trace(
          circuit.point(start),
          state,
          nets.pointsOf(net).length,
          List.copyOf(steps),
          List.copyOf(loops),
          List.copyOf(parts),
          openContacts(net),
          new InsulationLimits(circuit).of(Probing.toRest(start, state)),
          other.map(point -> between(circuit.index(point))));
    }

    private void push(List<int[]> open, int point, int depth) {
      List<Integer> here = new ArrayList<>(at.getOrDefault(point, List.of()));
      here.sort(Comparator.reverseOrder());
      here.forEach(conductor -> open.add(new int[] {point, conductor, depth + 1}));
    }

    private List<OpenContact> openContacts(int net) {
      List<OpenContact> found = new ArrayList<>();
      for (Switch one : circuit.harness().switches()) {
        for (int contact : circuit.contactsOf(one)) {
          boolean from = nets.of(circuit.from(contact)) == net;
          boolean to = nets.of(circuit.to(contact)) == net;
          if (!nets.isClosed(contact) && from != to) {
            Switch.Contact listed =
                ((Conductor.OfContact) circuit.conductors().get(contact)).contact();
            found.add(
                new OpenContact(
                    one.ref(),
                    listed.state(),
                    from ? listed.from() : listed.to(),
                    from ? listed.to() : listed.from()));
          }
        }
      }
      return found;
    }

    private Between between(int to) {
      Probing probing = Probing.pair(start, to, state);
      boolean joined = nets.of(start) == nets.of(to);
      List<Conductor> way =
          joined
              ? nets.path(start, to).stream().map(circuit.conductors()::get).toList()
              : List.of();
      Expected expected = new Predictor(circuit, resistances).asListed(probing);
      List<String> names =
          expected instanceof Expected.ThroughParts through
              ? through.parts().stream().map(part -> circuit.part(part).label()).distinct().toList()
              : List.of();
      List<SwitchState> joinedIn = new ArrayList<>();
      for (Switch one : circuit.harness().switches()) {
        for (String position : one.states()) {
          SwitchState moved = state.with(one, position);
          Nets then = circuit.in(moved);
          if (!joined && !moved.equals(state) && then.of(start) == then.of(to)) {
            joinedIn.add(moved);
          }
        }
      }
      return new Between(
          circuit.point(to), way, expected, limits.of(probing, Meter.UNKNOWN), names, joinedIn);
    }
  }
}

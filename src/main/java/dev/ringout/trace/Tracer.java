package dev.ringout.trace;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.InsulationLimits;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Predictor;
import dev.ringout.circuit.Probing;
import dev.ringout.circuit.Resistances;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Meter;
import dev.ringout.trace.Trace.Between;
import dev.ringout.trace.Trace.OpenContact;
import dev.ringout.trace.Trace.Step;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Follows the net of one point in one state. */
final class Tracer {
  private final Circuit circuit;
  private final JoinLimits limits;
  private final Resistances resistances;
  private final int start;
  private final SwitchState state;
  private final Nets nets;
  private final Map<Integer, List<Integer>> at = new TreeMap<>();

  /** The conductors by which the points were reached: all others of the net close a loop. */
  private final Set<Integer> used = new HashSet<>();

  /** A conductor that is still to be followed from a point. */
  private record Ahead(int point, int conductor, int depth) {}

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
    int net = nets.of(start);
    List<Step> steps = steps();
    return new Trace(
        circuit.point(start),
        state,
        nets.pointsOf(net).length,
        steps,
        loops(net),
        Arrays.stream(nets.partsAt(net)).mapToObj(circuit::part).toList(),
        openContacts(net),
        new InsulationLimits(circuit).of(Probing.toRest(start, state)),
        other.map(point -> between(circuit.index(point))));
  }

  /** Depth first, so that every point stands under the one it hangs on; no recursion. */
  private List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    Set<Integer> seen = new HashSet<>(Set.of(start));
    List<Ahead> open = new ArrayList<>();
    push(open, start, 0);
    while (!open.isEmpty()) {
      Ahead next = open.remove(open.size() - 1);
      int from = next.point();
      int conductor = next.conductor();
      int to = circuit.from(conductor) == from ? circuit.to(conductor) : circuit.from(conductor);
      if (used.contains(conductor) || !seen.add(to)) {
        continue;
      }
      used.add(conductor);
      steps.add(
          new Step(
              next.depth(),
              circuit.conductors().get(conductor),
              circuit.point(from),
              circuit.point(to),
              resistances.between(start, to, state)));
      push(open, to, next.depth());
    }
    return List.copyOf(steps);
  }

  private void push(List<Ahead> open, int point, int depth) {
    List<Integer> here = new ArrayList<>(at.getOrDefault(point, List.of()));
    here.sort(Comparator.reverseOrder());
    here.forEach(conductor -> open.add(new Ahead(point, conductor, depth + 1)));
  }

  private List<Conductor> loops(int net) {
    return Arrays.stream(nets.conductorsOf(net))
        .filter(conductor -> !used.contains(conductor))
        .mapToObj(circuit.conductors()::get)
        .toList();
  }

  private List<OpenContact> openContacts(int net) {
    List<OpenContact> found = new ArrayList<>();
    for (Switch one : circuit.harness().switches()) {
      for (int contact : circuit.contactsOf(one)) {
        boolean from = nets.of(circuit.from(contact)) == net;
        boolean to = nets.of(circuit.to(contact)) == net;
        if (!nets.isClosed(contact) && from != to) {
          Switch.Contact listed = circuit.conductors().get(contact).asContact().orElseThrow();
          found.add(
              new OpenContact(
                  one.ref(),
                  listed.state(),
                  from ? listed.from() : listed.to(),
                  from ? listed.to() : listed.from()));
        }
      }
    }
    return List.copyOf(found);
  }

  private Between between(int to) {
    Probing probing = Probing.pair(start, to, state);
    boolean joined = nets.of(start) == nets.of(to);
    List<Conductor> way =
        joined ? nets.path(start, to).stream().map(circuit.conductors()::get).toList() : List.of();
    Expected expected = new Predictor(circuit, resistances).asListed(probing);
    return new Between(
        circuit.point(to),
        way,
        expected,
        limits.of(probing, Meter.UNKNOWN),
        expected.throughParts().map(this::parts).orElse(List.of()),
        joined ? List.of() : joinedIn(to));
  }

  private List<Part> parts(Expected.ThroughParts through) {
    return through.parts().stream().map(circuit::part).toList();
  }

  /** Each switch moved by itself. */
  private List<SwitchState> joinedIn(int to) {
    List<SwitchState> joinedIn = new ArrayList<>();
    for (Switch one : circuit.harness().switches()) {
      for (String position : one.states()) {
        SwitchState moved = state.with(one, position);
        Nets then = circuit.in(moved);
        if (!moved.equals(state) && then.of(start) == then.of(to)) {
          joinedIn.add(moved);
        }
      }
    }
    return List.copyOf(joinedIn);
  }
}

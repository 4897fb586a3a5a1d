package dev.ringout.benchmarks.weaken;

import dev.ringout.benchmarks.weaken.Unit.Component;
import dev.ringout.benchmarks.weaken.Unit.Demand;
import dev.ringout.benchmarks.weaken.Unit.Joint;
import dev.ringout.benchmarks.weaken.Unit.PartKind;
import dev.ringout.benchmarks.weaken.Unit.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a meter can read on a unit, as listed or with one fault. */
final class Physics {
  /** Copper at 20 °C (NBS Handbook 100), in Ω·mm²/m. */
  private static final double RESISTIVITY = 0.017241;

  private static final double CONTACT_OHMS = 0.005;
  private static final double TOLERANCE = 0.1;
  private static final double SWITCH_CONTACT_OHMS = 0.1;

  /** The highest reading of a join whose limit can't be computed. */
  static final double FIXED_LIMIT_OHMS = 1;

  /** A sound diode never reads less (common practice, no source). */
  private static final double LEAST_OF_A_DIODE_OHMS = 3;

  private final Unit unit;

  Physics(Unit unit) {
    this.unit = unit;
  }

  /** Copper of an American gauge and length (ASTM B258: d = 0.127 mm · 92^((36 − n)/39)). */
  static double copperOhms(int gauge, double metres) {
    double diameter = 0.127 * Math.pow(92, (36 - gauge) / 39.0);
    return RESISTIVITY * metres / (Math.PI / 4 * diameter * diameter);
  }

  private enum Take {
    LEAST,
    MOST,
    TRUE
  }

  /** All that can be read with one fault, or as listed. */
  Span reading(Probing probing, Optional<Fault> fault) {
    double least = solve(probing, fault, Take.LEAST);
    double most = solve(probing, fault, Take.MOST);
    double apart = probing.insulation() ? unit.demand().insulationMinOhms() : Demand.OPEN_MIN_OHMS;
    // Beside one leak there is always a little more: the reading may be any lower.
    boolean leaks = fault.isPresent() && fault.get() instanceof Fault.Leak;
    double low = Double.isInfinite(least) ? apart : leaks ? 0 : least;
    return new Span(low, most);
  }

  /** What is read on the sound unit; infinite where its two sides are apart. */
  double trueOhms(Probing probing) {
    return solve(probing, Optional.empty(), Take.TRUE);
  }

  /** Whether the list joins the two sides. */
  boolean isJoin(Probing probing) {
    int[] nets = unit.nets(probing.state());
    List<Integer> to = toSide(probing);
    return probing.from().stream()
        .anyMatch(one -> to.stream().anyMatch(other -> nets[one] == nets[other]));
  }

  /** Whether parts lie between the two sides. */
  boolean isThroughParts(Probing probing) {
    if (isJoin(probing)) {
      return false;
    }
    Network network = new Network(unit.points().size());
    for (int joint = 0; joint < unit.joints().size(); joint++) {
      if (unit.isClosed(joint, probing.state())) {
        network.add(unit.joints().get(joint).from(), unit.joints().get(joint).to(), 1);
      }
    }
    unit.parts().forEach(part -> network.add(part.from(), part.to(), 1));
    List<Integer> to = toSide(probing);
    return !to.isEmpty() && Double.isFinite(network.solve(probing.from(), to).ohms());
  }

  /** Whether polarity matters: a diode or suppressor lies between the two sides. */
  boolean isOneWay(Probing probing) {
    return isThroughParts(probing)
        && unit.parts().stream()
            .filter(part -> isBetween(part, probing))
            .anyMatch(part -> part.kind() == PartKind.DIODE || part.kind() == PartKind.SUPPRESSOR);
  }

  private boolean isBetween(Component part, Probing probing) {
    int[] groups = unit.partGroups();
    return probing.from().stream().anyMatch(point -> groups[point] == groups[part.from()]);
  }

  /**
   * Whether the limit of a join is computed: every wire on the way has gauge and length, and the
   * way is not links or contacts alone.
   */
  boolean hasComputedLimit(Probing probing) {
    if (!isJoin(probing) || probing.from().size() > 1 || probing.to().size() != 1) {
      return false;
    }
    List<Joint> way = way(probing);
    return way.stream().noneMatch(one -> one.isWire() && one.metres().isEmpty())
        && way.stream().anyMatch(Joint::isWire);
  }

  /** The joints through which current flows. */
  private List<Joint> way(Probing probing) {
    Network network = new Network(unit.points().size());
    List<Integer> closed = new ArrayList<>();
    for (int joint = 0; joint < unit.joints().size(); joint++) {
      if (unit.isClosed(joint, probing.state())) {
        // Unequal ohms: no bridge is balanced.
        Joint one = unit.joints().get(joint);
        network.add(one.from(), one.to(), 1 + 0.0137 * joint);
        closed.add(joint);
      }
    }
    Network.Solved solved = network.solve(probing.from(), probing.to());
    return closed.stream()
        .map(unit.joints()::get)
        .filter(one -> Math.abs(solved.volts(one.from()) - solved.volts(one.to())) > 1e-9)
        .toList();
  }

  /** The points of the second side: the rest is what the list puts into other nets. */
  List<Integer> toSide(Probing probing) {
    if (!probing.isRest()) {
      return probing.to();
    }
    int[] nets = unit.nets(probing.state());
    List<Integer> rest = new ArrayList<>();
    for (int point = 0; point < nets.length; point++) {
      int net = nets[point];
      if (probing.from().stream().noneMatch(one -> nets[one] == net)) {
        rest.add(point);
      }
    }
    return rest;
  }

  private double solve(Probing probing, Optional<Fault> fault, Take take) {
    List<Integer> to = toSide(probing);
    if (to.isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    Network blocked = network(probing.state(), fault, take, List.of());
    Network.Solved solved = blocked.solve(probing.from(), to);
    List<Integer> conducting = new ArrayList<>();
    for (int part = 0; part < unit.parts().size(); part++) {
      Component one = unit.parts().get(part);
      boolean reversed = fault.equals(Optional.of(new Fault.DiodeReversed(part)));
      double across = solved.volts(one.from()) - solved.volts(one.to());
      if (one.kind() == PartKind.DIODE && (reversed ? -across : across) > 1e-9) {
        conducting.add(part);
      }
    }
    return conducting.isEmpty()
        ? solved.ohms()
        : network(probing.state(), fault, take, conducting).solve(probing.from(), to).ohms();
  }

  private Network network(State state, Optional<Fault> fault, Take take, List<Integer> conducting) {
    Network network = new Network(unit.points().size());
    Fault one = fault.orElse(new Fault.PartMissing(-1));
    for (int joint = 0; joint < unit.joints().size(); joint++) {
      if (isClosed(joint, state, one)) {
        Joint closed = unit.joints().get(joint);
        network.add(closed.from(), closed.to(), ohms(closed, take));
      }
    }
    for (int part = 0; part < unit.parts().size(); part++) {
      Component there = unit.parts().get(part);
      if (one.equals(new Fault.PartShorted(part))) {
        network.add(there.from(), there.to(), 0);
      } else if (!one.equals(new Fault.PartMissing(part))) {
        network.add(there.from(), there.to(), ohms(there, take, conducting.contains(part)));
      }
    }
    if (one instanceof Fault.StrayJoin made) {
      network.add(made.from(), made.to(), made.ohms());
    } else if (one instanceof Fault.Leak made) {
      network.add(made.from(), made.to(), made.ohms());
    }
    return network;
  }

  private boolean isClosed(int joint, State state, Fault fault) {
    if (fault instanceof Fault.ContactStuck stuck
        && stuck.joint() == joint
        && stuck.position().equals(unit.positionIn(state))) {
      return true;
    }
    return unit.isClosed(joint, state)
        && !fault.equals(new Fault.JointOpen(joint))
        && !fault.equals(new Fault.ContactOpen(joint));
  }

  private static double ohms(Joint joint, Take take) {
    if (take == Take.TRUE) {
      return joint.trueOhms();
    }
    boolean least = take == Take.LEAST;
    return switch (joint.kind()) {
      case CONTACT -> least ? 0 : SWITCH_CONTACT_OHMS;
      case LINK -> least ? 0 : 2 * CONTACT_OHMS * (1 + TOLERANCE);
      case WIRE -> {
        if (joint.metres().isEmpty()) {
          yield least ? 0 : FIXED_LIMIT_OHMS;
        }
        double copper = copperOhms(joint.gauge(), joint.metres().getAsDouble());
        yield least ? copper * (1 - TOLERANCE) : (copper + 2 * CONTACT_OHMS) * (1 + TOLERANCE);
      }
    };
  }

  private static double ohms(Component part, Take take, boolean conducts) {
    boolean least = take == Take.LEAST;
    if (part.kind() == PartKind.DIODE) {
      if (take == Take.TRUE) {
        return conducts ? part.trueOhms() : Double.POSITIVE_INFINITY;
      }
      return least && conducts ? LEAST_OF_A_DIODE_OHMS : Double.POSITIVE_INFINITY;
    }
    if (take == Take.TRUE) {
      return part.trueOhms();
    }
    if (part.kind().isOpenOnDirectCurrent()) {
      return least ? Demand.OPEN_MIN_OHMS : Double.POSITIVE_INFINITY;
    }
    if (part.ohms().isEmpty()) {
      return least ? 0 : Double.POSITIVE_INFINITY;
    }
    double share = part.tolerancePercent().orElse(100 * TOLERANCE) / 100;
    return part.ohms().getAsDouble() * (least ? 1 - share : 1 + share);
  }
}

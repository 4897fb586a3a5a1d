package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.DisjointPoints;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Probing;
import dev.ringout.circuit.Resistances;
import dev.ringout.compare.Coverage.Tally;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Works out what the readings prove: coverage is a proof, not a count.
 *
 * <p>A join is proven by closed readings that connect a net's points; a wire by a closed reading
 * across it where no other way goes around it, and on its own side of closed contacts by readings
 * with those open.
 */
final class Prover {
  /** Loops of more conductors than these are proven by lifting ends, not by ohms. */
  private static final int MOST_IN_LOOPS = 400;

  private final Circuit circuit;
  private final JoinLimits limits;
  private final Requirements requirements;
  private final List<Judged> inForce;
  private final Nets normal;
  private final List<Unproven> unproven = new ArrayList<>();

  Prover(Circuit circuit, JoinLimits limits, Requirements requirements, List<Judged> inForce) {
    this.circuit = circuit;
    this.limits = limits;
    this.requirements = requirements;
    this.inForce = inForce;
    this.normal = circuit.normal();
  }

  Coverage prove() {
    Islands islands = Islands.of(circuit, inForce);
    Tally joins = joins(islands);
    CrossedInStates byPairs = CrossedInStates.of(circuit, inForce);
    boolean[] crossed = crossed(byPairs);
    Tally wires = wires(crossed, byPairs);
    Tally pairs =
        IsolationProof.of(circuit, islands, inForce.stream().filter(Judged::provesApart).toList())
            .prove(requirements.pairsApart(), unproven::add);
    Tally insulation = insulation(islands);
    ContactProof contacts = ContactProof.of(circuit, inForce, crossed);
    Tally switches =
        contacts
            .prove(requirements.contacts(), unproven::add)
            .and(contacts.provePast(requirements.pastContacts(), unproven::add));
    Tally parts =
        PartProof.of(circuit, requirements, inForce).prove(requirements.parts(), unproven::add);
    return new Coverage(
        joins,
        pairs,
        insulation,
        wires,
        switches,
        parts,
        List.copyOf(unproven),
        requirements.unprovable());
  }

  private Tally insulation(Islands islands) {
    Tally all = Tally.NONE;
    for (PairsInsulated level : requirements.pairsInsulated()) {
      Tally tally =
          IsolationProof.of(circuit, islands, inForce.stream().filter(level::isShownBy).toList())
              .prove(level, unproven::add);
      all = all.and(tally);
    }
    return all;
  }

  private Tally joins(Islands islands) {
    for (int net = 0; net < normal.count(); net++) {
      int[] points = normal.pointsOf(net);
      for (int point : points) {
        // The first point of each further island of the net.
        if (islands.of(point) != islands.of(points[0])
            && islands.first(islands.of(point)) == point) {
          unproven.add(new Unproven.Join(points[0], point));
        }
      }
    }
    long needed = circuit.size() - (long) normal.count();
    return new Tally(needed, circuit.size() - (long) islands.count());
  }

  /** The conductors that some closed reading crossed with no way around. */
  private boolean[] crossed(CrossedInStates byPairs) {
    boolean[] crossed = byPairs.inAny();
    for (Judged judged : inForce) {
      if (!judged.provesJoin()) {
        continue;
      }
      Nets nets = circuit.in(judged.reading().state());
      if (!judged.probing().isPair()) {
        bridgesBetween(judged, nets).forEach(edge -> crossed[edge] = true);
      }
      if (judged.value() == ValueVerdict.AS_EXPECTED
          && nets.hasLoops(nets.of(judged.probing().from()[0]))) {
        provenByOhms(judged, nets, crossed);
      }
    }
    return crossed;
  }

  /** In a loop a beep proves nothing; a value does that would be higher with a wire missing. */
  private void provenByOhms(Judged judged, Nets nets, boolean[] crossed) {
    Resistances resistances = limits.resistances(judged.reading().meter());
    int from = judged.probing().from()[0];
    int to = judged.probing().to()[0];
    SwitchState state = judged.reading().state();
    int[] way = resistances.conductorsBetween(from, to, state);
    if (way.length > MOST_IN_LOOPS) {
      return;
    }
    for (int conductor : way) {
      if (!crossed[conductor] && !nets.isCutEdge(conductor)) {
        double without = resistances.leastWithout(conductor, from, to, state).orElse(0);
        crossed[conductor] = without > judged.seen().highOhms();
      }
    }
  }

  /**
   * The bridges with all of one group on this side and all of the other on that; none where the
   * groups meet in several nets, of which one would do.
   */
  private static List<Integer> bridgesBetween(Judged judged, Nets nets) {
    int shared = Nets.NONE;
    for (int from : judged.probing().from()) {
      for (int to : judged.probing().to()) {
        if (nets.of(from) == nets.of(to)) {
          if (shared != Nets.NONE && shared != nets.of(from)) {
            return List.of();
          }
          shared = nets.of(from);
        }
      }
    }
    int net = shared;
    int[] from = Arrays.stream(judged.probing().from()).filter(p -> nets.of(p) == net).toArray();
    int[] to = Arrays.stream(judged.probing().to()).filter(p -> nets.of(p) == net).toArray();
    if (from.length == 0 || to.length == 0) {
      return List.of();
    }
    List<Integer> bridges = new ArrayList<>(nets.path(from[0], to[0]));
    bridges.removeIf(edge -> !nets.isCutEdge(edge));
    for (int other : from) {
      bridges.retainAll(nets.path(other, to[0]));
    }
    for (int other : to) {
      bridges.retainAll(nets.path(from[0], other));
    }
    return bridges;
  }

  private Tally wires(boolean[] crossed, CrossedInStates byPairs) {
    OwnSideProof sides = OwnSideProof.of(circuit, byPairs, inForce);
    Map<Integer, MissingWire.EitherSide> elsewhere =
        ChangedPlaces.open(
            circuit, byPairs, inForce, requirements.contactPieces(), requirements.wires());
    long proven = 0;
    for (int wire : requirements.wires()) {
      Optional<MissingWire> missing =
          crossed[wire]
              ? requirements
                  .sideOf(wire)
                  .flatMap(sides::open)
                  .<MissingWire>map(placing -> eitherSide(wire, placing))
                  .or(() -> Optional.ofNullable(elsewhere.get(wire)))
              : Optional.of(missing(wire));
      if (missing.isEmpty()) {
        proven++;
      }
      missing.ifPresent(why -> unproven.add(new Unproven.OfWire(wire, why)));
    }
    return new Tally(requirements.wires().size(), proven);
  }

  /** Where others go around it, all of them would be joined to the other side. */
  private MissingWire eitherSide(int wire, OwnSide.Placing placing) {
    boolean isAlone = circuit.in(placing.apart()).isCutEdge(wire);
    return new MissingWire.EitherSide(
        placing.point(),
        placing.exchangedWith(),
        isAlone
            ? Probing.pair(circuit.from(wire), circuit.to(wire), placing.apart())
            : Probing.pair(placing.stays(), placing.point(), placing.apart()));
  }

  private MissingWire missing(int wire) {
    if (normal.isCutEdge(wire)) {
      return new MissingWire.NotRead();
    }
    for (int other : normal.conductorsOf(normal.of(circuit.from(wire)))) {
      if (other != wire && isParallel(wire, other)) {
        return new MissingWire.InParallel(other);
      }
    }
    return new MissingWire.InLoop();
  }

  private boolean isParallel(int one, int other) {
    int from = circuit.from(one);
    int to = circuit.to(one);
    int otherFrom = circuit.from(other);
    int otherTo = circuit.to(other);
    return (from == otherFrom && to == otherTo) || (from == otherTo && to == otherFrom);
  }

  /** Points proven to be joined to each other, inside their nets. */
  static final class Islands {
    private final int[] islandOf;
    private final int[] firstPoint;

    private Islands(DisjointPoints joined) {
      islandOf = joined.numbered();
      firstPoint = new int[joined.count()];
      for (int point = islandOf.length - 1; point >= 0; point--) {
        firstPoint[islandOf[point]] = point;
      }
    }

    static Islands of(Circuit circuit, List<Judged> inForce) {
      Nets normal = circuit.normal();
      DisjointPoints joined = new DisjointPoints(circuit.size());
      for (Judged judged : inForce) {
        if (judged.provesJoin()
            && judged.probing().isPair()
            && holdsInNormalState(circuit, normal, judged)) {
          joined.union(judged.probing().from()[0], judged.probing().to()[0]);
        }
      }
      return new Islands(joined);
    }

    /** In another state the way may lead through a contact that is open in the normal one. */
    private static boolean holdsInNormalState(Circuit circuit, Nets normal, Judged judged) {
      if (judged.reading().state().isNormal()) {
        return true;
      }
      Nets nets = circuit.in(judged.reading().state());
      for (int conductor : nets.conductorsOf(nets.of(judged.probing().from()[0]))) {
        if (!normal.isClosed(conductor)) {
          return false;
        }
      }
      return true;
    }

    int count() {
      return firstPoint.length;
    }

    int of(int point) {
      return islandOf[point];
    }

    /** The first point of an island. */
    int first(int island) {
      return firstPoint[island];
    }
  }
}

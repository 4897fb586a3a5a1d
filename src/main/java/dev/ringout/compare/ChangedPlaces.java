package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.ContactPieces;
import dev.ringout.circuit.ContactPieces.Piece;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.RewiredNet.Change;
import dev.ringout.compare.RewiredNet.Moved;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which ends of wires, in a net that closed contacts hold together, could be at another point or
 * have changed places with each other, and every reading still be good. Each such change is tried
 * against each reading: with several contacts there is no shorter rule, for what one reading does
 * not see goes around through contacts that another would have found open.
 */
final class ChangedPlaces {
  /** In larger nets every wire is asked for with the contacts of its piece open instead. */
  private static final int MOST_WIRES = 250;

  private final Circuit circuit;
  private final CrossedInStates crossed;
  private final ContactPieces net;
  private final Set<Integer> wires;
  private final RewiredNet rewired;

  /** The switches so that a change may be seen. */
  private final List<SwitchState> telling;

  private final Map<Integer, MissingWire.EitherSide> open = new HashMap<>();

  private ChangedPlaces(
      Circuit circuit,
      CrossedInStates crossed,
      List<Judged> inForce,
      ContactPieces net,
      Set<Integer> wires) {
    this.circuit = circuit;
    this.crossed = crossed;
    this.net = net;
    this.wires = wires;
    Set<SwitchState> states = new LinkedHashSet<>();
    net.pieces().forEach(piece -> states.add(piece.apart()));
    states.add(net.allOpen(circuit));
    states.addAll(net.positions(circuit));
    this.telling = List.copyOf(states);
    this.rewired = RewiredNet.of(circuit, net, inForce);
  }

  /**
   * The wires of which this is so, with a reading that tells.
   *
   * @param wires those that could be elsewhere
   */
  static Map<Integer, MissingWire.EitherSide> open(
      Circuit circuit,
      CrossedInStates crossed,
      List<Judged> inForce,
      List<ContactPieces> nets,
      Collection<Integer> wires) {
    Map<Integer, MissingWire.EitherSide> open = new HashMap<>();
    for (ContactPieces net : nets) {
      Set<Integer> here =
          net.pieces().stream()
              .flatMap(piece -> piece.conductors().stream())
              .filter(wires::contains)
              .collect(Collectors.toCollection(TreeSet::new));
      ChangedPlaces places = new ChangedPlaces(circuit, crossed, inForce, net, here);
      if (here.size() > MOST_WIRES) {
        places.askForEach();
      } else {
        places.tryEach();
      }
      open.putAll(places.open);
    }
    return open;
  }

  private void askForEach() {
    for (Piece piece : net.pieces()) {
      SwitchState apart = piece.apart();
      for (int wire : piece.conductors()) {
        if (wires.contains(wire)
            && circuit.in(apart).isCutEdge(wire)
            && !crossed.has(wire, apart)) {
          open.put(
              wire,
              new MissingWire.EitherSide(
                  circuit.to(wire), OptionalInt.empty(), through(wire, apart)));
        }
      }
    }
  }

  /** What is whole and held by itself needs no trying, and what is whole none inside it. */
  private void tryEach() {
    List<Piece> loose = net.pieces().stream().filter(piece -> !rewired.isByItself(piece)).toList();
    for (int i = 0; i < loose.size(); i++) {
      for (int j = 0; j < loose.size(); j++) {
        Piece one = loose.get(i);
        Piece other = loose.get(j);
        if (i != j || !rewired.isWhole(one)) {
          moveEach(one, other);
          if (i <= j) {
            exchangeEach(one, other);
          }
        }
      }
    }
  }

  private void moveEach(Piece from, Piece to) {
    for (int wire : wiresOf(from)) {
      for (boolean far : new boolean[] {false, true}) {
        for (int point : to.points()) {
          if (!open.containsKey(wire) && point != circuit.from(wire) && point != circuit.to(wire)) {
            Moved moved = Moved.of(circuit, wire, far, point);
            Change change = new Change(moved, moved);
            if (couldBe(change)) {
              put(change, wire, point, OptionalInt.empty());
            }
          }
        }
      }
    }
  }

  private void exchangeEach(Piece here, Piece there) {
    for (int one : wiresOf(here)) {
      for (int other : wiresOf(there)) {
        for (int ends = 0; ends < 4 && (!here.equals(there) || one < other); ends++) {
          exchange(one, (ends & 1) == 1, other, (ends & 2) == 2);
        }
      }
    }
  }

  private List<Integer> wiresOf(Piece piece) {
    return piece.conductors().stream().filter(wires::contains).toList();
  }

  private void exchange(int one, boolean far, int other, boolean otherFar) {
    int point = far ? circuit.to(one) : circuit.from(one);
    int otherPoint = otherFar ? circuit.to(other) : circuit.from(other);
    if (point != otherPoint && !(open.containsKey(one) && open.containsKey(other))) {
      Change change =
          new Change(
              Moved.of(circuit, one, far, otherPoint), Moved.of(circuit, other, otherFar, point));
      if (couldBe(change)) {
        put(change, one, otherPoint, OptionalInt.of(other));
        put(change, other, point, OptionalInt.of(one));
      }
    }
  }

  private boolean couldBe(Change change) {
    return !rewired.isContradicted(change) && rewired.partsOtherwise(change);
  }

  private void put(Change change, int wire, int elsewhere, OptionalInt exchangedWith) {
    if (!open.containsKey(wire)) {
      shows(change, wire)
          .ifPresent(
              shows -> open.put(wire, new MissingWire.EitherSide(elsewhere, exchangedWith, shows)));
    }
  }

  /** A reading that tells: best through the wire itself with the contacts of its piece open. */
  private Optional<Probing> shows(Change change, int wire) {
    List<Probing> readings = new ArrayList<>();
    List<SwitchState> states =
        Stream.concat(
                net.pieces().stream()
                    .filter(piece -> piece.conductors().contains(wire))
                    .map(Piece::apart),
                telling.stream())
            .toList();
    for (SwitchState state : states) {
      readings.add(through(wire, state));
      wires.forEach(other -> readings.add(through(other, state)));
      for (Piece one : net.pieces()) {
        for (Piece other : net.pieces()) {
          readings.add(Probing.pair(one.terminal(), other.terminal(), state));
        }
      }
    }
    return readings.stream().filter(one -> rewired.tells(change, one)).findFirst();
  }

  private Probing through(int wire, SwitchState state) {
    return Probing.pair(circuit.from(wire), circuit.to(wire), state);
  }
}

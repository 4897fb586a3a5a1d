package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.DisjointPoints;
import dev.ringout.circuit.Nets;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A net that closed switch contacts hold together, and the pieces that are left without them.
 *
 * @param pieces those with the most wires first
 */
record Pieces(int net, List<Piece> pieces) {
  private static final int FEW = 2;

  /**
   * One piece.
   *
   * @param wires the wires in it
   * @param apart the switches so that none of its contacts to another piece is closed
   */
  record Piece(List<Integer> wires, SwitchState apart) {}

  /** The nets of a circuit that have closed contacts in the normal state. */
  static List<Pieces> of(Circuit circuit) {
    Nets normal = circuit.normal();
    Map<Integer, List<Integer>> contactsOf = new TreeMap<>();
    for (int c = 0; c < circuit.conductors().size(); c++) {
      if (circuit.conductors().get(c).asContact().isPresent() && normal.isClosed(c)) {
        contactsOf.computeIfAbsent(normal.of(circuit.from(c)), net -> new ArrayList<>()).add(c);
      }
    }
    List<Pieces> all = new ArrayList<>();
    contactsOf.forEach((net, contacts) -> all.add(of(circuit, net, contacts)));
    return all;
  }

  private static Pieces of(Circuit circuit, int net, List<Integer> contacts) {
    DisjointPoints joined = new DisjointPoints(circuit.size());
    int[] conductors = circuit.normal().conductorsOf(net);
    for (int conductor : conductors) {
      if (!contacts.contains(conductor)) {
        joined.union(circuit.from(conductor), circuit.to(conductor));
      }
    }
    Map<Integer, List<Integer>> wiresOf = new TreeMap<>();
    for (int conductor : conductors) {
      if (circuit.isWire(conductor)) {
        wiresOf
            .computeIfAbsent(joined.firstOf(circuit.from(conductor)), key -> new ArrayList<>())
            .add(conductor);
      }
    }
    List<Piece> pieces = new ArrayList<>();
    wiresOf.forEach(
        (piece, wires) -> {
          SwitchState state = SwitchState.normal();
          for (int contact : contacts) {
            boolean here = joined.firstOf(circuit.from(contact)) == piece;
            boolean there = joined.firstOf(circuit.to(contact)) == piece;
            if (here != there) {
              state = opened(circuit, contact, state);
            }
          }
          pieces.add(new Piece(wires, state));
        });
    pieces.sort(Comparator.comparingInt((Piece piece) -> -piece.wires().size()));
    return new Pieces(net, List.copyOf(pieces));
  }

  private static SwitchState opened(Circuit circuit, int contact, SwitchState state) {
    return circuit
        .conductors()
        .get(contact)
        .asContact()
        .map(one -> opened(circuit.switchOf(one), one, state))
        .orElse(state);
  }

  private static SwitchState opened(Switch which, Switch.Contact contact, SwitchState state) {
    return which.states().stream()
        .filter(position -> !position.equals(contact.state()))
        .findFirst()
        .map(position -> state.with(which, position))
        .orElse(state);
  }

  /** All but the largest, and that too where it is as little work as the rest. */
  List<Piece> toRead() {
    return holdsMany() ? pieces.subList(1, pieces.size()) : pieces;
  }

  /** Whether the largest piece has more wires than are worth reading one by one. */
  boolean holdsMany() {
    return !pieces.isEmpty() && pieces.get(0).wires().size() > FEW;
  }
}

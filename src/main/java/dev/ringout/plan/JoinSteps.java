package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.ContactPieces;
import dev.ringout.circuit.DisjointPoints;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Unproven;
import dev.ringout.harness.SwitchState;
import dev.ringout.plan.Step.Purpose;
import dev.ringout.readings.Reading;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Steps across wires, links and closed contacts: a spanning tree of each net. */
final class JoinSteps {
  /** So many wires of a piece are read one by one. */
  private static final int FEW = 2;

  private final Circuit circuit;
  private final Nets normal;
  private final Scope scope;
  private final DraftSteps draft;

  JoinSteps(Circuit circuit, Scope scope, DraftSteps draft) {
    this.circuit = circuit;
    this.normal = circuit.normal();
    this.scope = scope;
    this.draft = draft;
  }

  /**
   * The tree, without what good readings have joined.
   *
   * @param taken the good readings
   * @param unproven what they leave unproven
   */
  void add(List<Judged> taken, List<Unproven> unproven) {
    DisjointPoints proven = joinedBy(taken);
    Set<Integer> unprovenWires = new HashSet<>();
    unproven.forEach(one -> one.wire().ifPresent(unprovenWires::add));
    DisjointPoints tree = new DisjointPoints(circuit.size());
    // Wires first, as they are listed: each that nothing goes around is read straight across.
    for (int conductor = 0; conductor < circuit.conductors().size(); conductor++) {
      int from = circuit.from(conductor);
      int to = circuit.to(conductor);
      if (normal.isClosed(conductor) && scope.has(from) && tree.firstOf(from) != tree.firstOf(to)) {
        tree.union(from, to);
        if (proven.firstOf(from) != proven.firstOf(to) || unprovenWires.contains(conductor)) {
          across(conductor);
        }
      }
    }
  }

  private DisjointPoints joinedBy(List<Judged> taken) {
    DisjointPoints proven = new DisjointPoints(circuit.size());
    for (Judged judged : taken) {
      if (judged.probing().isPair()
          && judged.reading().state().isNormal()
          && judged.expected().isJoined()
          && judged.reading().kind() == Reading.Kind.CONTINUITY) {
        proven.union(judged.probing().from()[0], judged.probing().to()[0]);
      }
    }
    return proven;
  }

  private void across(int number) {
    Conductor conductor = circuit.conductors().get(number);
    draft.add(
        Probing.pair(circuit.from(number), circuit.to(number), SwitchState.normal()),
        conductor.asContact().isPresent() ? Purpose.CONTACT : Purpose.JOIN,
        conductor.label());
  }

  /**
   * A wire's end on the wrong side of a closed contact is read good: the wires there are read once
   * more with the contacts open. Of a large piece only what has come over from it is looked for.
   */
  void addBesideContacts() {
    for (ContactPieces net : ContactPieces.of(circuit)) {
      if (scope.hasNet(net.net())) {
        List<ContactPieces.Piece> pieces = net.pieces();
        boolean hasLarge = pieces.get(0).conductors().size() > FEW;
        pieces.subList(hasLarge ? 1 : 0, pieces.size()).forEach(piece -> add(piece, hasLarge));
      }
    }
  }

  private void add(ContactPieces.Piece piece, boolean besideALarge) {
    for (int wire : piece.conductors()) {
      draft.add(
          Probing.pair(circuit.from(wire), circuit.to(wire), piece.apart()),
          Purpose.CONTACT,
          circuit.conductors().get(wire).label());
    }
    if (besideALarge) {
      int[] point = {
        piece.conductors().stream().findFirst().map(circuit::from).orElse(piece.terminal())
      };
      draft.add(Probing.groupToRest(point, piece.apart()), Purpose.CONTACT, "");
    }
  }
}

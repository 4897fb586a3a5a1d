package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.ContactPieces;
import dev.ringout.circuit.ContactPieces.Piece;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * A conductor that must be shown to end on its own side of contacts that are closed in the normal
 * state: there, an end on another side reads as the good unit does.
 *
 * @param conductor a wire, or a link at a contact's terminal; its number
 * @param others the other pieces of its net that some position of the switches parts from its own
 */
record OwnSide(int conductor, List<Other> others) {
  /**
   * Another piece of the same net.
   *
   * @param terminal the terminal of a contact in it
   * @param apart the switches so that it is apart from the conductor's own piece
   */
  record Other(int terminal, SwitchState apart) {}

  /** Hands over every conductor of a list of which this must be shown. */
  static void each(Circuit circuit, Consumer<OwnSide> each) {
    for (ContactPieces net : ContactPieces.of(circuit)) {
      for (Piece own : net.pieces()) {
        List<Other> others = others(circuit, net, own);
        if (!others.isEmpty()) {
          own.conductors().forEach(conductor -> each.accept(new OwnSide(conductor, others)));
        }
      }
    }
  }

  static List<Other> others(Circuit circuit, ContactPieces net, Piece own) {
    List<Other> others = new ArrayList<>();
    for (Piece other : net.pieces()) {
      if (areApart(circuit, own, other, own.apart())) {
        others.add(new Other(other.terminals().get(0), own.apart()));
      } else if (areApart(circuit, own, other, other.apart())) {
        others.add(new Other(other.terminals().get(0), other.apart()));
      }
    }
    return List.copyOf(others);
  }

  private static boolean areApart(Circuit circuit, Piece own, Piece other, SwitchState state) {
    return circuit.in(state).of(own.terminals().get(0))
        != circuit.in(state).of(other.terminals().get(0));
  }
}

package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.ContactPieces;
import dev.ringout.circuit.ContactPieces.Piece;
import dev.ringout.circuit.Nets;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * A wire or link that must be shown to end on its own side of contacts that are closed in the
 * normal state: there, an end on another side reads as the good unit does.
 *
 * @param conductor its number
 * @param placings where its ends could be instead, so that some reading would tell
 */
record OwnSide(int conductor, List<Placing> placings) {
  /**
   * One end on another piece of the same net.
   *
   * @param stays the point of the end that is where it should be
   * @param terminal the terminal of a contact in the other piece
   * @param apart the switches so that a reading tells
   */
  record Placing(int stays, int terminal, SwitchState apart) {}

  /** Hands over every conductor of a list of which this must be shown. */
  static void each(Circuit circuit, List<ContactPieces> nets, Consumer<OwnSide> each) {
    for (ContactPieces net : nets) {
      List<SwitchState> positions = net.positions(circuit);
      for (Piece own : net.pieces()) {
        for (int conductor : own.conductors()) {
          List<Placing> placings = placings(circuit, net, own, conductor, positions);
          if (!placings.isEmpty()) {
            each.accept(new OwnSide(conductor, placings));
          }
        }
      }
    }
  }

  private static List<Placing> placings(
      Circuit circuit, ContactPieces net, Piece own, int conductor, List<SwitchState> positions) {
    List<Placing> placings = new ArrayList<>();
    for (Piece other : net.pieces()) {
      if (!other.equals(own)) {
        int terminal = other.terminal();
        for (int stays : new int[] {circuit.from(conductor), circuit.to(conductor)}) {
          Stream.concat(Stream.of(own.apart(), other.apart()), positions.stream())
              .filter(state -> tells(circuit.in(state), conductor, stays, terminal))
              .findFirst()
              .ifPresent(state -> placings.add(new Placing(stays, terminal, state)));
        }
      }
    }
    return List.copyOf(placings);
  }

  /** Whether it makes a difference in a state: something is joined then, or left alone. */
  private static boolean tells(Nets nets, int conductor, int stays, int terminal) {
    return nets.of(stays) != nets.of(terminal)
        || (nets.isCutEdge(conductor) && isWithStaying(nets, conductor, stays, terminal));
  }

  /** Whether a point is joined to the end that stays without the conductor. */
  static boolean isWithStaying(Nets nets, int conductor, int stays, int point) {
    return nets.of(point) == nets.of(stays)
        && !(nets.isCutEdge(conductor) && nets.path(stays, point).contains(conductor));
  }
}

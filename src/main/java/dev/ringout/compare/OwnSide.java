package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.ContactPieces;
import dev.ringout.circuit.ContactPieces.Piece;
import dev.ringout.circuit.Nets;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * A wire or link that must be shown to end on its own side of contacts that are closed in the
 * normal state: there, an end on another side reads as the good unit does.
 *
 * @param conductor its number
 * @param elsewhere where its ends could be instead, so that some reading would tell
 */
record OwnSide(int conductor, List<Elsewhere> elsewhere) {
  /**
   * Another piece of the same net, for one end.
   *
   * @param stays the point of the end that is where it should be
   * @param piece the other piece
   * @param apart the switches so that a reading tells
   * @param parted whether the two pieces are apart then
   */
  record Elsewhere(int stays, Piece piece, SwitchState apart, boolean parted) {
    /** The end at a contact there, as if nothing else were moved. */
    Placing alone() {
      return new Placing(stays, piece.terminal(), OptionalInt.empty(), apart);
    }

    /** The end in the place of another conductor's, which is here instead. */
    Placing exchangedWith(Circuit circuit, int other) {
      int from = circuit.from(other);
      int point = piece.terminals().contains(from) ? from : circuit.to(other);
      return new Placing(stays, point, OptionalInt.of(other), apart);
    }
  }

  /**
   * Where one end could be.
   *
   * @param stays the point of the end that is where it should be
   * @param point in another piece
   * @param exchangedWith the conductor that ends there as listed, were it exchanged with this one
   * @param apart the switches so that a reading tells
   */
  record Placing(int stays, int point, OptionalInt exchangedWith, SwitchState apart) {}

  /** Hands over every conductor of a list of which this must be shown. */
  static void each(Circuit circuit, List<ContactPieces> nets, Consumer<OwnSide> each) {
    for (ContactPieces net : nets) {
      List<SwitchState> positions = net.positions(circuit);
      for (Piece own : net.pieces()) {
        for (int conductor : own.conductors()) {
          List<Elsewhere> elsewhere = elsewhere(circuit, net, own, conductor, positions);
          if (!elsewhere.isEmpty()) {
            each.accept(new OwnSide(conductor, elsewhere));
          }
        }
      }
    }
  }

  private static List<Elsewhere> elsewhere(
      Circuit circuit, ContactPieces net, Piece own, int conductor, List<SwitchState> positions) {
    List<Elsewhere> elsewhere = new ArrayList<>();
    for (Piece other : net.pieces()) {
      if (!other.equals(own)) {
        int terminal = other.terminal();
        List<SwitchState> states =
            Stream.concat(Stream.of(own.apart(), other.apart()), positions.stream()).toList();
        for (int stays : new int[] {circuit.from(conductor), circuit.to(conductor)}) {
          states.stream()
              .filter(state -> areParted(circuit.in(state), stays, terminal))
              .findFirst()
              .map(state -> new Elsewhere(stays, other, state, true))
              .or(
                  () ->
                      states.stream()
                          .filter(
                              state -> isLeftAlone(circuit.in(state), conductor, stays, terminal))
                          .findFirst()
                          .map(state -> new Elsewhere(stays, other, state, false)))
              .ifPresent(elsewhere::add);
        }
      }
    }
    return List.copyOf(elsewhere);
  }

  private static boolean areParted(Nets nets, int stays, int point) {
    return nets.of(stays) != nets.of(point);
  }

  /** Whether something is joined through the conductor alone, and would not be then. */
  private static boolean isLeftAlone(Nets nets, int conductor, int stays, int point) {
    return nets.isCutEdge(conductor) && isWithStaying(nets, conductor, stays, point);
  }

  /** Whether a point is joined to the end that stays without the conductor. */
  static boolean isWithStaying(Nets nets, int conductor, int stays, int point) {
    return nets.of(point) == nets.of(stays)
        && !(nets.isCutEdge(conductor) && nets.path(stays, point).contains(conductor));
  }
}

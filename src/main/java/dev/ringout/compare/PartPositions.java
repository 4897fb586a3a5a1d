package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.ContactPieces;
import dev.ringout.circuit.ContactPieces.Piece;
import dev.ringout.circuit.Nets;
import dev.ringout.harness.SwitchState;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The positions of the switches in which a reading across a part tells: the normal ones, but for a
 * part whose ends a closed contact joins, which is read with that contact open.
 */
final class PartPositions {
  private final Circuit circuit;

  /** What opens the contacts of a net, each way. */
  private final Map<Integer, List<SwitchState>> opening = new HashMap<>();

  private PartPositions(Circuit circuit) {
    this.circuit = circuit;
  }

  static PartPositions of(Circuit circuit) {
    PartPositions positions = new PartPositions(circuit);
    for (ContactPieces net : ContactPieces.of(circuit)) {
      positions.opening.put(net.net(), net.pieces().stream().map(Piece::apart).toList());
    }
    return positions;
  }

  /** The positions in which a part is to be read. */
  SwitchState of(int part) {
    SwitchState normal = SwitchState.normal();
    return isOpen(part, normal)
        ? normal
        : opening.getOrDefault(circuit.normal().of(circuit.fromOfPart(part)), List.of()).stream()
            .filter(state -> isOpen(part, state))
            .findFirst()
            .orElse(normal);
  }

  /** Whether a reading across a part in some positions tells of it. */
  boolean tell(int part, SwitchState state) {
    SwitchState wanted = of(part);
    return wanted.isNormal() ? state.isNormal() : isOpen(part, state);
  }

  /** Whether its ends are in two nets; else nothing can be read across it. */
  boolean isOpen(int part, SwitchState state) {
    Nets nets = circuit.in(state);
    return nets.of(circuit.fromOfPart(part)) != nets.of(circuit.toOfPart(part));
  }
}

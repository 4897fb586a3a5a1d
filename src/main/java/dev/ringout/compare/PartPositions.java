package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.ContactPieces;
import dev.ringout.circuit.ContactPieces.Piece;
import dev.ringout.circuit.Nets;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The positions of the switches in which a reading across a part tells: the normal ones, but for a
 * part whose ends a closed contact joins, and for one with a lead in a net that a closed contact
 * holds together, which reads as the good unit does with that lead on the other side. Both are read
 * with the contact open.
 */
final class PartPositions {
  private final Circuit circuit;

  /** The other pieces that a lead at a point could be on. */
  private final Map<Integer, List<Beside>> besidePoint = new HashMap<>();

  private final Set<Integer> terminals = new HashSet<>();

  /** What opens the contacts of a net, each way. */
  private final Map<Integer, List<SwitchState>> opening = new HashMap<>();

  /** The terminal of a contact in another piece, and the switches so that it is apart. */
  private record Beside(int terminal, SwitchState apart) {}

  private final Set<String> itemsOfParts;

  private PartPositions(Circuit circuit) {
    this.circuit = circuit;
    this.itemsOfParts = itemsOfParts(circuit);
  }

  static PartPositions of(Circuit circuit, List<ContactPieces> nets) {
    PartPositions positions = new PartPositions(circuit);
    for (ContactPieces net : nets) {
      List<SwitchState> states = new ArrayList<>();
      for (Piece own : net.pieces()) {
        List<Beside> others = new ArrayList<>();
        for (Piece other : net.pieces()) {
          if (!other.equals(own)) {
            ContactPieces.apart(circuit, own, other)
                .ifPresent(state -> others.add(new Beside(other.terminal(), state)));
          }
        }
        own.points().forEach(point -> positions.besidePoint.put(point, others));
        positions.terminals.addAll(own.terminals());
        states.add(own.apart());
      }
      positions.opening.put(net.net(), states);
    }
    return positions;
  }

  /** The positions in which a part is to be read. */
  SwitchState of(int part) {
    SwitchState beside = withContactsOpen(part);
    if (isOpen(part, beside)) {
      return beside;
    }
    return opening.getOrDefault(circuit.normal().of(circuit.fromOfPart(part)), List.of()).stream()
        .filter(state -> isOpen(part, state))
        .findFirst()
        .orElse(SwitchState.normal());
  }

  /** With the contacts open at whose terminals its ends are; else the normal positions. */
  private SwitchState withContactsOpen(int part) {
    NavigableMap<String, String> positions = new TreeMap<>();
    mayBeElsewhere(part)
        .boxed()
        .flatMap(end -> beside(end).stream())
        .forEach(other -> other.apart().positions().forEach(positions::putIfAbsent));
    return new SwitchState(positions);
  }

  /** Whether a reading across a part in some positions tells of it. */
  boolean tell(int part, SwitchState state) {
    SwitchState wanted = of(part);
    if (wanted.isNormal()) {
      return state.isNormal();
    }
    boolean besideContacts = wanted.equals(withContactsOpen(part));
    return isOpen(part, state)
        && (!besideContacts
            || state.equals(wanted)
            || mayBeElsewhere(part).allMatch(end -> isAlone(end, state)));
  }

  /** Whether no other piece on which its lead could be is joined to an end. */
  private boolean isAlone(int end, SwitchState state) {
    Nets nets = circuit.in(state);
    return beside(end).stream().allMatch(other -> nets.of(end) != nets.of(other.terminal()));
  }

  /** Whether its ends are in two nets; else nothing can be read across it. */
  boolean isOpen(int part, SwitchState state) {
    Nets nets = circuit.in(state);
    return nets.of(circuit.fromOfPart(part)) != nets.of(circuit.toOfPart(part));
  }

  /** Its ends that may have been put to another piece. */
  private IntStream mayBeElsewhere(int part) {
    boolean isBuiltIn = isBuiltIn(circuit.part(part));
    return IntStream.of(circuit.fromOfPart(part), circuit.toOfPart(part))
        .filter(end -> !isBuiltIn || terminals.contains(end));
  }

  /** A lamp or winding whose item has no points but such and a switch's: no lead of it is loose. */
  private boolean isBuiltIn(Part part) {
    return part.kind().alwaysConducts() && itemsOfParts.contains(part.ref());
  }

  /**
   * Items of which every point is a lead of their own parts, or a terminal of their own contacts.
   */
  private static Set<String> itemsOfParts(Circuit circuit) {
    Set<Point> own = new HashSet<>();
    for (Part part : circuit.harness().parts()) {
      Stream.of(part.from(), part.to())
          .filter(end -> end.ref().equals(part.ref()))
          .forEach(own::add);
    }
    for (Switch which : circuit.harness().switches()) {
      for (Switch.Contact contact : which.contacts()) {
        Stream.of(contact.from(), contact.to())
            .filter(end -> end.ref().equals(which.ref()))
            .forEach(own::add);
      }
    }
    Set<String> items = own.stream().map(Point::ref).collect(Collectors.toSet());
    circuit.harness().points().stream()
        .filter(point -> !own.contains(point))
        .forEach(point -> items.remove(point.ref()));
    return items;
  }

  private List<Beside> beside(int end) {
    return besidePoint.getOrDefault(end, List.of());
  }
}

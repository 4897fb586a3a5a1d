package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Probing;
import dev.ringout.diagnose.Move;
import dev.ringout.diagnose.SlipFact;
import dev.ringout.diagnose.SwitchFault;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Slips in the trade's own things: wires, parts and points for their numbers. */
final class SlipFacts {
  private final Circuit circuit;
  private final Evidence evidence;

  SlipFacts(Circuit circuit, Evidence evidence) {
    this.circuit = circuit;
    this.evidence = evidence;
  }

  List<SlipFact> of(List<Slip> slips) {
    return grouped(slips).stream().map(this::ofGroup).toList();
  }

  /** What a group of slips is, by its first: only misplaced ends come in groups. */
  SlipFact ofGroup(List<Slip> group) {
    return group.get(0).match(new OfKind(group));
  }

  /**
   * Slips that misplace the same wire, or an end into the place of another misplaced end, are one
   * miswire: three ends in a ring are no two swaps, a run of shifted ends is one slip of the hand.
   */
  List<List<Slip>> grouped(List<Slip> slips) {
    List<List<Slip>> groups = new ArrayList<>();
    for (Slip slip : slips) {
      List<Slip> group = new ArrayList<>(List.of(slip));
      for (List<Slip> known : List.copyOf(groups)) {
        if (known.stream().anyMatch(one -> hangTogether(one, slip))) {
          groups.remove(known);
          group.addAll(0, known);
        }
      }
      groups.add(group);
    }
    return groups;
  }

  private boolean hangTogether(Slip one, Slip other) {
    return !Collections.disjoint(one.misplaced(), other.misplaced())
        || takesThePlaceOf(one, other)
        || takesThePlaceOf(other, one);
  }

  private boolean takesThePlaceOf(Slip one, Slip other) {
    Optional<Integer> left = other.asMoved().map(away -> circuit.at(away.wire(), away.end()));
    return one.asMoved().map(Slip.Moved::to).filter(to -> left.equals(Optional.of(to))).isPresent();
  }

  Point listed(Slip.Misread misread) {
    Probing probing = misread.judged().probing();
    return circuit.point(misread.first() ? probing.from()[0] : probing.to()[0]);
  }

  /** Where the slips leave the wire ends that are not where they are listed. */
  List<Move> moves(List<Slip> group) {
    SlippedNets nets = evidence.nets(group, SwitchState.normal());
    Set<Integer> wires = new TreeSet<>();
    group.forEach(slip -> wires.addAll(slip.misplaced()));
    List<Move> moves = new ArrayList<>();
    for (int number : wires) {
      Wire wire = circuit.conductors().get(number).asWire().orElseThrow();
      for (Wire.End end : Wire.End.values()) {
        Point at = circuit.point(nets.end(number, end));
        if (!at.equals(wire.at(end))) {
          moves.add(new Move(wire, wire.at(end), at));
        }
      }
    }
    return moves;
  }

  Switch switchOf(Slip.FaultySwitch faulty) {
    return circuit.harness().switches().get(faulty.which());
  }

  /** The contact that is welded, else every contact of the switch. */
  List<Point> contactPoints(Slip.FaultySwitch faulty) {
    int[] contacts =
        faulty.how() == SwitchFault.WELDED
            ? new int[] {faulty.contact()}
            : circuit.contactsOf(switchOf(faulty));
    return Arrays.stream(contacts)
        .flatMap(contact -> IntStream.of(circuit.from(contact), circuit.to(contact)))
        .distinct()
        .mapToObj(circuit::point)
        .toList();
  }

  /** Each kind in the trade's own things. */
  private final class OfKind implements Slip.Cases<SlipFact> {
    private final List<Slip> group;

    OfKind(List<Slip> group) {
      this.group = group;
    }

    private SlipFact misplaced() {
      return new SlipFact.Misplaced(moves(group));
    }

    @Override
    public SlipFact missing(Slip.Missing slip) {
      return new SlipFact.Opened(circuit.conductors().get(slip.conductor()));
    }

    @Override
    public SlipFact moved(Slip.Moved slip) {
      return misplaced();
    }

    @Override
    public SlipFact crossed(Slip.Crossed slip) {
      return misplaced();
    }

    @Override
    public SlipFact rearranged(Slip.Rearranged slip) {
      return misplaced();
    }

    @Override
    public SlipFact misread(Slip.Misread slip) {
      return new SlipFact.Misread(slip.judged(), listed(slip), circuit.point(slip.at()));
    }

    @Override
    public SlipFact exchanged(Slip.Exchanged slip) {
      return new SlipFact.ExchangedRows(slip.one(), slip.other());
    }

    @Override
    public SlipFact poor(Slip.Poor slip) {
      return new SlipFact.PoorJoint(circuit.conductors().get(slip.conductor()));
    }

    @Override
    public SlipFact bridged(Slip.Bridged slip) {
      return new SlipFact.Bridge(circuit.point(slip.one()), circuit.point(slip.other()));
    }

    @Override
    public SlipFact faultyPart(Slip.FaultyPart slip) {
      return new SlipFact.BadPart(
          circuit.part(slip.part()),
          slip.how(),
          circuit.point(slip.from()),
          circuit.point(slip.to()));
    }

    @Override
    public SlipFact faultySwitch(Slip.FaultySwitch slip) {
      return new SlipFact.BadSwitch(
          switchOf(slip), slip.how(), slip.position(), contactPoints(slip));
    }
  }
}

package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.ContactPieces;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.PartGroups;
import dev.ringout.compare.Coverage.Unprovable;
import dev.ringout.harness.Demands;
import dev.ringout.harness.Part;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Everything that must be shown of a unit made to a list, made once and from the list alone: nets
 * in one piece, pairs of nets apart and insulated, wires (and links that others go around) on their
 * own side of closed contacts, switch contacts in every position, parts. What a check calls proven,
 * what a plan still asks for, and what has to be read again after a rework are all answers of this
 * one set; there is no other opinion.
 *
 * <p>Who tested, when and with what is asked by the list's {@link Demands} besides.
 */
public final class Requirements {
  private final Circuit circuit;
  private final JoinLimits limits;
  private final PartGroups behindParts;
  private final PartGroups mayBeAnything;
  private final InsulationDemand insulation;
  private final Set<Integer> wires = new TreeSet<>();
  private final Map<Integer, OwnSide> sides = new HashMap<>();
  private final List<OfContact> contacts = new ArrayList<>();
  private final List<Unproven.PastContacts> pastContacts = new ArrayList<>();
  private final List<Integer> parts = new ArrayList<>();
  private final PartPositions positions;
  private final List<ContactPieces> pieces;

  /**
   * A switch contact in one position.
   *
   * @param which of which switch
   * @param conductor its number among the circuit's conductors
   * @param closed whether it must be seen closed there; else open
   */
  public record OfContact(Switch which, int conductor, String position, boolean closed) {}

  private Requirements(
      Circuit circuit,
      JoinLimits limits,
      PartGroups behindParts,
      PartGroups mayBeAnything,
      InsulationDemand insulation,
      PartPositions positions,
      List<ContactPieces> pieces) {
    this.circuit = circuit;
    this.limits = limits;
    this.behindParts = behindParts;
    this.mayBeAnything = mayBeAnything;
    this.insulation = insulation;
    this.positions = positions;
    this.pieces = pieces;
  }

  /** What a list requires. */
  public static Requirements of(Circuit circuit, JoinLimits limits) {
    PartGroups behindParts = new PartGroups(circuit, part -> true);
    List<ContactPieces> pieces = ContactPieces.of(circuit);
    Requirements required =
        new Requirements(
            circuit,
            limits,
            behindParts,
            new PartGroups(circuit, Requirements::mayBeAnything),
            InsulationDemand.of(circuit, behindParts),
            PartPositions.of(circuit, pieces),
            pieces);
    for (int conductor = 0; conductor < circuit.conductors().size(); conductor++) {
      required.conductor(conductor);
    }
    OwnSide.each(circuit, pieces, required::ownSide);
    pieces.forEach(required::pastContacts);
    for (int part = 0; part < circuit.harness().parts().size(); part++) {
      required.part(part);
    }
    return required;
  }

  private static boolean mayBeAnything(Part part) {
    return part.ohms().isEmpty()
        && !part.kind().isOpenToDirectCurrent()
        && part.kind() != Part.Kind.DIODE;
  }

  private void conductor(int conductor) {
    if (circuit.isWire(conductor) || isLinkInALoop(conductor)) {
      wires.add(conductor);
    }
    circuit.conductors().get(conductor).asContact().ifPresent(one -> contact(conductor, one));
  }

  /** Any other link is shown by its net being in one piece. */
  private boolean isLinkInALoop(int conductor) {
    return circuit.conductors().get(conductor).asLink().isPresent()
        && !circuit.normal().isCutEdge(conductor);
  }

  private void ownSide(OwnSide side) {
    wires.add(side.conductor());
    sides.put(side.conductor(), side);
  }

  /** What one contact parts by itself is held apart by what shows that contact open. */
  private void pastContacts(ContactPieces net) {
    for (ContactPieces.Pair pair : net.partedByMoreThanOneContact(circuit)) {
      pastContacts.add(new Unproven.PastContacts(pair.one(), pair.other(), pair.apart()));
    }
  }

  private void part(int part) {
    if (positions.isOpen(part, positions.of(part))) {
      parts.add(part);
    }
  }

  private void contact(int conductor, Switch.Contact contact) {
    Switch which = circuit.switchOf(contact);
    contacts.add(new OfContact(which, conductor, contact.state(), true));
    for (String position : which.states()) {
      boolean closed =
          which.contacts().stream()
              .anyMatch(other -> other.state().equals(position) && other.hasSamePointsAs(contact));
      if (!closed) {
        contacts.add(new OfContact(which, conductor, position, false));
      }
    }
  }

  /** Whether insulation is part of the proof. */
  public boolean asksForInsulation() {
    return circuit.harness().limits().demands().insulationTest();
  }

  /** What some readings show of all this, and what they leave open. */
  public Coverage shownBy(Comparison comparison) {
    return new Prover(circuit, limits, this, comparison.inForce()).prove();
  }

  /** In the circuit's order. */
  Set<Integer> wires() {
    return wires;
  }

  /** On which side of closed contacts a wire must be shown to end, where it could be another. */
  Optional<OwnSide> sideOf(int wire) {
    return Optional.ofNullable(sides.get(wire));
  }

  /** The nets that closed contacts hold together, whose wires' ends must be shown in place. */
  List<ContactPieces> contactPieces() {
    return pieces;
  }

  List<OfContact> contacts() {
    return contacts;
  }

  List<Unproven.PastContacts> pastContacts() {
    return pastContacts;
  }

  List<Integer> parts() {
    return parts;
  }

  /** The positions of the switches in which a part is to be read. */
  public SwitchState positionsFor(int part) {
    return positions.of(part);
  }

  /** Whether a reading across a part in some positions of the switches tells of it. */
  boolean tells(int part, SwitchState state) {
    return positions.tell(part, state);
  }

  PairsApart pairsApart() {
    return new PairsApart(circuit, mayBeAnything);
  }

  /** For each level of insulation, the pairs of nets of which it is asked. */
  List<PairsInsulated> pairsInsulated() {
    return asksForInsulation()
        ? insulation.levels().stream()
            .map(level -> new PairsInsulated(circuit, insulation, level))
            .toList()
        : List.of();
  }

  /** What no reading can show with the parts in place. */
  List<Unprovable> unprovable() {
    List<Unprovable> all = new ArrayList<>(unprovable(mayBeAnything, false));
    if (asksForInsulation()) {
      all.addAll(unprovable(behindParts, true));
    }
    return List.copyOf(all);
  }

  private List<Unprovable> unprovable(PartGroups groups, boolean insulation) {
    Nets normal = circuit.normal();
    Map<Integer, List<Integer>> partsOf = new HashMap<>();
    for (int part : parts) {
      partsOf
          .computeIfAbsent(
              groups.of(normal.of(circuit.fromOfPart(part))), group -> new ArrayList<>())
          .add(part);
    }
    List<Unprovable> all = new ArrayList<>();
    groups
        .netsOf()
        .forEach(
            (group, nets) ->
                all.add(
                    new Unprovable(
                        insulation,
                        nets.stream().map(net -> normal.pointsOf(net)[0]).toList(),
                        List.copyOf(partsOf.getOrDefault(group, List.of())))));
    return all;
  }
}

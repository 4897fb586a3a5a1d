package dev.ringout.diagnose.wiring;

import dev.ringout.diagnose.PartFault;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Link;
import dev.ringout.harness.Part;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The unit with the likeliest slips in it: values are held against the ways that are really there,
 * not against those on paper.
 */
public final class AsFound {
  private static final Place NOWHERE = Place.of("");

  private final Circuit listed;
  private final Circuit circuit;

  /** Of wires that are not where they are listed. */
  private final Map<Wire, Wire> listedOf = new HashMap<>();

  private AsFound(Circuit listed, Circuit circuit) {
    this.listed = listed;
    this.circuit = circuit;
  }

  static AsFound of(Circuit listed, List<Slip> slips) {
    if (slips.isEmpty()) {
      return new AsFound(listed, listed);
    }
    SlippedNets nets = new SlippedNets(listed, SwitchState.normal(), slips);
    Set<Integer> missing = new HashSet<>();
    List<Link> bridges = new ArrayList<>();
    for (Slip slip : slips) {
      slip.asMissing().ifPresent(one -> missing.add(one.conductor()));
      slip.asBridged()
          .map(one -> new Link(listed.point(one.one()), listed.point(one.other()), "", NOWHERE))
          .ifPresent(bridges::add);
    }
    List<Wire> wires = new ArrayList<>();
    Map<Wire, Wire> listedOf = new HashMap<>();
    List<Link> links = new ArrayList<>();
    Map<Switch.Contact, Integer> numberOf = new HashMap<>();
    for (int number = 0; number < listed.conductors().size(); number++) {
      Conductor conductor = listed.conductors().get(number);
      if (conductor instanceof Conductor.OfContact contact) {
        numberOf.put(contact.contact(), number);
      }
      if (missing.contains(number)) {
        continue;
      }
      if (conductor instanceof Conductor.OfWire wire) {
        int from = nets.end(number, Wire.End.FROM);
        int to = nets.end(number, Wire.End.TO);
        if (from == listed.from(number) && to == listed.to(number)) {
          wires.add(wire.wire());
          continue;
        }
        Wire now = wire.wire().between(listed.point(from), listed.point(to));
        wires.add(now);
        listedOf.put(now, wire.wire());
      } else if (conductor instanceof Conductor.OfLink link) {
        links.add(link.link());
      }
    }
    links.addAll(bridges);
    Harness paper = listed.harness();
    List<Switch> switches = new ArrayList<>();
    for (int which = 0; which < paper.switches().size(); which++) {
      switches.add(switched(paper.switches().get(which), which, slips, missing, numberOf, links));
    }
    // The circuit keeps its points: one that nothing is joined to any more is still there.
    Harness harness =
        new Harness(
            paper.header(),
            wires,
            paper.items(),
            paper.pins(),
            links,
            switches,
            parts(listed, slips),
            List.of(),
            paper.crimps(),
            paper.limits(),
            paper.netLimits());
    AsFound found = new AsFound(listed, listed.joinedOtherwise(harness));
    found.listedOf.putAll(listedOf);
    return found;
  }

  private static Switch switched(
      Switch one,
      int which,
      List<Slip> slips,
      Set<Integer> missing,
      Map<Switch.Contact, Integer> numberOf,
      List<Link> links) {
    List<Switch.Contact> contacts = new ArrayList<>();
    for (Switch.Contact contact : one.contacts()) {
      int number = numberOf.getOrDefault(contact, -1);
      boolean never = missing.contains(number);
      boolean always = false;
      String state = contact.state();
      for (Slip slip : slips) {
        if (slip instanceof Slip.FaultySwitch faulty && faulty.which() == which) {
          switch (faulty.how()) {
            case STUCK -> {
              always |= contact.state().equals(faulty.position());
              never |= !contact.state().equals(faulty.position());
            }
            case WELDED -> always |= number == faulty.contact();
            case OTHER_WAY ->
                state =
                    one.states().stream()
                        .filter(position -> !position.equals(contact.state()))
                        .findFirst()
                        .orElse(state);
          }
        }
      }
      if (always) {
        links.add(new Link(contact.from(), contact.to(), "", NOWHERE));
      } else if (!never) {
        contacts.add(
            new Switch.Contact(
                contact.ref(), state, contact.from(), contact.to(), contact.place()));
      }
    }
    return new Switch(one.ref(), one.states(), contacts);
  }

  private static List<Part> parts(Circuit listed, List<Slip> slips) {
    List<Part> parts = new ArrayList<>();
    for (int number = 0; number < listed.harness().parts().size(); number++) {
      Part part = listed.part(number);
      boolean missing = false;
      for (Slip slip : slips) {
        if (slip instanceof Slip.FaultyPart faulty && faulty.part() == number) {
          missing |= faulty.how() == PartFault.MISSING;
          part = altered(listed, part, faulty);
        }
      }
      if (!missing) {
        parts.add(part);
      }
    }
    return parts;
  }

  private static Part altered(Circuit listed, Part part, Slip.FaultyPart faulty) {
    boolean otherValue = faulty.how() == PartFault.OTHER_VALUE;
    return new Part(
        part.ref(),
        listed.point(faulty.from()),
        listed.point(faulty.to()),
        part.kind(),
        otherValue ? OptionalDouble.empty() : part.ohms(),
        part.tolerancePercent(),
        part.maxTestVolts(),
        part.note(),
        part.place());
  }

  /** What is joined to what as it was found. */
  public Circuit circuit() {
    return circuit;
  }

  /** Whether no slip was found. */
  public boolean isAsListed() {
    return circuit.equals(listed);
  }

  /** A wire as it stands on paper. */
  public Wire listed(Wire found) {
    return listedOf.getOrDefault(found, found);
  }

  /** A conductor as it stands on paper. */
  public Conductor listed(Conductor found) {
    return found instanceof Conductor.OfWire wire
        ? new Conductor.OfWire(listed(wire.wire()))
        : found;
  }
}

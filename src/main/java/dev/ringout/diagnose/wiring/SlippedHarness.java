package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.Nets;
import dev.ringout.diagnose.PartFault;
import dev.ringout.diagnose.SwitchFault;
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

/** The list as it would be, had the slips of a unit been meant. */
final class SlippedHarness {
  private static final Place NOWHERE = Place.of("");

  private final Circuit listed;
  private final List<Slip> slips;
  private final SlippedNets nets;
  private final Set<Integer> missing = new HashSet<>();
  private final List<Wire> wires = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();
  private final List<Switch> switches = new ArrayList<>();
  private final Map<Wire, Wire> listedOf = new HashMap<>();
  private final Map<Switch.Contact, Integer> numberOf = new HashMap<>();

  private SlippedHarness(Circuit listed, List<Slip> slips) {
    this.listed = listed;
    this.slips = slips;
    this.nets = new SlippedNets(listed, SwitchState.normal(), slips);
  }

  static SlippedHarness of(Circuit listed, List<Slip> slips) {
    SlippedHarness slipped = new SlippedHarness(listed, slips);
    slips.forEach(slip -> slip.asMissing().ifPresent(one -> slipped.missing.add(one.conductor())));
    slipped.takeConductors();
    slipped.takeBridges();
    List<Switch> switches = listed.harness().switches();
    for (int which = 0; which < switches.size(); which++) {
      slipped.takeSwitch(switches.get(which), which);
    }
    return slipped;
  }

  /** The wires, of those that are not where they are listed, as they stand on paper. */
  Map<Wire, Wire> listedOf() {
    return listedOf;
  }

  /** The circuit keeps its points: one that nothing is joined to any more is still there. */
  Harness harness() {
    Harness paper = listed.harness();
    return paper.toBuilder()
        .wires(wires)
        .links(links)
        .switches(switches)
        .parts(parts())
        .loads(List.of())
        .build();
  }

  private void takeConductors() {
    for (int number = 0; number < listed.conductors().size(); number++) {
      listed.conductors().get(number).match(new Taking(number)).run();
    }
  }

  /** How a conductor is taken over, by its kind. */
  private final class Taking implements Conductor.Cases<Runnable> {
    private final int number;

    Taking(int number) {
      this.number = number;
    }

    @Override
    public Runnable wire(Conductor.OfWire conductor) {
      return unlessMissing(() -> takeWire(number, conductor.wire()));
    }

    @Override
    public Runnable link(Conductor.OfLink conductor) {
      return unlessMissing(() -> links.add(conductor.link()));
    }

    /** Its switch takes it, as far as that still works. */
    @Override
    public Runnable contact(Conductor.OfContact conductor) {
      return () -> numberOf.put(conductor.contact(), number);
    }

    private Runnable unlessMissing(Runnable taking) {
      return missing.contains(number) ? () -> {} : taking;
    }
  }

  private void takeWire(int number, Wire wire) {
    int from = nets.end(number, Wire.End.FROM);
    int to = nets.end(number, Wire.End.TO);
    if (from == listed.from(number) && to == listed.to(number)) {
      wires.add(wire);
      return;
    }
    Wire now = wire.between(listed.point(from), listed.point(to));
    wires.add(now);
    listedOf.put(now, wire);
  }

  private void takeBridges() {
    for (Slip slip : slips) {
      slip.asBridged()
          .map(one -> new Link(listed.point(one.one()), listed.point(one.other()), "", NOWHERE))
          .ifPresent(links::add);
    }
  }

  private void takeSwitch(Switch one, int which) {
    List<Slip.FaultySwitch> faults =
        slips.stream()
            .flatMap(slip -> slip.asFaultySwitch().stream())
            .filter(faulty -> faulty.which() == which)
            .toList();
    List<Switch.Contact> contacts = new ArrayList<>();
    for (Switch.Contact contact : one.contacts()) {
      int number = numberOf.getOrDefault(contact, Nets.NONE);
      if (faults.stream().anyMatch(faulty -> isAlwaysClosed(faulty, contact, number))) {
        links.add(new Link(contact.from(), contact.to(), "", NOWHERE));
      } else if (!missing.contains(number)
          && faults.stream().noneMatch(faulty -> isNeverClosed(faulty, contact))) {
        contacts.add(
            new Switch.Contact(
                contact.ref(),
                closedAt(contact, one, faults),
                contact.from(),
                contact.to(),
                contact.place()));
      }
    }
    switches.add(new Switch(one.ref(), one.states(), contacts));
  }

  private static boolean isAlwaysClosed(
      Slip.FaultySwitch faulty, Switch.Contact contact, int number) {
    return switch (faulty.how()) {
      case STUCK -> contact.state().equals(faulty.position());
      case WELDED -> number == faulty.contact();
      case OTHER_WAY -> false;
    };
  }

  private static boolean isNeverClosed(Slip.FaultySwitch faulty, Switch.Contact contact) {
    return faulty.how() == SwitchFault.STUCK && !contact.state().equals(faulty.position());
  }

  /** The position in which a contact closes: the other one where the switch works the other way. */
  private static String closedAt(
      Switch.Contact contact, Switch one, List<Slip.FaultySwitch> faults) {
    if (faults.stream().noneMatch(faulty -> faulty.how() == SwitchFault.OTHER_WAY)) {
      return contact.state();
    }
    return one.states().stream()
        .filter(position -> !position.equals(contact.state()))
        .findFirst()
        .orElse(contact.state());
  }

  private List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    for (int number = 0; number < listed.harness().parts().size(); number++) {
      Part part = listed.part(number);
      boolean gone = false;
      for (Slip.FaultyPart faulty : faultsOf(number)) {
        gone |= faulty.how() == PartFault.MISSING;
        part = altered(part, faulty);
      }
      if (!gone) {
        parts.add(part);
      }
    }
    return parts;
  }

  private List<Slip.FaultyPart> faultsOf(int part) {
    return slips.stream()
        .flatMap(slip -> slip.asFaultyPart().stream())
        .filter(faulty -> faulty.part() == part)
        .toList();
  }

  private Part altered(Part part, Slip.FaultyPart faulty) {
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
}

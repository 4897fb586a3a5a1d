package dev.ringout.imports.kbl;

import dev.ringout.harness.Link;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.imports.list.ImportResult.SkippedRow;
import dev.ringout.imports.list.KblOddity;
import dev.ringout.imports.list.SkipReason;
import dev.ringout.imports.list.WiringOddity;
import dev.ringout.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Makes a wire of each connection, or says why not: the two add up to all that there are. */
final class Connections {
  private final KblXml.Content content;
  private final Modules modules;
  private final References references;
  private final Contacts contacts;
  private final WireFacts facts;
  private final Findings findings;
  private final List<Draft> drafts = new ArrayList<>();
  private final List<Wire> wires = new ArrayList<>();
  private final Set<Link> links = new LinkedHashSet<>();
  private final List<SkippedRow> skipped = new ArrayList<>();
  private final Set<Holder> used = new LinkedHashSet<>();
  private int read;
  private int ofNoModule;

  Connections(
      KblXml.Content content,
      Modules modules,
      References references,
      Contacts contacts,
      WireFacts facts,
      Findings findings) {
    this.content = content;
    this.modules = modules;
    this.references = references;
    this.contacts = contacts;
    this.facts = facts;
    this.findings = findings;
  }

  /** All of the file. */
  void readAll() {
    for (Element connection : content.root().within("Connection")) {
      Set<Element> of = modules.ofConnection(connection, content);
      if (!modules.takesAny(of)) {
        ofNoModule += of.isEmpty() ? 1 : 0;
        skip(connection, SkipReason.MODULE_NOT_CHOSEN);
        continue;
      }
      try {
        drafts.add(draft(connection));
      } catch (NotRead e) {
        skip(connection, e);
      }
    }
    SharedNames names = new SharedNames(drafts, modules, content, findings);
    for (Draft draft : drafts) {
      try {
        names.check(draft);
        connect(draft, names);
        read++;
      } catch (NotRead e) {
        skip(draft.connection(), e);
      }
    }
    sayNamesUsedAgain();
  }

  private Draft draft(Element connection) throws NotRead {
    if (connection.in("Assembly_part").isPresent()) {
      Element assembly = connection.in("Assembly_part").get();
      throw new NotRead(
          SkipReason.OF_ASSEMBLY_PART,
          connection.line(),
          new KblOddity.OfAssemblyPart(connection.id(), assembly.id()));
    }
    Element wire = references.one(connection, "Wire", WireFacts.WIRE, WireFacts.CORE);
    return new Draft(connection, wire, contacts.of(connection));
  }

  private void skip(Element connection, NotRead why) {
    findings.error(why);
    skip(connection, why.reason());
  }

  private void skip(Element connection, SkipReason why) {
    skipped.add(
        new SkippedRow(
            connection.line(),
            why,
            List.of(
                connection.id(),
                connection.said("Id"),
                connection.said("Signal_name"),
                String.join(" ", connection.references("Wire")))));
  }

  private void connect(Draft draft, SharedNames names) throws NotRead {
    List<Contact> along = along(draft);
    Map<String, String> notes = new LinkedHashMap<>();
    Wire whole =
        Wire.of(
                WireFacts.name(draft.wire(), draft.connection()),
                names.spelt(along.get(0).points().get(0)),
                names.spelt(along.get(along.size() - 1).points().get(0)),
                findings.of(draft.connection()))
            .madeOf(facts.make(draft.wire(), notes))
            .usedFor(facts.use(draft.wire(), draft.connection()))
            .noted(draft.connection().said("Description"))
            .withNotes(notes.isEmpty() ? Map.of() : Collections.unmodifiableMap(notes));
    for (int i = 0; i + 1 < along.size(); i++) {
      wires.add(piece(whole, i, along, names));
    }
    if (along.size() > 2) {
      findings.note(
          draft.connection(),
          new KblOddity.ContactsAlongWire(
              whole.name(), along.stream().map(one -> one.points().get(0).toString()).toList()));
    }
    draft.contacts().forEach(contact -> link(contact, names));
  }

  /** The contacts of a wire, each once where two that follow each other are one point. */
  private static List<Contact> along(Draft draft) throws NotRead {
    List<Contact> along = new ArrayList<>();
    for (Contact contact : draft.contacts()) {
      if (along.isEmpty() || !points(along.get(along.size() - 1), contact)) {
        along.add(contact);
      }
    }
    if (along.size() < 2) {
      throw new NotRead(
          SkipReason.TO_ITSELF,
          draft.connection().line(),
          new WiringOddity.ToItself(along.get(0).points().get(0).toString()));
    }
    return along;
  }

  /** A wire from one contact to the next; most have two, and are one piece. */
  private static Wire piece(Wire whole, int number, List<Contact> along, SharedNames names) {
    Contact from = along.get(number);
    Contact to = along.get(number + 1);
    Point fromPoint = names.spelt(from.points().get(0));
    Point toPoint = names.spelt(to.points().get(0));
    String name = whole.name().isEmpty() ? fromPoint + ">" + toPoint : whole.name();
    return whole
        .named(number == 0 ? name : name + "/" + (number + 1))
        .between(fromPoint, toPoint)
        .madeOf(along.size() == 2 ? whole.make() : share(whole.make(), from, to))
        .withContact(Wire.End.FROM, from.contact())
        .withContact(Wire.End.TO, to.contact());
  }

  private static boolean points(Contact one, Contact other) {
    return one.points().get(0).equals(other.points().get(0));
  }

  /** A piece of a wire: its length by the positions of its ends, where these are given. */
  private static Wire.Make share(Wire.Make whole, Contact from, Contact to) {
    double share = to.position() - from.position();
    return whole.ofLength(
        whole
            .length()
            .filter(length -> share > 0 && share <= 1)
            .map(length -> new Length(length.metres() * share)));
  }

  /** One contact in several cavities joins them, whatever wires it has. */
  private void link(Contact contact, SharedNames names) {
    used.add(contact.holder());
    Point first = names.spelt(contact.points().get(0));
    for (Point other : contact.points().subList(1, contact.points().size())) {
      links.add(
          new Link(first, names.spelt(other), "one contact in both", findings.of(contact.point())));
    }
    if (contact.points().size() > 1) {
      findings.note(
          contact.point(),
          new KblOddity.ContactOverCavities(
              contact.points().stream().map(Point::toString).toList()));
    }
  }

  private void sayNamesUsedAgain() {
    Map<String, List<Wire>> byName = new LinkedHashMap<>();
    wires.forEach(wire -> byName.computeIfAbsent(wire.name(), one -> new ArrayList<>()).add(wire));
    for (Map.Entry<String, List<Wire>> entry : byName.entrySet()) {
      List<Wire> same = entry.getValue();
      if (same.size() > 1) {
        findings.warning(
            same.get(1).place(),
            new WiringOddity.NumberUsedAgain(
                entry.getKey(),
                same.size(),
                same.stream()
                    .map(wire -> new WiringOddity.Run(wire.from().toString(), wire.to().toString()))
                    .limit(4)
                    .toList()));
      }
    }
  }

  List<Wire> wires() {
    return List.copyOf(wires);
  }

  List<Link> links() {
    return List.copyOf(links);
  }

  /** What was not read, and why, in the order of the file. */
  List<SkippedRow> skipped() {
    return skipped.stream()
        .sorted((one, other) -> Integer.compare(one.row(), other.row()))
        .toList();
  }

  /** Connectors and boxes that have wires. */
  Set<Holder> used() {
    return Collections.unmodifiableSet(used);
  }

  /** How many connections are wires. */
  int read() {
    return read;
  }

  int ofNoModule() {
    return ofNoModule;
  }
}

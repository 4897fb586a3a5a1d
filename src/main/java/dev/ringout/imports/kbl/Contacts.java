package dev.ringout.imports.kbl;

import dev.ringout.harness.Point;
import dev.ringout.imports.list.KblOddity;
import dev.ringout.imports.list.SkipReason;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** From an extremity of a wire to its point: contact point, cavity, slot, connector. */
final class Contacts {
  private static final String CONTACT_POINT = "Contact_points";

  private final References references;
  private final Findings findings;
  private final Map<Element, Holder> holders = new LinkedHashMap<>();

  Contacts(References references, Findings findings) {
    this.references = references;
    this.findings = findings;
  }

  Holder holder(Element occurrence) {
    return holders.computeIfAbsent(occurrence, one -> new Holder(one, references));
  }

  /** The contacts of a connection, in their order along the wire. */
  List<Contact> of(Element connection) throws NotRead {
    List<Contact> contacts = new ArrayList<>();
    for (Element extremity : connection.children("Extremities")) {
      contacts.add(contact(extremity));
    }
    if (contacts.size() < 2) {
      throw new NotRead(
          SkipReason.NO_OTHER_END,
          connection.line(),
          new KblOddity.TooFewEnds(connection.id(), contacts.size()));
    }
    return inOrder(connection, contacts);
  }

  private List<Contact> inOrder(Element connection, List<Contact> contacts) {
    long different = contacts.stream().mapToDouble(Contact::position).distinct().count();
    boolean clear =
        different == contacts.size()
            && contacts.stream().noneMatch(contact -> Double.isNaN(contact.position()));
    if (!clear) {
      if (contacts.size() > 2) {
        findings.warning(
            connection, new KblOddity.PositionsUnclear(connection.id(), contacts.size()));
      }
      return List.copyOf(contacts);
    }
    return contacts.stream()
        .sorted((one, other) -> Double.compare(one.position(), other.position()))
        .toList();
  }

  private Contact contact(Element extremity) throws NotRead {
    Element point = references.one(extremity, "Contact_point", CONTACT_POINT);
    Holder holder = holder(holding(point, extremity, point.id()));
    Set<Point> points = new LinkedHashSet<>();
    for (Element cavity :
        references.all(point, "Contacted_cavity", Holder.CAVITIES, Holder.BOX_CAVITIES)) {
      Holder of = holder(holding(cavity, point, cavity.id()));
      if (!of.equals(holder)) {
        throw new NotRead(
            SkipReason.POINT_NOT_CLEAR,
            point.line(),
            new KblOddity.CavityOfOtherItem(point.id(), holder.name(), cavity.id(), of.name()));
      }
      points.add(holder.point(cavity));
    }
    if (points.isEmpty()) {
      points.add(holder.pointWithoutCavity(point));
    }
    return new Contact(point, holder, List.copyOf(points), position(extremity), terminal(point));
  }

  /** The connector or box of the harness that an element is in: not the part of a catalogue. */
  private static Element holding(Element inside, Element from, String id) throws NotRead {
    return inside
        .in(Holder.CONNECTOR, Holder.BOX)
        .orElseThrow(
            () ->
                new NotRead(
                    SkipReason.REFERENCE_LEADS_NOWHERE,
                    from.line(),
                    new KblOddity.ReferenceToOtherKind(
                        from.name(),
                        from.id(),
                        "Contacted_cavity",
                        id,
                        inside.parent().map(Element::name).orElse(inside.name()))));
  }

  private static double position(Element extremity) {
    try {
      return Double.parseDouble(extremity.said("Position_on_wire"));
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }

  /** The part numbers of the terminals at a contact point. */
  private String terminal(Element point) {
    Set<String> numbers = new LinkedHashSet<>();
    for (String id : point.references("Associated_parts")) {
      try {
        Element part =
            references.follow(
                point,
                "Associated_parts",
                id,
                "Terminal_occurrence",
                "Special_terminal_occurrence",
                "Cavity_seal_occurrence",
                "Cavity_plug_occurrence",
                "Accessory_occurrence",
                "Assembly_part_occurrence",
                "Component_occurrence",
                "Co_pack_occurrence",
                "Connector_occurrence");
        if (part.name().endsWith("erminal_occurrence")) {
          String number = references.one(part, "Part", "General_terminal").said("Part_number");
          if (!number.isEmpty()) {
            numbers.add(number);
          }
        }
      } catch (NotRead e) {
        findings.warning(e);
      }
    }
    return String.join(", ", numbers);
  }
}

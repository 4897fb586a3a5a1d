package dev.ringout.review;

import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.standards.ContactSizes.ContactSize;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The size of a contact against that of its cavity, and a pin or a socket against what the insert
 * is made for: its own part number or arrangement, the cavity's own contact, else what most other
 * wires of the item have.
 */
final class ContactCavity implements Check {
  /** A wire's end with a contact that is known to be a pin or a socket. */
  private record Ended(Wire wire, Wire.End end, ContactSize size, ContactGender gender) {}

  @Override
  public String rule() {
    return "contact-cavity";
  }

  @Override
  public String about() {
    return "the contact on a wire fits the cavity";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    Map<String, List<Ended>> byItem = new LinkedHashMap<>();
    for (Wire wire : paper.harness().wires()) {
      for (Wire.End end : Wire.End.values()) {
        Optional<ContactSize> contact = paper.contactSize(wire.contactAt(end));
        if (contact.isPresent()) {
          size(paper, wire, end, contact.get(), findings);
          ContactGender.of(contact, wire.contactAt(end))
              .ifPresent(
                  gender ->
                      byItem
                          .computeIfAbsent(wire.at(end).ref(), ref -> new ArrayList<>())
                          .add(new Ended(wire, end, contact.get(), gender)));
        }
      }
    }
    byItem.forEach((ref, ends) -> genders(paper, ref, ends, findings));
    paper.harness().pins().forEach(pin -> listed(paper, pin, findings));
    findings.notRun(Lack.CONTACTS_AND_CAVITY_SIZES);
  }

  private static void size(
      Paper paper, Wire wire, Wire.End end, ContactSize contact, Findings findings) {
    Optional<ContactSize> cavity = paper.cavity(wire.at(end));
    if (cavity.isEmpty()) {
      return;
    }
    findings.looked();
    if (!contact.size().equals(cavity.get().size())) {
      findings.say(
          Severity.ERROR,
          wire.at(end),
          wire,
          Text.of(
              "%s has a size %s contact, the cavity is size %s",
              wire.name(), contact.size(), cavity.get().size()),
          contact.citation());
    }
  }

  /** The contact listed for a cavity against the item's insert. */
  private static void listed(Paper paper, PinDetail pin, Findings findings) {
    Optional<ContactSize> contact = paper.contactSize(pin.contact());
    Optional<ContactGender> gender = ContactGender.of(contact, pin.contact());
    String ref = pin.point().ref();
    Optional<ContactGender> wanted = paper.item(ref).flatMap(ContactGender::of);
    if (gender.isPresent() && wanted.isPresent()) {
      findings.looked();
      if (gender.get() != wanted.get()) {
        findings.say(
            Severity.ERROR,
            pin.point(),
            Text.of(
                "the cavity is listed with a %s contact, %s",
                gender.get().text(), ofInsert(ref, wanted.get())),
            contact.get().citation());
      }
    }
    Optional<Insert> insert = paper.insert(ref);
    Optional<String> size = insert.flatMap(Insert::onlySize);
    if (contact.isPresent() && size.flatMap(paper::contactSize).isPresent()) {
      findings.looked();
      if (!contact.get().size().equals(size.get())) {
        findings.say(
            Findings.breach(insert.get().fromMemory()),
            pin.point(),
            Text.of(
                "the cavity is listed with a size %s contact, insert %s has size %s",
                contact.get().size(), insert.get().arrangement(), size.get()),
            insert.get().citation());
      }
    }
  }

  private static void genders(Paper paper, String ref, List<Ended> ends, Findings findings) {
    Optional<ContactGender> insert = paper.item(ref).flatMap(ContactGender::of);
    long pins = ends.stream().filter(one -> one.gender() == ContactGender.PIN).count();
    long sockets = ends.size() - pins;
    for (Ended one : ends) {
      Optional<ContactGender> cavity = cavity(paper, one.wire().at(one.end()));
      if (insert.isPresent()) {
        findings.looked();
        unlike(one, insert.get(), Severity.ERROR, ofInsert(ref, insert.get()), findings);
      } else if (cavity.isPresent()) {
        findings.looked();
        unlike(one, cavity.get(), Severity.ERROR, ofCavity(cavity.get()), findings);
      } else if (pins != sockets) {
        ContactGender most = pins > sockets ? ContactGender.PIN : ContactGender.SOCKET;
        unlike(one, most, Severity.WARNING, ofOthers(ref, most, Math.max(pins, sockets)), findings);
      }
    }
  }

  private static Optional<ContactGender> cavity(Paper paper, Point point) {
    String contact = paper.pin(point).map(PinDetail::contact).orElse("");
    return ContactGender.of(paper.contactSize(contact), contact);
  }

  private static String ofInsert(String ref, ContactGender insert) {
    return Text.of("%s has an insert for %ss", ref, insert.text());
  }

  private static String ofCavity(ContactGender cavity) {
    return Text.of("the cavity is for a %s", cavity.text());
  }

  private static String ofOthers(String ref, ContactGender most, long count) {
    return Text.of(
        count == 1 ? "%d other wire of %s has a %s" : "%d other wires of %s have %ss",
        count,
        ref,
        most.text());
  }

  private static void unlike(
      Ended one, ContactGender wanted, Severity severity, String because, Findings findings) {
    if (one.gender() != wanted) {
      findings.say(
          severity,
          one.wire().at(one.end()),
          one.wire(),
          Text.of("%s has a %s contact, %s", one.wire().name(), one.gender().text(), because),
          one.size().citation());
    }
  }
}

package dev.ringout.circuit;

import dev.ringout.harness.Link;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.Wire;
import dev.ringout.source.Place;
import java.util.Optional;

/** What joins two points: an edge of the circuit. */
public sealed interface Conductor {

  /** What is made of it, by its kind: a use that lacks a kind does not compile. */
  <T> T match(Cases<T> cases);

  /** Whether it is a wire, and no link and no contact. */
  default boolean isWire() {
    return false;
  }

  /** The wire that it is; absent where it is none. */
  default Optional<Wire> asWire() {
    return Optional.empty();
  }

  /** The joint without a wire that it is; absent where it is none. */
  default Optional<Link> asLink() {
    return Optional.empty();
  }

  /** The switch contact that it is; absent where it is none. */
  default Optional<Switch.Contact> asContact() {
    return Optional.empty();
  }

  /** One end. */
  Point from();

  /** The other end. */
  Point to();

  /** As a mechanic says it: {@code W012}, {@code the link TB1-4/TB1-5}. */
  String label();

  /** Where the paper lists it. */
  Place place();

  /** A wire. */
  record OfWire(Wire wire) implements Conductor {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.wire(this);
    }

    @Override
    public boolean isWire() {
      return true;
    }

    @Override
    public Optional<Wire> asWire() {
      return Optional.of(wire);
    }

    @Override
    public Point from() {
      return wire.from();
    }

    @Override
    public Point to() {
      return wire.to();
    }

    @Override
    public String label() {
      return wire.name();
    }

    @Override
    public Place place() {
      return wire.place();
    }
  }

  /** A joint without a wire. */
  record OfLink(Link link) implements Conductor {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.link(this);
    }

    @Override
    public Optional<Link> asLink() {
      return Optional.of(link);
    }

    @Override
    public Point from() {
      return link.from();
    }

    @Override
    public Point to() {
      return link.to();
    }

    @Override
    public String label() {
      return "the link " + link.name();
    }

    @Override
    public Place place() {
      return link.place();
    }
  }

  /** A switch contact, closed in one position. */
  record OfContact(Switch.Contact contact) implements Conductor {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.contact(this);
    }

    @Override
    public Optional<Switch.Contact> asContact() {
      return Optional.of(contact);
    }

    @Override
    public Point from() {
      return contact.from();
    }

    @Override
    public Point to() {
      return contact.to();
    }

    @Override
    public String label() {
      return "the contact " + between(from(), to()) + " of " + contact.ref();
    }

    @Override
    public Place place() {
      return contact.place();
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link OfWire}. */
    T wire(OfWire conductor);

    /** See {@link OfLink}. */
    T link(OfLink conductor);

    /** See {@link OfContact}. */
    T contact(OfContact conductor);
  }

  private static String between(Point from, Point to) {
    return from.ref().equals(to.ref()) ? from + "/" + to.pin() : from + "/" + to;
  }
}

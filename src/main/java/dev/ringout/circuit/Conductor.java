package dev.ringout.circuit;

import dev.ringout.harness.Link;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.Wire;
import dev.ringout.source.Place;

/** What joins two points: an edge of the circuit. */
public sealed interface Conductor {

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
    public Point from() {
      return link.from();
    }

    @Override
    public Point to() {
      return link.to();
    }

    @Override
    public String label() {
      return "the link " + between(from(), to());
    }

    @Override
    public Place place() {
      return link.place();
    }
  }

  /** A switch contact, closed in one position. */
  record OfContact(Switch.Contact contact) implements Conductor {
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

  private static String between(Point from, Point to) {
    return from.ref().equals(to.ref()) ? from + "/" + to.pin() : from + "/" + to;
  }
}

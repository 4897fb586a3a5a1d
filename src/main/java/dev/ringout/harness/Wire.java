package dev.ringout.harness;

import dev.ringout.source.Place;
import dev.ringout.units.Gauge;
import dev.ringout.units.Length;
import java.util.Map;
import java.util.Optional;

/**
 * One conductor between two points.
 *
 * @param name the wire's number, or its two points where the list gives none
 * @param group what is twisted or shielded together
 * @param notes the list's own columns, by their headings
 * @param place the row it stands in
 */
public record Wire(
    String name,
    Point from,
    Point to,
    Optional<Gauge> gauge,
    String type,
    String color,
    Optional<Length> length,
    String signal,
    String cable,
    String group,
    String fromContact,
    String toContact,
    String note,
    Map<String, String> notes,
    Place place) {

  /** The point at one end. */
  public Point at(End end) {
    return end == End.FROM ? from : to;
  }

  /** The same wire with its ends at other points. */
  public Wire between(Point otherFrom, Point otherTo) {
    return with(name, otherFrom, otherTo);
  }

  /** The same wire by another number. */
  public Wire named(String other) {
    return with(other, from, to);
  }

  private Wire with(String otherName, Point otherFrom, Point otherTo) {
    return new Wire(
        otherName,
        otherFrom,
        otherTo,
        gauge,
        type,
        color,
        length,
        signal,
        cable,
        group,
        fromContact,
        toContact,
        note,
        notes,
        place);
  }

  /** Its gauge as a mechanic writes it, or empty. */
  public String gaugeLabel() {
    return gauge.map(Gauge::label).orElse("");
  }

  /** The contact named for one end, or empty. */
  public String contactAt(End end) {
    return end == End.FROM ? fromContact : toContact;
  }

  /** One of the two ends of a wire, by the columns of the list. */
  public enum End {
    FROM,
    TO;

    /** The other end. */
    public End opposite() {
      return this == FROM ? TO : FROM;
    }
  }
}

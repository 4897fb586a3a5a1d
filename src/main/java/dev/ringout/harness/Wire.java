package dev.ringout.harness;

import dev.ringout.source.Place;
import dev.ringout.units.Gauge;
import dev.ringout.units.Length;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One conductor between two points.
 *
 * @param name the wire's number, or its two points where the list gives none
 * @param fromEnd how it ends by the list's first columns
 * @param toEnd how it ends by the list's second columns
 * @param make what the wire is
 * @param use what it is for, and what it runs in
 * @param note what the list remarks on it, or empty
 * @param notes the list's own columns, by their headings
 * @param place the row it stands in
 */
public record Wire(
    String name,
    Termination fromEnd,
    Termination toEnd,
    Make make,
    Use use,
    String note,
    Map<String, String> notes,
    Place place) {
  /** Headings of columns that say what a conductor is made of. */
  private static final Pattern OF_ITS_MAKING =
      Pattern.compile(
          "(?i)\\s*(type|conductor|((conductor|wire)\\s+)?(material|metal|stranding))\\s*");

  /**
   * How one end is made off.
   *
   * @param contact the contact named for it, or empty
   */
  public record Termination(Point point, String contact) {
    private Termination at(Point other) {
      return new Termination(other, contact);
    }
  }

  /**
   * What a wire is.
   *
   * @param gauge absent where the list gives none
   * @param type its specification, or empty
   * @param colour as the list writes it, or empty
   * @param length absent where the list gives none
   */
  public record Make(Optional<Gauge> gauge, String type, String colour, Optional<Length> length) {
    /** A wire of which the list says nothing. */
    public static final Make UNSAID = new Make(Optional.empty(), "", "", Optional.empty());

    /** The same of another gauge. */
    public Make ofGauge(Optional<Gauge> other) {
      return new Make(other, type, colour, length);
    }

    /** The same of another type. */
    public Make ofType(String other) {
      return new Make(gauge, other, colour, length);
    }

    /** The same in another colour. */
    public Make inColour(String other) {
      return new Make(gauge, type, other, length);
    }

    /** The same of another length. */
    public Make ofLength(Optional<Length> other) {
      return new Make(gauge, type, colour, other);
    }
  }

  /**
   * What a wire is for, and what it runs in.
   *
   * @param signal what it carries, or empty
   * @param cable the cable that it is a core of, or empty
   * @param group what is twisted or shielded together, or empty
   */
  public record Use(String signal, String cable, String group) {
    /** A wire of which the list says nothing. */
    public static final Use UNSAID = new Use("", "", "");

    /** The same for another signal. */
    public Use carrying(String other) {
      return new Use(other, cable, group);
    }

    /** The same in another cable. */
    public Use inCable(String other) {
      return new Use(signal, other, group);
    }

    /** The same in another group. */
    public Use inGroup(String other) {
      return new Use(signal, cable, other);
    }
  }

  /** A wire of which nothing is said but where it goes. */
  public static Wire of(String name, Point from, Point to, Place place) {
    return new Wire(
        name,
        new Termination(from, ""),
        new Termination(to, ""),
        Make.UNSAID,
        Use.UNSAID,
        "",
        Map.of(),
        place);
  }

  /** The point at the end that is listed first. */
  public Point from() {
    return fromEnd.point();
  }

  /** The point at the other end. */
  public Point to() {
    return toEnd.point();
  }

  /** The point at one end. */
  public Point at(End end) {
    return end(end).point();
  }

  /** How one end is made off. */
  public Termination end(End end) {
    return end == End.FROM ? fromEnd : toEnd;
  }

  /** Its gauge; absent where the list gives none. */
  public Optional<Gauge> gauge() {
    return make.gauge();
  }

  /** Its gauge as a mechanic writes it, or empty. */
  public String gaugeLabel() {
    return gauge().map(Gauge::label).orElse("");
  }

  /** Its specification, or empty. */
  public String type() {
    return make.type();
  }

  /** What the list says of what it is made of: its type, and columns of the list's own. */
  public String making() {
    return notes.isEmpty()
        ? type()
        : Stream.concat(
                Stream.of(type()),
                notes.entrySet().stream()
                    .filter(note -> OF_ITS_MAKING.matcher(note.getKey()).matches())
                    .map(Map.Entry::getValue))
            .collect(Collectors.joining(" "));
  }

  /** Its colour as the list writes it, or empty. */
  public String colour() {
    return make.colour();
  }

  /** Its length; absent where the list gives none. */
  public Optional<Length> length() {
    return make.length();
  }

  /** What it carries, or empty. */
  public String signal() {
    return use.signal();
  }

  /** The cable that it is a core of, or empty. */
  public String cable() {
    return use.cable();
  }

  /** What is twisted or shielded together, or empty. */
  public String group() {
    return use.group();
  }

  /** The contact named for the end that is listed first, or empty. */
  public String fromContact() {
    return fromEnd.contact();
  }

  /** The contact named for the other end, or empty. */
  public String toContact() {
    return toEnd.contact();
  }

  /** The contact named for one end, or empty. */
  public String contactAt(End end) {
    return end(end).contact();
  }

  /** The same wire with its ends at other points. */
  public Wire between(Point otherFrom, Point otherTo) {
    return with(name, fromEnd.at(otherFrom), toEnd.at(otherTo));
  }

  /** The same wire as a list gives it that names its ends the other way around. */
  public Wire turned() {
    return with(name, toEnd, fromEnd);
  }

  /** The same wire by another number. */
  public Wire named(String other) {
    return with(other, fromEnd, toEnd);
  }

  /** The same wire with another contact at one end. */
  public Wire withContact(End end, String contact) {
    Termination made = new Termination(at(end), contact);
    return end == End.FROM ? with(name, made, toEnd) : with(name, fromEnd, made);
  }

  /** Another wire in its place. */
  public Wire madeOf(Make other) {
    return new Wire(name, fromEnd, toEnd, other, use, note, notes, place);
  }

  /** The same wire for something else. */
  public Wire usedFor(Use other) {
    return new Wire(name, fromEnd, toEnd, make, other, note, notes, place);
  }

  /** The same wire with another remark. */
  public Wire noted(String other) {
    return new Wire(name, fromEnd, toEnd, make, use, other, notes, place);
  }

  /** The same wire with other columns of the list's own. */
  public Wire withNotes(Map<String, String> others) {
    return new Wire(name, fromEnd, toEnd, make, use, note, others, place);
  }

  /** The same wire as listed in another row. */
  public Wire listedAt(Place other) {
    return new Wire(name, fromEnd, toEnd, make, use, note, notes, other);
  }

  private Wire with(String otherName, Termination otherFrom, Termination otherTo) {
    return new Wire(otherName, otherFrom, otherTo, make, use, note, notes, place);
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

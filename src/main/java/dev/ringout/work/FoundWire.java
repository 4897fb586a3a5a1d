package dev.ringout.work;

import dev.ringout.circuit.Circuit;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.standards.LookAlikes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A wire found: where it belongs, who belongs on the point where it was found, and what most likely
 * happened.
 *
 * @param wire the wire that was found
 * @param here the point on which it was found, where that was said
 * @param belongs its two listed points
 * @param listedHere the wires that are listed on the point
 * @param slip what most likely happened
 * @param sameNet whether the unit is electrically the same with it there
 */
public record FoundWire(
    Wire wire,
    Optional<Point> here,
    List<Point> belongs,
    List<Wire> listedHere,
    Slip slip,
    Optional<Point> instead,
    boolean sameNet) {

  /** What most likely happened. */
  public enum Slip {
    /** Nothing: it is listed there. */
    NONE,
    /** One cavity over from where it belongs. */
    NEIGHBOUR,
    /** In a cavity whose name looks like the right one's. */
    LOOK_ALIKE,
    /** In another cavity of the right item. */
    SAME_ITEM,
    /** In the cavity of that name at another item: plugs or their labels exchanged. */
    OTHER_ITEM_SAME_PIN,
    /** At an item to which it does not go. */
    OTHER_ITEM,
    /** Nobody said where it was found. */
    NOT_SAID
  }

  /** What is to be said of a wire that is in somebody's hand. */
  public static FoundWire somewhere(Wire wire) {
    return new FoundWire(
        wire,
        Optional.empty(),
        List.of(wire.from(), wire.to()),
        List.of(),
        Slip.NOT_SAID,
        Optional.empty(),
        false);
  }

  /** What is to be said of a wire found on a point. */
  public static FoundWire of(Circuit circuit, Wire wire, Point here) {
    Harness harness = circuit.harness();
    List<Wire> listedHere =
        harness.wires().stream()
            .filter(one -> one.from().equals(here) || one.to().equals(here))
            .toList();
    List<Point> belongs = List.of(wire.from(), wire.to());
    Slip slip = Slip.OTHER_ITEM;
    Optional<Point> instead = Optional.empty();
    List<String> pins = new ArrayList<>();
    harness.points().stream()
        .filter(point -> point.ref().equals(here.ref()))
        .forEach(point -> pins.add(point.pin()));
    for (Point point : belongs) {
      Slip one = slip(point, here, pins);
      if (one.compareTo(slip) < 0) {
        slip = one;
        instead = Optional.of(point);
      }
    }
    int net = circuit.normal().of(circuit.index(here));
    boolean sameNet =
        belongs.stream().anyMatch(point -> circuit.normal().of(circuit.index(point)) == net);
    return new FoundWire(wire, Optional.of(here), belongs, listedHere, slip, instead, sameNet);
  }

  private static Slip slip(Point listed, Point here, List<String> pins) {
    if (listed.equals(here)) {
      return Slip.NONE;
    }
    if (!listed.ref().equals(here.ref())) {
      return listed.pin().equals(here.pin()) ? Slip.OTHER_ITEM_SAME_PIN : Slip.OTHER_ITEM;
    }
    if (Math.abs(pins.indexOf(listed.pin()) - pins.indexOf(here.pin())) == 1) {
      return Slip.NEIGHBOUR;
    }
    return LookAlikes.published().areAlike(listed.pin(), here.pin())
        ? Slip.LOOK_ALIKE
        : Slip.SAME_ITEM;
  }
}

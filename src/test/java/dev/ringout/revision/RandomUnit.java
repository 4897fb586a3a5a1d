package dev.ringout.revision;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Item;
import dev.ringout.harness.Link;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.source.Place;
import dev.ringout.support.PlainLimits;
import dev.ringout.units.Gauge;
import dev.ringout.units.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/** A made-up unit that can be edited as revisions are: wires between connectors and strips. */
final class RandomUnit {
  private static final String[] COLOURS = {"RED", "BLK", "WHT", "BLU", "GRN"};
  private static final int[] GAUGES = {16, 20, 22};

  final List<Wire> wires = new ArrayList<>();
  final List<Link> links = new ArrayList<>();
  final Map<String, Integer> pinsOf = new LinkedHashMap<>();

  /** Old name to new, of the items that were renamed. */
  final Map<String, String> renamed = new HashMap<>();

  private final Random random;
  private final boolean named;
  private int number;

  RandomUnit(Random random, int wires, boolean named) {
    this.random = random;
    this.named = named;
    int connectors = Math.max(2, wires / 12);
    for (int i = 1; i <= connectors; i++) {
      pinsOf.put("J" + i, 12 + random.nextInt(16));
    }
    for (int i = 1; i <= Math.max(1, wires / 30); i++) {
      pinsOf.put("TB" + i, 12);
      for (int pin = 1; pin < 12; pin++) {
        if (random.nextInt(4) == 0) {
          links.add(
              new Link(
                  new Point("TB" + i, "" + pin), new Point("TB" + i, "" + (pin + 1)), "", place()));
        }
      }
    }
    while (this.wires.size() < wires && addWire()) {}
  }

  private RandomUnit(RandomUnit other) {
    random = other.random;
    named = other.named;
    number = other.number;
    wires.addAll(other.wires);
    links.addAll(other.links);
    pinsOf.putAll(other.pinsOf);
  }

  RandomUnit copy() {
    return new RandomUnit(this);
  }

  private static Place place() {
    return Place.of("made up");
  }

  private static boolean isConnector(String ref) {
    return !ref.startsWith("TB");
  }

  /** The free cavities, and all terminals. */
  private List<Point> free() {
    Set<Point> used = new HashSet<>();
    wires.forEach(wire -> used.addAll(List.of(wire.from(), wire.to())));
    List<Point> free = new ArrayList<>();
    pinsOf.forEach(
        (ref, pins) -> {
          for (int pin = 1; pin <= pins; pin++) {
            Point point = new Point(ref, "" + pin);
            if (!isConnector(ref) || !used.contains(point)) {
              free.add(point);
            }
          }
        });
    return free;
  }

  private Optional<Point> oneOf(List<Point> points) {
    return points.isEmpty()
        ? Optional.empty()
        : Optional.of(points.get(random.nextInt(points.size())));
  }

  boolean addWire() {
    List<Point> free = free();
    Optional<Point> from = oneOf(free);
    for (int tries = 0; tries < 20 && from.isPresent(); tries++) {
      Optional<Point> to = oneOf(free);
      if (to.isPresent() && !to.get().ref().equals(from.get().ref())) {
        wires.add(wire(from.get(), to.get()));
        return true;
      }
    }
    return false;
  }

  private Wire wire(Point from, Point to) {
    number++;
    return Wire.of(named ? "W" + number : from + ">" + to, from, to, place())
        .madeOf(
            Wire.Make.UNSAID
                .ofGauge(Optional.of(new Gauge.Awg(GAUGES[random.nextInt(3)])))
                .ofType("T" + random.nextInt(2))
                .inColour(COLOURS[random.nextInt(5)])
                .ofLength(Optional.of(new Length(1 + random.nextInt(30) / 10.0))))
        .usedFor(
            Wire.Use.UNSAID.carrying(
                random.nextInt(3) == 0 ? "" : "SIG" + random.nextInt(1 + number / 2)));
  }

  private Wire with(Wire wire, String name, Point from, Point to, int gauge, String colour) {
    return wire.named(named ? name : from + ">" + to)
        .between(from, to)
        .madeOf(wire.make().ofGauge(Optional.of(new Gauge.Awg(gauge))).inColour(colour));
  }

  private static int gauge(Wire wire) {
    return ((Gauge.Awg) wire.gauge().orElseThrow()).number();
  }

  /** One change of a random class. */
  void edit() {
    int which = random.nextInt(wires.size());
    Wire wire = wires.get(which);
    switch (random.nextInt(11)) {
      case 0 -> wires.remove(which);
      case 1 -> addWire();
      case 2 -> oneOf(free()).ifPresent(to -> wires.set(which, moved(wire, wire.from(), to)));
      case 3 -> oneOf(free()).ifPresent(to -> wires.set(which, moved(wire, to, wire.to())));
      case 4 -> {
        int other = random.nextInt(wires.size());
        Wire two = wires.get(other);
        if (other != which) {
          wires.set(which, moved(wire, wire.from(), two.to()));
          wires.set(other, moved(two, two.from(), wire.to()));
        }
      }
      case 5 -> {
        number++;
        wires.set(
            which, with(wire, "W" + number, wire.from(), wire.to(), gauge(wire), wire.colour()));
      }
      case 6 ->
          wires.set(which, with(wire, wire.name(), wire.from(), wire.to(), 12, wire.colour()));
      case 7 ->
          wires.set(which, with(wire, wire.name(), wire.from(), wire.to(), gauge(wire), "ORN"));
      case 8 -> wires.set(which, worded(wire));
      case 9 -> {
        int pin = 1 + random.nextInt(11);
        links.add(
            new Link(new Point("TB1", "" + pin), new Point("TB1", "" + (pin + 1)), "", place()));
      }
      default -> {
        if (!links.isEmpty()) {
          links.remove(random.nextInt(links.size()));
        }
      }
    }
  }

  /** Another signal, cable, group, contact, length and note. */
  private Wire worded(Wire wire) {
    return wire.madeOf(wire.make().ofLength(Optional.of(new Length(0.5))))
        .usedFor(new Wire.Use("SIG " + random.nextInt(9), "C9", "PAIR 4"))
        .withContact(Wire.End.FROM, "20")
        .withContact(Wire.End.TO, "22D")
        .noted("changed");
  }

  private Wire moved(Wire wire, Point from, Point to) {
    boolean fits = !from.equals(to);
    return fits ? with(wire, wire.name(), from, to, gauge(wire), wire.colour()) : wire;
  }

  /** Rows in another order, every second with its ends exchanged. */
  void shuffleAndFlip() {
    Collections.shuffle(wires, random);
    for (int i = 0; i < wires.size(); i += 2) {
      wires.set(i, turned(wires.get(i)));
    }
  }

  private Wire turned(Wire wire) {
    return wire.turned().named(named ? wire.name() : wire.to() + ">" + wire.from());
  }

  /** Gives an item another name. */
  void rename(String old, String now) {
    renamed.put(old, now);
    pinsOf.put(now, pinsOf.remove(old));
    mapPoints(point -> point.ref().equals(old) ? new Point(now, point.pin()) : point);
  }

  /** Gives an item's pins letters in place of numbers. */
  void letter(String ref) {
    mapPoints(
        point ->
            point.ref().equals(ref)
                ? new Point(ref, letter(Integer.parseInt(point.pin())))
                : point);
  }

  static String letter(int pin) {
    return pin <= 26
        ? Character.toString((char) ('A' + pin - 1))
        : Character.toString((char) ('a' + pin - 27));
  }

  private void mapPoints(java.util.function.UnaryOperator<Point> map) {
    wires.replaceAll(
        wire ->
            with(
                wire,
                wire.name(),
                map.apply(wire.from()),
                map.apply(wire.to()),
                gauge(wire),
                wire.colour()));
    links.replaceAll(
        link -> new Link(map.apply(link.from()), map.apply(link.to()), link.note(), link.place()));
  }

  int wireEnds(String ref) {
    int ends = 0;
    for (Wire wire : wires) {
      ends += wire.from().ref().equals(ref) ? 1 : 0;
      ends += wire.to().ref().equals(ref) ? 1 : 0;
    }
    return ends;
  }

  Harness harness() {
    List<Item> items = new ArrayList<>();
    pinsOf
        .keySet()
        .forEach(
            ref ->
                items.add(
                    new Item(
                        ref,
                        isConnector(ref) ? "connector" : "terminal strip",
                        "",
                        "",
                        "",
                        "",
                        "",
                        place())));
    List<PinDetail> pins = List.of();
    return Harness.builder(PlainLimits.of())
        .wires(wires)
        .items(items)
        .pins(pins)
        .links(links)
        .build();
  }
}

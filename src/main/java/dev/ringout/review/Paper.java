package dev.ringout.review;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.DisjointPoints;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Item;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.standards.ColourCodes;
import dev.ringout.standards.ContactSizes;
import dev.ringout.standards.ContactSizes.ContactSize;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.CrimpTools;
import dev.ringout.standards.ItemKinds;
import dev.ringout.standards.Tables;
import dev.ringout.standards.Tables.Entry;
import dev.ringout.standards.WireOhms;
import dev.ringout.units.Gauge;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A harness file seen from every side that the checks need. */
final class Paper {
  private final Harness harness;
  private final Circuit circuit;
  private final DisjointPoints joined;
  private final Tables tables;
  private final CopperWire copper;
  private final WireOhms wireOhms;
  private final DisjointPoints wired;
  private final ContactSizes contactSizes;
  private final CrimpTools crimpTools;
  private final Map<Point, List<Wire>> wiresAt = new LinkedHashMap<>();
  private final Map<Point, PinDetail> pins = new HashMap<>();
  private final Map<String, Item> items = new HashMap<>();
  private final Map<String, Set<Point>> pointsOf = new LinkedHashMap<>();
  private final Map<String, Optional<ContactSize>> sizes = new HashMap<>();
  private final Map<String, Optional<Insert>> inserts = new HashMap<>();
  private final ItemKinds kinds;
  private final Map<String, List<Entry>> rows = new HashMap<>();
  private final Map<String, Wire> byName = new HashMap<>();

  Paper(Circuit circuit, Tables tables, CopperWire copper) {
    this.circuit = circuit;
    this.harness = circuit.harness();
    this.joined = joined(circuit, true);
    this.wired = joined(circuit, false);
    this.wireOhms = WireOhms.of(copper, tables);
    this.tables = tables;
    this.copper = copper;
    this.contactSizes = ContactSizes.of(tables, copper);
    this.kinds = ItemKinds.of(harness, tables);
    this.crimpTools = CrimpTools.of(tables);
    for (Wire wire : harness.wires()) {
      wiresAt.computeIfAbsent(wire.from(), point -> new ArrayList<>(2)).add(wire);
      wiresAt.computeIfAbsent(wire.to(), point -> new ArrayList<>(2)).add(wire);
      byName.putIfAbsent(wire.name(), wire);
    }
    harness.pins().forEach(pin -> pins.put(pin.point(), pin));
    harness.items().forEach(item -> items.put(key(item.ref()), item));
    for (int i = 0; i < circuit.size(); i++) {
      Point point = circuit.point(i);
      pointsOf.computeIfAbsent(point.ref(), ref -> new LinkedHashSet<>()).add(point);
    }
  }

  /**
   * Which points are joined in the normal state: all that most checks ask of the nets.
   *
   * @param throughContacts whether closed switch contacts join as well
   */
  private static DisjointPoints joined(Circuit circuit, boolean throughContacts) {
    DisjointPoints joined = new DisjointPoints(circuit.size());
    for (int conductor = 0; conductor < circuit.conductors().size(); conductor++) {
      if (circuit.isClosed(conductor, SwitchState.normal())
          && (throughContacts || circuit.conductors().get(conductor).asContact().isEmpty())) {
        joined.union(circuit.from(conductor), circuit.to(conductor));
      }
    }
    return joined;
  }

  private static String key(String ref) {
    return ref.toUpperCase(Locale.ROOT);
  }

  Harness harness() {
    return harness;
  }

  Circuit circuit() {
    return circuit;
  }

  CopperWire copper() {
    return copper;
  }

  ContactSizes contactSizes() {
    return contactSizes;
  }

  List<Entry> rows(String table) {
    return rows.computeIfAbsent(table, tables::rows);
  }

  CrimpTools crimpTools() {
    return crimpTools;
  }

  /** The colour codes of the tables. */
  ColourCodes colourCodes() {
    return ColourCodes.of(tables);
  }

  /** The net of a wire, by its place in the list of wires. */
  int netOf(int wire) {
    return joined.firstOf(circuit.at(wire, Wire.End.FROM));
  }

  /** The same where a switch contact, closed or not, ends a net. */
  int wiredNetOf(int wire) {
    return wired.firstOf(circuit.at(wire, Wire.End.FROM));
  }

  /** What wires may have by gauge and type. */
  WireOhms wireOhms() {
    return wireOhms;
  }

  /** Every point with the wires that end there. */
  Map<Point, List<Wire>> wiresAt() {
    return wiresAt;
  }

  List<Wire> wiresAt(Point point) {
    return wiresAt.getOrDefault(point, List.of());
  }

  Optional<PinDetail> pin(Point point) {
    return Optional.ofNullable(pins.get(point));
  }

  Optional<Item> item(String ref) {
    return Optional.ofNullable(items.get(key(ref)));
  }

  Optional<Wire> wire(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /** Every item with its points in natural order. */
  Map<String, Set<Point>> pointsOf() {
    return pointsOf;
  }

  /** What kind of item it is, in lower case: as listed, else by its class letters; or empty. */
  String kind(String ref) {
    return kinds.kind(ref);
  }

  boolean isConnector(String ref) {
    return kinds.isConnector(ref);
  }

  boolean isTerminal(String ref) {
    return kinds.isTerminal(ref);
  }

  /** An insert arrangement by the item's own columns; absent where it is not in the tables. */
  Optional<Insert> insert(String ref) {
    return inserts.computeIfAbsent(ref, one -> item(one).flatMap(i -> Insert.of(i, this)));
  }

  /** The contact named for a wire's end, else the cavity's contact, else its size. */
  Optional<ContactSize> contact(Wire wire, Wire.End end) {
    Optional<ContactSize> named = contactSize(wire.contactAt(end));
    return named.isPresent() ? named : cavity(wire.at(end));
  }

  /** A contact size by its name or part number; lists repeat both on every row. */
  Optional<ContactSize> contactSize(String sizeOrPart) {
    return sizeOrPart.isEmpty()
        ? Optional.empty()
        : sizes.computeIfAbsent(sizeOrPart, contactSizes::find);
  }

  /** The contact that a cavity is made for. */
  Optional<ContactSize> cavity(Point point) {
    PinDetail pin = pins.get(point);
    if (pin != null) {
      Optional<ContactSize> listed = contactSize(pin.contact());
      Optional<ContactSize> size = listed.isPresent() ? listed : contactSize(pin.size());
      if (size.isPresent()) {
        return size;
      }
    }
    return insert(point.ref()).flatMap(Insert::onlySize).flatMap(this::contactSize);
  }

  /** A lug's row, by its colour. */
  Optional<Entry> lugRow(Lug lug) {
    return rows("lugs").stream().filter(row -> row.get("colour").equals(lug.colour())).findFirst();
  }

  /** A row of a table for a gauge, by its name: {@code 20}, {@code 4/0}. */
  Optional<Entry> forGauge(String table, Gauge gauge) {
    return gauge
        .asAwg()
        .flatMap(
            awg ->
                rows(table).stream().filter(row -> row.get("awg").equals(awg.size())).findFirst());
  }

  /** A wire type's row for the wire's gauge. */
  Optional<Entry> wireType(Wire wire) {
    return wire.gauge().flatMap(gauge -> WireOhms.ofType(rows("wire-types"), wire.type(), gauge));
  }

  /** The wires on the way between two points of one net, in their order. */
  List<Wire> path(Point from, Point to) {
    List<Wire> wires = new ArrayList<>();
    for (int conductor : circuit.normal().path(circuit.index(from), circuit.index(to))) {
      circuit.conductors().get(conductor).asWire().ifPresent(wires::add);
    }
    return wires;
  }

  boolean joined(Point from, Point to) {
    return joined.firstOf(circuit.index(from)) == joined.firstOf(circuit.index(to));
  }
}

package dev.ringout.work;

import dev.ringout.harness.Harness;
import dev.ringout.harness.InsertOrder;
import dev.ringout.harness.Item;
import dev.ringout.harness.Limits;
import dev.ringout.harness.Link;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.standards.ContactSizes;
import dev.ringout.standards.ContactSizes.ContactSize;
import dev.ringout.standards.CopperWire;
import dev.ringout.standards.CrimpTools;
import dev.ringout.standards.CrimpTools.Setting;
import dev.ringout.standards.FacePositions;
import dev.ringout.standards.ItemKinds;
import dev.ringout.standards.Tables;
import dev.ringout.standards.Tables.Entry;
import dev.ringout.units.Gauge;
import dev.ringout.units.Length;
import dev.ringout.units.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Everything that the bench needs on paper to wire a unit. */
public final class WorkPapers {
  private final Harness harness;
  private final ContactSizes sizes;
  private final CrimpTools tools;
  private final ItemKinds kinds;
  private final Faces faces;
  private final SleeveText sleeve;
  private final List<Entry> lugs;
  private final Map<String, String> stripOf = new HashMap<>();
  private final Map<Point, PinDetail> pins = new HashMap<>();
  private final Map<Point, List<String>> jumpers = new HashMap<>();
  private final Map<Point, List<WireEnd>> endsAt = new HashMap<>();
  private final List<ItemSheet> sheets = new ArrayList<>();
  private final List<CutWire> cuts = new ArrayList<>();

  private WorkPapers(
      Harness harness, Tables tables, CopperWire copper, Set<String> only, SleeveText sleeve) {
    this.harness = harness;
    this.sizes = ContactSizes.of(tables, copper);
    this.tools = CrimpTools.of(tables);
    this.kinds = ItemKinds.of(harness, tables);
    this.faces = new Faces(pins, FacePositions.of(tables), sizes);
    this.sleeve = sleeve;
    this.lugs = tables.rows("lugs");
    tables
        .rows("strip-lengths")
        .forEach(
            row ->
                stripOf.putIfAbsent(
                    row.get("contact"),
                    row.get("strip_min_mm") + "–" + row.get("strip_max_mm") + " mm"));
    harness.pins().forEach(pin -> pins.put(pin.point(), pin));
    for (Link link : harness.links()) {
      jumpers.computeIfAbsent(link.from(), p -> new ArrayList<>()).add(link.to().toString());
      jumpers.computeIfAbsent(link.to(), p -> new ArrayList<>()).add(link.from().toString());
    }
    harness.wires().forEach(wire -> add(wire, only));
    addSheets(only);
  }

  private void add(Wire wire, Set<String> only) {
    for (Wire.End end : Wire.End.values()) {
      endsAt.computeIfAbsent(wire.at(end), p -> new ArrayList<>(1)).add(end(wire, end));
    }
    if (only.isEmpty() || only.contains(wire.from().ref()) || only.contains(wire.to().ref())) {
      cuts.add(cut(wire));
    }
  }

  /** The points stand in natural order: J2 before J10. */
  private void addSheets(Set<String> only) {
    Map<String, List<Point>> points = new LinkedHashMap<>();
    only.forEach(ref -> points.put(ref, new ArrayList<>()));
    for (Point point : harness.points()) {
      if (only.isEmpty() || only.contains(point.ref())) {
        points.computeIfAbsent(point.ref(), ref -> new ArrayList<>()).add(point);
      }
    }
    for (Map.Entry<String, List<Point>> item : points.entrySet()) {
      item.getValue().sort(Comparator.comparing(Point::pin, InsertOrder.INSTANCE));
      sheets.add(sheet(item.getKey(), item.getValue()));
    }
    if (only.isEmpty()) {
      sheets.sort(Comparator.comparingInt(this::turn).thenComparing(this::location));
    }
  }

  /**
   * When it is an item's turn: connectors while their wires are free, then splices, then the ends
   * that are cut to their length in place (common practice, no source).
   */
  private int turn(ItemSheet sheet) {
    List<Boolean> first =
        List.of(
            kinds.isConnector(sheet.ref()),
            kinds.isSplice(sheet.ref()),
            kinds.isTerminal(sheet.ref()),
            true);
    return first.indexOf(true);
  }

  /** What is at one place is done together. */
  private String location(ItemSheet sheet) {
    return sheet.item().map(Item::location).orElse("");
  }

  /**
   * The papers of a unit.
   *
   * @param only the items that are worked on, in this order; empty: all, connectors first
   */
  public static WorkPapers of(
      Harness harness, Tables tables, CopperWire copper, Set<String> only, SleeveText sleeve) {
    return new WorkPapers(harness, tables, copper, only, sleeve);
  }

  private WireEnd end(Wire wire, Wire.End end) {
    Point here = wire.at(end);
    Point there = wire.at(end.opposite());
    Optional<PinDetail> pin = Optional.ofNullable(pins.get(here));
    String contact = wire.contactAt(end);
    if (contact.isEmpty()) {
      contact = pin.map(one -> one.contact().isEmpty() ? one.size() : one.contact()).orElse("");
    }
    Optional<ContactSize> size = contact.isEmpty() ? Optional.empty() : sizes.find(contact);
    return new WireEnd(
        wire,
        here,
        there,
        contact,
        tool(contact, size, wire),
        stripOf.getOrDefault(size.map(ContactSize::size).orElse(contact), ""),
        sleeve.at(wire, here, there));
  }

  private Optional<Setting> tool(String contact, Optional<ContactSize> size, Wire wire) {
    return wire.gauge()
        .flatMap(Gauge::asAwg)
        .flatMap(awg -> size.flatMap(one -> tools.find(contact, one, awg.size())));
  }

  private CutWire cut(Wire wire) {
    Limits limits = harness.limits();
    OptionalDouble listed =
        wire.length().map(Length::metres).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    OptionalDouble cut =
        listed.isEmpty()
            ? listed
            : OptionalDouble.of(
                listed.getAsDouble()
                    + 2 * limits.retermination().metres()
                    + limits.serviceLoop().metres());
    return new CutWire(wire, listed, cut);
  }

  private ItemSheet sheet(String ref, List<Point> points) {
    Optional<Item> item = harness.items().stream().filter(one -> one.ref().equals(ref)).findFirst();
    List<ItemSheet.Cavity> cavities = new ArrayList<>();
    for (Point point : points) {
      List<WireEnd> ends = endsAt.getOrDefault(point, List.of());
      cavities.add(
          new ItemSheet.Cavity(
              point.pin(),
              ends,
              ends.isEmpty() ? plug(point) : "",
              jumpers.getOrDefault(point, List.of())));
    }
    Faces.Found found = faces.of(item, kinds.isConnector(ref), points);
    return new ItemSheet(
        ref, kinds.kind(ref), item, List.copyOf(cavities), found.face(), found.why());
  }

  private String plug(Point point) {
    PinDetail pin = pins.get(point);
    if (pin == null) {
      return "";
    }
    return sizes
        .find(pin.contact().isEmpty() ? pin.size() : pin.contact())
        .map(ContactSize::sealingPlug)
        .orElse("");
  }

  /** The unit. */
  public Harness harness() {
    return harness;
  }

  /** A sheet for each item. */
  public List<ItemSheet> sheets() {
    return List.copyOf(sheets);
  }

  /** The wires to cut, as they are listed. */
  public List<CutWire> cuts() {
    return List.copyOf(cuts);
  }

  /**
   * So much wire of one kind.
   *
   * @param wires how many wires
   * @param metres all of them together, with the allowances
   * @param withoutLength the wires that the list gives no length for: not in the metres
   */
  public record Total(
      String type,
      String gauge,
      String colour,
      int wires,
      double metres,
      List<String> withoutLength) {
    /** Type, gauge and colour as far as they are listed. */
    public String kind() {
      return Stream.of(type, gauge, colour)
          .filter(word -> !word.isEmpty())
          .collect(Collectors.joining(" "));
    }

    Total and(CutWire cut) {
      List<String> without = new ArrayList<>(withoutLength);
      if (cut.cutMetres().isEmpty()) {
        without.add(cut.wire().name());
      }
      return new Total(
          type, gauge, colour, wires + 1, metres + cut.cutMetres().orElse(0), List.copyOf(without));
    }
  }

  /** Wire by type, gauge and colour. */
  public List<Total> totals() {
    Map<List<String>, Total> totals = new TreeMap<>(Comparator.comparing(List::toString));
    for (CutWire cut : cuts) {
      Wire wire = cut.wire();
      String gauge = wire.gaugeLabel();
      totals.merge(
          List.of(wire.type(), gauge, wire.colour()),
          new Total(wire.type(), gauge, wire.colour(), 0, 0, List.of()).and(cut),
          (sum, one) -> sum.and(cut));
    }
    return List.copyOf(totals.values());
  }

  /** Contacts, lugs, splices, plugs and sleeves: what, and how many. */
  public Map<String, Integer> kit() {
    Map<String, Integer> kit = kitBesideSplices();
    kit.putAll(splices());
    return kit;
  }

  /** Splices: what, and how many. */
  public Map<String, Integer> splices() {
    Map<String, Integer> splices = new TreeMap<>();
    for (ItemSheet sheet : sheets) {
      if (kinds.isSplice(sheet.ref())) {
        splices.merge(splice(sheet), 1, Integer::sum);
      }
    }
    return splices;
  }

  /** Contacts, lugs, plugs and sleeves: what, and how many. */
  public Map<String, Integer> kitBesideSplices() {
    Map<String, Integer> kit = new TreeMap<>();
    for (ItemSheet sheet : sheets) {
      for (ItemSheet.Cavity cavity : sheet.cavities()) {
        for (WireEnd end : cavity.ends()) {
          if (!kinds.isSplice(sheet.ref())) {
            kit.merge(termination(end), 1, Integer::sum);
          }
          kit.merge("marker sleeve", 1, Integer::sum);
        }
        if (!cavity.plug().isEmpty()) {
          kit.merge("sealing plug " + cavity.plug(), 1, Integer::sum);
        }
      }
    }
    return kit;
  }

  /** A splice by what it joins, as a barrel is chosen by all the wires in it. */
  private static String splice(ItemSheet sheet) {
    List<String> gauges =
        sheet.cavities().stream()
            .flatMap(cavity -> cavity.ends().stream())
            .map(end -> end.wire().gauge().map(Gauge::label).orElse("no gauge listed"))
            .sorted()
            .toList();
    return "splice for " + (gauges.isEmpty() ? "no wire" : String.join(" + ", gauges));
  }

  private String termination(WireEnd end) {
    if (!end.contact().isEmpty()) {
      return (kinds.isTerminal(end.here().ref()) ? "lug " : "contact ") + end.contact();
    }
    if (!kinds.isTerminal(end.here().ref())) {
      return "end with no contact listed";
    }
    // The colour is for who stocks by it; a clamp that takes the bare wire needs no lug.
    String gauge = end.wire().gauge().map(Gauge::label).orElse("no gauge listed");
    return "end at a terminal, " + gauge + ", no lug listed" + lugColour(end.wire());
  }

  private String lugColour(Wire wire) {
    return wire.gauge()
        .flatMap(Gauge::asAwg)
        .flatMap(awg -> lugs.stream().filter(row -> isWithin(row, awg)).findFirst())
        .map(row -> ": a ring lug would be " + row.get("colour"))
        .orElse("");
  }

  private static boolean isWithin(Entry lug, Gauge.Awg awg) {
    return Integer.parseInt(lug.get("finest_awg")) >= awg.number()
        && awg.number() >= Integer.parseInt(lug.get("coarsest_awg"));
  }

  /** Metres as they are cut: to the millimetre. */
  public static String metres(double metres) {
    return Numbers.plain(Math.round(metres * 1000) / 1000.0);
  }
}

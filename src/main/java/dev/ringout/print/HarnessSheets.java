package dev.ringout.print;

import dev.ringout.harness.Item;
import dev.ringout.harness.Link;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Wire;
import dev.ringout.harness.Wiring;
import dev.ringout.sheet.OutSheet;
import dev.ringout.units.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** A unit's wiring as the sheets of a harness file. */
public final class HarnessSheets {
  private HarnessSheets() {}

  /**
   * The sheets that hold something, wires first.
   *
   * @param header names and values of the header sheet
   */
  public static List<OutSheet> of(Wiring wiring, Map<String, String> header) {
    List<OutSheet> sheets = new ArrayList<>();
    sheets.add(wires(wiring.wires()));
    if (!wiring.items().isEmpty()) {
      sheets.add(sheet("Items", itemColumns(), wiring.items()));
    }
    if (!wiring.pins().isEmpty()) {
      sheets.add(sheet("Pins", pinColumns(), wiring.pins()));
    }
    if (!wiring.links().isEmpty()) {
      sheets.add(sheet("Links", linkColumns(wiring.links()), wiring.links()));
    }
    if (!header.isEmpty()) {
      sheets.add(
          new OutSheet(
              "Header",
              List.of("Name", "Value"),
              header.entrySet().stream()
                  .map(entry -> List.of(entry.getKey(), entry.getValue()))
                  .toList()));
    }
    return sheets;
  }

  private static OutSheet wires(List<Wire> wires) {
    Map<String, Function<Wire, String>> columns = new LinkedHashMap<>();
    columns.put("Wire", Wire::name);
    columns.put("From", wire -> wire.from().ref());
    columns.put("From Pin", wire -> wire.from().pin());
    columns.put("To", wire -> wire.to().ref());
    columns.put("To Pin", wire -> wire.to().pin());
    Map<String, Function<Wire, String>> optional = new LinkedHashMap<>();
    optional.put("Gauge", wire -> wire.gaugeLabel());
    optional.put("Wire Type", Wire::type);
    optional.put("Color", Wire::colour);
    optional.put(
        "Length (m)", wire -> wire.length().map(one -> Numbers.plain(one.metres())).orElse(""));
    optional.put("Signal", Wire::signal);
    optional.put("Cable", Wire::cable);
    optional.put("Group", Wire::group);
    optional.put("From Contact", Wire::fromContact);
    optional.put("To Contact", Wire::toContact);
    optional.put("Note", Wire::note);
    optional.forEach(
        (heading, text) -> {
          if (wires.stream().anyMatch(wire -> !text.apply(wire).isEmpty())) {
            columns.put(heading, text);
          }
        });
    Set<String> noted = new LinkedHashSet<>();
    wires.forEach(wire -> noted.addAll(wire.notes().keySet()));
    noted.forEach(heading -> columns.put(heading, wire -> wire.notes().getOrDefault(heading, "")));
    return sheet("Wires", columns, wires);
  }

  private static Map<String, Function<Item, String>> itemColumns() {
    Map<String, Function<Item, String>> columns = new LinkedHashMap<>();
    columns.put("Ref", Item::ref);
    columns.put("Kind", Item::kind);
    columns.put("Part", Item::part);
    columns.put("Arrangement", Item::arrangement);
    columns.put("Location", Item::location);
    columns.put("Mates", Item::mates);
    columns.put("Note", Item::note);
    return columns;
  }

  private static Map<String, Function<PinDetail, String>> pinColumns() {
    Map<String, Function<PinDetail, String>> columns = new LinkedHashMap<>();
    columns.put("Ref", pin -> pin.point().ref());
    columns.put("Pin", pin -> pin.point().pin());
    columns.put("Size", PinDetail::size);
    columns.put("Contact", PinDetail::contact);
    columns.put("Note", PinDetail::note);
    return columns;
  }

  private static Map<String, Function<Link, String>> linkColumns(List<Link> links) {
    Map<String, Function<Link, String>> columns = new LinkedHashMap<>();
    columns.put("Ref", link -> link.from().ref());
    columns.put("Pin", link -> link.from().pin());
    // A point in one cell could be parted at another place than it was put together.
    if (!links.stream().allMatch(HarnessSheets::sameItem)) {
      columns.put("To", link -> sameItem(link) ? "" : link.to().ref());
    }
    columns.put("To Pin", link -> link.to().pin());
    columns.put("Note", Link::note);
    return columns;
  }

  private static boolean sameItem(Link link) {
    return link.from().ref().equals(link.to().ref());
  }

  private static <T> OutSheet sheet(
      String name, Map<String, Function<T, String>> columns, List<T> things) {
    List<List<String>> rows = new ArrayList<>(things.size());
    for (T thing : things) {
      List<String> cells = new ArrayList<>(columns.size());
      columns.values().forEach(text -> cells.add(text.apply(thing)));
      rows.add(cells);
    }
    return new OutSheet(name, List.copyOf(columns.keySet()), rows);
  }
}

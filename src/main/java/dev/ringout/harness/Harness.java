package dev.ringout.harness;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * The unit on paper.
 *
 * @param header the names and values of the header sheet, names as written
 */
public record Harness(
    Map<String, String> header,
    List<Wire> wires,
    List<Item> items,
    List<PinDetail> pins,
    List<Link> links,
    List<Switch> switches,
    List<Part> parts,
    List<Load> loads,
    List<Crimp> crimps,
    Limits limits,
    List<NetLimit> netLimits) {
  /** What is given can't be changed afterwards. */
  public Harness {
    header = Collections.unmodifiableMap(new LinkedHashMap<>(header));
  }

  /** A unit of which nothing is listed yet, to be filled in. */
  public static Builder builder(Limits limits) {
    return new Builder(limits);
  }

  /** This unit, to be changed in parts. */
  public Builder toBuilder() {
    Builder builder = new Builder(limits);
    builder.header = header;
    builder.wires = wires;
    builder.items = items;
    builder.pins = pins;
    builder.links = links;
    builder.switches = switches;
    builder.parts = parts;
    builder.loads = loads;
    builder.crimps = crimps;
    builder.netLimits = netLimits;
    return builder;
  }

  /** The same unit with other wires. */
  public Harness withWires(List<Wire> otherWires) {
    return toBuilder().wires(otherWires).build();
  }

  /** The same unit with other jumpers. */
  public Harness withLinks(List<Link> otherLinks) {
    return toBuilder().links(otherLinks).build();
  }

  /** Fills in a unit list by list, each by its name: what is not given is not listed. */
  public static final class Builder {
    private final Limits limits;
    private Map<String, String> header = Map.of();
    private List<Wire> wires = List.of();
    private List<Item> items = List.of();
    private List<PinDetail> pins = List.of();
    private List<Link> links = List.of();
    private List<Switch> switches = List.of();
    private List<Part> parts = List.of();
    private List<Load> loads = List.of();
    private List<Crimp> crimps = List.of();
    private List<NetLimit> netLimits = List.of();

    private Builder(Limits limits) {
      this.limits = limits;
    }

    /** The names and values of the header sheet, in its order. */
    public Builder header(Map<String, String> those) {
      header = those;
      return this;
    }

    /** The wires. */
    public Builder wires(List<Wire> those) {
      wires = List.copyOf(those);
      return this;
    }

    /** Connectors, strips and all else that has points. */
    public Builder items(List<Item> those) {
      items = List.copyOf(those);
      return this;
    }

    /** The rows of the items' own pin tables. */
    public Builder pins(List<PinDetail> those) {
      pins = List.copyOf(those);
      return this;
    }

    /** The joints without a wire. */
    public Builder links(List<Link> those) {
      links = List.copyOf(those);
      return this;
    }

    /** The switches and relays. */
    public Builder switches(List<Switch> those) {
      switches = List.copyOf(those);
      return this;
    }

    /** The parts between points. */
    public Builder parts(List<Part> those) {
      parts = List.copyOf(those);
      return this;
    }

    /** The currents that flow. */
    public Builder loads(List<Load> those) {
      loads = List.copyOf(those);
      return this;
    }

    /** The crimps as they were made. */
    public Builder crimps(List<Crimp> those) {
      crimps = List.copyOf(those);
      return this;
    }

    /** The limits that nets have of their own. */
    public Builder netLimits(List<NetLimit> those) {
      netLimits = List.copyOf(those);
      return this;
    }

    /** The unit. */
    public Harness build() {
      return new Harness(
          header, wires, items, pins, links, switches, parts, loads, crimps, limits, netLimits);
    }
  }

  /** The header's value of that name in any case, or empty. */
  public String headerValue(String name) {
    return header.entrySet().stream()
        .filter(entry -> key(entry.getKey()).equals(key(name)))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse("");
  }

  /** Case, blanks and punctuation make no other name. */
  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "");
  }

  /** Every point that the harness names, in natural order. */
  public List<Point> points() {
    List<Point> sorted = new ArrayList<>(pointsAsListed());
    sorted.sort(null);
    return sorted;
  }

  /** Every point that the harness names, in the order in which it first does: quicker. */
  public Set<Point> pointsAsListed() {
    Set<Point> points = new LinkedHashSet<>();
    for (Wire wire : wires) {
      points.add(wire.from());
      points.add(wire.to());
    }
    for (PinDetail pin : pins) {
      points.add(pin.point());
    }
    for (Link link : links) {
      points.add(link.from());
      points.add(link.to());
    }
    for (Switch one : switches) {
      for (Switch.Contact contact : one.contacts()) {
        points.add(contact.from());
        points.add(contact.to());
      }
    }
    for (Part part : parts) {
      points.add(part.from());
      points.add(part.to());
    }
    return points;
  }
}

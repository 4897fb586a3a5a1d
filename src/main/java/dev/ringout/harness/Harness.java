package dev.ringout.harness;

import java.util.ArrayList;
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

  /** The same unit with the currents that flow in it and the limits that nets have of their own. */
  public Harness with(List<Load> otherLoads, List<NetLimit> otherNetLimits) {
    return new Harness(
        header,
        wires,
        items,
        pins,
        links,
        switches,
        parts,
        otherLoads,
        crimps,
        limits,
        otherNetLimits);
  }

  /** The same unit with other wires. */
  public Harness withWires(List<Wire> otherWires) {
    return joined(otherWires, links);
  }

  /** The same unit with other jumpers. */
  public Harness withLinks(List<Link> otherLinks) {
    return joined(wires, otherLinks);
  }

  private Harness joined(List<Wire> otherWires, List<Link> otherLinks) {
    return new Harness(
        header,
        List.copyOf(otherWires),
        items,
        pins,
        List.copyOf(otherLinks),
        switches,
        parts,
        loads,
        crimps,
        limits,
        netLimits);
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

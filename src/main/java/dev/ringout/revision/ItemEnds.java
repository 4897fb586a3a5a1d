package dev.ringout.revision;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Item;
import dev.ringout.harness.NaturalOrder;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The items of one list: their kinds, their pins, and the wire ends on them. */
final class ItemEnds {
  private final Map<String, List<End>> endsOf = new LinkedHashMap<>();
  private final Map<String, String> kindOf = new HashMap<>();
  private final Map<String, Set<String>> pinsOf = new LinkedHashMap<>();

  /**
   * The end of a wire at an item.
   *
   * @param far the point at its other end
   * @param wire its number; empty where the list gives it none of its own
   */
  record End(String pin, Point far, String wire, String signal) {}

  ItemEnds(Harness harness) {
    for (Wire wire : harness.wires()) {
      String name = Renaming.isUnnamed(wire) ? "" : wire.name();
      for (Wire.End end : Wire.End.values()) {
        Point here = wire.at(end);
        endsOf
            .computeIfAbsent(here.ref(), ref -> new ArrayList<>())
            .add(new End(here.pin(), wire.at(end.opposite()), name, wire.signal()));
      }
    }
    for (Point point : harness.pointsAsListed()) {
      pinsOf.computeIfAbsent(point.ref(), ref -> new LinkedHashSet<>()).add(point.pin());
    }
    for (Item item : harness.items()) {
      kindOf.put(item.ref(), item.kind());
      pinsOf.computeIfAbsent(item.ref(), ref -> new LinkedHashSet<>());
    }
  }

  /** Every item, as listed. */
  Set<String> refs() {
    return pinsOf.keySet();
  }

  /** The wire ends on an item. */
  List<End> of(String ref) {
    return endsOf.getOrDefault(ref, List.of());
  }

  /** How many wire ends are on an item. */
  int count(String ref) {
    return of(ref).size();
  }

  /** Its kind; empty where the list does not say. */
  String kind(String ref) {
    return kindOf.getOrDefault(ref, "");
  }

  /** Its pins in their order, the shell apart. */
  List<String> pins(String ref) {
    return pinsOf.getOrDefault(ref, Set.of()).stream()
        .filter(pin -> !pin.equals(Point.SHELL))
        .sorted(NaturalOrder.INSTANCE)
        .toList();
  }

  /** Its pins that have a wire, as listed, the shell apart. */
  List<String> wiredPins(String ref) {
    return of(ref).stream()
        .map(End::pin)
        .filter(pin -> !pin.equals(Point.SHELL))
        .distinct()
        .toList();
  }
}

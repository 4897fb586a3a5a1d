package dev.ringout.record;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.Probing;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The wires that are listed straight between two points. */
final class WireBetween {
  private final Circuit circuit;
  private final Map<Set<Point>, List<String>> names = new HashMap<>();

  WireBetween(Circuit circuit) {
    this.circuit = circuit;
    for (Conductor conductor : circuit.conductors()) {
      conductor.asWire().filter(wire -> !wire.from().equals(wire.to())).ifPresent(this::add);
    }
  }

  private void add(Wire wire) {
    names
        .computeIfAbsent(Set.of(wire.from(), wire.to()), points -> new ArrayList<>(1))
        .add(wire.name());
  }

  /** Their names; empty where there is none, or where more than two points were touched. */
  String of(Probing probing) {
    if (!probing.isPair() || probing.from()[0] == probing.to()[0]) {
      return "";
    }
    Set<Point> ends = Set.of(circuit.point(probing.from()[0]), circuit.point(probing.to()[0]));
    return String.join(", ", names.getOrDefault(ends, List.of()));
  }
}

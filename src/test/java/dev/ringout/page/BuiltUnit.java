package dev.ringout.page;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;

/** A unit as somebody built it: which points wires really join, and by how many ohms. */
final class BuiltUnit {
  /** Every other net tied together. */
  private static final String REST = "REST";

  private final Map<String, Map<String, Double>> joined = new LinkedHashMap<>();
  private final Map<String, String> partners = new LinkedHashMap<>();

  private BuiltUnit(String... pairs) {
    for (int i = 0; i < pairs.length; i += 2) {
      partners.put(pairs[i], pairs[i + 1]);
      partners.put(pairs[i + 1], pairs[i]);
      wire(pairs[i], pairs[i + 1], 0.067);
    }
  }

  /** As {@link BenchWithPage#lamps} has it. */
  static BuiltUnit lamps() {
    return new BuiltUnit("J1-A", "P1-1", "J1-a", "P1-2", "J1-B", "P1-3", "J2-1", "P2-1");
  }

  /** As {@link BenchWithPage#motor} has it. */
  static BuiltUnit motor() {
    return new BuiltUnit("J1-1", "P1-1", "J1-2", "P1-2");
  }

  BuiltUnit wire(String from, String to, double ohms) {
    ends(from).put(to, ohms);
    ends(to).put(from, ohms);
    return this;
  }

  private Map<String, Double> ends(String point) {
    return joined.computeIfAbsent(point, name -> new LinkedHashMap<>());
  }

  BuiltUnit without(String from, String to) {
    ends(from).remove(to);
    ends(to).remove(from);
    return this;
  }

  /** What is between two points; nothing where they are apart. */
  OptionalDouble ohms(String from, String to) {
    if (to.equals(REST)) {
      return partners.keySet().stream()
          .filter(point -> !point.equals(from) && !point.equals(partners.get(from)))
          .map(point -> ohms(from, point))
          .filter(OptionalDouble::isPresent)
          .findFirst()
          .orElse(OptionalDouble.empty());
    }
    Map<String, Double> reached = new HashMap<>(Map.of(from, 0.0));
    Deque<String> left = new ArrayDeque<>(reached.keySet());
    while (!left.isEmpty()) {
      String point = left.remove();
      double soFar = reached.getOrDefault(point, 0.0);
      ends(point)
          .forEach(
              (next, ohms) -> {
                if (reached.putIfAbsent(next, soFar + ohms) == null) {
                  left.add(next);
                }
              });
    }
    return reached.containsKey(to)
        ? OptionalDouble.of(reached.getOrDefault(to, 0.0))
        : OptionalDouble.empty();
  }
}

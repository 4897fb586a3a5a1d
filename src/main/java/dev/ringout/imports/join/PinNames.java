package dev.ringout.imports.join;

import dev.ringout.harness.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The pins that a connector's own list gives, with all their names. */
final class PinNames {
  private final Map<String, Map<String, Set<String>>> pins = new LinkedHashMap<>();
  private final Map<String, Map<String, String>> byName = new HashMap<>();

  void add(String item, String pin, List<String> names) {
    String own = Point.pinName(pin);
    pins.computeIfAbsent(item, key -> new LinkedHashMap<>())
        .computeIfAbsent(own, key -> new LinkedHashSet<>())
        .addAll(names);
  }

  /** Call once all pins are known. */
  void index() {
    pins.forEach(
        (item, own) -> {
          Map<String, String> names = new HashMap<>();
          Set<String> ambiguous = new HashSet<>();
          own.forEach(
              (pin, others) -> {
                for (String name : others) {
                  put(names, ambiguous, name, pin);
                  put(names, ambiguous, withoutZeros(name), pin);
                }
                put(names, ambiguous, withoutZeros(pin), pin);
              });
          own.forEach(
              (pin, others) -> {
                Set<String> numbers = new LinkedHashSet<>(numbersIn(pin));
                others.forEach(name -> numbers.addAll(numbersIn(name)));
                for (String number : numbers) {
                  put(names, ambiguous, number, pin);
                }
              });
          ambiguous.forEach(names::remove);
          byName.put(item, names);
        });
  }

  private static void put(
      Map<String, String> names, Set<String> ambiguous, String name, String pin) {
    String before = names.putIfAbsent(name, pin);
    if (before != null && !before.equals(pin)) {
      ambiguous.add(name);
    }
  }

  /** {@code 16} of {@code D16}: people say the number of a lettered pin alone. */
  private static List<String> numbersIn(String name) {
    return name.matches("[A-Z]\\d{1,3}") ? List.of(Point.pinName(name.substring(1))) : List.of();
  }

  private static String withoutZeros(String name) {
    return name.matches("[A-Za-z]+0+\\d+") ? name.replaceFirst("(?<=[A-Za-z])0+(?=\\d)", "") : name;
  }

  boolean hasList(String item) {
    return pins.containsKey(item);
  }

  boolean lists(String item, String pin) {
    return pins.getOrDefault(item, Map.of()).containsKey(pin);
  }

  Set<String> of(String item) {
    return pins.getOrDefault(item, Map.of()).keySet();
  }

  /** The pin's first name where the item's own list has it by another. */
  Optional<String> resolve(String item, String pin) {
    return Optional.ofNullable(byName.getOrDefault(item, Map.of()).get(withoutZeros(pin)));
  }

  /** Pins that have more than one name, with the others. */
  Map<Point, List<String>> otherNames() {
    Map<Point, List<String>> others = new LinkedHashMap<>();
    pins.forEach(
        (item, own) ->
            own.forEach(
                (pin, names) -> {
                  if (!names.isEmpty()) {
                    others.put(new Point(item, pin), new ArrayList<>(names));
                  }
                }));
    return others;
  }
}

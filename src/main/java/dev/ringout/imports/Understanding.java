package dev.ringout.imports;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the tables of a list have told so far. */
final class Understanding {
  private final List<Draft> drafts = new ArrayList<>();
  private final Map<String, List<Draft>> halves = new LinkedHashMap<>();
  private final List<SparePin> spares = new ArrayList<>();
  private final Map<String, Map<String, List<String>>> namesOfPins = new LinkedHashMap<>();
  private final Map<String, String> otherNames = new LinkedHashMap<>();
  private final Map<String, List<End>> named = new LinkedHashMap<>();

  void add(Draft draft) {
    drafts.add(draft);
  }

  /** A wire's row at one of its ends; both ends are this one until the other is found. */
  void wireEnd(Draft half) {
    halves.computeIfAbsent(half.name(), key -> new ArrayList<>()).add(half);
  }

  Map<String, List<Draft>> halves() {
    return halves;
  }

  void add(SparePin spare) {
    spares.add(spare);
  }

  /** A pin of a connector that has its own list, with every name that the list gives it. */
  void ownPin(String item, String pin, List<String> names) {
    namesOfPins
        .computeIfAbsent(item, key -> new LinkedHashMap<>())
        .computeIfAbsent(pin, key -> new ArrayList<>())
        .addAll(names);
  }

  /** Another name for an item: the sheet's whole name for its designator. */
  void otherName(String name, String item) {
    otherNames.putIfAbsent(CellText.refKey(name), item);
  }

  /** A point on a net that the list names, where the user joins by names. */
  void onNet(String net, End end) {
    named.computeIfAbsent(net, key -> new ArrayList<>()).add(end);
  }

  List<Draft> drafts() {
    return drafts;
  }

  List<SparePin> spares() {
    return spares;
  }

  Map<String, Map<String, List<String>>> namesOfPins() {
    return namesOfPins;
  }

  Map<String, String> otherNames() {
    return otherNames;
  }

  Map<String, List<End>> named() {
    return named;
  }
}

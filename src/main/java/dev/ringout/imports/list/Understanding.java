package dev.ringout.imports.list;

import dev.ringout.cells.CellText;
import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** What the tables of a list have told so far. */
public final class Understanding {
  private final List<Draft> drafts = new ArrayList<>();
  private final Map<String, List<Draft>> halves = new LinkedHashMap<>();
  private final List<SparePin> spares = new ArrayList<>();
  private final Map<String, Map<String, List<String>>> namesOfPins = new LinkedHashMap<>();
  private final Map<String, String> otherNames = new LinkedHashMap<>();
  private final Map<String, List<End>> named = new LinkedHashMap<>();

  /** No table was read yet. */
  public Understanding() {
    // Nothing was read so far.
  }

  /** A wire. */
  public void add(Draft draft) {
    drafts.add(draft);
  }

  /** A wire's row at one of its ends; both ends are this one until the other is found. */
  public void wireEnd(Draft half) {
    halves.computeIfAbsent(half.name(), key -> new ArrayList<>()).add(half);
  }

  /** The ends of wires by their numbers. */
  public Map<String, List<Draft>> halves() {
    return halves;
  }

  /** A pin without a wire. */
  public void add(SparePin spare) {
    spares.add(spare);
  }

  /** A pin of a connector that has its own list, with every name that the list gives it. */
  public void ownPin(String item, String pin, List<String> names) {
    namesOfPins
        .computeIfAbsent(item, key -> new LinkedHashMap<>())
        .computeIfAbsent(pin, key -> new ArrayList<>())
        .addAll(names);
  }

  /** Another name for an item: the sheet's whole name for its designator. */
  public void otherName(String name, String item) {
    otherNames.putIfAbsent(CellText.refKey(name), item);
  }

  /** A point on a net that the list names, where the user joins by names. */
  public void onNet(String net, End end) {
    named.computeIfAbsent(net, key -> new ArrayList<>()).add(end);
  }

  /** All wires, in the order of their rows. */
  public List<Draft> drafts() {
    return drafts;
  }

  /** All pins without a wire. */
  public List<SparePin> spares() {
    return spares;
  }

  /** Of each connector that has its own list, its pins with all their names. */
  public Map<String, Map<String, List<String>>> namesOfPins() {
    return namesOfPins;
  }

  /** Items by their other names. */
  public Map<String, String> otherNames() {
    return otherNames;
  }

  /** The numbers of a sheet's rows that gave a wire or a pin. */
  public Set<Integer> rows(Place sheet) {
    Set<Integer> rows = new HashSet<>();
    Stream.of(
            drafts.stream().map(Draft::place),
            halves.values().stream().flatMap(List::stream).map(Draft::place),
            spares.stream().map(spare -> spare.end().place()))
        .flatMap(places -> places)
        .filter(place -> place.sheet().equals(sheet.sheet()) && place.file().equals(sheet.file()))
        .forEach(place -> rows.add(place.row()));
    return rows;
  }

  /** Points by the net that the list names. */
  public Map<String, List<End>> named() {
    return named;
  }
}

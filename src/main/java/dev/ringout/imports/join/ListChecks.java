package dev.ringout.imports.join;

import dev.ringout.cells.CellText;
import dev.ringout.harness.Point;
import dev.ringout.imports.list.Draft;
import dev.ringout.imports.list.End;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.ListFindings;
import dev.ringout.imports.list.Role;
import dev.ringout.imports.list.RowOddity;
import dev.ringout.imports.list.WiringOddity;
import dev.ringout.imports.list.WiringOddity.Run;
import dev.ringout.imports.list.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Contradictions inside a list: reported, never resolved. */
final class ListChecks {
  private final ListFindings findings;
  private final Words words;
  private final Map<String, Boolean> connectors = new HashMap<>();

  ListChecks(ListFindings findings, Words words) {
    this.findings = findings;
    this.words = words;
  }

  void check(List<Draft> wires) {
    Repeats<String> names = new Repeats<>(wires.size());
    Repeats<Point> contacts = new Repeats<>(2 * wires.size());
    List<Point> smallLetters = new ArrayList<>();
    for (Draft wire : wires) {
      if (!wire.name().isEmpty()) {
        // Cores of two cables may bear one number.
        Draft.Value cable = wire.texts().get(Role.CABLE);
        names.add(cable == null ? wire.name() : wire.name() + "\t" + cable.text(), wire);
      }
      for (int side = 0; side < 2; side++) {
        End end = side == 0 ? wire.from() : wire.to();
        if (isContact(end)) {
          Point contact = new Point(end.item(), end.pin());
          contacts.add(contact, wire);
          if (hasSmallLetter(end.pin())) {
            smallLetters.add(contact);
          }
        }
      }
    }
    pinsOfOthers(wires);
    namesTwice(names.repeated(), wires.size());
    contactsTwice(contacts.repeated());
    caseTwins(contacts, smallLetters);
  }

  /**
   * {@code PSU GND} as a pin of a board, in a list in which the PSU is an item: perhaps its own.
   */
  private void pinsOfOthers(List<Draft> wires) {
    List<End> ofWords =
        wires.stream()
            .flatMap(wire -> Stream.of(wire.from(), wire.to()))
            .filter(end -> end.pin().indexOf(' ') > 1)
            .toList();
    if (ofWords.isEmpty()) {
      return;
    }
    Set<String> items = new HashSet<>();
    for (Draft wire : wires) {
      items.add(wire.from().item().toLowerCase(Locale.ROOT));
      items.add(wire.to().item().toLowerCase(Locale.ROOT));
    }
    Set<String> said = new HashSet<>();
    for (End end : ofWords) {
      String first = end.pin().substring(0, end.pin().indexOf(' ')).toLowerCase(Locale.ROOT);
      if (items.contains(first) && !first.equalsIgnoreCase(end.item()) && said.add(end.pin())) {
        findings.warning(end.place(), new RowOddity.EndInDoubt(end.pin()));
      }
    }
  }

  /** Wires by something that mostly only one of them has. */
  private static final class Repeats<T> {
    private final Map<T, Draft> first;
    private final Map<T, List<Draft>> repeated = new LinkedHashMap<>();

    Repeats(int expected) {
      this.first = new HashMap<>(2 * expected);
    }

    void add(T key, Draft wire) {
      Draft before = first.putIfAbsent(key, wire);
      if (before != null) {
        repeated.computeIfAbsent(key, one -> new ArrayList<>(List.of(before))).add(wire);
      }
    }

    Map<T, Draft> first() {
      return first;
    }

    Map<T, List<Draft>> repeated() {
      return repeated;
    }
  }

  /**
   * A contact of a connector takes one wire; terminals, studs and splices take several. "Any" may
   * be another terminal each time.
   */
  boolean isContact(End end) {
    return !end.pin().equals(Point.SHELL)
        && (connectors.computeIfAbsent(end.item(), ListChecks::isConnector)
            || words.is("vague pin", end.pin()));
  }

  /** By its designator: jacks, plugs and connectors of either kind (ASME Y14.44, from memory). */
  private static boolean isConnector(String item) {
    int at = 0;
    while (at < item.length() && CellText.isDigit(item.charAt(at))) {
      at++;
    }
    boolean lettered = at < item.length() && "JPX".indexOf(item.charAt(at)) >= 0;
    return lettered && Ends.isDesignator(item);
  }

  private void namesTwice(Map<String, List<Draft>> byName, int wires) {
    List<List<Draft>> twice = List.copyOf(byName.values());
    int rows = twice.stream().mapToInt(List::size).sum();
    if (rows * 3 > wires && twice.size() > 3) {
      Draft first = twice.get(0).get(1);
      findings.warning(first.place(), new WiringOddity.NumbersOfCircuits(rows, wires));
      return;
    }
    for (List<Draft> same : twice) {
      if (same.get(0).place().row() == same.get(1).place().row()) {
        continue;
      }
      findings.warning(
          same.get(1).place(),
          new WiringOddity.NumberUsedAgain(
              same.get(0).name(),
              same.size(),
              same.stream()
                  .map(wire -> new Run(wire.from().toString(), wire.to().toString()))
                  .limit(4)
                  .toList()));
    }
  }

  private void contactsTwice(Map<Point, List<Draft>> byPoint) {
    for (Map.Entry<Point, List<Draft>> entry : byPoint.entrySet()) {
      List<Draft> wires = entry.getValue();
      boolean listed = wires.stream().allMatch(wire -> wire.layout() == Layout.FROM_TO);
      boolean severalRows = wires.stream().map(wire -> wire.place().row()).distinct().count() > 1;
      if (listed && severalRows) {
        findings.warning(
            wires.get(1).place(),
            new WiringOddity.WiresOfContact(
                entry.getKey().toString(),
                wires.size(),
                wires.stream().map(wire -> wire.place().row()).distinct().limit(4).toList()));
      }
    }
  }

  private static boolean hasSmallLetter(String pin) {
    for (int i = 0; i < pin.length(); i++) {
      if (Character.isLowerCase(pin.charAt(i))) {
        return true;
      }
    }
    return false;
  }

  /** A twice used pin beside an unused one of the other case: one may have lost its case. */
  private void caseTwins(Repeats<Point> contacts, List<Point> smallLetters) {
    Map<String, TreeSet<Point>> byFolded = new LinkedHashMap<>();
    for (Point point : smallLetters) {
      Point upper = new Point(point.ref(), point.pin().toUpperCase(Locale.ROOT));
      if (contacts.first().containsKey(upper)) {
        byFolded.computeIfAbsent(upper.toString(), key -> new TreeSet<>(List.of(upper))).add(point);
      }
    }
    for (TreeSet<Point> twins : byFolded.values()) {
      if (twins.size() > 1) {
        findings.note(
            Objects.requireNonNull(contacts.first().get(twins.first())).place(),
            new WiringOddity.ContactsOfTwoCases(twins.stream().map(Point::toString).toList()));
      }
    }
  }
}

package dev.ringout.imports;

import dev.ringout.imports.Finding.Kind;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Contradictions inside a list: reported, never resolved. */
final class ListChecks {
  private static final int SAID_ONE_BY_ONE = 20;

  private final Findings findings;

  ListChecks(Findings findings) {
    this.findings = findings;
  }

  void check(List<Draft> wires) {
    Map<String, List<Draft>> byName = new LinkedHashMap<>();
    Map<String, List<Draft>> byPoint = new LinkedHashMap<>();
    for (Draft wire : wires) {
      if (!wire.name().isEmpty()) {
        byName.computeIfAbsent(wire.name(), key -> new ArrayList<>(1)).add(wire);
      }
      for (End end : List.of(wire.from(), wire.to())) {
        if (isContact(end)) {
          byPoint.computeIfAbsent(end.toString(), key -> new ArrayList<>(1)).add(wire);
        }
      }
    }
    namesTwice(byName, wires.size());
    contactsTwice(byPoint);
    caseTwins(byPoint);
  }

  /** A contact of a connector takes one wire; terminals, studs and splices take several. */
  private static boolean isContact(End end) {
    String item = end.item();
    int at = 0;
    while (at < item.length() && CellText.isDigit(item.charAt(at))) {
      at++;
    }
    boolean lettered = at < item.length() && "JPX".indexOf(item.charAt(at)) >= 0;
    return lettered && Ends.isDesignator(item) && !end.pin().equals("SHELL");
  }

  private void namesTwice(Map<String, List<Draft>> byName, int wires) {
    List<List<Draft>> twice = byName.values().stream().filter(same -> same.size() > 1).toList();
    int rows = twice.stream().mapToInt(List::size).sum();
    if (rows * 3 > wires && twice.size() > 3) {
      Draft first = twice.get(0).get(1);
      findings.warning(
          Kind.WIRE_TWICE,
          first.place(),
          Text.of(
              "%d of %d wires share their number with another: are these numbers of circuits or nets rather than of wires?",
              rows, wires));
      return;
    }
    for (List<Draft> same : twice) {
      if (same.get(0).place().row() == same.get(1).place().row()) {
        continue;
      }
      findings.warning(
          Kind.WIRE_TWICE,
          same.get(1).place(),
          Text.of(
              "the wire number %s is used %d times: %s",
              same.get(0).name(),
              same.size(),
              same.stream()
                  .map(wire -> wire.from() + " to " + wire.to())
                  .limit(4)
                  .collect(Collectors.joining(", "))));
    }
  }

  private void contactsTwice(Map<String, List<Draft>> byPoint) {
    int said = 0;
    for (Map.Entry<String, List<Draft>> entry : byPoint.entrySet()) {
      List<Draft> wires = entry.getValue();
      boolean listed = wires.stream().allMatch(wire -> wire.layout() == Layout.FROM_TO);
      if (wires.size() > 1 && listed && said++ < SAID_ONE_BY_ONE) {
        findings.warning(
            Kind.PIN_TWICE,
            wires.get(1).place(),
            Text.of(
                "%s has %d wires (%s): one contact takes one wire, unless both are crimped in it",
                entry.getKey(),
                wires.size(),
                wires.stream()
                    .map(wire -> "row " + wire.place().row())
                    .distinct()
                    .limit(4)
                    .collect(Collectors.joining(", "))));
      }
    }
  }

  /** A twice used pin beside an unused one of the other case: one may have lost its case. */
  private void caseTwins(Map<String, List<Draft>> byPoint) {
    Map<String, TreeSet<String>> byFolded = new LinkedHashMap<>();
    byPoint
        .keySet()
        .forEach(
            point ->
                byFolded
                    .computeIfAbsent(point.toUpperCase(Locale.ROOT), key -> new TreeSet<>())
                    .add(point));
    int said = 0;
    for (TreeSet<String> twins : byFolded.values()) {
      if (twins.size() > 1 && said++ < SAID_ONE_BY_ONE) {
        findings.note(
            Kind.CASE_TWIN,
            byPoint.getOrDefault(twins.first(), List.of()).get(0).place(),
            String.join(" and ", twins) + " are two contacts, by case alone");
      }
    }
  }
}

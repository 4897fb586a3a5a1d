package dev.ringout.review;

import dev.ringout.harness.Wire;
import dev.ringout.source.Severity;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A twisted pair or shielded group split over pins far apart. */
final class SplitPair implements Check {
  @Override
  public String rule() {
    return "split-pair";
  }

  @Override
  public String about() {
    return "the wires of a pair end side by side";
  }

  @Override
  public void run(Paper paper, Findings findings) {
    for (Map.Entry<String, List<Wire>> pair : groups(paper).entrySet()) {
      if (pair.getValue().size() < 2) {
        continue;
      }
      findings.looked();
      List<Wire> wires = pair.getValue();
      Set<String> ends = new HashSet<>();
      for (Wire wire : wires) {
        ends.add(
            Stream.of(wire.from().ref(), wire.to().ref())
                .sorted()
                .collect(Collectors.joining(" and ")));
      }
      if (ends.size() > 1) {
        findings.say(
            Severity.WARNING,
            wires.get(0),
            Text.of(
                "%s is one group but runs between %s",
                wires.get(0).group(), ends.stream().sorted().collect(Collectors.joining("; "))),
            COMMON);
        continue;
      }
      apart(paper, wires, findings);
    }
    findings.notRun(Lack.GROUPS);
  }

  private static Map<String, List<Wire>> groups(Paper paper) {
    Map<String, List<Wire>> groups = new TreeMap<>();
    for (Wire wire : paper.harness().wires()) {
      if (!wire.group().isEmpty()) {
        groups
            .computeIfAbsent(wire.cable() + "\t" + wire.group(), key -> new ArrayList<>())
            .add(wire);
      }
    }
    return groups;
  }

  /** Pins further apart than the group has wires, in the item's own order of contacts. */
  private static void apart(Paper paper, List<Wire> wires, Findings findings) {
    for (Wire.End end : Wire.End.values()) {
      String ref = wires.get(0).at(end).ref();
      List<String> order = new ArrayList<>();
      paper.insert(ref).ifPresent(insert -> order.addAll(insert.labels()));
      if (order.isEmpty()) {
        paper.pointsOf().getOrDefault(ref, Set.of()).forEach(point -> order.add(point.pin()));
      }
      List<Integer> places =
          wires.stream()
              .map(wire -> order.indexOf(wire.at(end).pin()))
              .filter(place -> place >= 0)
              .sorted()
              .toList();
      boolean sameItem = wires.stream().allMatch(wire -> wire.at(end).ref().equals(ref));
      if (sameItem
          && paper.isConnector(ref)
          && places.size() > 1
          && places.get(places.size() - 1) - places.get(0) > places.size() + 1) {
        findings.say(
            Severity.WARNING,
            wires.get(0).at(end),
            Text.of(
                "the wires of %s end far apart at %s: %s",
                wires.get(0).group(),
                ref,
                wires.stream().map(wire -> wire.at(end).pin()).collect(Collectors.joining(", "))),
            COMMON);
      }
    }
  }
}

package dev.ringout.diagnose;

import dev.ringout.circuit.AlteredPart;
import dev.ringout.circuit.AlteredPart.How;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.DisjointPoints;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Predictor;
import dev.ringout.circuit.Probing;
import dev.ringout.circuit.Resistances;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.DiodePairs;
import dev.ringout.compare.Judged;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.units.Numbers;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What could be wrong without any reading of this kind showing it. */
final class BlindSpots {
  private static final int MOST_NAMED = 6;

  private final Circuit circuit;
  private final List<String> found = new ArrayList<>();

  private BlindSpots(Circuit circuit) {
    this.circuit = circuit;
  }

  static List<String> of(Circuit circuit, Resistances resistances, Comparison comparison) {
    BlindSpots spots = new BlindSpots(circuit);
    spots.wiresOfOneNet();
    spots.equalWindings();
    spots.diodes(DiodePairs.shown(circuit, comparison.inForce()));
    spots.partsWithoutValue();
    spots.partsBesideOthers(new Predictor(circuit, resistances));
    spots.splitPairs();
    spots.cancelling(comparison);
    return List.copyOf(spots.found);
  }

  /** Wires from one item to points that are one without them: crossed, every reading passes. */
  private void wiresOfOneNet() {
    DisjointPoints linked = new DisjointPoints(circuit.size());
    for (int c = 0; c < circuit.conductors().size(); c++) {
      if (circuit.conductors().get(c) instanceof Conductor.OfLink) {
        linked.union(circuit.from(c), circuit.to(c));
      }
    }
    Map<String, Set<Integer>> alike = new LinkedHashMap<>();
    for (int c = 0; c < circuit.conductors().size(); c++) {
      if (circuit.isWire(c)) {
        add(alike, c, circuit.from(c), linked.firstOf(circuit.to(c)));
        add(alike, c, circuit.to(c), linked.firstOf(circuit.from(c)));
      }
    }
    Set<Set<Integer>> said = new LinkedHashSet<>();
    for (Set<Integer> wires : alike.values()) {
      if (wires.size() > 1 && said.add(wires)) {
        found.add(
            Text.of(
                "%s join the same net%s: had they been crossed, no reading here would show it",
                names(wires), wires.size() > 2 ? " (any two of them)" : ""));
      }
    }
  }

  private void add(Map<String, Set<Integer>> alike, int wire, int near, int far) {
    if (circuit.point(near).pin().equals(Point.SHELL)) {
      // Nobody puts a shell's strap into a cavity.
      return;
    }
    alike.computeIfAbsent(circuit.point(near).ref() + " " + far, key -> new TreeSet<>()).add(wire);
  }

  private String names(Set<Integer> wires) {
    List<String> names =
        wires.stream().map(wire -> circuit.conductors().get(wire).label()).toList();
    if (names.size() > MOST_NAMED) {
      return String.join(", ", names.subList(0, MOST_NAMED))
          + Text.of(" and %s more", names.size() - MOST_NAMED);
    }
    return String.join(", ", names.subList(0, names.size() - 1))
        + " and "
        + names.get(names.size() - 1);
  }

  /**
   * Breaks between two wires at which nothing was read: crossed on the way in and crossed back on
   * the way out, every reading from end to end passes.
   */
  private void cancelling(Comparison comparison) {
    boolean[] touched = new boolean[circuit.size()];
    for (Judged judged : comparison.inForce()) {
      if (judged.reading().measured().made()) {
        judged.probing().points().forEach(point -> touched[point] = true);
      }
    }
    int[] wiresAt = new int[circuit.size()];
    for (int c = 0; c < circuit.conductors().size(); c++) {
      if (circuit.isWire(c)) {
        wiresAt[circuit.from(c)]++;
        wiresAt[circuit.to(c)]++;
      }
    }
    Map<String, List<String>> unread = new TreeMap<>();
    for (int point = 0; point < circuit.size(); point++) {
      if (wiresAt[point] > 1 && !touched[point]) {
        unread
            .computeIfAbsent(circuit.point(point).ref(), ref -> new ArrayList<>())
            .add(circuit.point(point).pin());
      }
    }
    unread.forEach(
        (ref, pins) -> {
          if (pins.size() > 1) {
            found.add(
                Text.of(
                    "nothing was read at %s (%s): two errors there that cancel each other would not"
                        + " show; read at every break",
                    ref, Text.first(pins, MOST_NAMED)));
          }
        });
  }

  /** Ohms can't tell equal windings apart: a motor may run backwards. */
  private void equalWindings() {
    Map<String, List<Part>> alike = new LinkedHashMap<>();
    for (Part part : circuit.harness().parts()) {
      if (part.kind() == Part.Kind.WINDING && part.ohms().isPresent()) {
        alike
            .computeIfAbsent(
                part.ref() + " " + Numbers.plain(part.ohms().getAsDouble()),
                key -> new ArrayList<>())
            .add(part);
      }
    }
    for (List<Part> windings : alike.values()) {
      if (windings.size() > 1) {
        found.add(
            Text.of(
                "the windings of %s read alike (%s): with their leads exchanged no reading here would show it; check the direction from each control position",
                windings.get(0).ref(),
                windings.stream()
                    .map(part -> part.from().pin() + "/" + part.to().pin())
                    .collect(Collectors.joining(", "))));
      }
    }
  }

  /** A diode is seen by two readings with nothing in parallel. */
  private void diodes(Set<Integer> shown) {
    List<String> unseen = new ArrayList<>();
    for (int i = 0; i < circuit.harness().parts().size(); i++) {
      if (circuit.part(i).kind() == Part.Kind.DIODE && !shown.contains(i)) {
        unseen.add(circuit.part(i).ref());
      }
    }
    if (!unseen.isEmpty()) {
      found.add(
          Text.of(
              "no pair of readings, one each way and with nothing in parallel, shows %s: reversed or missing, no reading here would show it; lift one lead and read both ways",
              some(unseen, "the diode ", "the diodes ")));
    }
  }

  /** What has no ohms to compare with: present or missing, most readings look alike. */
  private void partsWithoutValue() {
    List<String> unknown = new ArrayList<>();
    for (Part part : circuit.harness().parts()) {
      if (part.kind() != Part.Kind.DIODE && part.ohms().isEmpty()) {
        unknown.add(part.label());
      }
    }
    if (!unknown.isEmpty()) {
      found.add(
          Text.of(
              "no ohms are listed for %s: missing or wrong, no reading here would show it",
              some(unknown, "the ", "the ")));
    }
  }

  /** Parts without which, for what is beside them, the very same might be read. */
  private void partsBesideOthers(Predictor predictor) {
    Nets normal = circuit.normal();
    List<String> hidden = new ArrayList<>();
    for (int i = 0; i < circuit.harness().parts().size(); i++) {
      Part part = circuit.part(i);
      int from = circuit.fromOfPart(i);
      int to = circuit.toOfPart(i);
      boolean alone = normal.partsAt(normal.of(from)).length == 1;
      if (part.ohms().isEmpty() || alone || normal.of(from) == normal.of(to)) {
        continue;
      }
      Probing probing = Probing.pair(from, to, SwitchState.normal());
      Expected missing =
          predictor.expect(
              probing, normal, normal, Map.of(i, new AlteredPart(How.MISSING, from, to)));
      if (predictor.asListed(probing) instanceof ThroughParts listed
          && missing instanceof ThroughParts without
          && listed.lowOhms() <= without.highOhms()
          && without.lowOhms() <= listed.highOhms()) {
        hidden.add(part.label());
      }
    }
    if (!hidden.isEmpty()) {
      found.add(
          Text.of(
              "%s may be missing with the same read, for what is beside %s: read %s with one lead lifted",
              some(hidden, "the ", "the "),
              hidden.size() == 1 ? "it" : "them",
              hidden.size() == 1 ? "it" : "each"));
    }
  }

  private static String some(List<String> names, String one, String several) {
    return (names.size() == 1 ? one : several) + Text.first(names, MOST_NAMED);
  }

  private void splitPairs() {
    Set<String> groups = new TreeSet<>();
    for (Wire wire : circuit.harness().wires()) {
      if (!wire.group().isEmpty()) {
        groups.add(wire.group());
      }
    }
    if (!groups.isEmpty()) {
      found.add(
          Text.of(
              "continuity does not see which wires are twisted together (%s): look at the pairs",
              groups.size() > MOST_NAMED
                  ? Numbers.count(groups.size(), "group")
                  : String.join(", ", groups)));
    }
  }
}

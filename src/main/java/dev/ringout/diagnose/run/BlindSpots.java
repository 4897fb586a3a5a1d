package dev.ringout.diagnose.run;

import dev.ringout.circuit.AlteredPart;
import dev.ringout.circuit.AlteredPart.How;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.DisjointPoints;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Predictor;
import dev.ringout.circuit.Probing;
import dev.ringout.circuit.Resistances;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.DiodePairs;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.BlindSpot;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import dev.ringout.units.Numbers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** What could be wrong without any reading of this kind showing it. */
final class BlindSpots {
  private final Circuit circuit;
  private final List<BlindSpot> found = new ArrayList<>();

  private BlindSpots(Circuit circuit) {
    this.circuit = circuit;
  }

  static List<BlindSpot> of(Circuit circuit, Resistances resistances, Comparison comparison) {
    BlindSpots spots = new BlindSpots(circuit);
    spots.wiresOfOneNet();
    spots.equalWindings();
    spots.diodes(DiodePairs.shown(circuit, comparison.inForce()));
    spots.partsWithoutValue();
    spots.partsBesideOthers(new Predictor(circuit, resistances));
    spots.splitPairs();
    spots.acrossContacts();
    spots.cancelling(comparison);
    return List.copyOf(spots.found);
  }

  /** Wires from one item to points that are one without them: crossed, every reading passes. */
  private void wiresOfOneNet() {
    DisjointPoints linked = new DisjointPoints(circuit.size());
    for (int c = 0; c < circuit.conductors().size(); c++) {
      if (circuit.conductors().get(c).asLink().isPresent()) {
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
            new BlindSpot.SameNet(
                wires.stream().<Conductor>map(circuit.conductors()::get).toList()));
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
            found.add(new BlindSpot.BreaksNotRead(ref, List.copyOf(pins)));
          }
        });
  }

  private void acrossContacts() {
    if (!circuit.harness().limits().demands().insulationTest()) {
      return;
    }
    List<String> switches =
        circuit.harness().switches().stream()
            .filter(one -> one.states().size() > 1)
            .filter(
                one -> Arrays.stream(circuit.contactsOf(one)).anyMatch(circuit.normal()::isClosed))
            .map(Switch::ref)
            .toList();
    if (!switches.isEmpty()) {
      found.add(new BlindSpot.AcrossContacts(switches));
    }
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
        found.add(new BlindSpot.EqualWindings(List.copyOf(windings)));
      }
    }
  }

  /** A diode is seen by two readings with nothing in parallel. */
  private void diodes(Set<Integer> shown) {
    List<Part> unseen = new ArrayList<>();
    for (int i = 0; i < circuit.harness().parts().size(); i++) {
      if (circuit.part(i).kind() == Part.Kind.DIODE && !shown.contains(i)) {
        unseen.add(circuit.part(i));
      }
    }
    if (!unseen.isEmpty()) {
      found.add(new BlindSpot.DiodesNotShown(List.copyOf(unseen)));
    }
  }

  /** What has no ohms to compare with: present or missing, most readings look alike. */
  private void partsWithoutValue() {
    List<Part> unknown = new ArrayList<>();
    for (Part part : circuit.harness().parts()) {
      if (part.kind() != Part.Kind.DIODE && part.ohms().isEmpty()) {
        unknown.add(part);
      }
    }
    if (!unknown.isEmpty()) {
      found.add(new BlindSpot.PartsWithoutOhms(List.copyOf(unknown)));
    }
  }

  /** Parts without which, for what is beside them, the very same might be read. */
  private void partsBesideOthers(Predictor predictor) {
    Nets normal = circuit.normal();
    List<Part> hidden = new ArrayList<>();
    for (int i = 0; i < circuit.harness().parts().size(); i++) {
      Part part = circuit.part(i);
      int from = circuit.fromOfPart(i);
      int to = circuit.toOfPart(i);
      boolean alone = normal.partsAt(normal.of(from)).length == 1;
      if (part.ohms().isEmpty() || alone || normal.of(from) == normal.of(to)) {
        continue;
      }
      Probing probing = Probing.pair(from, to, SwitchState.normal());
      Optional<ThroughParts> listed = predictor.asListed(probing).throughParts();
      Optional<ThroughParts> missing =
          predictor
              .expect(probing, normal, normal, Map.of(i, new AlteredPart(How.MISSING, from, to)))
              .throughParts();
      if (listed.isPresent() && missing.isPresent() && overlap(listed.get(), missing.get())) {
        hidden.add(part);
      }
    }
    if (!hidden.isEmpty()) {
      found.add(new BlindSpot.PartsBesideOthers(List.copyOf(hidden)));
    }
  }

  private static boolean overlap(ThroughParts one, ThroughParts other) {
    return one.lowOhms() <= other.highOhms() && other.lowOhms() <= one.highOhms();
  }

  private void splitPairs() {
    Set<String> groups = new TreeSet<>();
    for (Wire wire : circuit.harness().wires()) {
      if (!wire.group().isEmpty()) {
        groups.add(wire.group());
      }
    }
    if (!groups.isEmpty()) {
      found.add(new BlindSpot.TwistedGroups(List.copyOf(groups)));
    }
  }
}

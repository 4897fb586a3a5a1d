package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.Nets;
import dev.ringout.compare.Coverage.Tally;
import dev.ringout.harness.Part;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Reading;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Which parts were read, straight across and in the positions of the switches that tell; a diode
 * both ways, unless something beside it conducts both ways and hides it.
 */
public final class PartProof {
  private final Circuit circuit;
  private final Requirements requirements;
  private final Map<SwitchState, Ways> waysIn = new LinkedHashMap<>();

  /** From one net to another. */
  private record Way(int from, int to) {}

  /** What was read in one state of the switches. */
  private static final class Ways {
    final Set<Way> read = new HashSet<>();
    final Set<Way> shown = new HashSet<>();
    final Set<Way> conducting = new HashSet<>();
  }

  private PartProof(Circuit circuit, Requirements requirements) {
    this.circuit = circuit;
    this.requirements = requirements;
  }

  /** What some readings show of the parts. */
  public static PartProof of(Circuit circuit, Requirements requirements, List<Judged> inForce) {
    PartProof proof = new PartProof(circuit, requirements);
    if (!circuit.harness().parts().isEmpty()) {
      inForce.forEach(proof::add);
    }
    return proof;
  }

  private void add(Judged judged) {
    if (judged.reading().kind() == Reading.Kind.CONTINUITY
        && judged.reading().measured().made()
        && judged.probing().isPair()) {
      judged.expected().throughParts().ifPresent(through -> add(judged, through));
    }
  }

  private void add(Judged judged, Expected.ThroughParts through) {
    SwitchState state = judged.reading().state();
    Way way = way(judged.probing().from()[0], judged.probing().to()[0], state);
    Ways ways = waysIn.computeIfAbsent(state, one -> new Ways());
    ways.read.add(way);
    if (judged.outcome().passes()) {
      ways.shown.add(way);
      if (!through.mayBeOpen()) {
        ways.conducting.add(way);
      }
    }
  }

  private Way way(int from, int to, SwitchState state) {
    Nets nets = circuit.in(state);
    return new Way(nets.of(from), nets.of(to));
  }

  Tally prove(List<Integer> needed, Consumer<Unproven> unproven) {
    long proven = 0;
    for (int part : needed) {
      if (isShown(part)) {
        proven++;
      } else {
        unproven.accept(new Unproven.OfPart(part, isRead(part), requirements.positionsFor(part)));
      }
    }
    return new Tally(needed.size(), proven);
  }

  private boolean isRead(int part) {
    return anyState(
        part, (ways, there, back) -> ways.read.contains(there) || ways.read.contains(back));
  }

  /** Whether a part was read as it should, in as many directions as it needs. */
  public boolean isShown(int part) {
    boolean isDiode = circuit.part(part).kind() == Part.Kind.DIODE;
    return anyState(
        part,
        (ways, there, back) -> {
          boolean bothWays =
              isDiode && !ways.conducting.contains(there) && !ways.conducting.contains(back);
          return bothWays
              ? ways.shown.contains(there) && ways.shown.contains(back)
              : ways.shown.contains(there) || ways.shown.contains(back);
        });
  }

  /** What is asked of the ways across a part, there and back, in a state. */
  private interface OfWays {
    boolean holds(Ways ways, Way there, Way back);
  }

  private boolean anyState(int part, OfWays asked) {
    int from = circuit.fromOfPart(part);
    int to = circuit.toOfPart(part);
    return waysIn.entrySet().stream()
        .filter(ofState -> requirements.tells(part, ofState.getKey()))
        .anyMatch(
            ofState ->
                asked.holds(
                    ofState.getValue(),
                    way(from, to, ofState.getKey()),
                    way(to, from, ofState.getKey())));
  }
}

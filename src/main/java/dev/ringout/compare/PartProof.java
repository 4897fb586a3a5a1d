package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.Nets;
import dev.ringout.compare.Coverage.Tally;
import dev.ringout.harness.Part;
import dev.ringout.readings.Reading;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Which parts were read, straight across; a diode both ways, unless something beside it conducts
 * both ways and hides it.
 */
public final class PartProof {
  private final Circuit circuit;
  private final Set<Way> read = new HashSet<>();
  private final Set<Way> shown = new HashSet<>();
  private final Set<Way> conducting = new HashSet<>();

  /** From one net to another. */
  private record Way(int from, int to) {}

  private PartProof(Circuit circuit) {
    this.circuit = circuit;
  }

  /** What some readings show of the parts. */
  public static PartProof of(Circuit circuit, List<Judged> inForce) {
    PartProof proof = new PartProof(circuit);
    if (!circuit.harness().parts().isEmpty()) {
      inForce.forEach(proof::add);
    }
    return proof;
  }

  private void add(Judged judged) {
    if (judged.reading().kind() == Reading.Kind.CONTINUITY
        && judged.reading().measured().made()
        && judged.probing().isPair()
        && judged.reading().state().isNormal()) {
      judged.expected().throughParts().ifPresent(through -> add(judged, through));
    }
  }

  private void add(Judged judged, Expected.ThroughParts through) {
    Nets normal = circuit.normal();
    Way way = new Way(normal.of(judged.probing().from()[0]), normal.of(judged.probing().to()[0]));
    read.add(way);
    if (judged.outcome().passes()) {
      shown.add(way);
      if (!through.mayBeOpen()) {
        conducting.add(way);
      }
    }
  }

  Tally prove(List<Integer> needed, Consumer<Unproven> unproven) {
    long proven = 0;
    for (int part : needed) {
      if (isShown(part)) {
        proven++;
      } else {
        unproven.accept(new Unproven.OfPart(part, isRead(part)));
      }
    }
    return new Tally(needed.size(), proven);
  }

  private boolean isRead(int part) {
    int from = circuit.normal().of(circuit.fromOfPart(part));
    int to = circuit.normal().of(circuit.toOfPart(part));
    return read.contains(new Way(from, to)) || read.contains(new Way(to, from));
  }

  /** Whether a part was read as it should, in as many directions as it needs. */
  public boolean isShown(int part) {
    int from = circuit.normal().of(circuit.fromOfPart(part));
    int to = circuit.normal().of(circuit.toOfPart(part));
    Way there = new Way(from, to);
    Way back = new Way(to, from);
    boolean bothWays =
        circuit.part(part).kind() == Part.Kind.DIODE
            && !conducting.contains(there)
            && !conducting.contains(back);
    return bothWays
        ? shown.contains(there) && shown.contains(back)
        : shown.contains(there) || shown.contains(back);
  }
}

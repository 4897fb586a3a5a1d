package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.Nets;
import dev.ringout.compare.Coverage.Tally;
import dev.ringout.compare.Coverage.Unproven;
import dev.ringout.harness.Part;
import dev.ringout.readings.Reading;
import dev.ringout.units.Text;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Which parts were read, straight across; a diode both ways, unless something beside it conducts
 * both ways and hides it.
 */
final class PartProof {
  private final Circuit circuit;
  private final Set<Way> read = new HashSet<>();
  private final Set<Way> shown = new HashSet<>();
  private final Set<Way> conducting = new HashSet<>();

  /** From one net to another. */
  private record Way(int from, int to) {}

  PartProof(Circuit circuit, List<Judged> inForce) {
    this.circuit = circuit;
    Nets normal = circuit.normal();
    if (circuit.harness().parts().isEmpty()) {
      return;
    }
    for (Judged judged : inForce) {
      if (judged.reading().kind() == Reading.Kind.CONTINUITY
          && judged.reading().measured().made()
          && judged.probing().isPair()
          && judged.expected() instanceof Expected.ThroughParts through
          && judged.reading().state().isNormal()) {
        Way way =
            new Way(normal.of(judged.probing().from()[0]), normal.of(judged.probing().to()[0]));
        read.add(way);
        if (!judged.outcome().passes()) {
          continue;
        }
        shown.add(way);
        if (!through.mayBeOpen()) {
          conducting.add(way);
        }
      }
    }
  }

  Tally prove(List<Integer> needed, Consumer<Unproven> unproven) {
    long proven = 0;
    for (int part : needed) {
      if (isShown(part)) {
        proven++;
      } else {
        unproven.accept(
            new Unproven.OfPart(
                part,
                isRead(part),
                Text.of("no good reading was made across %s", circuit.part(part).label())));
      }
    }
    return new Tally(needed.size(), proven);
  }

  private boolean isRead(int part) {
    int from = circuit.normal().of(circuit.fromOfPart(part));
    int to = circuit.normal().of(circuit.toOfPart(part));
    return read.contains(new Way(from, to)) || read.contains(new Way(to, from));
  }

  private boolean isShown(int part) {
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

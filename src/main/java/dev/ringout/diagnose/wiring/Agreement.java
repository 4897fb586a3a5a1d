package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.AlteredPart;
import dev.ringout.circuit.AlteredPart.How;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Observed;
import dev.ringout.compare.Outcome;
import dev.ringout.harness.Part;
import dev.ringout.readings.Measured;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Whether a reading is what a prediction says, by what all the readings say of the parts. */
final class Agreement {
  private final Circuit circuit;
  private final Set<Judged> valuesOfParts = new HashSet<>();

  /**
   * Where a diode was read that does not conduct, by a meter that opens diodes; leads exchanged.
   */
  private final Set<List<Object>> opened = new HashSet<>();

  Agreement(Circuit circuit) {
    this.circuit = circuit;
  }

  /** Takes a reading for what it says of parts. */
  void take(Judged judged) {
    if (PartValues.isOfAPart(judged, circuit)) {
      valuesOfParts.add(judged);
    }
    if (judged.observed() == Observed.APART
        && judged.outcome() == Outcome.PART_VALUE
        && judged.probing().isPair()
        && judged.expected().throughParts().filter(ThroughParts::mayBeOpen).isPresent()) {
      opened.add(probes(judged.probing().to()[0], judged.probing().from()[0], judged));
    }
  }

  /** Takes a reading for the value of parts that lie on no listed way of it. */
  void takeValueOfParts(Judged judged) {
    valuesOfParts.add(judged);
  }

  /** Values that some part of the unit has, read where none of it is listed. */
  Set<Judged> valuesOfParts() {
    return valuesOfParts;
  }

  private static List<Object> probes(int from, int to, Judged judged) {
    return List.of(from, to, judged.reading().state());
  }

  /** Whether a reading is what the prediction says. */
  boolean of(Judged judged, Probing probing, SlippedNets nets, Expected predicted) {
    if (probing.isPair() && nets.joinsPoorly(probing.from()[0], probing.to()[0])) {
      return judged.observed() == Observed.RESISTIVE;
    }
    boolean throughPartsAsListed =
        judged.expected().throughParts().isPresent()
            && judged.outcome() == Outcome.CONFORMS
            && judged.observed() != Observed.APART;
    Optional<ThroughParts> parts = predicted.throughParts();
    if (parts.isPresent()) {
      if (isFarAboveAnotherDiode(judged)
          && parts.get().parts().stream().noneMatch(nets.altered()::containsKey)) {
        return false;
      }
      return !isRefuted(judged, parts.get(), nets) && agrees(judged, parts.get());
    }
    boolean valueOfAPart =
        valuesOfParts.contains(judged)
            || (judged.expected().throughParts().isPresent()
                && judged.observed() == Observed.RESISTIVE);
    if (throughPartsAsListed || valueOfAPart) {
      // A value was read, and with nothing between the sides, or a joint, there is none.
      return false;
    }
    boolean joined = predicted.isJoined();
    return switch (judged.observed()) {
      case JOINED -> joined;
      case APART -> predicted.isApart();
      // A poor joint still conducts, a leak does not join: both are told apart elsewhere.
      case RESISTIVE -> joined == judged.expected().isJoined();
      case UNKNOWN -> judged.outcome() != Outcome.PART_VALUE;
    };
  }

  /** Whether a part that is said to have another value was read by itself and has its own. */
  private boolean isRefuted(Judged judged, ThroughParts predicted, SlippedNets nets) {
    if (predicted.parts().size() != 1 || judged.outcome() != Outcome.CONFORMS) {
      return false;
    }
    int number = predicted.parts().get(0);
    Part part = circuit.part(number);
    AlteredPart altered = nets.altered().get(number);
    boolean hasItsOwn =
        judged.observed() == Observed.APART
            ? part.kind().isOpenToDirectCurrent()
            : part.ohms().isPresent() && judged.reading().measured().value().isPresent();
    return altered != null
        && altered.how() == How.ANY_VALUE
        && hasItsOwn
        && judged
            .expected()
            .throughParts()
            .filter(listed -> listed.parts().equals(predicted.parts()))
            .isPresent();
  }

  /** A value that the parts allow, and that fails beside those of other diodes. */
  private static boolean isFarAboveAnotherDiode(Judged judged) {
    return judged.outcome() == Outcome.PART_VALUE
        && judged.observed() == Observed.RESISTIVE
        && judged
            .expected()
            .throughParts()
            .filter(listed -> listed.mayBeOpen() && listed.allows(judged.seen()))
            .isPresent();
  }

  private boolean mustConduct(Judged judged) {
    return !opened.isEmpty()
        && judged.probing().isPair()
        && opened.contains(probes(judged.probing().from()[0], judged.probing().to()[0], judged));
  }

  private boolean agrees(Judged judged, ThroughParts predicted) {
    Measured measured = judged.reading().measured();
    if (measured.isWord()) {
      return judged.observed() == Observed.JOINED
          ? predicted.lowOhms() <= judged.limit().ohms()
          : (predicted.mayBeOpen() || judged.outcome() == Outcome.CONFORMS);
    }
    if (judged.observed() == Observed.APART) {
      // What should conduct and does not is no part that may or may not.
      boolean conducts = judged.outcome() == Outcome.PART_VALUE || mustConduct(judged);
      return conducts ? Double.isInfinite(predicted.lowOhms()) : predicted.mayBeOpen();
    }
    if (measured.value().isPresent()) {
      return predicted.allows(judged.seen());
    }
    return judged.observed() == Observed.JOINED
        ? predicted.lowOhms() <= judged.limit().ohms()
        : predicted.mayBeOpen();
  }
}

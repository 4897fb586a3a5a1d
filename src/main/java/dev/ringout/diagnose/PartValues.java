package dev.ringout.diagnose;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected.Apart;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.harness.Part;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;

/** Whether a value that was read where nothing is listed is that of a listed part. */
final class PartValues {
  private PartValues() {}

  /** Whether a reading may be that of a part which lies across its two sides by mistake. */
  static boolean mayBe(Part part, Judged judged, Circuit circuit) {
    if (part.ohms().isEmpty() || !(judged.reading().measured() instanceof Measured.Value)) {
      return false;
    }
    double share =
        part.tolerancePercent().orElse(circuit.harness().limits().tolerancePercent()) / 100;
    double ohms = part.ohms().getAsDouble();
    double wires = circuit.harness().limits().fixedClosedMaxOhms();
    return judged.seen().highOhms() >= ohms * (1 - share)
        && judged.seen().lowOhms() <= ohms * (1 + share) + wires;
  }

  /** A value between two sides that should be apart, which some part of the unit has. */
  static boolean isOfAPart(Judged judged, Circuit circuit) {
    return judged.outcome() == Outcome.RESISTIVE
        && judged.reading().kind() == Reading.Kind.CONTINUITY
        && judged.expected() instanceof Apart
        && judged.probing().isPair()
        && circuit.harness().parts().stream().anyMatch(part -> mayBe(part, judged, circuit));
  }
}

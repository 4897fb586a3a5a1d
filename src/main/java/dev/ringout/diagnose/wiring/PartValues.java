package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.harness.Part;
import dev.ringout.readings.Reading;

/** Whether a value that was read where nothing is listed is that of a listed part. */
final class PartValues {
  /** A conducting diode seldom shows an ohmmeter less (common practice, no source). */
  private static final double LIKELY_LEAST_OF_A_DIODE_OHMS = 50;

  private PartValues() {}

  /** Whether a reading may be that of a part which lies across its two sides by mistake. */
  static boolean mayBe(Part part, Judged judged, Circuit circuit) {
    if (judged.reading().measured().value().isEmpty()) {
      return false;
    }
    if (part.ohms().isEmpty()) {
      return part.kind() == Part.Kind.DIODE
          && judged.seen().highOhms() >= LIKELY_LEAST_OF_A_DIODE_OHMS;
    }
    double share =
        part.tolerancePercent().orElse(circuit.harness().limits().tolerancePercent()) / 100;
    double ohms = part.ohms().getAsDouble();
    double wires = circuit.harness().limits().fixedClosedMaxOhms();
    return judged.seen().highOhms() >= ohms * (1 - share)
        && judged.seen().lowOhms() <= ohms * (1 + share) + wires;
  }

  /** A value that some part of the unit has, read where none is listed. */
  static boolean isOfAPart(Judged judged, Circuit circuit) {
    return judged.outcome() == Outcome.RESISTIVE
        && judged.reading().kind() == Reading.Kind.CONTINUITY
        && judged.expected().throughParts().isEmpty()
        && judged.probing().isPair()
        && circuit.harness().parts().stream().anyMatch(part -> mayBe(part, judged, circuit));
  }
}

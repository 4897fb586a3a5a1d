package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.harness.Part;
import dev.ringout.units.OhmsRange;
import java.util.List;

/**
 * What an unlisted join may read: more than a sound joint, for a whisker or a strand of wire has
 * ohms of its own, and what lies crossed may be as long as any wire of the unit. What a part of the
 * unit may read is left open.
 *
 * @param mostOhms of a join between two nets
 * @param parts what the parts of the unit may read
 */
record StrayJoin(double mostOhms, List<OhmsRange> parts) {
  /** A bridge that carries a meter's current has no more (common practice, no source). */
  private static final double MOST_OF_A_BRIDGE_OHMS = 5;

  /** A net that is joined by mistake leads over so many of the longest wires. */
  private static final int WIRES_ON_THE_WAY = 4;

  static StrayJoin of(Circuit circuit, JoinLimits limits) {
    double longest = 0;
    for (int conductor = 0; conductor < circuit.conductors().size(); conductor++) {
      Conductor one = circuit.conductors().get(conductor);
      OhmsRange ohms = limits.resistances().of(conductor);
      if (one.asWire().isPresent() && ohms.isKnown()) {
        longest = Math.max(longest, ohms.highOhms());
      }
    }
    double otherwise = circuit.harness().limits().tolerancePercent();
    List<OhmsRange> parts =
        circuit.harness().parts().stream()
            .filter(part -> part.ohms().isPresent())
            .map(part -> range(part, otherwise))
            .toList();
    return new StrayJoin(Math.max(MOST_OF_A_BRIDGE_OHMS, WIRES_ON_THE_WAY * longest), parts);
  }

  private static OhmsRange range(Part part, double otherwisePercent) {
    double share = part.tolerancePercent().orElse(otherwisePercent) / 100;
    double ohms = part.ohms().orElse(0);
    return new OhmsRange(ohms * (1 - share), ohms * (1 + share));
  }

  /** Whether a value that is no sound joint may be a join all the same, and no part. */
  boolean mayBe(OhmsRange seen) {
    return seen.isKnown()
        && seen.lowOhms() <= mostOhms
        && parts.stream()
            .noneMatch(
                part ->
                    seen.highOhms() >= part.lowOhms()
                        && seen.lowOhms() <= part.highOhms() + mostOhms / 2);
  }
}

package dev.ringout.diagnose.values;

import dev.ringout.circuit.JoinLimits;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.compare.ValueVerdict;
import dev.ringout.standards.MadFactors;
import dev.ringout.units.OhmsRange;
import java.util.Arrays;
import java.util.List;

/**
 * How the unit's own good wires read against the middle of what they may have. A specification
 * leaves a wire a wide range; the wires of one unit, read with one meter, differ by far less, and a
 * wire of another gauge would too.
 */
final class WiresAsMade {
  /** Fewer say nothing of the others. */
  private static final int LEAST_WIRES = 5;

  /** What a gauge has at the most lies otherwise in its range (MIL-DTL-29606A table III-A, tin). */
  private static final double FROM_GAUGE_TO_GAUGE = 0.02;

  /** A meter that is this coarse says nothing of how wires differ. */
  private static final double TELLING = 0.05;

  /** So many reels are of another make than the unit's (common practice, no source). */
  private static final double OF_ANOTHER_MAKE = 0.2;

  /** Between makes: silver and tin differ by 7 % (MIL-DTL-29606A table III-A). */
  private static final double FROM_MAKE_TO_MAKE = 0.05;

  private final boolean known;
  private final double middle;
  private final double spread;

  private WiresAsMade(double[] sorted) {
    known = sorted.length >= LEAST_WIRES;
    middle = known ? sorted[sorted.length / 2] : 1;
    double[] off = Arrays.stream(sorted).map(one -> Math.abs(one - middle)).sorted().toArray();
    spread = known ? Math.hypot(FROM_GAUGE_TO_GAUGE, MadFactors.OF_MANY * off[off.length / 2]) : 0;
  }

  /** By the good readings of wires whose resistance is known, and which the meter can tell. */
  static WiresAsMade of(Comparison comparison) {
    return new WiresAsMade(
        comparison.inForce().stream()
            .filter(WiresAsMade::tells)
            .mapToDouble(
                judged -> judged.seen().middleOhms() / judged.limit().expected().middleOhms())
            .sorted()
            .toArray());
  }

  private static boolean tells(Judged judged) {
    return judged.outcome() == Outcome.CONFORMS
        && judged.value() == ValueVerdict.AS_EXPECTED
        && judged.limit().basis() == JoinLimits.Basis.COMPUTED
        && judged.seen().isKnown()
        && judged.seen().halfWidthOhms() < TELLING * judged.limit().expected().middleOhms();
  }

  /** What a wire is likely to have that may have so much. */
  double likelyOhms(OhmsRange range) {
    return range.middleOhms() * middle;
  }

  /** How likely a reading is of a wire of any of some makes: per ohm. */
  double density(List<OhmsRange> makes, OhmsRange seen) {
    if (!known || makes.isEmpty()) {
      // A list that names no make may mean any.
      return makes.stream()
          .mapToDouble(range -> normal(seen, range.middleOhms(), range.halfWidthOhms() / 2))
          .average()
          .orElse(0);
    }
    double likely = likelyOhms(makes.stream().reduce(OhmsRange::or).orElseThrow());
    double ofAnother = normal(seen, likely, Math.hypot(spread, FROM_MAKE_TO_MAKE) * likely);
    return OF_ANOTHER_MAKE * ofAnother
        + (1 - OF_ANOTHER_MAKE) * normal(seen, likely, spread * likely);
  }

  /** Normal, the ends of what the meter leaves possible two standard deviations away. */
  private static double normal(OhmsRange seen, double ohms, double deviation) {
    double spread = Math.hypot(deviation, seen.halfWidthOhms() / 2);
    double off = (seen.middleOhms() - ohms) / spread;
    return Math.exp(-off * off / 2) / (spread * Math.sqrt(2 * Math.PI));
  }
}

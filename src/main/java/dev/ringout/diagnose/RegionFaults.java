package dev.ringout.diagnose;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Judged;
import dev.ringout.standards.HandMovements;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The faults of a region.
 *
 * @param explained every reading that these faults explain
 */
record RegionFaults(Region region, List<Fault> faults, Set<Judged> explained, SlipFacts facts) {

  /** The reading that alone shows them all, made once. */
  Optional<Judged> onlyReading() {
    return region.shownOnce() ? Optional.of(region.failing().get(0)) : Optional.empty();
  }

  /** The reading that tells what else they could be apart best, for each movement of the hand. */
  Optional<NextReading> tellingReading(
      Circuit circuit, Evidence evidence, HandMovements movements, Predicate<Probing> isMade) {
    if (region.classes().size() < 2) {
      return Optional.empty();
    }
    return TellingReading.of(circuit, evidence, movements, region)
        .best(isMade, one -> facts.of(one.primary().slips()));
  }
}

package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.NextReading;
import dev.ringout.standards.HandMovements;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** The faults of a region: of failing readings that hang together. */
public final class RegionFaults {
  private final Circuit circuit;
  private final Evidence evidence;
  private final Region region;
  private final List<Fault> faults;
  private final Set<Judged> explained;

  RegionFaults(
      Circuit circuit,
      Evidence evidence,
      Region region,
      List<Fault> faults,
      Set<Judged> explained) {
    this.circuit = circuit;
    this.evidence = evidence;
    this.region = region;
    this.faults = List.copyOf(faults);
    this.explained = explained;
  }

  /** What is wrong there. */
  public List<Fault> faults() {
    return faults;
  }

  /** Every reading that these faults explain. */
  Set<Judged> explained() {
    return explained;
  }

  /** Whether it is one reading that shows them all, and not two that may be exchanged. */
  public boolean isShownByOne() {
    return region.failing().size() == 1;
  }

  /** The reading that alone, or with another that may be exchanged for it, shows them all. */
  public Optional<Judged> onlyReading() {
    return region.shownOnce() ? Optional.of(region.failing().get(0)) : Optional.empty();
  }

  /** The reading that best tells what else they could be apart, for each movement of the hand. */
  public Optional<NextReading> tellingReading(HandMovements movements, Predicate<Probing> isMade) {
    if (region.classes().size() < 2) {
      return Optional.empty();
    }
    SlipFacts facts = new SlipFacts(circuit, evidence);
    return TellingReading.of(circuit, evidence, movements, region)
        .best(isMade, one -> facts.of(one.primary().slips()));
  }
}

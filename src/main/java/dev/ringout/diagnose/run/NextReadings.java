package dev.ringout.diagnose.run;

import dev.ringout.circuit.Circuit;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Coverage;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Finding;
import dev.ringout.diagnose.NextReading;
import dev.ringout.diagnose.NextReading.Purpose;
import dev.ringout.diagnose.NextReason;
import dev.ringout.diagnose.wiring.RegionFaults;
import dev.ringout.diagnose.wiring.WiringFaults;
import dev.ringout.standards.HandMovements;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/** Which readings to take next: first those that tell explanations apart, then those still owed. */
final class NextReadings {
  private final HandMovements movements;
  private final AskedReadings asked;
  private final ConfirmingReadings confirming;
  private final OwedReadings owed;
  private final List<NextReading> list = new ArrayList<>();

  private NextReadings(
      Circuit circuit, Comparison comparison, Coverage coverage, HandMovements movements) {
    this.movements = movements;
    asked = new AskedReadings(circuit, comparison);
    confirming = new ConfirmingReadings(circuit, asked);
    owed = new OwedReadings(circuit, comparison, coverage);
  }

  static List<NextReading> of(
      Circuit circuit,
      Comparison comparison,
      Coverage coverage,
      WiringFaults wiring,
      List<Fault> faults,
      HandMovements movements) {
    NextReadings next = new NextReadings(circuit, comparison, coverage, movements);
    wiring.told().forEach(next::tellApart);
    wiring.told().forEach(next::confirm);
    Set<Fault> ofWiring = Collections.newSetFromMap(new IdentityHashMap<>());
    ofWiring.addAll(wiring.faults());
    faults.stream().filter(fault -> !ofWiring.contains(fault)).forEach(next::confirm);
    comparison.with(Outcome.NOT_TESTED).forEach(next::notTested);
    coverage.unproven().forEach(one -> one.match(next.owed).ifPresent(next::add));
    return List.copyOf(next.list);
  }

  private void add(NextReading reading) {
    if (asked.isNew(reading)) {
      list.add(reading);
    }
  }

  /** The reading that lowers the entropy of a region's odds most for each movement. */
  private void tellApart(RegionFaults told) {
    told.tellingReading(movements, asked::isMade).ifPresent(this::add);
  }

  private void confirm(Fault fault) {
    fault.match(confirming).forEach(list::add);
  }

  /** What one reading alone shows is read again, another way where there is one. */
  private void confirm(RegionFaults told) {
    int before = list.size();
    told.faults().forEach(this::confirm);
    if (list.size() == before) {
      told.onlyReading()
          .map(
              one ->
                  ConfirmingReadings.again(
                      one,
                      told.isShownByOne()
                          ? new NextReason.AloneShowsIt()
                          : new NextReason.RowOnceMore(one.reading().place())))
          .ifPresent(list::add);
    }
    if (list.size() == before) {
      told.faults().stream()
          .flatMap(fault -> fault.asWrongPart().stream())
          .flatMap(fault -> confirming.besideThePart(fault).stream())
          .forEach(list::add);
    }
    if (list.size() == before) {
      readAgain(told.faults().stream().map(Fault::finding).toList());
    }
  }

  /** What one reading alone shows of a story that no other stands beside. */
  private void readAgain(List<Finding> story) {
    if (story.stream().allMatch(finding -> finding.alternatives().isEmpty())) {
      story.stream()
          .filter(finding -> finding.certainty() != Certainty.CERTAIN)
          .filter(finding -> finding.readings().size() == 1)
          .map(finding -> finding.readings().get(0))
          .map(reading -> ConfirmingReadings.again(reading, new NextReason.AloneShowsIt()))
          .forEach(list::add);
    }
  }

  private void notTested(Judged judged) {
    add(
        new NextReading(
            judged.reading().kind(),
            judged.reading().from().toString(),
            judged.reading().to().toString(),
            judged.reading().state(),
            Purpose.NOT_TESTED,
            new NextReason.NotMeasured(),
            List.of()));
  }
}

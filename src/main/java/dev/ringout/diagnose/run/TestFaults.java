package dev.ringout.diagnose.run;

import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.LeadEstimate;
import dev.ringout.compare.RowSlip;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Finding;
import dev.ringout.diagnose.wiring.ListedUnit;
import dev.ringout.diagnose.wiring.SlipCosts;
import dev.ringout.diagnose.wiring.WiringFaults;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Faults of the test as a whole that account for readings better than any fault of the unit. */
final class TestFaults {
  /** The unit is blamed unless the sheet is e times as likely: then the wiring is looked at. */
  private static final double MARGIN = 1;

  private final List<Fault> faults = new ArrayList<>();
  private Comparison left;
  private boolean leadsAreKnown;

  private TestFaults(Comparison comparison) {
    left = comparison;
  }

  static TestFaults of(ListedUnit unit, Comparison comparison) {
    TestFaults found = new TestFaults(comparison);
    LeadEstimate.of(unit.circuit(), unit.limits(), comparison).ifPresent(found::leads);
    SlipCosts costs = unit.costs();
    List<RowSlip> slips = RowSlip.find(unit.circuit(), unit.limits(), found.left);
    if (!slips.isEmpty()) {
      double most = slips.stream().mapToDouble(slip -> cost(slip, costs)).max().orElse(0);
      WiringFaults wiring = WiringFaults.of(unit, found.left, most);
      slips.stream()
          .filter(slip -> wiring.costOf(slip.mended()) > cost(slip, costs))
          .forEach(found::slipped);
    }
    return found;
  }

  private static double cost(RowSlip slip, SlipCosts costs) {
    return costs.ofSlippedRows() - Math.log(slip.chance()) + MARGIN;
  }

  private void leads(LeadEstimate leads) {
    faults.add(
        new Fault.LeadsNotNulled(
            Finding.alone(Certainty.LIKELY, leads.mended(), List.of()),
            leads.ohms(),
            leads.noted()));
    left = leads.comparison();
    leadsAreKnown = true;
  }

  private void slipped(RowSlip slip) {
    Set<Judged> inForce = new HashSet<>(left.inForce());
    List<Judged> shown = slip.mended().stream().filter(inForce::contains).toList();
    faults.add(
        new Fault.SlippedRows(
            Finding.alone(Certainty.LIKELY, shown, List.of()),
            slip.rows().size(),
            slip.step(),
            slip.first()));
    left = left.without(slip.rows());
  }

  List<Fault> faults() {
    return faults;
  }

  /** Whether it was found what the leads have, and that taken off. */
  boolean leadsAreKnown() {
    return leadsAreKnown;
  }

  /** The readings that are about the unit still. */
  Comparison left() {
    return left;
  }
}

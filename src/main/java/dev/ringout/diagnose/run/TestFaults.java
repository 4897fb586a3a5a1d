package dev.ringout.diagnose.run;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.LeadEstimate;
import dev.ringout.compare.Observed;
import dev.ringout.compare.Outcome;
import dev.ringout.compare.RowExchange;
import dev.ringout.compare.RowSlip;
import dev.ringout.compare.ValueVerdict;
import dev.ringout.compare.WrongScale;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Alternative;
import dev.ringout.diagnose.Fault.Finding;
import dev.ringout.diagnose.PartFault;
import dev.ringout.diagnose.SlipFact;
import dev.ringout.diagnose.wiring.ListedUnit;
import dev.ringout.diagnose.wiring.SlipCosts;
import dev.ringout.diagnose.wiring.WiringFaults;
import dev.ringout.diagnose.wiring.WiringReadings;
import dev.ringout.harness.Part;
import dev.ringout.readings.Reading;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Faults of the test as a whole that account for readings better than any fault of the unit. */
final class TestFaults {
  /** The unit is blamed unless the sheet is e times as likely: then the wiring is looked at. */
  private static final double MARGIN = 1;

  /** A part may have any other value: that it is just a neighbouring row's is rare. */
  private static final double JUST_THAT_VALUE = 3;

  /** What a join of unknown length reads lies within so many times. */
  private static final double WITHOUT_A_LENGTH = 25;

  /**
   * One wrong resistor in ten has just so many zeros more or fewer (common practice, no source).
   */
  private static final double ANOTHER_MULTIPLIER = 0.1;

  /** One other gauge in a hundred has ten times the copper (common practice, no source). */
  private static final double FAR_GAUGE = 0.01;

  /** Another part has anything within four powers of ten (common practice, no source). */
  private static final double VALUES_OF_PARTS = 1e4;

  /** Where a part blocks a meter mostly shows no value at all (common practice, no source). */
  private static final double SHOWS_A_VALUE = 0.02;

  /** A slip ends so many rows farther down, for all that anybody knows. */
  private static final int ROWS_BELOW = 2;

  /** More than that many faults cost is not looked for. */
  private static final double COST_OF_MANY_FAULTS = 60;

  /** Less likely than this it is not said. */
  private static final double LEAST_ODDS = 0.01;

  private final List<Fault> faults = new ArrayList<>();

  /** Values that a slip of the pen may have made, though something else is likelier. */
  private final Map<Judged, Alternative> maybeOfThePen = new LinkedHashMap<>();

  private final List<RowSlip> slipped = new ArrayList<>();

  private final ListedUnit unit;
  private Comparison left;

  /** What is left as evidence, once it was asked for. */
  private Optional<WiringReadings> ofWiring = Optional.empty();

  private boolean leadsAreKnown;

  private final boolean leadsMayBe;

  private TestFaults(ListedUnit unit, Comparison comparison, boolean leadsMayBe) {
    this.unit = unit;
    this.leadsMayBe = leadsMayBe;
    left = comparison;
  }

  private void leave(Comparison comparison) {
    left = comparison;
    ofWiring = Optional.empty();
  }

  /** The readings that are about the unit still, as evidence of what is joined. */
  WiringReadings ofWiring() {
    WiringReadings readings = ofWiring.orElseGet(() -> WiringReadings.of(unit, left));
    ofWiring = Optional.of(readings);
    return readings;
  }

  /**
   * The faults of a test.
   *
   * @param leadsMayBe whether the leads may have more than is said of them
   */
  static TestFaults of(ListedUnit unit, Comparison comparison, boolean leadsMayBe) {
    TestFaults found = new TestFaults(unit, comparison, leadsMayBe);
    SlipCosts costs = unit.costs();
    if (!comparison.failing().isEmpty()) {
      found.rowsAndLeads(costs, comparison);
    }
    found.misplaced(costs);
    found.exchangedBesideAFault(costs);
    return found;
  }

  private void rowsAndLeads(SlipCosts costs, Comparison comparison) {
    WrongScale.ofSheets(unit.circuit(), unit.limits(), left).ifPresent(this::sheetScaled);
    leadEstimate().filter(one -> isOfMostHigh(one, comparison)).ifPresent(this::leads);
    rows(costs);
    if (!leadsAreKnown) {
      leadEstimate().ifPresent(this::leads);
    }
    exchanged(costs);
  }

  private Optional<LeadEstimate> leadEstimate() {
    return leadsMayBe ? LeadEstimate.of(unit.circuit(), unit.limits(), left) : Optional.empty();
  }

  private void misplaced(SlipCosts costs) {
    List<WrongScale> scales = WrongScale.ofValues(unit.circuit(), unit.limits(), left);
    if (scales.isEmpty()) {
      return;
    }
    // What costs more than the slip of the pen by far is not missed.
    WiringFaults wiring = WiringFaults.of(ofWiring(), MARGIN - Math.log(ofThePen(costs)));
    for (WrongScale scale : scales) {
      double odds = odds(unit.circuit(), scale, wiring, costs);
      if (odds > 0.5) {
        pointMisplaced(scale, odds);
      } else if (odds >= LEAST_ODDS) {
        Judged judged = scale.mended().get(0);
        maybeOfThePen.put(
            judged, new Alternative(odds, List.of(new SlipFact.Misscaled(judged, scale.times()))));
      }
    }
  }

  /** How often a value has its point in one place and not where it belongs. */
  private static double ofThePen(SlipCosts costs) {
    return costs.rateOf("test point") / WrongScale.PLACES;
  }

  /** What the leads have is in all rows, whatever slipped; a few high values may have slipped. */
  private static boolean isOfMostHigh(LeadEstimate leads, Comparison comparison) {
    long high =
        comparison.with(Outcome.RESISTIVE).stream()
            .filter(judged -> judged.expected().isJoined())
            .count();
    return 2L * leads.mended().size() > high;
  }

  private void rows(SlipCosts costs) {
    List<RowExchange> exchanges = RowExchange.find(unit.circuit(), unit.limits(), left);
    List<RowSlip> slips =
        RowSlip.find(unit.circuit(), unit.limits(), left).stream()
            .filter(slip -> exchanges.stream().noneMatch(one -> one.isAllOf(slip)))
            .toList();
    if (!slips.isEmpty()) {
      double most = slips.stream().mapToDouble(slip -> cost(slip, costs)).max().orElse(0);
      WiringFaults wiring = WiringFaults.of(ofWiring(), most);
      slips.stream()
          .filter(slip -> ofTheUnit(unit, wiring, slip.mended(), costs) > cost(slip, costs))
          .filter(slip -> leavesLess(slip, costs))
          .forEach(slip -> slipped(slip));
    }
  }

  /** Whether a slip and what is wrong without it are likelier than all that is wrong with it. */
  private boolean leavesLess(RowSlip slip, SlipCosts costs) {
    Comparison right = slip.putRight(unit.circuit(), unit.limits(), left);
    double with = cost(slip, costs) + ofTheUnit(right, WiringReadings.of(unit, right), costs);
    double without = ofTheUnit(left, ofWiring(), costs);
    return with < without || Double.isInfinite(without);
  }

  /** What it costs that the unit shows all that fails; infinite where that is not found soon. */
  private double ofTheUnit(Comparison comparison, WiringReadings readings, SlipCosts costs) {
    WiringFaults wiring = WiringFaults.of(readings, COST_OF_MANY_FAULTS);
    return ofTheUnit(unit, wiring, comparison.failing(), costs);
  }

  private void exchanged(SlipCosts costs) {
    List<RowExchange> exchanges = RowExchange.find(unit.circuit(), unit.limits(), left);
    if (exchanges.isEmpty()) {
      return;
    }
    double most = exchanges.stream().mapToDouble(one -> cost(one, costs)).max().orElse(0);
    WiringFaults wiring = WiringFaults.of(ofWiring(), most);
    for (RowExchange exchange : exchanges) {
      double cost = cost(exchange, costs);
      double ofTheUnit = ofTheUnit(unit, wiring, exchange.rows(), costs);
      boolean dearer =
          ofTheUnit > cost || exchange.rows().stream().anyMatch(row -> isUnexplained(wiring, row));
      if (dearer && wiring.areAlone(exchange.rows())) {
        faults.add(
            new Fault.ExchangedRows(
                Finding.alone(Certainty.LIKELY, exchange.rows(), List.of()),
                exchange.one(),
                exchange.other()));
        leave(left.without(exchange.rows()));
      } else {
        double odds = 1 / (1 + Math.exp(Math.abs(cost - ofTheUnit)));
        exchange.rows().stream()
            .filter(row -> row.outcome() == Outcome.RESISTIVE)
            .forEach(row -> maybeExchanged(row, exchange, odds));
      }
    }
  }

  /** A poor joint that has just what a faulty row beside it expects may be that row's value. */
  private void exchangedBesideAFault(SlipCosts costs) {
    for (RowExchange exchange : RowExchange.besideAFault(unit.circuit(), unit.limits(), left)) {
      Judged high = exchange.other();
      double width = 2 * exchange.one().limit().expected().halfWidthOhms();
      double pen = Math.exp(MARGIN - cost(exchange, costs)) / width;
      double poor =
          rateOfPoor(unit.circuit(), high, costs) * costs.densityOfPoor(high.seen().middleOhms());
      maybeExchanged(high, exchange, pen / (pen + poor));
    }
  }

  private void maybeExchanged(Judged row, RowExchange exchange, double odds) {
    if (odds >= LEAST_ODDS) {
      maybeOfThePen.putIfAbsent(
          row,
          new Alternative(
              odds, List.of(new SlipFact.ExchangedRows(exchange.one(), exchange.other()))));
    }
  }

  /** The farther apart two rows are, the less often one is taken for the other. */
  private static double cost(RowExchange exchange, SlipCosts costs) {
    return Math.log(exchange.apart()) - Math.log(costs.rateOf("test exchanged-rows")) + MARGIN;
  }

  /** What it costs that the unit itself shows some readings, their ohms counted too. */
  private static double ofTheUnit(
      ListedUnit unit, WiringFaults wiring, List<Judged> readings, SlipCosts costs) {
    double cost = wiring.costOf(readings);
    for (Judged judged : readings) {
      if (judged.outcome() == Outcome.RESISTIVE && !wiring.explains(judged)) {
        cost -= Math.log(costs.rateOf("poor wire"));
      }
      if (judged.value() == ValueVerdict.LOW && !wiring.explains(judged)) {
        cost -= Math.log(costs.rateOf("gauge other"));
      }
      boolean hasOhms =
          judged.observed() == Observed.RESISTIVE
              && judged
                  .expected()
                  .throughParts()
                  .filter(parts -> !parts.mayBeOpen() || areOpen(unit, parts))
                  .isPresent();
      if (judged.outcome() == Outcome.PART_VALUE && hasOhms) {
        cost += JUST_THAT_VALUE;
      }
    }
    return cost;
  }

  /** Whether no part between is listed to conduct at all: any value is as good as the next. */
  private static boolean areOpen(ListedUnit unit, ThroughParts parts) {
    return parts.parts().stream()
        .allMatch(part -> unit.circuit().part(part).kind().isOpenToDirectCurrent());
  }

  /** Whether the search left out a reading that says what is joined: nothing explains it. */
  private static boolean isUnexplained(WiringFaults wiring, Judged judged) {
    return switch (judged.outcome()) {
      case OPEN, UNEXPECTED_JOIN, PART_VALUE -> !wiring.explains(judged);
      default -> false;
    };
  }

  private void sheetScaled(WrongScale scale) {
    faults.add(
        new Fault.Misscaled(
            Finding.alone(Certainty.LIKELY, scale.mended(), List.of()), scale.times(), true));
    leave(scale.comparison());
  }

  /** What of the unit would show a value, where that is one thing. */
  private static Optional<SlipFact> otherwise(Circuit circuit, Judged judged) {
    if (judged.value() == ValueVerdict.LOW) {
      return Optional.empty();
    }
    if (judged.outcome() == Outcome.UNEXPECTED_JOIN) {
      return Optional.of(
          new SlipFact.Bridge(
              circuit.point(judged.probing().from()[0]), circuit.point(judged.probing().to()[0])));
    }
    if (judged.expected().isJoined()) {
      List<Integer> way =
          circuit
              .in(judged.reading().state())
              .path(judged.probing().from()[0], judged.probing().to()[0]);
      return way.size() == 1
          ? Optional.of(new SlipFact.PoorJoint(circuit.conductors().get(way.get(0))))
          : Optional.empty();
    }
    return judged
        .expected()
        .throughParts()
        .filter(through -> through.parts().size() == 1)
        .map(through -> through.parts().get(0))
        .map(
            part ->
                new SlipFact.BadPart(
                    circuit.part(part),
                    PartFault.OTHER_VALUE,
                    circuit.point(circuit.fromOfPart(part)),
                    circuit.point(circuit.toOfPart(part))));
  }

  /**
   * How likely the point was misplaced, against a poor joint or another part that has just what
   * would come of it, and against an open that parts lead around.
   */
  private static double odds(
      Circuit circuit, WrongScale scale, WiringFaults wiring, SlipCosts costs) {
    Judged judged = scale.mended().get(0);
    boolean blocks = judged.expected().throughParts().filter(ThroughParts::mayBeOpen).isPresent();
    double pen = ofThePen(costs) * scale.digits() * (blocks ? SHOWS_A_VALUE : 1);
    if (judged.value() == ValueVerdict.LOW) {
      return pen / (pen + costs.rateOf("gauge other") * FAR_GAUGE);
    }
    double ohms = judged.seen().middleOhms();
    double width =
        scale.expected().isKnown()
            ? Math.log(scale.expected().highOhms() / scale.expected().lowOhms())
            : Math.log(WITHOUT_A_LENGTH);
    double ofTheUnit = wiring.explains(judged) ? Math.exp(-wiring.costOf(List.of(judged))) : 0;
    if (judged.outcome() == Outcome.UNEXPECTED_JOIN) {
      // A short, or a part of next to no ohms, that has just this value.
      return pen / (pen + ofTheUnit * width / Math.log(VALUES_OF_PARTS));
    }
    double other =
        judged.expected().isJoined()
            ? rateOfPoor(circuit, judged, costs) * costs.densityOfPoor(ohms) * ohms * width
                + ofTheUnit
            : costs.rateOf("part other-value")
                * (width / Math.log(VALUES_OF_PARTS) + ofAnotherMultiplier(circuit, judged));
    return pen / (pen + other);
  }

  /** How often another resistor reads as listed but for a power of ten: one colour band. */
  private static double ofAnotherMultiplier(Circuit circuit, Judged judged) {
    boolean isAResistor =
        judged.expected().throughParts().stream()
            .flatMap(through -> through.parts().stream())
            .allMatch(part -> circuit.part(part).kind() == Part.Kind.RESISTOR);
    return isAResistor ? ANOTHER_MULTIPLIER : 0;
  }

  /** How often any conductor on the way of a reading has a poor joint. */
  private static double rateOfPoor(Circuit circuit, Judged judged, SlipCosts costs) {
    return circuit
        .in(judged.reading().state())
        .path(judged.probing().from()[0], judged.probing().to()[0])
        .stream()
        .mapToDouble(one -> Math.exp(-costs.ofPoor(circuit.conductors().get(one))))
        .sum();
  }

  private void pointMisplaced(WrongScale scale, double odds) {
    Judged judged = scale.mended().get(0);
    List<Alternative> others =
        otherwise(unit.circuit(), judged)
            .map(fact -> List.of(new Alternative(1 - odds, List.of(fact))))
            .orElse(List.of());
    faults.add(
        new Fault.Misscaled(
            Finding.alone(Certainty.LIKELY, List.of(judged), others), scale.times(), false));
    leave(left.without(List.of(judged)));
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
    leave(leads.comparison());
    leadsAreKnown = true;
  }

  private void slipped(RowSlip slip) {
    Set<Judged> inForce = new HashSet<>(left.inForce());
    List<Judged> shown = slip.failing().stream().filter(inForce::contains).toList();
    faults.add(
        new Fault.SlippedRows(
            Finding.alone(Certainty.LIKELY, shown, List.of()),
            slip.rows().size(),
            slip.step(),
            slip.first()));
    leave(slip.putRight(unit.circuit(), unit.limits(), left));
    slipped.add(slip);
  }

  List<Fault> faults() {
    return faults;
  }

  /** Values that a slip of the pen may have made, with the odds against a poor joint. */
  Map<Judged, Alternative> maybeOfThePen() {
    return maybeOfThePen;
  }

  /** Readings that may be of other rows, for rows about them slipped, and were made but once. */
  Predicate<Judged> inDoubt() {
    Set<Reading> readTwice =
        left.readTwiceAlike().stream().map(Judged::reading).collect(Collectors.toSet());
    return judged ->
        slipped.stream().anyMatch(slip -> slip.mayHold(judged, ROWS_BELOW))
            && !readTwice.contains(judged.reading());
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

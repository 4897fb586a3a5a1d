package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Predictor;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Observed;
import dev.ringout.compare.Outcome;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The readings as evidence: which of them does a unit with given slips contradict? Only readings at
 * nets that a slip touches can change; of the many that hold two points apart, only those are
 * looked up whose points the slips join.
 */
final class Evidence {
  private static final double MOST_TIMES = 4;

  private final Circuit circuit;
  private final Predictor predictor;
  private final Map<SwitchState, OfState> byState = new HashMap<>();
  private final Agreement agreement;

  /** The readings of one state, by the listed nets that their probes touch. */
  static final class OfState {
    final Map<Integer, List<Judged>> readings = new HashMap<>();
    final Map<Integer, OfNet> nets = new HashMap<>();
  }

  /**
   * The readings at one net.
   *
   * @param told those whose prediction must be computed
   * @param apart those that hold a point of the net and one of another net apart, by their points
   */
  record OfNet(List<Judged> told, Map<Long, Judged> apart) {}

  private Evidence(Circuit circuit, Predictor predictor) {
    this.circuit = circuit;
    this.predictor = predictor;
    agreement = new Agreement(circuit);
  }

  static Evidence of(Circuit circuit, Predictor predictor, List<Judged> inForce) {
    Evidence evidence = new Evidence(circuit, predictor);
    inForce.forEach(evidence::take);
    return evidence;
  }

  private void take(Judged judged) {
    agreement.take(judged);
    if (leadsAround(judged)) {
      agreement.takeValueOfParts(judged);
    }
    if (says(judged)) {
      OfState ofState = byState.computeIfAbsent(judged.reading().state(), state -> new OfState());
      for (int net : netsOf(judged)) {
        ofState.readings.computeIfAbsent(net, key -> new ArrayList<>(2)).add(judged);
      }
    }
  }

  /** Whether a join reads what parts have that lead around a conductor of it, were that open. */
  private boolean leadsAround(Judged judged) {
    if (judged.outcome() != Outcome.RESISTIVE
        || !judged.expected().isJoined()
        || !judged.probing().isPair()
        || judged.reading().measured().value().isEmpty()
        || circuit.harness().parts().isEmpty()) {
      return false;
    }
    Nets listed = circuit.in(judged.reading().state());
    return listed.path(judged.probing().from()[0], judged.probing().to()[0]).stream()
        .filter(listed::isCutEdge)
        .flatMap(
            conductor ->
                predict(judged.probing(), List.of(new Slip.Missing(conductor)))
                    .throughParts()
                    .stream())
        .anyMatch(parts -> isTelling(parts) && parts.allows(judged.seen()));
  }

  /** What may read nearly anything says nothing. */
  private static boolean isTelling(ThroughParts parts) {
    return parts.lowOhms() > 0 && parts.highOhms() < MOST_TIMES * parts.lowOhms();
  }

  /** Whether a reading says anything about what is joined. */
  private static boolean says(Judged judged) {
    return judged.observed() != Observed.UNKNOWN
        || (judged.outcome() == Outcome.PART_VALUE && judged.reading().measured().made());
  }

  /** The listed nets that a reading's probes touch. */
  Set<Integer> netsOf(Judged judged) {
    Nets nets = circuit.in(judged.reading().state());
    Set<Integer> touched = new LinkedHashSet<>();
    judged.probing().points().forEach(point -> touched.add(nets.of(point)));
    return touched;
  }

  /** The readings at nets that slips touch, of those that say anything about what is joined. */
  Stream<Judged> at(List<Slip> slips) {
    return byState.entrySet().stream()
        .flatMap(
            entry ->
                nets(slips, entry.getKey()).touchedNets().stream()
                    .flatMap(
                        net -> entry.getValue().readings.getOrDefault(net, List.of()).stream()));
  }

  /** The states in which readings were made. */
  Set<SwitchState> states() {
    return byState.keySet();
  }

  SlippedNets nets(List<Slip> slips, SwitchState state) {
    return new SlippedNets(circuit, state, slips);
  }

  Expected predict(Judged judged, SlippedNets nets, List<Slip> slips) {
    return predict(probing(judged, slips), nets);
  }

  /** Whether a reading is what a unit with slips would give. */
  boolean agrees(Judged judged, SlippedNets nets, List<Slip> slips) {
    Optional<Judged> row =
        slips.stream()
            .flatMap(slip -> slip.asExchanged().stream())
            .flatMap(exchanged -> exchanged.shownBy(judged).stream())
            .findFirst();
    if (row.isPresent()) {
      // Its value is what that row expects: the slips must leave it so.
      return predict(row.get().probing(), slips).isLike(row.get().expected());
    }
    Probing probing = probing(judged, slips);
    return agreement.of(judged, probing, nets, predict(probing, nets));
  }

  /** Where the probes really were. */
  private static Probing probing(Judged judged, List<Slip> slips) {
    for (Slip slip : slips) {
      Optional<Probing> really = slip.asMisread().flatMap(misread -> misread.probingOf(judged));
      if (really.isPresent()) {
        return really.get();
      }
    }
    return judged.probing();
  }

  /** What a reading, made or not, would find on a unit with slips. */
  Expected predict(Probing probing, List<Slip> slips) {
    return predict(probing, nets(slips, probing.state()));
  }

  /** What a reading would find in nets that slips have made. */
  Expected predict(Probing probing, SlippedNets nets) {
    return predictor.expect(probing, circuit.in(probing.state()), nets, nets.altered());
  }

  /**
   * The readings that a unit with these slips would not give.
   *
   * @param failing readings that the unit as listed does not give; they count until explained
   */
  List<Judged> contradicted(List<Slip> slips, List<Judged> failing) {
    Set<Judged> against = new LinkedHashSet<>();
    for (Map.Entry<SwitchState, OfState> entry : byState.entrySet()) {
      new Trial(circuit, this, entry.getKey(), entry.getValue(), slips, against).run(failing);
    }
    return List.copyOf(against);
  }

  /** Whether a reading between the same two nets was made, so that it is known what is read. */
  boolean isMade(Probing probing, ThroughParts expected, SlippedNets nets) {
    OfState ofState = byState.get(probing.state());
    if (ofState == null || !probing.isPair()) {
      return false;
    }
    boolean isAlikeReversed =
        expected.parts().stream()
            .allMatch(part -> circuit.part(part).kind().readsTheSameReversed());
    int from = nets.groupOf(probing.from()[0]);
    int to = nets.groupOf(probing.to()[0]);
    int listed = circuit.in(probing.state()).of(probing.from()[0]);
    return ofState.readings.getOrDefault(listed, List.of()).stream()
        .map(Judged::probing)
        .filter(Probing::isPair)
        .anyMatch(
            made -> {
              int one = nets.groupOf(made.from()[0]);
              int other = nets.groupOf(made.to()[0]);
              return (one == from && other == to)
                  || (isAlikeReversed && one == to && other == from);
            });
  }

  /** Whether what is beside a part was read with a lead of the part off its point. */
  boolean isReadWithLifted(int part) {
    return byState.entrySet().stream()
        .filter(entry -> entry.getKey().isLifted(circuit.part(part)))
        .anyMatch(
            entry ->
                entry
                    .getValue()
                    .readings
                    .containsKey(circuit.in(entry.getKey()).of(circuit.fromOfPart(part))));
  }

  /** Values that some part of the unit has, read where none of it is listed. */
  Set<Judged> valuesOfParts() {
    return agreement.valuesOfParts();
  }
}

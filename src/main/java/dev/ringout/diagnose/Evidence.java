package dev.ringout.diagnose;

import dev.ringout.circuit.AlteredPart;
import dev.ringout.circuit.AlteredPart.How;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.Expected.Apart;
import dev.ringout.circuit.Expected.Joined;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Predictor;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Observed;
import dev.ringout.compare.Outcome;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Measured;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The readings as evidence: which of them does a unit with given slips contradict? */
final class Evidence {
  private final Circuit circuit;
  private final Predictor predictor;
  private final Map<SwitchState, Map<Integer, List<Judged>>> byNet = new HashMap<>();
  private final Set<Judged> valuesOfParts = new HashSet<>();

  Evidence(Circuit circuit, Predictor predictor, List<Judged> inForce) {
    this.circuit = circuit;
    this.predictor = predictor;
    for (Judged judged : inForce) {
      if (PartValues.isOfAPart(judged, circuit)) {
        valuesOfParts.add(judged);
      }
      if (says(judged)) {
        Map<Integer, List<Judged>> ofState =
            byNet.computeIfAbsent(judged.reading().state(), state -> new HashMap<>());
        for (int net : netsOf(judged)) {
          ofState.computeIfAbsent(net, key -> new ArrayList<>(2)).add(judged);
        }
      }
    }
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

  /** The states in which readings were made. */
  Set<SwitchState> states() {
    return byNet.keySet();
  }

  SlippedNets nets(List<Slip> slips, SwitchState state) {
    return new SlippedNets(circuit, state, slips);
  }

  Expected predict(Judged judged, SlippedNets nets, List<Slip> slips) {
    return predict(judged.probing(), nets, slips);
  }

  /** What a reading, made or not, would find on a unit with slips. */
  Expected predict(Probing probing, List<Slip> slips) {
    return predict(probing, nets(slips, probing.state()), slips);
  }

  private Expected predict(Probing probing, SlippedNets nets, List<Slip> slips) {
    return predictor.expect(probing, circuit.in(probing.state()), nets, altered(slips));
  }

  Map<Integer, AlteredPart> altered(List<Slip> slips) {
    Map<Integer, AlteredPart> altered = new HashMap<>();
    for (Slip slip : slips) {
      if (slip instanceof Slip.FaultyPart one) {
        How how =
            switch (one.how()) {
              case MISSING -> How.MISSING;
              case OTHER_VALUE -> How.ANY_VALUE;
              case REVERSED, OTHER_POINTS -> How.AT_THESE_POINTS;
            };
        altered.put(one.part(), new AlteredPart(how, one.from(), one.to()));
      }
    }
    return altered;
  }

  /**
   * The readings that a unit with these slips would not give.
   *
   * @param failing readings that the unit as listed does not give; they count until explained
   */
  List<Judged> contradicted(List<Slip> slips, List<Judged> failing) {
    Set<Judged> against = new LinkedHashSet<>();
    for (SwitchState state : states()) {
      SlippedNets nets = nets(slips, state);
      Map<Integer, List<Judged>> ofState = byNet.getOrDefault(state, Map.of());
      Set<Judged> touched = new LinkedHashSet<>();
      for (int net : touchedNets(nets, slips, state)) {
        touched.addAll(ofState.getOrDefault(net, List.of()));
      }
      for (Judged judged : failing) {
        if (judged.reading().state().equals(state)) {
          touched.add(judged);
        }
      }
      for (Judged judged : touched) {
        if (!agrees(judged, predict(judged, nets, slips))) {
          against.add(judged);
        }
      }
    }
    return List.copyOf(against);
  }

  private Set<Integer> touchedNets(SlippedNets nets, List<Slip> slips, SwitchState state) {
    Set<Integer> touched = new LinkedHashSet<>(nets.affectedNets());
    Nets listed = circuit.in(state);
    altered(slips)
        .forEach(
            (part, now) -> {
              touched.add(listed.of(circuit.index(circuit.part(part).from())));
              touched.add(listed.of(circuit.index(circuit.part(part).to())));
              touched.add(listed.of(now.from()));
              touched.add(listed.of(now.to()));
            });
    // A part carries a change of its net on to the nets behind it.
    for (int net : List.copyOf(touched)) {
      for (int part : listed.partsAt(net)) {
        touched.add(listed.of(circuit.index(circuit.part(part).from())));
        touched.add(listed.of(circuit.index(circuit.part(part).to())));
      }
    }
    return touched;
  }

  /** Values that were read where nothing is listed, and that some part of the unit has. */
  Set<Judged> valuesOfParts() {
    return valuesOfParts;
  }

  /** Whether a reading is what the prediction says. */
  private boolean agrees(Judged judged, Expected predicted) {
    boolean throughPartsAsListed =
        judged.expected() instanceof ThroughParts
            && judged.outcome() == Outcome.CONFORMS
            && judged.observed() != Observed.APART;
    if (predicted instanceof ThroughParts parts) {
      return agrees(judged, parts);
    }
    boolean valueOfAPart =
        valuesOfParts.contains(judged)
            || (judged.expected() instanceof ThroughParts
                && judged.observed() == Observed.RESISTIVE);
    if (throughPartsAsListed || (valueOfAPart && predicted instanceof Apart)) {
      // A value was read, and with nothing between the sides there is none.
      return false;
    }
    boolean joined = predicted instanceof Joined;
    return switch (judged.observed()) {
      case JOINED -> joined;
      case APART -> predicted instanceof Apart;
      // A poor joint still conducts, a leak does not join: both are told apart elsewhere.
      case RESISTIVE -> joined == (judged.expected() instanceof Joined);
      case UNKNOWN -> judged.outcome() != Outcome.PART_VALUE;
    };
  }

  private static boolean agrees(Judged judged, ThroughParts predicted) {
    Measured measured = judged.reading().measured();
    if (measured instanceof Measured.Word) {
      return judged.observed() == Observed.JOINED
          ? predicted.lowOhms() <= judged.limit().ohms()
          : predicted.mayBeOpen() || judged.outcome() == Outcome.CONFORMS;
    }
    if (judged.observed() == Observed.APART) {
      // What should conduct and does not is no part that may or may not.
      return judged.outcome() == Outcome.PART_VALUE
          ? Double.isInfinite(predicted.lowOhms())
          : predicted.mayBeOpen();
    }
    if (measured instanceof Measured.Value) {
      return predicted.allows(judged.seen());
    }
    return judged.observed() == Observed.JOINED
        ? predicted.lowOhms() <= judged.limit().ohms()
        : predicted.mayBeOpen();
  }
}

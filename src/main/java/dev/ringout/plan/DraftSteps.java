package dev.ringout.plan;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.Expected.Apart;
import dev.ringout.circuit.InsulationLimits;
import dev.ringout.circuit.InsulationLimits.InsulationLimit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.JoinLimits.JoinLimit;
import dev.ringout.circuit.Predictor;
import dev.ringout.circuit.Probing;
import dev.ringout.plan.Step.Purpose;
import dev.ringout.readings.Meter;
import dev.ringout.readings.Reading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** The steps so far, each probing but once, with what a good unit shows. */
final class DraftSteps {
  private final Circuit circuit;
  private final JoinLimits limits;
  private final InsulationLimits insulation;
  private final Predictor predictor;
  private final List<Step> steps = new ArrayList<>();
  private final Set<String> planned = new HashSet<>();

  DraftSteps(Circuit circuit, JoinLimits limits) {
    this.circuit = circuit;
    this.limits = limits;
    this.insulation = new InsulationLimits(circuit);
    this.predictor = new Predictor(circuit, limits.resistances());
  }

  List<Step> steps() {
    return steps;
  }

  boolean hasInsulation() {
    return steps.stream().anyMatch(step -> step.kind() == Reading.Kind.INSULATION);
  }

  /** A continuity reading that need not be taken again. */
  void taken(Probing probing) {
    planned.add(key(probing, false));
  }

  void add(Probing probing, Purpose purpose, String ofWhat) {
    if (!planned.add(key(probing, purpose == Purpose.PART))) {
      return;
    }
    Expected expected = predictor.asListed(probing);
    Bounds bounds = expected.match(new BoundsOf(probing));
    steps.add(
        new Step(
            steps.size() + 1,
            Reading.Kind.CONTINUITY,
            probing,
            expected,
            bounds.minOhms(),
            bounds.maxOhms(),
            OptionalDouble.empty(),
            purpose,
            ofWhat,
            false));
  }

  void addInsulation(Probing probing) {
    if (!planned.add("insulation " + key(probing, false))) {
      return;
    }
    InsulationLimit limit = insulation.of(probing);
    steps.add(
        new Step(
            steps.size() + 1,
            Reading.Kind.INSULATION,
            probing,
            new Apart(),
            OptionalDouble.of(limit.minOhms()),
            OptionalDouble.empty(),
            OptionalDouble.of(limit.volts()),
            Purpose.APART,
            "",
            false));
  }

  /** What is read again only if asked for: the same two sides, either way round but at a diode. */
  private static String key(Probing probing, boolean oneWay) {
    String from = Arrays.toString(probing.from());
    String to = probing.toRest() ? "REST" : Arrays.toString(probing.to());
    boolean swapped = !oneWay && from.compareTo(to) > 0;
    return (swapped ? to + from : from + to) + oneWay + probing.state();
  }

  /** The least and the most that passes, where there is one. */
  private record Bounds(OptionalDouble minOhms, OptionalDouble maxOhms) {}

  /** What passes of a continuity reading, by what it is to find. */
  private final class BoundsOf implements Expected.Cases<Bounds> {
    private final Probing probing;

    BoundsOf(Probing probing) {
      this.probing = probing;
    }

    @Override
    public Bounds joined(Expected.Joined expected) {
      JoinLimit limit = limits.of(probing, Meter.UNKNOWN);
      return new Bounds(
          limit.expected().isKnown()
              ? OptionalDouble.of(limit.expected().lowOhms())
              : OptionalDouble.empty(),
          OptionalDouble.of(limit.ohms()));
    }

    @Override
    public Bounds apart(Apart expected) {
      return new Bounds(
          OptionalDouble.of(circuit.harness().limits().openMinOhms()), OptionalDouble.empty());
    }

    /** Parts that block both ways read as nets apart do. */
    @Override
    public Bounds throughParts(Expected.ThroughParts expected) {
      if (Double.isInfinite(expected.lowOhms())) {
        return apart(new Apart());
      }
      return new Bounds(
          OptionalDouble.of(expected.lowOhms()),
          Double.isInfinite(expected.highOhms())
              ? OptionalDouble.empty()
              : OptionalDouble.of(expected.highOhms()));
    }
  }
}

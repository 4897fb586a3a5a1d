package dev.ringout.benchmarks.faults;

import dev.ringout.benchmarks.faults.Rig.Joint;
import dev.ringout.benchmarks.faults.Rig.JointKind;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Probing;
import dev.ringout.harness.SwitchState;
import dev.ringout.plan.Step;
import dev.ringout.plan.TestPlan;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** A planned sheet filled by a meter at a rig: the steps of the plan, measured. */
final class PlannedSheet {
  private final Circuit circuit;
  private final Rig paper;
  private final Rig bench;

  private PlannedSheet(Circuit circuit, Rig paper, Rig bench) {
    this.circuit = circuit;
    this.paper = paper;
    this.bench = bench;
  }

  static ReadingSet filled(TestPlan plan, Rig paper, Rig bench) {
    PlannedSheet sheet = new PlannedSheet(plan.circuit(), paper, bench);
    List<Reading> readings = new ArrayList<>();
    plan.steps().forEach(step -> readings.add(sheet.reading(step)));
    return new ReadingSet(readings, List.of());
  }

  private Reading reading(Step step) {
    double ohms = measure(step);
    Measured measured =
        Double.isInfinite(ohms)
            ? new Measured.OverRange(OptionalDouble.of(Rig.OVER_RANGE_OHMS))
            : new Measured.Value(Math.round(ohms * 1000) / 1000.0, 0.0005);
    boolean insulation = step.kind() == Reading.Kind.INSULATION;
    return step.read(
        circuit,
        measured,
        new Place("plan.xlsx", insulation ? "Insulation" : "Continuity", step.number() + 1, 8));
  }

  private double measure(Step step) {
    Probing probing = step.probing();
    Rig listed = standing(paper, probing);
    Rig real = standing(bench, probing);
    Map<String, String> state = new TreeMap<>(probing.state().positions());
    state.values().removeIf(SwitchState.LIFTED::equals);
    int from = point(real, probing.from()[0]);
    boolean insulation = step.kind() == Reading.Kind.INSULATION;
    if (probing.toRest()) {
      return insulation
          ? real.insulationToRest(from, listed, state)
          : real.continuityToRest(from, listed, state);
    }
    int to = point(real, probing.to()[0]);
    return insulation ? real.insulation(from, to, state) : real.continuity(from, to, state);
  }

  /** A rig with the points of each side tied together and the lifted wires off. */
  private Rig standing(Rig rig, Probing probing) {
    if (probing.from().length <= 1
        && probing.to().length <= 1
        && !probing.state().positions().containsValue(SwitchState.LIFTED)) {
      return rig;
    }
    Rig now = rig.copy();
    probing
        .state()
        .positions()
        .forEach(
            (name, position) -> {
              if (position.equals(SwitchState.LIFTED)) {
                now.joints.removeIf(joint -> joint.name.equals(name));
              }
            });
    tie(now, probing.from());
    tie(now, probing.to());
    now.changed();
    return now;
  }

  private void tie(Rig rig, int[] points) {
    for (int i = 1; i < points.length; i++) {
      rig.joints.add(
          new Joint(
              "tied",
              JointKind.BRIDGE,
              point(rig, points[0]),
              point(rig, points[i]),
              0.001,
              "",
              ""));
    }
  }

  private int point(Rig rig, int point) {
    return rig.point(circuit.point(point).toString());
  }
}

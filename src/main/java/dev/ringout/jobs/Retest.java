package dev.ringout.jobs;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.plan.Step;
import dev.ringout.plan.TestPlan;
import dev.ringout.readings.Reading;
import dev.ringout.revision.Rework;
import dev.ringout.revision.Step.Do;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A reading to take again after rework.
 *
 * @param step as the plan has it
 * @param why which wire was touched, or which item was opened
 */
public record Retest(Step step, String from, String to, String why) {

  /** Every reading of a plan, with its reason. */
  public static List<Retest> of(TestPlan plan, Rework rework) {
    Set<String> touched = new HashSet<>();
    rework.steps().stream()
        .filter(step -> step.what() == Do.CONNECT)
        .forEach(step -> touched.add(step.wire()));
    rework.cut().forEach(wire -> touched.add(wire.name()));
    Map<Integer, Set<String>> openedOn = new HashMap<>();
    Circuit circuit = plan.circuit();
    Set<String> opened = rework.opened();
    for (int point = 0; point < circuit.size(); point++) {
      String ref = circuit.point(point).ref();
      if (opened.contains(ref)) {
        openedOn.computeIfAbsent(circuit.normal().of(point), net -> new TreeSet<>()).add(ref);
      }
    }
    List<Retest> retests = new ArrayList<>();
    for (Step step : plan.steps()) {
      retests.add(
          new Retest(
              step,
              side(circuit, step.probing().from()),
              step.probing().toRest() ? "REST" : side(circuit, step.probing().to()),
              why(circuit, step, touched, openedOn)));
    }
    return List.copyOf(retests);
  }

  private static String side(Circuit circuit, int[] points) {
    List<String> names = new ArrayList<>();
    for (int point : points) {
      names.add(circuit.point(point).toString());
    }
    return String.join(" ", names);
  }

  private static String why(
      Circuit circuit, Step step, Set<String> touched, Map<Integer, Set<String>> openedOn) {
    int[] from = step.probing().from();
    if (step.kind() == Reading.Kind.CONTINUITY && step.probing().isPair()) {
      int to = step.probing().to()[0];
      List<String> wires = new ArrayList<>();
      if (circuit.normal().of(from[0]) == circuit.normal().of(to)) {
        for (int conductor : circuit.normal().path(from[0], to)) {
          if (circuit.conductors().get(conductor) instanceof Conductor.OfWire one
              && touched.contains(one.wire().name())) {
            wires.add(one.wire().name());
          }
        }
      }
      if (!wires.isEmpty()) {
        return Text.of("%s touched", String.join(", ", wires));
      }
    }
    Set<String> items = new TreeSet<>();
    for (int[] side : new int[][] {from, step.probing().to()}) {
      for (int point : side) {
        items.addAll(openedOn.getOrDefault(circuit.normal().of(point), Set.of()));
      }
    }
    String what = step.kind() == Reading.Kind.CONTINUITY ? "" : "isolation: ";
    return what
        + (items.isEmpty() ? "beside what was touched" : String.join(", ", items) + " opened");
  }
}

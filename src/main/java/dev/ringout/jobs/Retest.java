package dev.ringout.jobs;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Probing;
import dev.ringout.harness.Wire;
import dev.ringout.plan.Step;
import dev.ringout.plan.TestPlan;
import dev.ringout.readings.Reading;
import dev.ringout.revision.RetestReason;
import dev.ringout.revision.ReworkOrder;
import dev.ringout.revision.ReworkStep.Do;
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
 * @param why what was done that makes it necessary
 */
public record Retest(Step step, String from, String to, RetestReason why) {

  /** Every reading of a plan, with its reason. */
  public static List<Retest> of(TestPlan plan, ReworkOrder rework) {
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

  private static RetestReason why(
      Circuit circuit, Step step, Set<String> touched, Map<Integer, Set<String>> openedOn) {
    boolean isolation = step.kind() != Reading.Kind.CONTINUITY;
    if (!isolation && step.probing().isPair()) {
      List<String> wires = touchedBetween(circuit, step.probing(), touched);
      if (!wires.isEmpty()) {
        return new RetestReason.WiresTouched(wires);
      }
    }
    Set<String> items = new TreeSet<>();
    for (int[] side : new int[][] {step.probing().from(), step.probing().to()}) {
      for (int point : side) {
        items.addAll(openedOn.getOrDefault(circuit.normal().of(point), Set.of()));
      }
    }
    return items.isEmpty()
        ? new RetestReason.BesideTheWork(isolation)
        : new RetestReason.ItemsOpened(List.copyOf(items), isolation);
  }

  /** The touched wires on the way from one point to another; none where they are apart. */
  private static List<String> touchedBetween(
      Circuit circuit, Probing probing, Set<String> touched) {
    List<String> wires = new ArrayList<>();
    Nets nets = circuit.in(probing.state());
    int from = probing.from()[0];
    int to = probing.to()[0];
    if (nets.of(from) == nets.of(to)) {
      for (int conductor : nets.path(from, to)) {
        circuit
            .conductors()
            .get(conductor)
            .asWire()
            .map(Wire::name)
            .filter(touched::contains)
            .ifPresent(wires::add);
      }
    }
    return List.copyOf(wires);
  }
}

package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.diagnose.wiring.Search.Explanation;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What every possible reading would find under an explanation: the partition of the points in every
 * state.
 */
final class Signatures {
  private final Circuit circuit;
  private final Evidence evidence;

  /** The points that any of the explanations touches, in every state. */
  private final Map<SwitchState, Set<Integer>> pointsThatMatter = new LinkedHashMap<>();

  Signatures(Circuit circuit, Evidence evidence, List<Explanation> all) {
    this.circuit = circuit;
    this.evidence = evidence;
    Set<Integer> normally = pointsThatMatter(all, SwitchState.normal());
    pointsThatMatter.put(SwitchState.normal(), normally);
    for (SwitchState state : states()) {
      Set<Integer> points = pointsThatMatter(all, state);
      // Where the same nets have the same conductors, it is what the normal state says.
      if (!points.equals(normally)
          || !conductors(points, state).equals(conductors(normally, SwitchState.normal()))) {
        pointsThatMatter.put(state, points);
      }
    }
  }

  private Set<Integer> conductors(Set<Integer> points, SwitchState state) {
    Nets nets = circuit.in(state);
    Set<Integer> conductors = new HashSet<>();
    points.stream()
        .mapToInt(nets::of)
        .distinct()
        .forEach(net -> IntStream.of(nets.conductorsOf(net)).forEach(conductors::add));
    return conductors;
  }

  private Set<SwitchState> states() {
    Set<SwitchState> states = new LinkedHashSet<>();
    states.add(SwitchState.normal());
    states.addAll(evidence.states());
    for (Switch one : circuit.harness().switches()) {
      for (String position : one.states()) {
        states.add(SwitchState.normal().with(one, position));
      }
    }
    return states;
  }

  /** Equal for explanations that no reading could tell apart. */
  Object of(Explanation explanation) {
    List<Object> signature = new ArrayList<>();
    signature.add(evidence.nets(explanation.slips(), SwitchState.normal()).altered());
    // What a meter at the listed points would not tell apart by what is joined.
    signature.add(
        explanation.slips().stream()
            .filter(slip -> slip.asPoor().isPresent())
            .collect(Collectors.toSet()));
    // Where the probe was no reading can show any more, only that it was not where it should be.
    signature.add(
        explanation.slips().stream()
            .flatMap(slip -> slip.asMisread().stream())
            .map(Slip.Misread::judged)
            .collect(Collectors.toSet()));
    signature.add(
        explanation.slips().stream()
            .filter(slip -> slip.asExchanged().isPresent())
            .collect(Collectors.toSet()));
    pointsThatMatter.forEach(
        (state, points) -> {
          SlippedNets nets = evidence.nets(explanation.slips(), state);
          List<Integer> groups = new ArrayList<>();
          Map<Integer, Integer> number = new HashMap<>();
          for (int point : points) {
            groups.add(number.computeIfAbsent(nets.groupOf(point), key -> number.size()));
          }
          signature.add(groups);
        });
    return signature;
  }

  private Set<Integer> pointsThatMatter(List<Explanation> all, SwitchState state) {
    Set<Integer> points = new TreeSet<>();
    Set<Integer> nets = new TreeSet<>();
    for (Explanation explanation : all) {
      nets.addAll(evidence.nets(explanation.slips(), state).affectedNets());
    }
    for (int net : nets) {
      for (int point : circuit.in(state).pointsOf(net)) {
        points.add(point);
      }
    }
    return points;
  }
}

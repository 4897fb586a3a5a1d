package dev.ringout.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Requirements;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.standards.HandMovements;
import dev.ringout.standards.Tables;
import dev.ringout.support.PublishedLimits;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Wires in rings with several contacts that are closed at rest: each end of a wire at each other
 * point of its net, and each two ends exchanged, must change what some step of the plan shows, if
 * there are any positions of the switches in which it makes a difference. What is joined is told by
 * laying label over label.
 */
class EndsInPlaceBruteForceTest {
  private static final int UNITS = 60;

  private static final List<String> TERMINALS =
      List.of("S1-C1", "S1-NC1", "S1-C2", "S1-NC2", "S2-X", "S2-4", "K1-11", "K1-12");

  @TempDir Path folder;

  /** Where the ends of each conductor are. */
  private record Ends(List<Integer> from, List<Integer> to) {
    static Ends listed(Circuit circuit) {
      List<Integer> all = IntStream.range(0, circuit.conductors().size()).boxed().toList();
      return new Ends(
          all.stream().map(circuit::from).toList(), all.stream().map(circuit::to).toList());
    }

    Ends with(int conductor, boolean far, int point) {
      List<Integer> changed = new ArrayList<>(far ? to : from);
      changed.set(conductor, point);
      return far ? new Ends(from, changed) : new Ends(changed, to);
    }

    int at(int conductor, boolean far) {
      return (far ? to : from).get(conductor);
    }
  }

  @Test
  void every_end_moved_and_every_two_exchanged_show_in_some_step() {
    assertAllSeen(UNITS, (circuit, steps) -> steps);
  }

  /** Whatever a shop leaves out of the sheet: what is proven is shown by what was read. */
  @Test
  void the_fewest_readings_that_prove_everything_show_them_too() {
    assertAllSeen(UNITS / 3, EndsInPlaceBruteForceTest::fewest);
  }

  private void assertAllSeen(int units, BiFunction<Circuit, List<Step>, List<Step>> taken) {
    int changes = 0;
    List<String> unseen = new ArrayList<>();
    for (int seed = 0; seed < units; seed++) {
      Circuit circuit = unit(seed);
      TestPlan plan =
          Planner.plan(
              circuit,
              PublishedLimits.of(circuit),
              new HandMovements(Tables.published()),
              PlanOptions.ALL);
      if (!plan.coverage().isComplete()) {
        // Two in parallel, say: then the plan says so.
        continue;
      }
      List<Step> steps = taken.apply(circuit, plan.steps());
      Ends listed = Ends.listed(circuit);
      for (Ends changed : changes(circuit, listed)) {
        if (isAnother(circuit, listed, changed)) {
          changes++;
          if (steps.stream().noneMatch(step -> tells(circuit, listed, changed, step.probing()))) {
            unseen.add("seed " + seed + ": " + told(circuit, listed, changed));
          }
        }
      }
    }
    assertEquals(List.of(), unseen);
    assertTrue(changes > 50 * units, changes + " changes");
  }

  private static List<Step> fewest(Circuit circuit, List<Step> steps) {
    JoinLimits limits = PublishedLimits.of(circuit);
    Requirements requirements = Requirements.of(circuit, limits);
    List<Step> left = new ArrayList<>(steps);
    List<Step> order = new ArrayList<>(steps);
    Collections.shuffle(order, new Random(steps.size()));
    for (Step one : order) {
      List<Step> without = new ArrayList<>(left);
      without.remove(one);
      Comparison comparison = Comparison.of(circuit, limits, GoodUnit.readings(circuit, without));
      if (requirements.shownBy(comparison).isComplete()) {
        left = without;
      }
    }
    return left;
  }

  private static boolean tells(Circuit circuit, Ends listed, Ends changed, Probing probing) {
    return reads(circuit, listed, listed, probing) != reads(circuit, listed, changed, probing);
  }

  /** Six to nine wires between four contacts, closed at rest, and a connector. */
  private Circuit unit(int seed) {
    Random random = new Random(seed);
    UnitUnderTest unit = new UnitUnderTest(folder.resolve("" + seed)).withoutInsulationTest();
    unit.contact("S1,CLEAR,C1,NC1").contact("S1,CLEAR,C2,NC2").contact("S1,MADE,,");
    unit.contact("S2,A,X,4").contact("S2,B,X,4").contact("S2,D,,");
    unit.contact("K1,REST,11,12").contact("K1,PULLED,,");
    List<String> points = new ArrayList<>(TERMINALS);
    List.of("J1-1", "J1-2", "J1-3", "J1-4").forEach(points::add);
    int wires = 6 + random.nextInt(4);
    for (int wire = 1; wire <= wires; wire++) {
      String from = points.get(random.nextInt(points.size()));
      String to = from;
      while (to.equals(from)) {
        to = points.get(random.nextInt(points.size()));
      }
      unit.wire("W" + wire + "," + from + "," + to);
    }
    unit.pin("J1,8,").pin("J1,9,");
    return unit.reads("J1-9", "J1-8", "").check().circuit();
  }

  private static List<Ends> changes(Circuit circuit, Ends listed) {
    List<Ends> changes = new ArrayList<>();
    List<Integer> wires = wires(circuit);
    for (int wire : wires) {
      for (boolean far : new boolean[] {false, true}) {
        for (int point : circuit.normal().pointsOf(circuit.normal().of(listed.at(wire, far)))) {
          changes.add(listed.with(wire, far, point));
        }
        for (int other : wires) {
          for (boolean otherFar : new boolean[] {false, true}) {
            if (other > wire
                && circuit.normal().of(listed.at(wire, far))
                    == circuit.normal().of(listed.at(other, otherFar))) {
              changes.add(
                  listed
                      .with(wire, far, listed.at(other, otherFar))
                      .with(other, otherFar, listed.at(wire, far)));
            }
          }
        }
      }
    }
    return changes;
  }

  private static List<Integer> wires(Circuit circuit) {
    List<Integer> wires = new ArrayList<>();
    for (int conductor = 0; conductor < circuit.conductors().size(); conductor++) {
      if (circuit.isWire(conductor)) {
        wires.add(conductor);
      }
    }
    return wires;
  }

  /** Whether something is joined otherwise in any positions of all switches. */
  private static boolean isAnother(Circuit circuit, Ends listed, Ends changed) {
    return positions(List.copyOf(circuit.harness().switches()), 0, SwitchState.normal()).stream()
        .anyMatch(
            state ->
                !Arrays.equals(labels(circuit, listed, state), labels(circuit, changed, state)));
  }

  private static List<SwitchState> positions(List<Switch> switches, int from, SwitchState state) {
    if (from == switches.size()) {
      return List.of(state);
    }
    return switches.get(from).states().stream()
        .flatMap(
            position ->
                positions(switches, from + 1, state.with(switches.get(from), position)).stream())
        .toList();
  }

  /** Whether the two sides of a reading are joined. */
  private static boolean reads(Circuit circuit, Ends listed, Ends ends, Probing probing) {
    int[] now = labels(circuit, ends, probing.state());
    Set<Integer> from =
        Arrays.stream(probing.from()).mapToObj(point -> now[point]).collect(Collectors.toSet());
    if (!probing.toRest()) {
      return Arrays.stream(probing.to()).anyMatch(point -> from.contains(now[point]));
    }
    int[] asListed = labels(circuit, listed, probing.state());
    Set<Integer> own =
        Arrays.stream(probing.from())
            .mapToObj(point -> asListed[point])
            .collect(Collectors.toSet());
    boolean joined = false;
    for (int point = 0; point < now.length; point++) {
      joined |= !own.contains(asListed[point]) && from.contains(now[point]);
    }
    return joined;
  }

  private static int[] labels(Circuit circuit, Ends ends, SwitchState state) {
    int[] label = new int[circuit.size()];
    Arrays.setAll(label, point -> point);
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int c = 0; c < ends.from().size(); c++) {
        int one = ends.from().get(c);
        int other = ends.to().get(c);
        if (label[one] != label[other] && circuit.isClosed(c, state)) {
          label[one] = Math.min(label[one], label[other]);
          label[other] = label[one];
          changed = true;
        }
      }
    }
    return label;
  }

  private static String told(Circuit circuit, Ends listed, Ends changed) {
    StringBuilder told = new StringBuilder();
    for (int c = 0; c < listed.from().size(); c++) {
      if (!(listed.from().get(c).equals(changed.from().get(c))
          && listed.to().get(c).equals(changed.to().get(c)))) {
        told.append(circuit.conductors().get(c).label())
            .append(" now ")
            .append(circuit.point(changed.from().get(c)))
            .append(" to ")
            .append(circuit.point(changed.to().get(c)))
            .append("; ");
      }
    }
    return told.toString();
  }
}

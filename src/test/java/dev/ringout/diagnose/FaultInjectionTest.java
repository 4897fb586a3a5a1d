package dev.ringout.diagnose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.check.CheckResult;
import dev.ringout.check.CheckResult.Verdict;
import dev.ringout.circuit.Conductor;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.Fault.Miswire;
import dev.ringout.diagnose.Fault.Open;
import dev.ringout.diagnose.Fault.Shorted;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Random units with planted slips, every pair of points read. Judged by physics: with the reported
 * faults applied, the listed unit must be joined as the broken one is. The bench shares no code
 * with the diagnosis.
 */
class FaultInjectionTest {
  @TempDir Path folder;

  /** A unit as joints by name; a joint is two points. */
  private static final class Joints {
    final Map<String, String[]> joints = new LinkedHashMap<>();
    final Set<String> points = new java.util.TreeSet<>();

    void join(String name, String from, String to) {
      joints.put(name, new String[] {from, to});
      points.add(from);
      points.add(to);
    }

    Joints copy() {
      Joints copy = new Joints();
      joints.forEach((name, ends) -> copy.joints.put(name, ends.clone()));
      copy.points.addAll(points);
      return copy;
    }

    String[] ends(String name) {
      String[] ends = joints.get(name);
      if (ends == null) {
        throw new AssertionError("no joint " + name);
      }
      return ends;
    }

    Map<String, String> groups() {
      Map<String, String> group = new TreeMap<>();
      points.forEach(point -> group.put(point, point));
      for (String[] ends : joints.values()) {
        String old = group.getOrDefault(ends[0], "");
        String now = group.getOrDefault(ends[1], "");
        group.replaceAll((point, one) -> one.equals(old) ? now : one);
      }
      return group;
    }

    boolean joinedAs(Joints other) {
      Map<String, String> mine = groups();
      Map<String, String> theirs = other.groups();
      for (String one : points) {
        for (String two : points) {
          boolean here = mine.getOrDefault(one, "").equals(mine.getOrDefault(two, ""));
          boolean there = theirs.getOrDefault(one, "").equals(theirs.getOrDefault(two, ""));
          if (here != there) {
            return false;
          }
        }
      }
      return true;
    }
  }

  private static Joints unit(Random random) {
    Joints unit = new Joints();
    int wires = 5 + random.nextInt(5);
    for (int i = 1; i <= wires; i++) {
      String to = random.nextInt(4) == 0 ? "TB1-" + (1 + random.nextInt(3)) : "P2-" + i;
      unit.join("W" + i, "J1-" + i, to);
    }
    unit.join("the link TB1-1/2", "TB1-1", "TB1-2");
    unit.join("the link TB1-2/3", "TB1-2", "TB1-3");
    for (int spare = wires + 1; spare <= wires + 2; spare++) {
      unit.points.add("J1-" + spare);
      unit.points.add("P2-" + spare);
    }
    return unit;
  }

  private static void plant(Joints unit, Random random, Set<String> touched) {
    List<String> wires =
        unit.joints.keySet().stream()
            .filter(name -> name.startsWith("W") && !touched.contains(name))
            .toList();
    String wire = wires.get(random.nextInt(wires.size()));
    touched.add(wire);
    String[] ends = unit.ends(wire);
    switch (random.nextInt(4)) {
      case 0 -> unit.joints.remove(wire);
      case 1 -> {
        String other = wires.get(random.nextInt(wires.size()));
        touched.add(other);
        String[] otherEnds = unit.ends(other);
        String end = ends[0];
        ends[0] = otherEnds[0];
        otherEnds[0] = end;
      }
      case 2 -> {
        List<String> pins = unit.points.stream().filter(point -> point.startsWith("J1-")).toList();
        ends[0] = pins.get(random.nextInt(pins.size()));
      }
      default -> {
        List<String> points = List.copyOf(unit.points);
        unit.join("bridge " + touched.size(), ends[1], points.get(random.nextInt(points.size())));
      }
    }
  }

  private CheckResult check(Joints listed, Joints actual, String name) {
    UnitUnderTest unit = new UnitUnderTest(folder.resolve(name));
    listed.joints.forEach(
        (joint, ends) -> {
          if (joint.startsWith("W")) {
            unit.wire(joint + "," + ends[0] + "," + ends[1]);
          } else {
            unit.link("," + ends[0] + "," + ends[1]);
          }
        });
    listed.points.forEach(point -> unit.pin(point.replace('-', ',') + ","));
    Map<String, String> groups = actual.groups();
    List<String> points = List.copyOf(listed.points);
    for (int i = 0; i < points.size(); i++) {
      for (int j = i + 1; j < points.size(); j++) {
        boolean joined =
            groups.getOrDefault(points.get(i), "").equals(groups.getOrDefault(points.get(j), ""));
        unit.reads(points.get(i), points.get(j), joined ? "0.2" : "OL");
      }
    }
    return unit.check();
  }

  private static Joints withFaults(Joints listed, List<Fault> faults) {
    Joints unit = listed.copy();
    int bridge = 0;
    for (Fault fault : faults) {
      if (fault instanceof Open open) {
        Conductor suspect = open.suspects().get(0);
        unit.joints.remove(suspect.label());
      } else if (fault instanceof Shorted) {
        unit.join(
            "reported bridge " + bridge++,
            fault.points().get(0).toString(),
            fault.points().get(1).toString());
      } else if (fault instanceof Miswire miswire) {
        for (Move move : miswire.moves()) {
          String[] ends = unit.ends(move.wire().name());
          ends[move.wire().from().equals(move.from()) ? 0 : 1] = move.to().toString();
        }
      }
    }
    return unit;
  }

  @Test
  void a_good_unit_never_raises_a_fault() {
    for (int seed = 0; seed < 60; seed++) {
      Joints unit = unit(new Random(seed));
      CheckResult result = check(unit, unit, "good" + seed);
      assertEquals(0, result.diagnosis().faults().size(), "seed " + seed);
      assertTrue(result.verdict() != Verdict.FAULTS, "seed " + seed);
    }
  }

  @Test
  void one_slip_is_one_fault_that_explains_every_reading() {
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      Joints listed = unit(random);
      Joints actual = listed.copy();
      plant(actual, random, new HashSet<>());
      if (actual.joinedAs(listed)) {
        continue;
      }
      CheckResult result = check(listed, actual, "one" + seed);
      List<Fault> faults = result.diagnosis().faults();
      assertEquals(1, faults.size(), "seed " + seed + ": " + faults);
      assertTrue(withFaults(listed, faults).joinedAs(actual), "seed " + seed + ": " + faults);
      assertEverythingIsExplained(result, "seed " + seed);
    }
  }

  @Test
  void two_slips_are_explained_by_no_more_than_two_faults() {
    int exact = 0;
    int all = 0;
    for (int seed = 1000; seed < 1100; seed++) {
      Random random = new Random(seed);
      Joints listed = unit(random);
      Joints actual = listed.copy();
      Set<String> touched = new HashSet<>();
      plant(actual, random, touched);
      plant(actual, random, touched);
      if (actual.joinedAs(listed)) {
        continue;
      }
      CheckResult result = check(listed, actual, "two" + seed);
      List<Fault> faults = result.diagnosis().faults();
      all++;
      if (faults.size() <= 2 && withFaults(listed, faults).joinedAs(actual)) {
        exact++;
      }
      assertEverythingIsExplained(result, "seed " + seed);
    }
    assertTrue(exact >= all * 0.9, exact + " of " + all);
  }

  /** No failing reading is lost: it shows a fault, or stands as unexplained. */
  private static void assertEverythingIsExplained(CheckResult result, String label) {
    Set<Judged> accounted = new HashSet<>(result.diagnosis().unexplained());
    List<Judged> shown = new ArrayList<>();
    result.diagnosis().faults().forEach(fault -> shown.addAll(fault.finding().readings()));
    accounted.addAll(shown);
    assertTrue(accounted.containsAll(result.comparison().failing()), label);
  }
}

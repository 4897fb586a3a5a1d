package dev.ringout.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.ringout.check.CheckResult;
import dev.ringout.compare.Coverage.Tally;
import dev.ringout.support.UnitUnderTest;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Coverage against brute force: on random small units with random readings of a good unit, what the
 * program calls proven is what a slow, plain computation calls proven. The slow one shares no code.
 */
class CoverageProofTest {
  @TempDir Path folder;

  private record Step(List<Integer> from, List<Integer> to, boolean rest) {}

  @Test
  void proven_joins_pairs_and_wires_agree_with_brute_force() {
    for (int seed = 0; seed < 400; seed++) {
      Random random = new Random(seed);
      int points = 3 + random.nextInt(7);
      int wireCount = 1 + random.nextInt(points + 2);
      int[][] wires = new int[wireCount][];
      UnitUnderTest unit = new UnitUnderTest(folder.resolve("seed" + seed));
      for (int point = 0; point < points; point++) {
        unit.pin("V," + point + ",");
      }
      for (int wire = 0; wire < wireCount; wire++) {
        int from = random.nextInt(points);
        int to = (from + 1 + random.nextInt(points - 1)) % points;
        wires[wire] = new int[] {from, to};
        unit.wire("W" + wire + ",V-" + from + ",V-" + to);
      }
      int[] net = groups(points, Arrays.asList(wires));
      List<Step> tests = new ArrayList<>();
      for (int i = 0; i < 2 * points; i++) {
        Step test = randomTest(random, points);
        boolean joined = joined(test, net, net);
        String from = side(test.from());
        String to = test.rest() ? "REST" : side(test.to());
        unit.reads(from, to, joined ? "0.1" : "OL");
        tests.add(test);
      }
      CheckResult result = unit.check();
      assertEquals(0, result.comparison().failing().size(), "a good unit fails nothing");
      String label = "seed " + seed;
      int[] island = islands(points, tests, net);
      assertEquals(joins(points, net, island), result.coverage().joins(), label);
      assertEquals(pairs(points, net, island, tests), result.coverage().isolation(), label);
      assertEquals(wires(points, wires, net, tests), result.coverage().wires(), label);
    }
  }

  private static Step randomTest(Random random, int points) {
    List<Integer> shuffled = new ArrayList<>();
    for (int point = 0; point < points; point++) {
      shuffled.add(point);
    }
    java.util.Collections.shuffle(shuffled, random);
    int kind = random.nextInt(5);
    if (kind == 0) {
      return new Step(shuffled.subList(0, 1), List.of(), true);
    }
    if (kind == 1) {
      return new Step(shuffled.subList(0, 2), shuffled.subList(2, 3), false);
    }
    if (kind == 2 && random.nextBoolean()) {
      return new Step(shuffled.subList(0, 2), List.of(), true);
    }
    return new Step(shuffled.subList(0, 1), shuffled.subList(1, 2), false);
  }

  private static String side(List<Integer> points) {
    return points.stream().map(point -> "V-" + point).collect(Collectors.joining("+"));
  }

  private static int[] groups(int points, List<int[]> edges) {
    int[] group = new int[points];
    for (int point = 0; point < points; point++) {
      group[point] = point;
    }
    for (int[] edge : edges) {
      int old = group[edge[0]];
      int now = group[edge[1]];
      for (int point = 0; point < points; point++) {
        if (group[point] == old) {
          group[point] = now;
        }
      }
    }
    return group;
  }

  private static Set<Integer> otherSide(Step test, int[] listedNet) {
    if (!test.rest()) {
      return new HashSet<>(test.to());
    }
    Set<Integer> own = new HashSet<>();
    test.from().forEach(point -> own.add(listedNet[point]));
    Set<Integer> rest = new HashSet<>();
    for (int point = 0; point < listedNet.length; point++) {
      if (!own.contains(listedNet[point])) {
        rest.add(point);
      }
    }
    return rest;
  }

  private static boolean joined(Step test, int[] listedNet, int[] actual) {
    Set<Integer> other = otherSide(test, listedNet);
    return test.from().stream()
        .anyMatch(from -> other.stream().anyMatch(to -> actual[from] == actual[to]));
  }

  private static int[] islands(int points, List<Step> tests, int[] net) {
    List<int[]> joins = new ArrayList<>();
    for (Step test : tests) {
      if (!test.rest() && test.from().size() == 1 && joined(test, net, net)) {
        joins.add(new int[] {test.from().get(0), test.to().get(0)});
      }
    }
    return groups(points, joins);
  }

  private static Tally joins(int points, int[] net, int[] island) {
    return new Tally(points - distinct(net), points - distinct(island));
  }

  private static long distinct(int[] groups) {
    return Arrays.stream(groups).distinct().count();
  }

  private static Tally pairs(int points, int[] net, int[] island, List<Step> tests) {
    long needed = 0;
    long proven = 0;
    List<Integer> nets = Arrays.stream(net).distinct().boxed().toList();
    for (int i = 0; i < nets.size(); i++) {
      for (int j = i + 1; j < nets.size(); j++) {
        needed++;
        boolean apart = true;
        for (int a = 0; a < points; a++) {
          for (int b = 0; b < points; b++) {
            if (net[a] == nets.get(i) && net[b] == nets.get(j)) {
              apart &= separated(island[a], island[b], net, island, tests);
            }
          }
        }
        proven += apart ? 1 : 0;
      }
    }
    return new Tally(needed, proven);
  }

  private static boolean separated(int one, int other, int[] net, int[] island, List<Step> tests) {
    for (Step test : tests) {
      if (joined(test, net, net)) {
        continue;
      }
      Set<Integer> from =
          test.from().stream().map(point -> island[point]).collect(Collectors.toSet());
      Set<Integer> to =
          otherSide(test, net).stream().map(point -> island[point]).collect(Collectors.toSet());
      if ((from.contains(one) && to.contains(other))
          || (from.contains(other) && to.contains(one))) {
        return true;
      }
    }
    return false;
  }

  /** A wire is proven if, were it alone missing, some reading would have come out otherwise. */
  private static Tally wires(int points, int[][] wires, int[] net, List<Step> tests) {
    long proven = 0;
    for (int missing = 0; missing < wires.length; missing++) {
      List<int[]> left = new ArrayList<>(Arrays.asList(wires));
      left.remove(missing);
      int[] actual = groups(points, left);
      boolean shown = false;
      for (Step test : tests) {
        shown |= joined(test, net, net) && !joined(test, net, actual);
      }
      proven += shown ? 1 : 0;
    }
    return new Tally(wires.length, proven);
  }
}

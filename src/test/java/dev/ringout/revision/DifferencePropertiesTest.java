package dev.ringout.revision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.jgrapht.Graph;
import org.jgrapht.alg.isomorphism.VF2GraphIsomorphismInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for any two revisions; random units, seeded. */
class DifferencePropertiesTest {
  static IntStream seeds() {
    return IntStream.range(0, 80);
  }

  static Difference diff(Harness before, Harness after) {
    return Difference.of(
        before, after, new Difference.Options(Map.of(), true, ref -> ref.startsWith("TB"), false));
  }

  private static RandomUnit unit(int seed, Random random) {
    int[] sizes = {20, 35, 60, 100, 150, 250};
    int size = seed == 7 ? 5000 : seed == 8 ? 1500 : sizes[seed % sizes.length];
    return new RandomUnit(random, size, seed % 5 != 4);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void a_list_does_not_differ_from_itself_sorted_and_turned_otherwise(int seed) {
    RandomUnit unit = unit(seed, new Random(seed));
    Harness before = unit.harness();
    assertTrue(diff(before, before).isEmpty());
    unit.shuffleAndFlip();
    Difference difference = diff(before, unit.harness());
    assertEquals(List.of(), difference.changes());
    assertTrue(difference.isEmpty());
    assertTrue(difference.isElectricallySame());
  }

  /** Wires as they are, whichever end is listed first. */
  private static Map<String, Integer> counted(List<Wire> wires) {
    Map<String, Integer> counted = new TreeMap<>();
    for (Wire wire : wires) {
      String name = wire.name().contains(">") ? "" : wire.name();
      boolean flip = wire.from().compareTo(wire.to()) > 0;
      StringBuilder text = new StringBuilder(name + " ");
      text.append(new TreeSet<>(List.of(wire.from(), wire.to())));
      for (Field field : Field.values()) {
        Field own =
            flip && field == Field.FROM_CONTACT
                ? Field.TO_CONTACT
                : flip && field == Field.TO_CONTACT ? Field.FROM_CONTACT : field;
        text.append('|').append(own.of(wire));
      }
      counted.merge(text.toString(), 1, Integer::sum);
    }
    return counted;
  }

  /** What the changes alone make of the earlier list; the later is not looked at. */
  private static Map<String, Integer> applied(Difference difference) {
    Map<Wire, Map<Field, String>> fields = new HashMap<>();
    Map<Wire, List<Point>> ends = new HashMap<>();
    Map<Wire, String> names = new HashMap<>();
    List<Wire> wires = new ArrayList<>(difference.before().wires());
    List<Wire> added = new ArrayList<>();
    for (Change.Removed one : difference.changes(Change.Removed.class)) {
      assertTrue(wires.remove(one.wire()));
    }
    difference.changes(Change.Added.class).forEach(one -> added.add(one.wire()));
    for (Change.Moved moved : difference.changes(Change.Moved.class)) {
      List<Point> points = new ArrayList<>(List.of(moved.before().from(), moved.before().to()));
      moved.ends().forEach(end -> points.set(points.indexOf(end.from()), end.to()));
      ends.put(moved.before(), points);
    }
    for (Change.Renumbered one : difference.changes(Change.Renumbered.class)) {
      names.put(one.before(), one.after().name());
    }
    for (Change.Altered one : difference.changes(Change.Altered.class)) {
      assertEquals(one.old(), one.field().of(one.before()));
      fields.computeIfAbsent(one.before(), w -> new HashMap<>()).put(one.field(), one.now());
    }
    Map<String, Integer> counted = counted(added);
    for (Wire wire : wires) {
      List<Point> points = ends.getOrDefault(wire, List.of(wire.from(), wire.to()));
      boolean flip = points.get(0).compareTo(points.get(1)) > 0;
      String name = names.getOrDefault(wire, wire.name());
      StringBuilder text = new StringBuilder((name.contains(">") ? "" : name) + " ");
      text.append(new TreeSet<>(points));
      for (Field field : Field.values()) {
        Field own =
            flip && field == Field.FROM_CONTACT
                ? Field.TO_CONTACT
                : flip && field == Field.TO_CONTACT ? Field.FROM_CONTACT : field;
        text.append('|')
            .append(fields.getOrDefault(wire, Map.of()).getOrDefault(own, own.of(wire)));
      }
      counted.merge(text.toString(), 1, Integer::sum);
    }
    return counted;
  }

  private static Set<Set<Point>> nets(Harness harness) {
    Map<Point, Set<Point>> netOf = new HashMap<>();
    List<List<Point>> joins = new ArrayList<>();
    harness.wires().forEach(wire -> joins.add(List.of(wire.from(), wire.to())));
    harness.links().forEach(link -> joins.add(List.of(link.from(), link.to())));
    for (List<Point> join : joins) {
      Set<Point> net = new HashSet<>(join);
      join.forEach(point -> net.addAll(netOf.getOrDefault(point, Set.of())));
      net.forEach(point -> netOf.put(point, net));
    }
    return new HashSet<>(netOf.values());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void the_changes_make_the_later_list_of_the_earlier(int seed) {
    Random random = new Random(1000 + seed);
    RandomUnit unit = unit(seed, random);
    Harness before = unit.harness();
    int edits = 1 + random.nextInt(Math.max(2, unit.wires.size() / 8));
    for (int i = 0; i < edits; i++) {
      unit.edit();
    }
    unit.shuffleAndFlip();
    Harness after = unit.harness();
    Difference difference = diff(before, after);
    assertEquals(counted(after.wires()), applied(difference));
    assertEquals(
        after.wires().size(),
        before.wires().size()
            - difference.changes(Change.Removed.class).size()
            + difference.changes(Change.Added.class).size());
    assertEquals(nets(before).equals(nets(after)), difference.isElectricallySame());
  }

  /** Changed nets and no others are given, each with all its points before and after. */
  @ParameterizedTest
  @MethodSource("seeds")
  void the_changed_nets_are_those_that_are_in_one_list_only(int seed) {
    Random random = new Random(5000 + seed);
    RandomUnit unit = unit(seed % 6, random);
    Harness before = unit.harness();
    for (int i = 0; i < 4; i++) {
      unit.edit();
    }
    Harness after = unit.harness();
    Set<Set<Point>> gone = new HashSet<>(nets(before));
    gone.removeAll(nets(after));
    Set<Set<Point>> come = new HashSet<>(nets(after));
    come.removeAll(nets(before));
    Set<Set<Point>> saidGone = new HashSet<>();
    Set<Set<Point>> saidCome = new HashSet<>();
    for (NetChange change : diff(before, after).nets()) {
      change.before().stream().filter(n -> n.size() > 1).forEach(n -> saidGone.add(Set.copyOf(n)));
      change.after().stream().filter(n -> n.size() > 1).forEach(n -> saidCome.add(Set.copyOf(n)));
    }
    assertEquals(gone, saidGone);
    assertEquals(come, saidCome);
  }

  /**
   * ReworkStep by step: no cavity ever holds two wires, each item is opened once, and B is the end.
   */
  @ParameterizedTest
  @MethodSource("seeds")
  void the_work_can_be_done_in_its_order_and_ends_at_the_later_list(int seed) {
    Random random = new Random(9000 + seed);
    RandomUnit unit = unit(seed == 7 ? 8 : seed, random);
    Harness before = unit.harness();
    int edits = 1 + random.nextInt(Math.max(2, unit.wires.size() / 5));
    for (int i = 0; i < edits; i++) {
      unit.edit();
    }
    Difference difference = diff(before, unit.harness());
    ReworkOrder rework = ReworkOrder.of(difference);
    List<String> opened = new ArrayList<>();
    rework.visits().forEach(visit -> opened.addAll(visit.items()));
    assertEquals(new HashSet<>(opened).size(), opened.size(), "each item once");
    Map<Point, Integer> mostIn = new HashMap<>();
    most(difference.before(), mostIn);
    most(difference.after(), mostIn);
    Map<Point, Integer> in = new HashMap<>();
    most(difference.before(), in);
    Bench bench = new Bench(difference, rework);
    for (ReworkStep step : rework.steps()) {
      bench.step(step);
      if (step.what() == ReworkStep.Do.DISCONNECT) {
        in.merge(step.at(), -1, Integer::sum);
      } else if (step.what() == ReworkStep.Do.CONNECT) {
        int now = in.merge(step.at(), 1, Integer::sum);
        assertTrue(now <= mostIn.getOrDefault(step.at(), 0), "two wires in " + step.at());
      }
    }
    List<Set<Point>> ends = new ArrayList<>();
    for (Bench.Ends wire : bench.wires()) {
      assertEquals(wire.from().isPresent(), wire.to().isPresent(), "no end hangs free");
      if (wire.from().isPresent()) {
        ends.add(Set.of(wire.from().get(), wire.to().get()));
      }
    }
    Map<Set<Point>, Integer> reached = new HashMap<>();
    ends.forEach(pair -> reached.merge(pair, 1, Integer::sum));
    Map<Set<Point>, Integer> wanted = new HashMap<>();
    unit.wires.forEach(wire -> wanted.merge(Set.of(wire.from(), wire.to()), 1, Integer::sum));
    assertEquals(wanted, reached);
    assertEquals(Set.copyOf(difference.after().links()), Set.copyOf(bench.links()));
  }

  private static void most(Harness harness, Map<Point, Integer> most) {
    Map<Point, Integer> in = new HashMap<>();
    for (Wire wire : harness.wires()) {
      in.merge(wire.from(), 1, Integer::sum);
      in.merge(wire.to(), 1, Integer::sum);
    }
    in.forEach((point, wires) -> most.merge(point, wires, Math::max));
  }

  /** JGraphT's VF2: a graph of nets and their points, points told apart by their names. */
  @ParameterizedTest
  @MethodSource("seeds")
  void electrically_the_same_is_what_graph_isomorphism_says(int seed) {
    Random random = new Random(20_000 + seed);
    RandomUnit unit = new RandomUnit(random, 20, true);
    Harness before = unit.harness();
    for (int i = random.nextInt(3); i > 0; i--) {
      unit.edit();
    }
    unit.shuffleAndFlip();
    Harness after = unit.harness();
    assertEquals(
        new VF2GraphIsomorphismInspector<>(
                graph(before, after),
                graph(after, before),
                (one, other) ->
                    one.startsWith("net") && other.startsWith("net") ? 0 : one.compareTo(other),
                (unused, unusedToo) -> 0)
            .isomorphismExists(),
        diff(before, after).isElectricallySame());
  }

  private static Graph<String, DefaultEdge> graph(Harness harness, Harness other) {
    Graph<String, DefaultEdge> graph = new SimpleGraph<>(DefaultEdge.class);
    harness.points().forEach(point -> graph.addVertex(point.toString()));
    other.points().forEach(point -> graph.addVertex(point.toString()));
    int number = 0;
    for (Set<Point> net : nets(harness)) {
      String name = "net" + number++;
      graph.addVertex(name);
      net.forEach(point -> graph.addEdge(name, Objects.toString(point)));
    }
    return graph;
  }

  /** The share of renames found, and that none is claimed that is not one. */
  @Test
  void renamed_connectors_are_found_by_where_their_wires_go_and_never_wrongly() {
    int renamed = 0;
    int found = 0;
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(40_000 + seed);
      RandomUnit unit = new RandomUnit(random, 40 + random.nextInt(160), seed % 3 != 0);
      Harness before = unit.harness();
      List<String> items = new ArrayList<>(unit.pinsOf.keySet());
      for (int i = 0; i < 1 + random.nextInt(3); i++) {
        String old = items.get(random.nextInt(items.size()));
        if (unit.pinsOf.containsKey(old) && unit.wireEnds(old) >= 5) {
          unit.rename(old, (old.startsWith("TB") ? "TB9" : "J9") + (10 + i));
        }
      }
      int edits = random.nextInt(1 + unit.wires.size() / 10);
      for (int i = 0; i < edits; i++) {
        unit.edit();
      }
      unit.shuffleAndFlip();
      Map<String, String> said = new HashMap<>();
      for (Rename rename : diff(before, unit.harness()).renames()) {
        assertEquals(Map.of(), rename.pins(), "seed " + seed);
        said.put(rename.oldRef(), rename.newRef());
      }
      renamed += unit.renamed.size();
      for (Map.Entry<String, String> one : said.entrySet()) {
        assertEquals(unit.renamed.get(one.getKey()), one.getValue(), "seed " + seed);
        found++;
      }
    }
    assertTrue(renamed > 300, "only " + renamed);
    assertTrue(found >= 0.95 * renamed, found + " of " + renamed);
  }

  /** Names handed on from one connector to the next, as when one is put in between. */
  @Test
  void names_that_went_from_one_connector_to_another_are_found() {
    RandomUnit unit = new RandomUnit(new Random(5), 60, true);
    Harness before = unit.harness();
    unit.rename("J2", "X");
    unit.rename("J1", "J2");
    unit.rename("X", "J1");
    Difference difference = diff(before, unit.harness());
    assertEquals(2, difference.renames().size());
    assertEquals(List.of(), difference.changes());
    assertTrue(difference.isElectricallySame());
  }

  @Test
  void letters_in_place_of_numbers_are_one_change_of_scheme() {
    RandomUnit unit = new RandomUnit(new Random(6), 60, false);
    Harness before = unit.harness();
    unit.letter("J1");
    Difference difference = diff(before, unit.harness());
    assertEquals(1, difference.renames().size());
    difference
        .renames()
        .get(0)
        .pins()
        .forEach((old, now) -> assertEquals(RandomUnit.letter(Integer.parseInt(old)), now));
    assertEquals(List.of(), difference.changes());
    assertTrue(difference.isElectricallySame());
  }

  /** A connector with a new name and lettered pins at once, and other edits beside. */
  @Test
  void a_new_scheme_under_a_new_name_is_found_and_no_pin_is_taken_for_another() {
    int found = 0;
    int tried = 0;
    for (int seed = 0; seed < 120; seed++) {
      Random random = new Random(70_000 + seed);
      RandomUnit unit = new RandomUnit(random, 40 + random.nextInt(100), true);
      Harness before = unit.harness();
      String old = "J" + (1 + random.nextInt(3));
      if (unit.wireEnds(old) < 6) {
        continue;
      }
      tried++;
      unit.letter(old);
      unit.rename(old, "J77");
      for (int i = random.nextInt(1 + unit.wires.size() / 10); i > 0; i--) {
        unit.edit();
      }
      for (Rename rename : diff(before, unit.harness()).renames()) {
        assertEquals(old, rename.oldRef(), "seed " + seed);
        assertEquals("J77", rename.newRef());
        rename
            .pins()
            .forEach(
                (pin, now) -> assertEquals(RandomUnit.letter(Integer.parseInt(pin)), now, "seed"));
        found += rename.pins().isEmpty() ? 0 : 1;
      }
    }
    assertTrue(tried > 90, "only " + tried);
    assertTrue(found >= 0.9 * tried, found + " of " + tried);
  }
}

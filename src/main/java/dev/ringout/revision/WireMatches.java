package dev.ringout.revision;

import dev.ringout.circuit.DisjointPoints;
import dev.ringout.circuit.LeastCost;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Which wire of the later revision is which of the earlier: the matching in which all together is
 * the least work. A wire is known by its number and by its ends; a list that gives neither the same
 * has another wire.
 *
 * @param pairs the wires that are in both
 * @param removed the wires that are gone
 * @param added the wires that are new
 * @param ties where another matching would be as little work
 */
record WireMatches(List<Pair> pairs, List<Wire> removed, List<Wire> added, List<String> ties) {
  private static final int END_MOVES = 20;
  private static final int BOTH_ENDS_MOVE = 45;
  private static final int NUMBER_CHANGES = 8;
  private static final int ALONE = 26;
  private static final int NEVER = 1000;

  /** More wires than this that may be each other are matched one by one. */
  private static final int MOST_TOGETHER = 160;

  /** A point with more wires of one signal than this tells nothing of who is who. */
  private static final int MOST_ALIKE = 12;

  /**
   * A wire in both revisions.
   *
   * @param flipped whether the later lists its ends the other way round
   */
  record Pair(Wire before, Wire after, boolean flipped) {}

  /** Matches the wires of two revisions, both by the names of the later. */
  static WireMatches of(List<Wire> before, List<Wire> after) {
    return new Matcher(before, after).match();
  }

  private static final class Matcher {
    private final List<Wire> before;
    private final List<Wire> after;
    private final int[] matchOf;
    private final boolean[] taken;
    private final List<String> ties = new ArrayList<>();

    Matcher(List<Wire> before, List<Wire> after) {
      this.before = before;
      this.after = after;
      this.matchOf = new int[before.size()];
      Arrays.fill(matchOf, -1);
      this.taken = new boolean[after.size()];
    }

    WireMatches match() {
      same();
      leastWork();
      List<Pair> pairs = new ArrayList<>();
      List<Wire> removed = new ArrayList<>();
      for (int i = 0; i < matchOf.length; i++) {
        if (matchOf[i] < 0) {
          removed.add(before.get(i));
        } else {
          Wire now = after.get(matchOf[i]);
          pairs.add(new Pair(before.get(i), now, isFlipped(before.get(i), now)));
        }
      }
      List<Wire> added = new ArrayList<>();
      for (int j = 0; j < taken.length; j++) {
        if (!taken[j]) {
          added.add(after.get(j));
        }
      }
      return new WireMatches(
          List.copyOf(pairs), List.copyOf(removed), List.copyOf(added), List.copyOf(ties));
    }

    private void take(int i, int j) {
      matchOf[i] = j;
      taken[j] = true;
    }

    /** Wires of one number between the same points: nothing is less work than none. */
    private void same() {
      Map<String, List<Integer>> later = new HashMap<>();
      for (int j = 0; j < after.size(); j++) {
        later.computeIfAbsent(identity(after.get(j)), k -> new ArrayList<>(1)).add(j);
      }
      Map<String, List<Integer>> earlier = new LinkedHashMap<>();
      for (int i = 0; i < before.size(); i++) {
        earlier.computeIfAbsent(identity(before.get(i)), k -> new ArrayList<>(1)).add(i);
      }
      earlier.forEach(
          (key, olds) -> {
            List<Integer> news = later.getOrDefault(key, List.of());
            if (olds.size() == 1 && news.size() == 1) {
              take(olds.get(0), news.get(0));
            } else if (!news.isEmpty()) {
              assign(olds, news);
            }
          });
    }

    private static String identity(Wire wire) {
      return (Renaming.isUnnamed(wire) ? "" : wire.name()) + "\t" + points(wire);
    }

    private static String points(Wire wire) {
      return wire.from().compareTo(wire.to()) <= 0
          ? wire.from() + "\t" + wire.to()
          : wire.to() + "\t" + wire.from();
    }

    /** Of the rest, those that may be each other are matched together. */
    private void leastWork() {
      List<Integer> olds = new ArrayList<>();
      List<Integer> news = new ArrayList<>();
      for (int i = 0; i < matchOf.length; i++) {
        if (matchOf[i] < 0) {
          olds.add(i);
        }
      }
      for (int j = 0; j < taken.length; j++) {
        if (!taken[j]) {
          news.add(j);
        }
      }
      DisjointPoints together = new DisjointPoints(olds.size() + news.size());
      Map<String, Integer> firstWith = new HashMap<>();
      Map<String, Integer> wiresWith = new HashMap<>();
      List<List<String>> keys = new ArrayList<>();
      olds.forEach(i -> keys.add(keys(before.get(i))));
      news.forEach(j -> keys.add(keys(after.get(j))));
      keys.forEach(some -> some.forEach(key -> wiresWith.merge(key, 1, Integer::sum)));
      for (int node = 0; node < keys.size(); node++) {
        for (String key : keys.get(node)) {
          boolean telling =
              !key.startsWith("signal") || wiresWith.getOrDefault(key, 0) <= MOST_ALIKE;
          Integer first = telling ? firstWith.putIfAbsent(key, node) : Integer.valueOf(node);
          if (first != null) {
            together.union(first, node);
          }
        }
      }
      Map<Integer, List<List<Integer>>> groups = new TreeMap<>();
      for (int node = 0; node < keys.size(); node++) {
        List<List<Integer>> group =
            groups.computeIfAbsent(
                together.firstOf(node), k -> List.of(new ArrayList<>(), new ArrayList<>()));
        if (node < olds.size()) {
          group.get(0).add(olds.get(node));
        } else {
          group.get(1).add(news.get(node - olds.size()));
        }
      }
      groups.values().forEach(group -> assign(group.get(0), group.get(1)));
    }

    /** By what a wire may be known again. */
    private static List<String> keys(Wire wire) {
      List<String> keys = new ArrayList<>();
      if (!Renaming.isUnnamed(wire)) {
        keys.add("name\t" + wire.name());
      }
      keys.add("points\t" + points(wire));
      if (!wire.signal().isEmpty()) {
        String signal = Field.plain(wire.signal());
        keys.add("signal\t" + wire.from() + "\t" + signal);
        keys.add("signal\t" + wire.to() + "\t" + signal);
      }
      return keys;
    }

    private void assign(List<Integer> olds, List<Integer> news) {
      if (olds.isEmpty() || news.isEmpty()) {
        return;
      }
      int size = olds.size() + news.size();
      if (size > MOST_TOGETHER) {
        oneByOne(olds, news);
        return;
      }
      int[][] costs = new int[size][size];
      for (int i = 0; i < size; i++) {
        for (int j = 0; j < size; j++) {
          boolean old = i < olds.size();
          boolean now = j < news.size();
          costs[i][j] =
              old && now
                  ? cost(before.get(olds.get(i)), after.get(news.get(j)))
                  : old || now ? ALONE : 0;
        }
      }
      int[] columnOf = LeastCost.assignment(costs);
      for (int i = 0; i < olds.size(); i++) {
        if (columnOf[i] < news.size()) {
          take(olds.get(i), news.get(columnOf[i]));
        }
      }
      findTies(olds, news, costs, columnOf);
    }

    /** Too many that may be each other: the least of all left, again and again. */
    private void oneByOne(List<Integer> olds, List<Integer> news) {
      for (int most : new int[] {0, NUMBER_CHANGES, END_MOVES, 2 * ALONE - 1}) {
        for (int i : olds) {
          for (int j : news) {
            if (matchOf[i] < 0 && !taken[j] && cost(before.get(i), after.get(j)) <= most) {
              take(i, j);
            }
          }
        }
      }
      ties.add(
          Text.of(
              "%d and %d wires from %s on could be each other: they were matched one by one",
              olds.size(), news.size(), before.get(olds.get(0)).name()));
    }

    /** Two that could change places at no more work, where the changes would be others. */
    private void findTies(List<Integer> olds, List<Integer> news, int[][] costs, int[] columnOf) {
      for (int i = 0; i < olds.size(); i++) {
        for (int k = i + 1; k < olds.size(); k++) {
          int own = costs[i][columnOf[i]] + costs[k][columnOf[k]];
          int crossed = costs[i][columnOf[k]] + costs[k][columnOf[i]];
          boolean someMatched = columnOf[i] < news.size() || columnOf[k] < news.size();
          if (own > 0 && own == crossed && someMatched) {
            ties.add(
                Text.of(
                    "%s and %s: which of the two is which in the later revision, the lists do not tell",
                    before.get(olds.get(i)).name(), before.get(olds.get(k)).name()));
          }
        }
      }
    }
  }

  private static int cost(Wire before, Wire after) {
    int ends = endsMoved(before, after, isFlipped(before, after));
    boolean named = !Renaming.isUnnamed(before) && !Renaming.isUnnamed(after);
    boolean sameName = named && before.name().equals(after.name());
    int differing = fieldsDiffering(before, after);
    if (ends > 0 && !sameName) {
      boolean sameSignal =
          !before.signal().isEmpty()
              && Field.same(before.signal(), after.signal())
              && Field.same(Field.COLOR.of(before), Field.COLOR.of(after))
              && Field.same(Field.GAUGE.of(before), Field.GAUGE.of(after));
      if (ends > 1 || !sameSignal) {
        return NEVER;
      }
    }
    int numbers = sameName || !named ? 0 : NUMBER_CHANGES;
    return numbers + (ends == 0 ? 0 : ends == 1 ? END_MOVES : BOTH_ENDS_MOVE) + differing;
  }

  private static int fieldsDiffering(Wire before, Wire after) {
    int differing = 0;
    for (Field field : Field.values()) {
      boolean contact = field == Field.FROM_CONTACT || field == Field.TO_CONTACT;
      if (!contact && !Field.same(field.of(before), field.of(after))) {
        differing += field.isOfTheWireItself() ? 2 : 1;
      }
    }
    return differing;
  }

  private static boolean isFlipped(Wire before, Wire after) {
    return endsMoved(before, after, true) < endsMoved(before, after, false);
  }

  private static int endsMoved(Wire before, Wire after, boolean flipped) {
    Point from = flipped ? after.to() : after.from();
    Point to = flipped ? after.from() : after.to();
    return (before.from().equals(from) ? 0 : 1) + (before.to().equals(to) ? 0 : 1);
  }
}

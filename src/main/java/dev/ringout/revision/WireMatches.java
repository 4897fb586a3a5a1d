package dev.ringout.revision;

import dev.ringout.circuit.DisjointPoints;
import dev.ringout.circuit.LeastCost;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

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
record WireMatches(List<Pair> pairs, List<Wire> removed, List<Wire> added, List<Unsure> ties) {
  private static final int END_MOVES = 20;
  private static final int BOTH_ENDS_MOVE = 45;
  private static final int NUMBER_CHANGES = 8;
  private static final int ALONE = 26;
  private static final int NEVER = 1000;

  /** More wires than this that may be each other are matched one by one. */
  private static final int MOST_TOGETHER = 160;

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
    private final List<Unsure> ties = new ArrayList<>();

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
      Map<WireClue.Identity, List<Integer>> later = new HashMap<>();
      for (int j = 0; j < after.size(); j++) {
        later.computeIfAbsent(WireClue.Identity.of(after.get(j)), k -> new ArrayList<>(1)).add(j);
      }
      Map<WireClue.Identity, List<Integer>> earlier = new LinkedHashMap<>();
      for (int i = 0; i < before.size(); i++) {
        earlier
            .computeIfAbsent(WireClue.Identity.of(before.get(i)), k -> new ArrayList<>(1))
            .add(i);
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

    /** Of the rest, those that may be each other are matched together. */
    private void leastWork() {
      List<Integer> olds = unmatchedBefore();
      List<Integer> news = unmatchedAfter();
      List<List<WireClue>> clues = new ArrayList<>();
      olds.forEach(i -> clues.add(WireClue.of(before.get(i))));
      news.forEach(j -> clues.add(WireClue.of(after.get(j))));
      DisjointPoints together = together(clues);
      Map<Integer, Group> groups = new TreeMap<>();
      for (int node = 0; node < clues.size(); node++) {
        Group group =
            groups.computeIfAbsent(
                together.firstOf(node), k -> new Group(new ArrayList<>(), new ArrayList<>()));
        if (node < olds.size()) {
          group.olds().add(olds.get(node));
        } else {
          group.news().add(news.get(node - olds.size()));
        }
      }
      groups.values().forEach(group -> assign(group.olds(), group.news()));
    }

    /** Wires that may be each other. */
    private record Group(List<Integer> olds, List<Integer> news) {}

    private List<Integer> unmatchedBefore() {
      return IntStream.range(0, matchOf.length).filter(i -> matchOf[i] < 0).boxed().toList();
    }

    private List<Integer> unmatchedAfter() {
      return IntStream.range(0, taken.length).filter(j -> !taken[j]).boxed().toList();
    }

    /** Wires that share a clue, by their places in the list of clues. */
    private static DisjointPoints together(List<List<WireClue>> clues) {
      Map<WireClue, Integer> wiresWith = new HashMap<>();
      clues.forEach(some -> some.forEach(clue -> wiresWith.merge(clue, 1, Integer::sum)));
      DisjointPoints together = new DisjointPoints(clues.size());
      Map<WireClue, Integer> firstWith = new HashMap<>();
      for (int node = 0; node < clues.size(); node++) {
        for (WireClue clue : clues.get(node)) {
          if (clue.tells(wiresWith.getOrDefault(clue, 0))) {
            firstWith.putIfAbsent(clue, node);
            together.union(firstWith.getOrDefault(clue, node), node);
          }
        }
      }
      return together;
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
      ties.add(new Unsure.MatchedOneByOne(olds.size(), news.size(), before.get(olds.get(0))));
    }

    /** Two that could change places at no more work, where the changes would be others. */
    private void findTies(List<Integer> olds, List<Integer> news, int[][] costs, int[] columnOf) {
      for (int i = 0; i < olds.size(); i++) {
        for (int k = i + 1; k < olds.size(); k++) {
          int own = costs[i][columnOf[i]] + costs[k][columnOf[k]];
          int crossed = costs[i][columnOf[k]] + costs[k][columnOf[i]];
          boolean someMatched = columnOf[i] < news.size() || columnOf[k] < news.size();
          if (own > 0 && own == crossed && someMatched) {
            ties.add(new Unsure.EitherOfTwo(before.get(olds.get(i)), before.get(olds.get(k))));
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

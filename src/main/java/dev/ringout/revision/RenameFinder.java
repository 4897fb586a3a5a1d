package dev.ringout.revision;

import dev.ringout.circuit.LeastCost;
import dev.ringout.harness.Harness;
import dev.ringout.harness.Item;
import dev.ringout.harness.NaturalOrder;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Finds which items of an earlier revision have another name in the later: by where their wires go,
 * never by how alike the names look. An item with fewer than {@value #LEAST_ENDS} wire ends is
 * never taken for another: a wire that was moved to a new stud looks the same.
 */
final class RenameFinder {
  private static final int LEAST_ENDS = 3;

  /** Of all ends of the item; the rest may be other changes of the same revision. */
  private static final double LEAST_SHARE = 0.6;

  /** Of the ends that agree with the next best: more, and nobody can tell which it is. */
  private static final double MOST_RIVAL = 0.5;

  /** An item whose wires hardly meet anything they met before may have given away its name. */
  private static final double DOUBTFUL_SHARE = 0.4;

  /** Of the smaller number of wired pins: pins of the old scheme that the new one has too. */
  private static final double MOST_COMMON_PINS = 0.1;

  private static final int SAME_FAR_POINT = 4;
  private static final int SAME_WIRE = 3;
  private static final int SAME_SIGNAL = 1;
  private static final int MOST_ASSIGNED = 250;

  private final Map<String, List<End>> oldEnds;
  private final Map<String, List<End>> newEnds;
  private final Map<String, String> oldKinds;
  private final Map<String, String> newKinds;
  private final Map<String, Set<String>> oldPins;
  private final Map<String, Set<String>> newPins;

  /** Every old item with its name in the later revision, as far as known. */
  private final Map<String, String> newRefOf = new LinkedHashMap<>();

  private final Map<String, String> oldRefOf = new HashMap<>();
  private final Map<String, Map<String, String>> newPinOf = new HashMap<>();
  private final List<Rename> found = new ArrayList<>();
  private final List<Rename> possible = new ArrayList<>();

  /** The end of a wire at an item. */
  private record End(String pin, Point far, String wire, String signal) {}

  private RenameFinder(Harness before, Harness after) {
    oldEnds = ends(before);
    newEnds = ends(after);
    oldKinds = kinds(before);
    newKinds = kinds(after);
    oldPins = pins(before);
    newPins = pins(after);
  }

  /** What was found. */
  record Result(Renaming renaming, List<Rename> renames, List<Rename> possible) {}

  /**
   * Finds the renames.
   *
   * @param told what the user said, old name to new
   * @param search whether others are looked for
   */
  static Result find(Harness before, Harness after, Map<String, String> told, boolean search) {
    RenameFinder finder = new RenameFinder(before, after);
    finder.asTold(told);
    finder.asNamed();
    if (search) {
      finder.doubt(told, unchanged(before, after));
      finder.search();
    }
    finder.asNamed();
    if (search) {
      finder.newRefOf.forEach(finder::pinScheme);
    }
    return finder.result(told);
  }

  private static Map<String, List<End>> ends(Harness harness) {
    Map<String, List<End>> ends = new LinkedHashMap<>();
    for (Wire wire : harness.wires()) {
      String name = Renaming.isUnnamed(wire) ? "" : wire.name();
      for (Wire.End end : Wire.End.values()) {
        Point here = wire.at(end);
        ends.computeIfAbsent(here.ref(), ref -> new ArrayList<>())
            .add(new End(here.pin(), wire.at(end.opposite()), name, wire.signal()));
      }
    }
    return ends;
  }

  private static Map<String, String> kinds(Harness harness) {
    Map<String, String> kinds = new HashMap<>();
    for (Item item : harness.items()) {
      kinds.put(item.ref(), item.kind());
    }
    return kinds;
  }

  private static Map<String, Set<String>> pins(Harness harness) {
    Map<String, Set<String>> pins = new LinkedHashMap<>();
    for (Point point : harness.pointsAsListed()) {
      pins.computeIfAbsent(point.ref(), ref -> new LinkedHashSet<>()).add(point.pin());
    }
    harness.items().forEach(item -> pins.computeIfAbsent(item.ref(), ref -> new LinkedHashSet<>()));
    return pins;
  }

  private void asTold(Map<String, String> told) {
    told.forEach(this::pair);
  }

  private void pair(String oldRef, String newRef) {
    newRefOf.put(oldRef, newRef);
    oldRefOf.put(newRef, oldRef);
  }

  /** Items of one name are one item; so are {@code J1}, {@code j1} and {@code J01}. */
  private void asNamed() {
    for (Function<String, String> spelling :
        List.<Function<String, String>>of(
            ref -> ref, ref -> ref.toUpperCase(Locale.ROOT), RenameFinder::spelling)) {
      Map<String, String> byKey = new HashMap<>();
      for (String ref : newPins.keySet()) {
        if (!oldRefOf.containsKey(ref)) {
          byKey.put(spelling.apply(ref), ref);
        }
      }
      for (String ref : oldPins.keySet()) {
        String same = byKey.get(spelling.apply(ref));
        if (same != null && !newRefOf.containsKey(ref) && !oldRefOf.containsKey(same)) {
          pair(ref, same);
        }
      }
    }
  }

  private static String spelling(String ref) {
    return ref.toUpperCase(Locale.ROOT).replaceAll("(?<![0-9])0+(?=[0-9])", "");
  }

  /** Takes back the pairs of one name whose wires say otherwise. */
  private void doubt(Map<String, String> told, Map<String, Integer> unchanged) {
    List<String> doubted = new ArrayList<>();
    newRefOf.forEach(
        (oldRef, newRef) -> {
          int ends = size(oldEnds, oldRef);
          boolean enough = ends >= LEAST_ENDS && size(newEnds, newRef) >= LEAST_ENDS;
          if (enough
              && !told.containsKey(oldRef)
              && unchanged.getOrDefault(oldRef, 0) <= DOUBTFUL_SHARE * ends
              && agreeing(oldRef, newRef) <= DOUBTFUL_SHARE * ends) {
            doubted.add(oldRef);
          }
        });
    for (String ref : doubted) {
      oldRefOf.remove(newRefOf.remove(ref));
    }
  }

  /** For each item how many of its wire ends have both points as they were: quickly told. */
  private static Map<String, Integer> unchanged(Harness before, Harness after) {
    Set<List<Point>> later = new HashSet<>();
    after.wires().forEach(wire -> later.add(List.of(wire.from(), wire.to())));
    Map<String, Integer> unchanged = new HashMap<>();
    for (Wire wire : before.wires()) {
      if (later.contains(List.of(wire.from(), wire.to()))
          || later.contains(List.of(wire.to(), wire.from()))) {
        unchanged.merge(wire.from().ref(), 1, Integer::sum);
        unchanged.merge(wire.to().ref(), 1, Integer::sum);
      }
    }
    return unchanged;
  }

  private static int size(Map<String, List<End>> ends, String ref) {
    return ends.getOrDefault(ref, List.of()).size();
  }

  private void search() {
    boolean more = true;
    while (more) {
      more = false;
      Set<String> gone = new TreeSet<>(oldPins.keySet());
      gone.removeAll(newRefOf.keySet());
      Set<String> come = new TreeSet<>(newPins.keySet());
      come.removeAll(oldRefOf.keySet());
      possible.clear();
      List<Rename> claims = claims(gone, come);
      claims.sort(Comparator.comparingInt(Rename::agreeing).reversed());
      for (Rename claim : claims) {
        if (!newRefOf.containsKey(claim.oldRef()) && !oldRefOf.containsKey(claim.newRef())) {
          pair(claim.oldRef(), claim.newRef());
          found.add(claim);
          more = true;
        }
      }
    }
  }

  /** Pairs that agree well, and with nobody else nearly as well. */
  private List<Rename> claims(Set<String> gone, Set<String> come) {
    Map<String, Set<String>> meeting = meeting(come);
    Map<String, Map<String, Integer>> agreeing = new LinkedHashMap<>();
    Map<String, List<Integer>> ofNew = new HashMap<>();
    for (String oldRef : gone) {
      Set<String> candidates = new TreeSet<>();
      for (End end : oldEnds.getOrDefault(oldRef, List.of())) {
        for (String key : keys(end, this::known)) {
          candidates.addAll(meeting.getOrDefault(key, Set.of()));
        }
      }
      for (String newRef : candidates) {
        int count = agreeing(oldRef, newRef);
        if (count > 0) {
          agreeing.computeIfAbsent(oldRef, ref -> new LinkedHashMap<>()).put(newRef, count);
          ofNew.computeIfAbsent(newRef, ref -> new ArrayList<>()).add(count);
        }
      }
    }
    List<Rename> claims = new ArrayList<>();
    agreeing.forEach(
        (oldRef, counts) ->
            counts.forEach(
                (newRef, count) -> {
                  int rival =
                      Math.max(
                          next(counts.values(), count),
                          next(ofNew.getOrDefault(newRef, List.of()), count));
                  claim(oldRef, newRef, count, rival).ifPresent(claims::add);
                }));
    return claims;
  }

  private Optional<Rename> claim(String oldRef, String newRef, int agreeing, int rival) {
    int ends = Math.max(size(oldEnds, oldRef), size(newEnds, newRef));
    String oldKind = oldKinds.getOrDefault(oldRef, "");
    String newKind = newKinds.getOrDefault(newRef, "");
    boolean otherKind =
        !oldKind.isEmpty() && !newKind.isEmpty() && !oldKind.equalsIgnoreCase(newKind);
    if (otherKind || agreeing < LEAST_SHARE * ends || rival > MOST_RIVAL * agreeing) {
      return Optional.empty();
    }
    Rename rename = new Rename(oldRef, newRef, Map.of(), agreeing, ends, false);
    if (agreeing < LEAST_ENDS) {
      possible.add(rename);
      return Optional.empty();
    }
    return Optional.of(rename);
  }

  /** The largest count but one of those that is the best. */
  private static int next(Iterable<Integer> counts, int best) {
    int next = 0;
    boolean seen = false;
    for (int count : counts) {
      if (count == best && !seen) {
        seen = true;
      } else {
        next = Math.max(next, count);
      }
    }
    return next;
  }

  /** By what an end can be known: the new items that have such an end. */
  private Map<String, Set<String>> meeting(Set<String> come) {
    Map<String, Set<String>> meeting = new HashMap<>();
    for (String newRef : come) {
      for (End end : newEnds.getOrDefault(newRef, List.of())) {
        for (String key : keys(end, this::asItIs)) {
          meeting.computeIfAbsent(key, k -> new TreeSet<>()).add(newRef);
        }
      }
    }
    return meeting;
  }

  /** An old item by its name in the later revision; absent where that is not known. */
  private Optional<String> known(String oldRef) {
    return Optional.ofNullable(newRefOf.get(oldRef));
  }

  private Optional<String> asItIs(String newRef) {
    return oldRefOf.containsKey(newRef) ? Optional.of(newRef) : Optional.empty();
  }

  /** How an end may be known again, the surest first. */
  private static List<String> keys(End end, Function<String, Optional<String>> refs) {
    Optional<String> far = refs.apply(end.far().ref());
    String name = end.wire().isEmpty() ? end.signal() : end.wire();
    List<String> keys = new ArrayList<>();
    if (far.isPresent()) {
      String point = far.get() + "\t" + end.far().pin();
      keys.add("1\t" + point + "\t" + end.pin());
      keys.add("2\t" + point);
      if (!name.isEmpty()) {
        keys.add("3\t" + far.get() + "\t" + name);
      }
    } else if (!name.isEmpty()) {
      keys.add("4\t" + end.pin() + "\t" + end.far().pin() + "\t" + name);
    }
    return keys;
  }

  /** How many ends of an old item are found again at a new one. */
  private int agreeing(String oldRef, String newRef) {
    Map<String, List<Integer>> byKey = new HashMap<>();
    List<End> ends = newEnds.getOrDefault(newRef, List.of());
    for (int i = 0; i < ends.size(); i++) {
      for (String key : keys(ends.get(i), this::asItIs)) {
        byKey.computeIfAbsent(key, k -> new ArrayList<>()).add(i);
      }
    }
    boolean[] taken = new boolean[ends.size()];
    int count = 0;
    List<List<String>> open = new ArrayList<>();
    oldEnds
        .getOrDefault(oldRef, List.of())
        .forEach(end -> open.add(new ArrayList<>(keys(end, this::known))));
    for (char tier = '1'; tier <= '4'; tier++) {
      String prefix = tier + "\t";
      for (List<String> keys : open) {
        for (String key : List.copyOf(keys)) {
          if (key.startsWith(prefix) && take(byKey.getOrDefault(key, List.of()), taken)) {
            keys.clear();
            count++;
            break;
          }
        }
      }
    }
    return count;
  }

  private static boolean take(List<Integer> candidates, boolean[] taken) {
    for (int candidate : candidates) {
      if (!taken[candidate]) {
        taken[candidate] = true;
        return true;
      }
    }
    return false;
  }

  /** Where no pin has its old name: which pin is which, by where their wires go. */
  private void pinScheme(String oldRef, String newRef) {
    List<String> olds = wired(oldEnds, oldRef);
    List<String> news = wired(newEnds, newRef);
    Set<String> common = new TreeSet<>(olds);
    common.retainAll(news);
    int fewer = Math.min(olds.size(), news.size());
    if (fewer < LEAST_ENDS || common.size() > MOST_COMMON_PINS * fewer) {
      return;
    }
    int[][] weights = weights(oldRef, newRef, olds, news);
    Map<String, String> pins = new LinkedHashMap<>();
    int[] columnOf = assigned(weights);
    for (int i = 0; i < olds.size(); i++) {
      if (columnOf[i] >= 0 && columnOf[i] < news.size() && weights[i][columnOf[i]] >= SAME_WIRE) {
        pins.put(olds.get(i), news.get(columnOf[i]));
      }
    }
    int ends = Math.max(olds.size(), news.size());
    if (pins.size() >= LEAST_SHARE * ends && pins.size() >= LEAST_ENDS) {
      int agreeing = PinScheme.complete(pins, inOrder(oldPins, oldRef));
      newPinOf.put(oldRef, pins);
      found.removeIf(one -> one.oldRef().equals(oldRef));
      found.add(new Rename(oldRef, newRef, pins, agreeing, ends, false));
    }
  }

  private static List<String> wired(Map<String, List<End>> ends, String ref) {
    return ends.getOrDefault(ref, List.of()).stream()
        .map(End::pin)
        .filter(pin -> !pin.equals(Point.SHELL))
        .distinct()
        .toList();
  }

  private int[][] weights(String oldRef, String newRef, List<String> olds, List<String> news) {
    int[][] weights = new int[olds.size()][news.size()];
    List<End> there = newEnds.getOrDefault(newRef, List.of());
    for (End end : oldEnds.getOrDefault(oldRef, List.of())) {
      int row = olds.indexOf(end.pin());
      for (End other : there) {
        int column = news.indexOf(other.pin());
        if (row >= 0 && column >= 0) {
          weights[row][column] += weight(end, other);
        }
      }
    }
    return weights;
  }

  private int weight(End end, End other) {
    String far = newRefOf.getOrDefault(end.far().ref(), end.far().ref());
    String farPin =
        newPinOf
            .getOrDefault(end.far().ref(), Map.of())
            .getOrDefault(end.far().pin(), end.far().pin());
    boolean sameItem = far.equals(other.far().ref());
    boolean samePoint = sameItem && farPin.equals(other.far().pin());
    boolean sameWire = sameItem && !end.wire().isEmpty() && end.wire().equals(other.wire());
    boolean sameSignal = !end.signal().isEmpty() && end.signal().equals(other.signal());
    return (samePoint ? SAME_FAR_POINT : 0)
        + (sameWire ? SAME_WIRE : 0)
        + (sameSignal ? SAME_SIGNAL : 0);
  }

  private static int[] assigned(int[][] weights) {
    int rows = weights.length;
    int size = Math.max(rows, weights[0].length);
    int[] columnOf = new int[rows];
    Arrays.fill(columnOf, -1);
    if (size > MOST_ASSIGNED) {
      return columnOf;
    }
    int most = Arrays.stream(weights).flatMapToInt(Arrays::stream).max().orElse(0);
    int[][] costs = new int[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        costs[i][j] = most - (i < rows && j < weights[0].length ? weights[i][j] : 0);
      }
    }
    System.arraycopy(LeastCost.assignment(costs), 0, columnOf, 0, rows);
    return columnOf;
  }

  private static List<String> inOrder(Map<String, Set<String>> pins, String ref) {
    return pins.getOrDefault(ref, Set.of()).stream()
        .filter(pin -> !pin.equals(Point.SHELL))
        .sorted(NaturalOrder.INSTANCE)
        .toList();
  }

  private Result result(Map<String, String> told) {
    Renaming renaming = new Renaming();
    List<Rename> renames = new ArrayList<>();
    newRefOf.forEach(renaming::item);
    newPinOf.forEach(
        (ref, pins) -> pins.forEach((pin, now) -> renaming.pin(new Point(ref, pin), now)));
    told.forEach(
        (oldRef, newRef) ->
            renames.add(
                new Rename(
                    oldRef,
                    newRef,
                    newPinOf.getOrDefault(oldRef, Map.of()),
                    agreeing(oldRef, newRef),
                    Math.max(size(oldEnds, oldRef), size(newEnds, newRef)),
                    true)));
    found.stream().filter(one -> !told.containsKey(one.oldRef())).forEach(renames::add);
    return new Result(renaming, List.copyOf(renames), List.copyOf(possible));
  }
}

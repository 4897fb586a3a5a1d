package dev.ringout.revision;

import dev.ringout.harness.Harness;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.revision.ItemEnds.End;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
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

  private final ItemEnds before;
  private final ItemEnds after;

  /** Every old item with its name in the later revision, as far as known. */
  private final Map<String, String> newRefOf = new LinkedHashMap<>();

  private final Map<String, String> oldRefOf = new HashMap<>();
  private final PinMatching pins;
  private final List<Rename> found = new ArrayList<>();
  private final List<Rename> possible = new ArrayList<>();

  private RenameFinder(Harness before, Harness after) {
    this.before = new ItemEnds(before);
    this.after = new ItemEnds(after);
    this.pins = new PinMatching(this.before, this.after, newRefOf);
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
      for (String ref : after.refs()) {
        if (!oldRefOf.containsKey(ref)) {
          byKey.put(spelling.apply(ref), ref);
        }
      }
      for (String ref : before.refs()) {
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
          int ends = before.count(oldRef);
          boolean enough = ends >= LEAST_ENDS && after.count(newRef) >= LEAST_ENDS;
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

  private void search() {
    boolean more = true;
    while (more) {
      more = false;
      Set<String> gone = new TreeSet<>(before.refs());
      gone.removeAll(newRefOf.keySet());
      Set<String> come = new TreeSet<>(after.refs());
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
    Map<Sign, Set<String>> meeting = meeting(come);
    Map<String, Map<String, Integer>> ofOld = new LinkedHashMap<>();
    Map<String, List<Integer>> ofNew = new HashMap<>();
    for (String oldRef : gone) {
      for (String newRef : candidates(oldRef, meeting)) {
        int count = agreeing(oldRef, newRef);
        if (count > 0) {
          ofOld.computeIfAbsent(oldRef, ref -> new LinkedHashMap<>()).put(newRef, count);
          ofNew.computeIfAbsent(newRef, ref -> new ArrayList<>()).add(count);
        }
      }
    }
    List<Rename> claims = new ArrayList<>();
    ofOld.forEach(
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

  /** The new items at which an end of an old one may be found again. */
  private Set<String> candidates(String oldRef, Map<Sign, Set<String>> meeting) {
    Set<String> candidates = new TreeSet<>();
    for (End end : before.of(oldRef)) {
      for (Sign sign : Sign.of(end, this::known)) {
        candidates.addAll(meeting.getOrDefault(sign, Set.of()));
      }
    }
    return candidates;
  }

  private Optional<Rename> claim(String oldRef, String newRef, int agreeing, int rival) {
    int ends = Math.max(before.count(oldRef), after.count(newRef));
    String oldKind = before.kind(oldRef);
    String newKind = after.kind(newRef);
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
  private Map<Sign, Set<String>> meeting(Set<String> come) {
    Map<Sign, Set<String>> meeting = new HashMap<>();
    for (String newRef : come) {
      for (End end : after.of(newRef)) {
        for (Sign sign : Sign.of(end, this::asItIs)) {
          meeting.computeIfAbsent(sign, k -> new TreeSet<>()).add(newRef);
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

  /** How many ends of an old item are found again at a new one. */
  private int agreeing(String oldRef, String newRef) {
    return Sign.agreeing(
        before.of(oldRef).stream().map(end -> Sign.of(end, this::known)).toList(),
        after.of(newRef).stream().map(end -> Sign.of(end, this::asItIs)).toList());
  }

  private void pinScheme(String oldRef, String newRef) {
    Optional<Rename> rename = pins.find(oldRef, newRef);
    if (rename.isPresent()) {
      found.removeIf(one -> one.oldRef().equals(oldRef));
      found.add(rename.get());
    }
  }

  private Result result(Map<String, String> told) {
    Renaming renaming = new Renaming();
    List<Rename> renames = new ArrayList<>();
    newRefOf.forEach(renaming::item);
    pins.newPins()
        .forEach((ref, some) -> some.forEach((pin, now) -> renaming.pin(new Point(ref, pin), now)));
    told.forEach(
        (oldRef, newRef) ->
            renames.add(
                new Rename(
                    oldRef,
                    newRef,
                    pins.newPins(oldRef),
                    agreeing(oldRef, newRef),
                    Math.max(before.count(oldRef), after.count(newRef)),
                    true)));
    found.stream().filter(one -> !told.containsKey(one.oldRef())).forEach(renames::add);
    return new Result(renaming, List.copyOf(renames), List.copyOf(possible));
  }
}

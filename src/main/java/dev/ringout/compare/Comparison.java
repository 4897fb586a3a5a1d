package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Measured;
import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Every reading with its verdict.
 *
 * @param inForce the readings that stand, in the order of the files; steps not tested among them
 * @param replaced those that a later reading of the same points replaces
 * @param contradictions what can't all be true
 */
public record Comparison(
    List<Judged> inForce, List<Replaced> replaced, List<Contradiction> contradictions) {

  /** Judges every reading. */
  public static Comparison of(Circuit circuit, JoinLimits limits, ReadingSet readings) {
    Judge judge = new Judge(circuit, limits);
    Map<Key, List<Judged>> sameSubject = new HashMap<>();
    List<Judged> all = new ArrayList<>(readings.readings().size());
    List<Key> keys = new ArrayList<>(readings.readings().size());
    for (Reading reading : readings.readings()) {
      Judged judged = judge.judge(reading);
      Key subject = Key.of(judged, circuit);
      all.add(judged);
      keys.add(subject);
      sameSubject.computeIfAbsent(subject, key -> new ArrayList<>(1)).add(judged);
    }
    Map<Key, Optional<Judged>> standingOf = new HashMap<>();
    sameSubject.forEach((key, same) -> standingOf.put(key, standing(same)));
    List<Judged> inForce = new ArrayList<>(all.size());
    List<Replaced> replaced = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      Judged judged = all.get(i);
      Key key = keys.get(i);
      Optional<Judged> standing = standingOf.getOrDefault(key, Optional.empty());
      if (standing.isEmpty()) {
        // Never measured: the step is named once, however often the sheet asks for it.
        if (judged.equals(sameSubject.getOrDefault(key, List.of(judged)).get(0))) {
          inForce.add(judged);
        }
      } else if (standing.get().equals(judged)) {
        inForce.add(judged);
      } else if (judged.reading().measured().made()) {
        replaced.add(new Replaced(judged, standing.get(), saysOtherwise(judged, standing.get())));
      }
    }
    List<Judged> paired = List.copyOf(DiodePairs.judge(circuit, inForce));
    return new Comparison(paired, List.copyOf(replaced), Contradictions.find(circuit, paired));
  }

  /**
   * The same readings held against another circuit with the same points: the unit as it was found.
   *
   * @param changed readings that it may make a difference to; only those between two points are
   *     judged anew, since it is the paper that says what the rest of a net is
   */
  public Comparison heldAgainst(Circuit found, JoinLimits limits, Predicate<Judged> changed) {
    Judge judge = new Judge(found, limits);
    List<Judged> anew =
        inForce.stream()
            .map(
                judged ->
                    judged.probing().isPair()
                            && judged.reading().kind() == Reading.Kind.CONTINUITY
                            && changed.test(judged)
                        ? judge.judge(judged.reading())
                        : judged)
            .toList();
    return new Comparison(anew, replaced, contradictions);
  }

  /** The same without some readings: what they show is not taken for the unit's. */
  public Comparison without(Collection<Judged> doubtful) {
    Set<Judged> out = Set.copyOf(doubtful);
    return new Comparison(
        inForce.stream().filter(judged -> !out.contains(judged)).toList(),
        replaced,
        contradictions.stream()
            .filter(
                one -> !out.contains(one.apart()) && one.joins().stream().noneMatch(out::contains))
            .toList());
  }

  private static boolean saysOtherwise(Judged earlier, Judged later) {
    return earlier.outcome() != later.outcome() || earlier.observed() != later.observed();
  }

  /** The last one measured: by time where every one has a time, else by order. */
  private static Optional<Judged> standing(List<Judged> same) {
    if (same.size() == 1) {
      return same.get(0).reading().measured().made() ? Optional.of(same.get(0)) : Optional.empty();
    }
    List<Judged> made = same.stream().filter(one -> one.reading().measured().made()).toList();
    if (made.isEmpty()) {
      return Optional.empty();
    }
    Judged last = made.get(made.size() - 1);
    if (made.stream().allMatch(one -> one.reading().time().isPresent())) {
      for (Judged one : made) {
        if (one.reading().time().orElseThrow().compareTo(last.reading().time().orElseThrow()) > 0) {
          last = one;
        }
      }
    }
    return Optional.of(last);
  }

  /** Readings of one kind that were made (and judged or not). */
  public long made(Reading.Kind kind) {
    return inForce.stream()
        .filter(one -> one.reading().kind() == kind && one.reading().measured().made())
        .count();
  }

  /** Readings in force with an outcome. */
  public List<Judged> with(Outcome outcome) {
    return inForce.stream().filter(one -> one.outcome() == outcome).toList();
  }

  /** Readings in force that show something wrong. */
  public List<Judged> failing() {
    return inForce.stream().filter(one -> one.outcome().fails()).toList();
  }

  /** Readings in force that are a word without a number. */
  public long unquantified() {
    return inForce.stream()
        .filter(one -> one.reading().measured() instanceof Measured.Word)
        .count();
  }

  /** Same points, state and kind; which probe was where matters only through a one-way part. */
  private static final class Key {
    private final Reading.Kind kind;
    private final SwitchState state;
    private final boolean rest;
    private final int[] points;
    private final int hash;

    private Key(Reading.Kind kind, SwitchState state, boolean rest, int[] one, int[] other) {
      this.kind = kind;
      this.state = state;
      this.rest = rest;
      // The two sides in one row, with what is no point between them.
      points = Arrays.copyOf(one, one.length + 1 + other.length);
      points[one.length] = -1;
      System.arraycopy(other, 0, points, one.length + 1, other.length);
      hash = 31 * Arrays.hashCode(points) + (state.isNormal() ? 0 : state.hashCode());
    }

    static Key of(Judged judged, Circuit circuit) {
      int[] from = sorted(judged.probing().from());
      int[] to = sorted(judged.probing().to());
      boolean swap = !oneWay(judged, circuit) && !judged.probing().toRest() && isAfter(from, to);
      return new Key(
          judged.reading().kind(),
          judged.reading().state(),
          judged.probing().toRest(),
          swap ? to : from,
          swap ? from : to);
    }

    private static boolean oneWay(Judged judged, Circuit circuit) {
      return judged.expected() instanceof ThroughParts through
          && through.parts().stream()
              .anyMatch(part -> !circuit.part(part).kind().readsTheSameReversed());
    }

    private static int[] sorted(int[] points) {
      if (points.length < 2) {
        return points;
      }
      int[] sorted = points.clone();
      Arrays.sort(sorted);
      return sorted;
    }

    private static boolean isAfter(int[] left, int[] right) {
      return left.length > 0 && right.length > 0 && left[0] > right[0];
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Key key
          && kind == key.kind
          && rest == key.rest
          && Arrays.equals(points, key.points)
          && state.equals(key.state);
    }

    @Override
    public int hashCode() {
      return hash;
    }
  }
}

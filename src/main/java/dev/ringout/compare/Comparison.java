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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
    for (Reading reading : readings.readings()) {
      Judged judged = judge.judge(reading);
      all.add(judged);
      sameSubject.computeIfAbsent(Key.of(judged, circuit), key -> new ArrayList<>(1)).add(judged);
    }
    List<Judged> inForce = new ArrayList<>(all.size());
    List<Replaced> replaced = new ArrayList<>();
    for (Judged judged : all) {
      List<Judged> same = sameSubject.getOrDefault(Key.of(judged, circuit), List.of(judged));
      Optional<Judged> standing = standing(same);
      if (standing.isEmpty()) {
        // Never measured: the step is named once, however often the sheet asks for it.
        if (judged.equals(same.get(0))) {
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

  private static boolean saysOtherwise(Judged earlier, Judged later) {
    return earlier.outcome() != later.outcome() || earlier.observed() != later.observed();
  }

  /** The last one measured: by time where every one has a time, else by order. */
  private static Optional<Judged> standing(List<Judged> same) {
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
  private record Key(
      Reading.Kind kind, SwitchState state, List<Integer> one, List<Integer> other, boolean rest) {

    static Key of(Judged judged, Circuit circuit) {
      List<Integer> from = sorted(judged.probing().from());
      List<Integer> to = sorted(judged.probing().to());
      boolean swap = !oneWay(judged, circuit) && !judged.probing().toRest() && isAfter(from, to);
      return new Key(
          judged.reading().kind(),
          judged.reading().state(),
          swap ? to : from,
          swap ? from : to,
          judged.probing().toRest());
    }

    private static boolean oneWay(Judged judged, Circuit circuit) {
      return judged.expected() instanceof ThroughParts through
          && through.parts().stream()
              .anyMatch(part -> !circuit.part(part).kind().readsTheSameReversed());
    }

    private static List<Integer> sorted(int[] points) {
      return Arrays.stream(points).sorted().boxed().toList();
    }

    private static boolean isAfter(List<Integer> left, List<Integer> right) {
      return !left.isEmpty() && !right.isEmpty() && left.get(0) > right.get(0);
    }
  }
}

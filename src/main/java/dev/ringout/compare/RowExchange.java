package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Two rows of a sheet, near each other, whose values stand each in the place of the other. */
public record RowExchange(Judged one, Judged other) {
  /** A hand takes no rows farther apart for each other (common practice, no source). */
  private static final int FARTHEST_ROWS = 12;

  /** The pairs that both fail as they stand, and are both as expected once exchanged. */
  public static List<RowExchange> find(Circuit circuit, JoinLimits limits, Comparison comparison) {
    Judge judge = new Judge(circuit, limits, JobOfReading.NONE);
    List<RowExchange> found = new ArrayList<>();
    Set<Judged> taken = new HashSet<>();
    for (List<Judged> sheet : TestSheets.each(madeOnce(comparison))) {
      List<Judged> rows = new ArrayList<>(sheet);
      rows.sort(Comparator.comparingInt(RowExchange::row));
      for (int one = 0; one < rows.size(); one++) {
        for (int other = one + 1; other < rows.size(); other++) {
          Judged first = rows.get(one);
          Judged second = rows.get(other);
          if (row(second) - row(first) > FARTHEST_ROWS) {
            break;
          }
          if (mayBeExchanged(first, second, judge)
              && !taken.contains(first)
              && !taken.contains(second)
              && isAsExpected(judge.judge(second.reading().at(first.reading())))
              && isAsExpected(judge.judge(first.reading().at(second.reading())))) {
            taken.add(first);
            taken.add(second);
            found.add(new RowExchange(first, second));
          }
        }
      }
    }
    return found;
  }

  /** What was read again and showed the same stands where it belongs. */
  private static List<Judged> madeOnce(Comparison comparison) {
    Set<Judged> readTwice = comparison.readTwiceAlike();
    return comparison.inForce().stream()
        .filter(judged -> judged.reading().measured().made() && !readTwice.contains(judged))
        .toList();
  }

  /**
   * Joins that are too high, each with a failing row near it which expects just that value: it may
   * be the other row's, and what the other row shows its own. The first of the two is the other.
   */
  public static List<RowExchange> besideAFault(
      Circuit circuit, JoinLimits limits, Comparison comparison) {
    Judge judge = new Judge(circuit, limits, JobOfReading.NONE);
    List<RowExchange> found = new ArrayList<>();
    for (List<Judged> sheet : TestSheets.each(madeOnce(comparison))) {
      List<Judged> failing = sheet.stream().filter(one -> one.outcome().fails()).toList();
      for (Judged high : failing) {
        if (high.outcome() == Outcome.RESISTIVE && high.expected().isJoined()) {
          failing.stream()
              .filter(other -> !other.equals(high))
              .filter(other -> Math.abs(row(other) - row(high)) <= FARTHEST_ROWS)
              .filter(other -> isAsExpected(judge.judge(high.reading().at(other.reading()))))
              .min(Comparator.comparingInt(other -> Math.abs(row(other) - row(high))))
              .ifPresent(other -> found.add(new RowExchange(other, high)));
        }
      }
    }
    return found;
  }

  /** Whether both are off; of a part's value the other may be what is expected of it too. */
  private static boolean mayBeExchanged(Judged one, Judged other, Judge judge) {
    return row(one) != row(other)
        && ((isOff(one) && isOff(other) && (one.outcome().fails() || other.outcome().fails()))
            || isAnotherValue(one, judge)
            || isAnotherValue(other, judge));
  }

  /** A part's value that fails by itself, and not only beside that of another part. */
  private static boolean isAnotherValue(Judged judged, Judge judge) {
    return judged.outcome() == Outcome.PART_VALUE && !isAsExpected(judge.judge(judged.reading()));
  }

  private static boolean isOff(Judged judged) {
    return judged.outcome().fails() || judged.value() == ValueVerdict.LOW;
  }

  private static boolean isAsExpected(Judged judged) {
    return judged.outcome() == Outcome.CONFORMS
        && judged.value() != ValueVerdict.LOW
        && judged.value() != ValueVerdict.HIGH;
  }

  private static int row(Judged judged) {
    return judged.reading().place().row();
  }

  /** Whether a slipped line explains no more than this. */
  public boolean isAllOf(RowSlip slip) {
    return rows().containsAll(slip.mended());
  }

  /** How many rows apart they are. */
  public int apart() {
    return Math.abs(row(other) - row(one));
  }

  /** The two rows. */
  public List<Judged> rows() {
    return List.of(one, other);
  }
}

package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.JoinLimits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Two rows of a sheet, near each other, whose values stand each in the place of the other.
 *
 * @param comparison the readings with the two put right
 */
public record RowExchange(Judged one, Judged other, Comparison comparison) {
  /** A hand takes no rows farther apart for each other (common practice, no source). */
  private static final int FARTHEST_ROWS = 12;

  /** The pairs that both fail as they stand, and are both as expected once exchanged. */
  public static List<RowExchange> find(Circuit circuit, JoinLimits limits, Comparison comparison) {
    Judge judge = new Judge(circuit, limits, JobOfReading.NONE);
    Set<Judged> readTwice = comparison.readTwiceAlike();
    List<Judged> asMade = new ArrayList<>();
    for (Judged judged : comparison.inForce()) {
      // What was read again and showed the same stands where it belongs.
      if (judged.reading().measured().made() && !readTwice.contains(judged)) {
        asMade.add(judged);
      }
    }
    List<RowExchange> found = new ArrayList<>();
    Set<Judged> taken = new HashSet<>();
    for (List<Judged> sheet : TestSheets.each(asMade)) {
      List<Judged> rows = new ArrayList<>(sheet);
      rows.sort(Comparator.comparingInt(RowExchange::row));
      for (int one = 0; one < rows.size(); one++) {
        for (int other = one + 1; other < rows.size(); other++) {
          Judged first = rows.get(one);
          Judged second = rows.get(other);
          if (row(second) - row(first) > FARTHEST_ROWS) {
            break;
          }
          if (mayBeExchanged(first, second)
              && !taken.contains(first)
              && !taken.contains(second)
              && isAsExpected(judge.judge(second.reading().at(first.reading())))
              && isAsExpected(judge.judge(first.reading().at(second.reading())))) {
            taken.add(first);
            taken.add(second);
            found.add(
                new RowExchange(
                    first,
                    second,
                    comparison.rewritten(
                        circuit,
                        limits,
                        Map.of(
                            first, first.reading().saying(second.reading().measured()),
                            second, second.reading().saying(first.reading().measured())))));
          }
        }
      }
    }
    return found;
  }

  /** Whether both are off; of a part's value the other may be what is expected of it too. */
  private static boolean mayBeExchanged(Judged one, Judged other) {
    return row(one) != row(other)
        && ((isOff(one) && isOff(other) && (one.outcome().fails() || other.outcome().fails()))
            || one.outcome() == Outcome.PART_VALUE
            || other.outcome() == Outcome.PART_VALUE);
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
    return row(other) - row(one);
  }

  /** The two rows. */
  public List<Judged> rows() {
    return List.of(one, other);
  }
}

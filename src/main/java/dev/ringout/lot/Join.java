package dev.ringout.lot;

import dev.ringout.harness.Point;
import dev.ringout.harness.SwitchState;
import java.util.Comparator;

/**
 * Two points that the list joins, read in one state.
 *
 * @param from the first of the two in natural order, whichever probe was there
 */
public record Join(Point from, Point to, SwitchState state) implements Comparable<Join> {
  private static final Comparator<Join> ORDER =
      Comparator.comparing(Join::from)
          .thenComparing(Join::to)
          .thenComparing(join -> join.state().toString());

  /** The join of two points, either way round. */
  static Join of(Point one, Point other, SwitchState state) {
    return one.compareTo(other) <= 0 ? new Join(one, other, state) : new Join(other, one, state);
  }

  @Override
  public int compareTo(Join other) {
    return ORDER.compare(this, other);
  }

  /** {@code J1-A to P2-1 (S1=OPEN)}. */
  @Override
  public String toString() {
    return from + " to " + to + (state.isNormal() ? "" : " (" + state + ")");
  }
}

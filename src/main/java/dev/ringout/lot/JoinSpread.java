package dev.ringout.lot;

import dev.ringout.compare.Outcome;
import java.util.List;

/**
 * How one join reads over the units: the leads, what its wires account for, and what each unit has
 * at all of its joins taken off.
 *
 * @param middleOhms what is left in the middle unit
 * @param spreadOhms the standard deviation that the middle units suggest
 * @param lowOhms what is left in the unit that has least
 * @param highOhms what is left in the unit that has most
 * @param values what is left in each unit that read it as a number, in the order of the units
 */
public record JoinSpread(
    Join join,
    double middleOhms,
    double spreadOhms,
    double lowOhms,
    double highOhms,
    List<OfUnit> values) {
  /** What is given can't be changed afterwards. */
  public JoinSpread {
    values = List.copyOf(values);
  }

  /**
   * What is left in one unit.
   *
   * @param ohms above the middle one
   * @param score how many standard deviations that is
   * @param standsOut whether that is more than chance brings among so many values
   */
  public record OfUnit(String unit, JoinValue value, double ohms, double score, boolean standsOut) {
    /** Whether the reading fails by itself. */
    public boolean fails() {
      return value.judged().outcome().fails();
    }

    /** Whether the reading is out of its limit, and an inspector accepts it. */
    public boolean isAccepted() {
      return value.judged().outcome() == Outcome.ACCEPTED;
    }
  }

  /** In how many units it was read as a number. */
  public int units() {
    return values.size();
  }

  /** Whether what its wires account for is known in every unit. */
  public boolean accounted() {
    return values.stream().allMatch(one -> one.value().accounted());
  }

  /** The units that stand out. */
  public List<OfUnit> outstanding() {
    return values.stream().filter(OfUnit::standsOut).toList();
  }
}

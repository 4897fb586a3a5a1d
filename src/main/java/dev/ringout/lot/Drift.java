package dev.ringout.lot;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How the units' levels change from day to day.
 *
 * @param units how many say on which day they were tested
 * @param ohmsADay by how much the level rises; below zero it falls
 * @param byChance how likely it would, did nothing change
 */
public record Drift(int units, LocalDate first, LocalDate last, double ohmsADay, double byChance) {
  /** Fewer never fall in an order that chance does not bring (common practice, no source). */
  static final int LEAST_UNITS = 8;

  private static final double NOT_CHANCE = 0.01;

  /** Whether it would be a surprise, did nothing change. */
  public boolean isMoreThanChance() {
    return byChance < NOT_CHANCE;
  }

  /** The drift where units enough were tested on different days. */
  static Optional<Drift> of(List<LotUnit> units, List<Double> levels) {
    List<LocalDate> days = new ArrayList<>();
    List<Double> there = new ArrayList<>();
    for (int i = 0; i < units.size(); i++) {
      Optional<LocalDate> day = units.get(i).origin().day();
      if (day.isPresent()) {
        days.add(day.get());
        there.add(levels.get(i));
      }
    }
    LocalDate first = days.stream().min(LocalDate::compareTo).orElse(LocalDate.EPOCH);
    LocalDate last = days.stream().max(LocalDate::compareTo).orElse(LocalDate.EPOCH);
    if (days.size() < LEAST_UNITS || first.equals(last)) {
      return Optional.empty();
    }
    double[] times = days.stream().mapToDouble(LocalDate::toEpochDay).toArray();
    double[] values = there.stream().mapToDouble(Double::doubleValue).toArray();
    return Optional.of(
        new Drift(
            days.size(),
            first,
            last,
            RankTests.slope(times, values),
            RankTests.drifts(times, values)));
  }
}

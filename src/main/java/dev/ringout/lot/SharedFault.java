package dev.ringout.lot;

import dev.ringout.circuit.Circuit;
import dev.ringout.diagnose.Fault;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.math3.distribution.BinomialDistribution;

/**
 * A fault that several units have at the same place.
 *
 * @param fault as the first of them has it
 * @param units their names
 * @param byChance how likely so many would meet anywhere, were each where it is by chance
 */
public record SharedFault(FaultSort sort, Fault fault, List<String> units, double byChance) {
  /** Below this it is not chance. */
  private static final double NOT_CHANCE = 0.05;

  /** Whether it would be a surprise, had each hand slipped by itself. */
  public boolean isMoreThanChance() {
    return byChance < NOT_CHANCE;
  }

  private record Found(Fault fault, Set<String> units) {}

  /** Those of a lot, the widest spread first. */
  static List<SharedFault> of(Circuit circuit, List<LotUnit> units) {
    Map<SameFault, Found> found = new LinkedHashMap<>();
    Map<FaultSort, Integer> counts = new EnumMap<>(FaultSort.class);
    for (LotUnit unit : units) {
      for (Fault fault : unit.faults()) {
        found
            .computeIfAbsent(SameFault.of(fault), key -> new Found(fault, new LinkedHashSet<>()))
            .units()
            .add(unit.name());
        counts.merge(FaultSort.of(fault), 1, Integer::sum);
      }
    }
    List<SharedFault> shared = new ArrayList<>();
    for (Found one : found.values()) {
      if (one.units().size() > 1) {
        FaultSort sort = FaultSort.of(one.fault());
        double chance =
            byChance(one.units().size(), counts.getOrDefault(sort, 0), places(circuit, sort));
        shared.add(new SharedFault(sort, one.fault(), List.copyOf(one.units()), chance));
      }
    }
    shared.sort(Comparator.comparingInt(one -> -one.units().size()));
    return List.copyOf(shared);
  }

  /**
   * How likely, at most, so many of all faults of a kind fall on one of the places where they can:
   * the binomial tail at one place, times the places.
   */
  static double byChance(int together, int faults, int places) {
    if (places <= 1) {
      return 1;
    }
    double tail =
        1
            - new BinomialDistribution(null, faults, 1.0 / places)
                .cumulativeProbability(together - 1);
    return Math.min(1, tail * places);
  }

  /** Where such a fault can be. Of a slipped sheet there is no place. */
  private static int places(Circuit circuit, FaultSort sort) {
    return switch (sort) {
      case OPEN, MISWIRE, HIGH_RESISTANCE, WRONG_GAUGE ->
          circuit.harness().wires().size() + circuit.harness().links().size();
      case SHORT, LOW_INSULATION -> circuit.normal().count();
      case WRONG_PART -> circuit.harness().parts().size() + circuit.harness().switches().size();
      case TEST -> 1;
    };
  }
}

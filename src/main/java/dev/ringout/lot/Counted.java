package dev.ringout.lot;

import dev.ringout.diagnose.Fault;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * How often something has a share in the faults of a lot, the most first: few causes make most of
 * the trouble.
 *
 * @param name a kind of fault, or an item
 * @param faults how many
 * @param units in how many units
 */
public record Counted(String name, int faults, int units) {

  private record Tally(List<Fault> faults, Set<String> units) {}

  /** By kind. */
  static List<Counted> kinds(List<LotUnit> units) {
    return of(units, fault -> Set.of(FaultSort.of(fault).word()));
  }

  /** By item: a fault between two items counts at both. */
  static List<Counted> places(List<LotUnit> units) {
    return of(units, Fault::items);
  }

  private static List<Counted> of(List<LotUnit> units, Function<Fault, Set<String>> names) {
    Map<String, Tally> tallies = new LinkedHashMap<>();
    for (LotUnit unit : units) {
      for (Fault fault : unit.faults()) {
        for (String name : names.apply(fault)) {
          Tally tally =
              tallies.computeIfAbsent(
                  name, key -> new Tally(new ArrayList<>(), new LinkedHashSet<>()));
          tally.faults().add(fault);
          tally.units().add(unit.name());
        }
      }
    }
    List<Counted> counted = new ArrayList<>();
    tallies.forEach(
        (name, tally) ->
            counted.add(new Counted(name, tally.faults().size(), tally.units().size())));
    counted.sort(Comparator.comparingInt(one -> -one.faults()));
    return List.copyOf(counted);
  }
}

package dev.ringout.lot;

import dev.ringout.check.CheckResult.Verdict;
import dev.ringout.circuit.Circuit;
import dev.ringout.harness.Harness;
import dev.ringout.source.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Many units of one list.
 *
 * @param units those that could be checked, in the order of their serial numbers
 * @param refused those that could not
 * @param shared faults that several units have
 * @param joins how each join reads over the units
 * @param levelsOhms by how much each unit's joins are above the middle unit's, in the order of
 *     units
 * @param limitScore from so many standard deviations on a value stands out from its siblings
 * @param factors by station, meter, person and crimp tool, where more than one is named
 * @param kinds how often each kind of fault occurs
 * @param places how often each item has a part in one
 */
public record Lot(
    Harness harness,
    List<LotUnit> units,
    List<Refused> refused,
    List<SharedFault> shared,
    List<JoinSpread> joins,
    List<Double> levelsOhms,
    double limitScore,
    List<ByFactor> factors,
    Optional<Drift> drift,
    List<Counted> kinds,
    List<Counted> places) {
  /** Fewer have no middle that one could stand out from (common practice, no source). */
  public static final int LEAST_SIBLINGS = 5;

  /** Below this what is said of siblings is said with care (common practice, no source). */
  private static final int FEW = 10;

  /** With fewer values, or fewer that differ, two units may read alike by chance. */
  private static final int MANY_VALUES = 15;

  private static final int OTHER_VALUES = 8;

  /**
   * A unit of which no verdict can be given.
   *
   * @param name its serial number, or its file where none is stated
   * @param problems why, with file, sheet and cell
   */
  public record Refused(String name, List<String> files, List<Problem> problems) {
    /** What is given can't be changed afterwards. */
    public Refused {
      files = List.copyOf(files);
      problems = List.copyOf(problems);
    }
  }

  /**
   * A join of one unit that is not like its siblings.
   *
   * @param spread of the join over all units
   * @param of the unit that stands out
   */
  public record Outstanding(JoinSpread spread, JoinSpread.OfUnit of) {}

  /** Puts units side by side. */
  public static Lot of(Harness harness, List<LotUnit> units, List<Refused> refused) {
    Spreads spreads = Spreads.of(units);
    List<ByFactor> factors = new ArrayList<>();
    for (Origin.Factor factor : Origin.Factor.values()) {
      ByFactor.of(factor, units, spreads.levelsOhms()).ifPresent(factors::add);
    }
    return new Lot(
        harness,
        List.copyOf(units),
        List.copyOf(refused),
        SharedFault.of(Circuit.of(harness), units),
        spreads.joins(),
        spreads.levelsOhms(),
        spreads.limitScore(),
        List.copyOf(factors),
        Drift.of(units, spreads.levelsOhms()),
        Counted.kinds(units),
        Counted.places(units));
  }

  /** The units with a verdict. */
  public List<LotUnit> with(Verdict verdict) {
    return units.stream().filter(unit -> unit.verdict() == verdict).toList();
  }

  /** Units that passed at once, of those whose test has an end. */
  public Proportion firstPassYield() {
    return Proportion.of(
        (int) units.stream().filter(LotUnit::passedAtOnce).count(),
        (int) units.stream().filter(LotUnit::isFinished).count());
  }

  /** Joins that stand out, those within their limits first, then by how far. */
  public List<Outstanding> outstanding() {
    List<Outstanding> all = new ArrayList<>();
    joins.forEach(
        spread -> spread.outstanding().forEach(of -> all.add(new Outstanding(spread, of))));
    all.sort(
        Comparator.comparing((Outstanding one) -> one.of().fails())
            .thenComparing(one -> -Math.abs(one.of().score())));
    return List.copyOf(all);
  }

  /**
   * Units whose joins all read alike to the last digit: the sheet of one was copied for the other,
   * for no two units do (common practice, no source).
   */
  public List<List<String>> sameValues() {
    Map<Map<Join, Double>, List<String>> byValues = new LinkedHashMap<>();
    for (LotUnit unit : units) {
      Map<Join, Double> ohms = new LinkedHashMap<>();
      unit.values()
          .forEach(
              (join, value) ->
                  value
                      .judged()
                      .reading()
                      .measured()
                      .value()
                      .ifPresent(v -> ohms.put(join, v.ohms())));
      if (ohms.size() >= MANY_VALUES && new HashSet<>(ohms.values()).size() >= OTHER_VALUES) {
        byValues.computeIfAbsent(ohms, same -> new ArrayList<>()).add(unit.name());
      }
    }
    return byValues.values().stream().filter(names -> names.size() > 1).map(List::copyOf).toList();
  }

  /** Whether there are units enough for one to stand out from its siblings. */
  public boolean hasSiblings() {
    return units.size() >= LEAST_SIBLINGS;
  }

  /** Whether there are so few units that chance explains much. */
  public boolean isSmall() {
    return units.size() < FEW;
  }

  /** The worst that any unit is: what could not be checked is not counted. */
  public Verdict verdict() {
    if (units.stream().anyMatch(unit -> unit.verdict() == Verdict.FAULTS)) {
      return Verdict.FAULTS;
    }
    return !units.isEmpty() && units.stream().allMatch(u -> u.verdict() == Verdict.CONFORMS)
        ? Verdict.CONFORMS
        : Verdict.INCOMPLETE;
  }
}

package dev.ringout.lot;

import dev.ringout.check.CheckResult;
import dev.ringout.harness.NaturalOrder;
import dev.ringout.readings.Person;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The units by station, meter, person or crimp tool.
 *
 * @param groups those that are named, in natural order
 * @param notStated how many units do not say
 * @param byChance how likely groups that do not differ would differ so much; absent where they are
 *     too small to say
 */
public record ByFactor(
    Origin.Factor factor, List<Group> groups, int notStated, OptionalDouble byChance) {
  /** The distribution of χ² is near enough from so many on (common practice, no source). */
  static final int LEAST_OF_A_GROUP = 5;

  private static final double NOT_CHANCE = 0.01;

  /**
   * The units of one station, meter, person or tool.
   *
   * @param faulty how many have faults
   * @param levelOhms by how much the middle one of them is above the middle unit of the lot
   */
  public record Group(String name, int units, int faulty, double levelOhms) {}

  /** Whether the groups read differently, and it would be a surprise by chance. */
  public boolean differs() {
    return byChance.isPresent() && byChance.getAsDouble() < NOT_CHANCE;
  }

  private record Member(LotUnit unit, double levelOhms) {}

  /** A factor where units name two or more of it; else it tells nothing. */
  static Optional<ByFactor> of(Origin.Factor factor, List<LotUnit> units, List<Double> levels) {
    Map<String, List<Member>> members = new LinkedHashMap<>();
    int notStated = 0;
    for (int i = 0; i < units.size(); i++) {
      String said = units.get(i).origin().of(factor);
      if (said.isEmpty()) {
        notStated++;
      } else {
        members
            .computeIfAbsent(known(factor, said, members), key -> new ArrayList<>())
            .add(new Member(units.get(i), levels.get(i)));
      }
    }
    if (members.size() < 2) {
      return Optional.empty();
    }
    List<Group> groups = new ArrayList<>();
    members.forEach((name, some) -> groups.add(group(name, some)));
    groups.sort(Comparator.comparing(Group::name, NaturalOrder.INSTANCE));
    return Optional.of(new ByFactor(factor, List.copyOf(groups), notStated, chance(members)));
  }

  /** {@code R. Adeyemi} and {@code Adeyemi, R.} are one. */
  private static String known(
      Origin.Factor factor, String said, Map<String, List<Member>> members) {
    return members.keySet().stream()
        .filter(
            one ->
                one.equalsIgnoreCase(said)
                    || (factor == Origin.Factor.PERSON && Person.isSame(one, said)))
        .findFirst()
        .orElse(said);
  }

  private static Group group(String name, List<Member> members) {
    return new Group(
        name,
        members.size(),
        (int)
            members.stream()
                .filter(one -> one.unit().verdict() == CheckResult.Verdict.FAULTS)
                .count(),
        Robust.median(levels(members)));
  }

  private static double[] levels(List<Member> members) {
    return members.stream().mapToDouble(Member::levelOhms).toArray();
  }

  private static OptionalDouble chance(Map<String, List<Member>> members) {
    List<double[]> large =
        members.values().stream()
            .filter(some -> some.size() >= LEAST_OF_A_GROUP)
            .map(ByFactor::levels)
            .toList();
    return large.size() < 2
        ? OptionalDouble.empty()
        : OptionalDouble.of(RankTests.groupsDiffer(large));
  }
}

package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.PartGroups;
import dev.ringout.harness.Limits;
import dev.ringout.harness.NetLimit;
import dev.ringout.harness.Part;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How good the insulation between two nets must be. A limit of a net's own stands before the
 * harness's, of two the more lenient; nets that parts join are tested together and share what is
 * asked of any of them. A part that bears less than the volts lowers them for its nets.
 */
public final class InsulationDemand {
  /** So many are told apart; each pair of them is a question of its own. */
  private static final int MOST_KINDS = 64;

  private final double usualVolts;
  private final double usualOhms;
  private final PartGroups groups;
  private final int[] kindOf;
  private final List<Kind> kinds = new ArrayList<>();

  /** What is asked of some nets alike. */
  private record Kind(OptionalDouble volts, OptionalDouble ohms, double bearsVolts) {}

  /**
   * Volts and ohms that a reading needs.
   *
   * @param volts direct current
   */
  public record Level(double volts, double ohms) {}

  InsulationDemand(Circuit circuit, PartGroups groups) {
    Limits limits = circuit.harness().limits();
    this.usualVolts = limits.insulationVolts();
    this.usualOhms = limits.insulationMinOhms();
    this.groups = groups;
    Nets normal = circuit.normal();
    Map<Integer, OptionalDouble> volts = new LinkedHashMap<>();
    Map<Integer, OptionalDouble> ohms = new LinkedHashMap<>();
    for (NetLimit one : circuit.harness().netLimits()) {
      int group = groups.of(normal.of(circuit.index(one.point())));
      volts.merge(group, one.insulationVolts(), InsulationDemand::least);
      ohms.merge(group, one.insulationMinOhms(), InsulationDemand::least);
    }
    double[] bears = new double[normal.count()];
    Arrays.fill(bears, Double.POSITIVE_INFINITY);
    for (int part = 0; part < circuit.harness().parts().size(); part++) {
      Part one = circuit.part(part);
      int from = normal.of(circuit.fromOfPart(part));
      int to = normal.of(circuit.toOfPart(part));
      if (from != to && one.maxTestVolts().isPresent()) {
        bears[from] = Math.min(bears[from], one.maxTestVolts().getAsDouble());
        bears[to] = Math.min(bears[to], one.maxTestVolts().getAsDouble());
      }
    }
    Map<Kind, Integer> known = new LinkedHashMap<>();
    kindOf = new int[normal.count()];
    for (int net = 0; net < kindOf.length; net++) {
      int group = groups.of(net);
      Kind kind =
          new Kind(
              volts.getOrDefault(group, OptionalDouble.empty()),
              ohms.getOrDefault(group, OptionalDouble.empty()),
              bears[net]);
      kindOf[net] =
          known.computeIfAbsent(
              kind,
              one -> {
                kinds.add(one);
                return kinds.size() - 1;
              });
    }
  }

  private static OptionalDouble least(OptionalDouble one, OptionalDouble other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.isEmpty() ? other : one;
    }
    return OptionalDouble.of(Math.min(one.getAsDouble(), other.getAsDouble()));
  }

  /** How many kinds of nets there are. */
  int kinds() {
    return kinds.size();
  }

  /** The kind of a net. */
  int kind(int net) {
    return kindOf[net];
  }

  /** What is asked between nets of two kinds; of very many kinds the most that any asks. */
  Level between(int one, int other) {
    return kinds.size() > MOST_KINDS ? most() : ofTwo(one, other);
  }

  private Level most() {
    double volts = usualVolts;
    double ohms = usualOhms;
    for (Kind kind : kinds) {
      volts = Math.max(volts, kind.volts().orElse(0));
      ohms = Math.max(ohms, kind.ohms().orElse(0));
    }
    return new Level(volts, ohms);
  }

  private Level ofTwo(int one, int other) {
    Kind left = kinds.get(one);
    Kind right = kinds.get(other);
    double volts = least(left.volts(), right.volts()).orElse(usualVolts);
    return new Level(
        Math.min(volts, Math.min(left.bearsVolts(), right.bearsVolts())),
        least(left.ohms(), right.ohms()).orElse(usualOhms));
  }

  /** Nets that parts join: a meter reads the parts instead of the insulation. */
  PartGroups groups() {
    return groups;
  }

  private boolean isAlone(int net) {
    return groups.size(groups.of(net)) == 1;
  }

  /** How often a net and another behind parts of it would be asked for a level. */
  long endsBehindParts(Level level) {
    Map<Integer, long[]> ofKind = new LinkedHashMap<>();
    for (int net = 0; net < kindOf.length; net++) {
      if (!isAlone(net)) {
        ofKind.computeIfAbsent(groups.of(net), key -> new long[kinds.size()])[kindOf[net]]++;
      }
    }
    long ends = 0;
    for (long[] counts : ofKind.values()) {
      for (int one = 0; one < counts.length; one++) {
        for (int other = 0; other < counts.length; other++) {
          if (between(one, other).equals(level)) {
            ends += counts[one] * (one == other ? counts[one] - 1 : counts[other]);
          }
        }
      }
    }
    return ends;
  }

  /** Every level that is asked between any two nets, the most asked first. */
  List<Level> levels() {
    if (kinds.size() > MOST_KINDS) {
      return List.of(most());
    }
    List<Level> levels = new ArrayList<>();
    for (int one = 0; one < kinds.size(); one++) {
      for (int other = one; other < kinds.size(); other++) {
        Level level = between(one, other);
        if (!levels.contains(level)) {
          levels.add(level);
        }
      }
    }
    return levels;
  }
}

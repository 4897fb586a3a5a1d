package dev.ringout.compare;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.NetLimits;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.PartGroups;
import dev.ringout.harness.Limits;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How good the insulation between two nets must be. A limit of a net's own stands before the
 * harness's: of one net's two the stricter, of two nets' the more lenient; nets that parts join are
 * tested together, so that no part bears the volts, and share what is asked of any of them.
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
  private record Kind(OptionalDouble volts, OptionalDouble ohms) {}

  /**
   * Volts and ohms that a reading needs.
   *
   * @param volts direct current
   */
  public record Level(double volts, double ohms) {}

  private InsulationDemand(Limits limits, PartGroups groups, int nets) {
    this.usualVolts = limits.insulationVolts();
    this.usualOhms = limits.insulationMinOhms();
    this.groups = groups;
    this.kindOf = new int[nets];
  }

  /** What a list asks for between its nets. */
  static InsulationDemand of(Circuit circuit, PartGroups groups) {
    Nets normal = circuit.normal();
    InsulationDemand demand =
        new InsulationDemand(circuit.harness().limits(), groups, normal.count());
    Map<Integer, OptionalDouble> volts = new LinkedHashMap<>();
    Map<Integer, OptionalDouble> ohms = new LinkedHashMap<>();
    NetLimits.strictest(circuit.harness().netLimits(), point -> normal.of(circuit.index(point)))
        .forEach(
            (net, limit) -> {
              volts.merge(groups.of(net), limit.insulationVolts(), NetLimits::least);
              ohms.merge(groups.of(net), limit.insulationMinOhms(), NetLimits::least);
            });
    Map<Kind, Integer> known = new LinkedHashMap<>();
    for (int net = 0; net < normal.count(); net++) {
      int group = groups.of(net);
      demand.add(
          net,
          new Kind(
              volts.getOrDefault(group, OptionalDouble.empty()),
              ohms.getOrDefault(group, OptionalDouble.empty())),
          known);
    }
    return demand;
  }

  private void add(int net, Kind kind, Map<Kind, Integer> known) {
    kindOf[net] = known.computeIfAbsent(kind, one -> kinds.size());
    if (kindOf[net] == kinds.size()) {
      kinds.add(kind);
    }
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
    return new Level(
        NetLimits.least(left.volts(), right.volts()).orElse(usualVolts),
        NetLimits.least(left.ohms(), right.ohms()).orElse(usualOhms));
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

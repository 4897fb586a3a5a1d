package dev.ringout.diagnose.values;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.DisjointPoints;
import dev.ringout.circuit.JoinLimits;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Resistances;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Finding;
import dev.ringout.diagnose.wiring.AsFound;
import dev.ringout.diagnose.wiring.SlipCosts;
import dev.ringout.diagnose.wiring.WiringFaults;
import dev.ringout.harness.SwitchState;
import dev.ringout.units.OhmsRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Joints that conduct, but poorly, put where all readings of the net together put them.
 *
 * <p>For each conductor on the way of a high reading: how likely would all readings of the net be,
 * had this one alone the extra resistance that fits them best? A reading that leads over it and is
 * good speaks against it; one that is high speaks for it. Weighed by how often such a joint is poor
 * ({@code slips.csv}), this gives the odds (Bayes). What is still high with the likeliest in place
 * has a poor joint of its own.
 */
final class HighResistances {
  /** Conductors that are less likely than this share of all are not named. */
  private static final double LEAST_ODDS = 0.05;

  /** What a way without lengths may have: most read a few tenths (common practice, no source). */
  private static final double UNKNOWN_OHMS = 0.2;

  private static final double UNKNOWN_SPREAD_OHMS = 0.35;

  /** No single reading may count for more against a conductor: it may have a fault of its own. */
  private static final double MOST_AGAINST = 25;

  /** Scores that differ by less are the same, summed in another order. */
  private static final double A_HAIR = 1e-9;

  private static final double STILL_HIGH = 4;
  private static final long MOST_WORK = 4_000_000;

  private final AsFound asFound;
  private final Circuit circuit;
  private final JoinLimits limits;
  private final Comparison comparison;
  private final SlipCosts costs;
  private final boolean leadsInDoubt;
  private final WiringFaults wiring;
  private final Map<Judged, Set<Integer>> ways = new HashMap<>();

  HighResistances(
      WiringFaults wiring,
      JoinLimits limits,
      SlipCosts costs,
      Comparison comparison,
      boolean leadsInDoubt) {
    this.wiring = wiring;
    this.asFound = wiring.asFound();
    this.circuit = asFound.circuit();
    this.limits = limits;
    this.comparison = comparison;
    this.costs = costs;
    this.leadsInDoubt = leadsInDoubt;
  }

  /** A conductor with the extra resistance that fits best, and the readings' likelihood then. */
  private record Suspect(int conductor, double extraOhms, double score) {}

  List<Fault> faults(Set<Judged> explainedOtherwise) {
    Map<Integer, List<Judged>> highByNet = new LinkedHashMap<>();
    DisjointPoints acrossStates = acrossStates();
    List<Fault> faults = new ArrayList<>();
    for (Judged judged : comparison.inForce()) {
      if (isHigh(judged) && !explainedOtherwise.contains(judged)) {
        if (judged.probing().isPair()) {
          highByNet
              .computeIfAbsent(netOf(judged, acrossStates), key -> new ArrayList<>())
              .add(judged);
        } else {
          faults.add(fault(List.of(judged), List.of()));
        }
      }
    }
    if (highByNet.isEmpty()) {
      return faults;
    }
    Map<Integer, List<Judged>> allByNet = new HashMap<>();
    for (Judged judged : comparison.inForce()) {
      if (isJoinWithValue(judged) && highByNet.containsKey(netOf(judged, acrossStates))) {
        allByNet.computeIfAbsent(netOf(judged, acrossStates), key -> new ArrayList<>()).add(judged);
      }
    }
    highByNet.forEach(
        (net, high) -> faults.addAll(ofNet(high, allByNet.getOrDefault(net, List.of()))));
    return faults;
  }

  private static boolean isHigh(Judged judged) {
    return judged.expected().isJoined() && judged.outcome() == Outcome.RESISTIVE;
  }

  private static boolean isJoinWithValue(Judged judged) {
    return judged.expected().isJoined()
        && judged.probing().isPair()
        && judged.reading().measured().value().isPresent()
        && (judged.outcome() == Outcome.CONFORMS || judged.outcome() == Outcome.RESISTIVE);
  }

  /** Points that are one net in any state that was read: a joint is as poor in the other states. */
  private DisjointPoints acrossStates() {
    DisjointPoints joined = new DisjointPoints(circuit.size());
    Set<SwitchState> states = new HashSet<>();
    for (Judged judged : comparison.inForce()) {
      if (isHigh(judged) && states.add(judged.reading().state())) {
        Nets nets = circuit.in(judged.reading().state());
        for (int net = 0; net < nets.count(); net++) {
          int[] points = nets.pointsOf(net);
          IntStream.of(points).forEach(point -> joined.union(points[0], point));
        }
      }
    }
    return joined;
  }

  private static int netOf(Judged judged, DisjointPoints acrossStates) {
    return acrossStates.firstOf(judged.probing().from()[0]);
  }

  private List<Fault> ofNet(List<Judged> high, List<Judged> readings) {
    List<Fault> faults = new ArrayList<>();
    List<Judged> left = new ArrayList<>(high);
    List<Judged> evidence = new ArrayList<>(readings);
    Set<Integer> found = new HashSet<>();
    while (!left.isEmpty()) {
      List<Suspect> suspects = suspects(left, evidence, found);
      if (suspects.isEmpty()) {
        faults.add(fault(left, List.of()));
        break;
      }
      Suspect best = suspects.get(0);
      List<Judged> explained = left.stream().filter(judged -> !isStillHigh(judged, best)).toList();
      if (explained.isEmpty()) {
        explained = List.of(left.get(0));
      }
      List<Judged> shown = explained;
      suspects.removeIf(suspect -> shown.stream().anyMatch(judged -> isStillHigh(judged, suspect)));
      faults.add(fault(explained, suspects.isEmpty() ? List.of(best) : suspects));
      left.removeAll(explained);
      evidence.removeAll(explained);
      found.add(best.conductor());
    }
    return faults;
  }

  private boolean isStillHigh(Judged judged, Suspect suspect) {
    if (!way(judged).contains(suspect.conductor())) {
      return true;
    }
    double extra = extra(judged, suspect.conductor(), suspect.extraOhms());
    return ohms(judged) - expectedOhms(judged) - extra > STILL_HIGH * spread(judged) + extra / 3;
  }

  /** Likeliest first; what shares the odds of the first is no better than it. */
  private List<Suspect> suspects(List<Judged> high, List<Judged> readings, Set<Integer> found) {
    Set<Integer> conductors = new LinkedHashSet<>();
    high.forEach(judged -> conductors.addAll(way(judged)));
    conductors.removeAll(found);
    boolean tooMany = (long) conductors.size() * readings.size() > MOST_WORK;
    List<Judged> evidence = tooMany ? high : readings;
    List<Suspect> suspects = new ArrayList<>();
    for (int conductor : conductors) {
      Suspect suspect = suspect(conductor, high, evidence);
      if (Double.isFinite(suspect.score())) {
        suspects.add(suspect);
      }
    }
    // Alike to a hair stays in the order of the list.
    suspects.sort(
        Comparator.comparingLong((Suspect suspect) -> -Math.round(suspect.score() / A_HAIR))
            .thenComparingInt(Suspect::conductor));
    double best = suspects.isEmpty() ? 0 : suspects.get(0).score();
    suspects.removeIf(one -> Math.exp(one.score() - best) < LEAST_ODDS);
    return suspects;
  }

  private Suspect suspect(int conductor, List<Judged> high, List<Judged> readings) {
    double prior = -costs.ofPoor(circuit.conductors().get(conductor));
    Suspect best = new Suspect(conductor, 0, Double.NEGATIVE_INFINITY);
    for (Judged judged : high) {
      double excess = ohms(judged) - expectedOhms(judged);
      double share = extra(judged, conductor, 1e-6) / 1e-6;
      if (share <= 1e-9 || excess <= 0) {
        continue;
      }
      // In a loop the current goes around: the joint itself may be many times poorer.
      for (double times = 1; times <= (share > 0.999 ? 1 : 1000); times *= 1.5) {
        double extraOhms = excess / share * times;
        double score = prior;
        for (Judged one : readings) {
          score -= against(one, conductor, extraOhms);
        }
        if (score > best.score()) {
          best = new Suspect(conductor, extraOhms, score);
        }
      }
    }
    return best;
  }

  private double against(Judged judged, int conductor, double extraOhms) {
    double off =
        (ohms(judged) - expectedOhms(judged) - extra(judged, conductor, extraOhms))
            / spread(judged);
    return Math.min(off * off / 2, MOST_AGAINST);
  }

  private static double expectedOhms(Judged judged) {
    OhmsRange expected = judged.limit().expected();
    double leads = judged.limit().leads().middleOhms();
    return leads + (expected.isKnown() ? expected.middleOhms() : UNKNOWN_OHMS);
  }

  private static double spread(Judged judged) {
    OhmsRange expected = judged.limit().expected();
    double wires = expected.isKnown() ? expected.halfWidthOhms() / 2 : UNKNOWN_SPREAD_OHMS;
    double meter = judged.seen().isKnown() ? judged.seen().halfWidthOhms() / 2 : 0;
    return Math.max(1e-6, Math.hypot(wires, meter));
  }

  private Set<Integer> way(Judged judged) {
    return ways.computeIfAbsent(
        judged,
        key -> {
          int from = key.probing().from()[0];
          int to = key.probing().to()[0];
          SwitchState state = key.reading().state();
          Set<Integer> way = new LinkedHashSet<>();
          for (int conductor : resistances(key).conductorsBetween(from, to, state)) {
            way.add(conductor);
          }
          return way;
        });
  }

  private Resistances resistances(Judged judged) {
    return limits.resistances(judged.reading().meter());
  }

  /** What a reading gains when one conductor gains so much; by the tree's way where unknown. */
  private double extra(Judged judged, int conductor, double extraOhms) {
    if (!way(judged).contains(conductor)) {
      return 0;
    }
    SwitchState state = judged.reading().state();
    int from = judged.probing().from()[0];
    int to = judged.probing().to()[0];
    return resistances(judged)
        .gain(conductor, extraOhms, from, to, state)
        .orElseGet(() -> circuit.in(state).path(from, to).contains(conductor) ? extraOhms : 0);
  }

  private Fault fault(List<Judged> readings, List<Suspect> suspects) {
    Judged worst =
        readings.stream().max((one, other) -> Double.compare(ohms(one), ohms(other))).orElseThrow();
    double total =
        suspects.stream()
            .mapToDouble(suspect -> Math.exp(suspect.score() - suspects.get(0).score()))
            .sum();
    return new Fault.HighResistance(
        Finding.alone(certainty(suspects, readings), readings, List.of()),
        suspects.stream()
            .map(
                one ->
                    new Fault.Suspicion(
                        asFound.listed(circuit.conductors().get(one.conductor())),
                        Math.exp(one.score() - suspects.get(0).score()) / total,
                        !circuit.in(worst.reading().state()).isCutEdge(one.conductor())))
            .toList(),
        List.of(
            circuit.point(worst.probing().from()[0]),
            circuit.point(
                worst.probing().to().length > 0
                    ? worst.probing().to()[0]
                    : worst.probing().from()[0])),
        worst.limit().expected().isKnown()
            ? worst.limit().expected().highOhms() + worst.limit().leads().highOhms()
            : worst.limit().ohms(),
        ohms(worst));
  }

  private Certainty certainty(List<Suspect> suspects, List<Judged> readings) {
    return leadsInDoubt
        ? Certainty.POSSIBLE
        : wiring.certaintyBeside(suspects.size() == 1, readings);
  }

  private static double ohms(Judged judged) {
    return judged.reading().measured().writtenAtLeastOhms().orElse(0);
  }
}

package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.AlteredPart;
import dev.ringout.circuit.AlteredPart.How;
import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.Predictor;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Observed;
import dev.ringout.compare.Outcome;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Measured;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The readings as evidence: which of them does a unit with given slips contradict? Only readings at
 * nets that a slip touches can change; of the many that hold two points apart, only those are
 * looked up whose points the slips join.
 */
final class Evidence {
  private final Circuit circuit;
  private final Predictor predictor;
  private final Map<SwitchState, OfState> byState = new HashMap<>();
  private final Set<Judged> valuesOfParts = new HashSet<>();

  /**
   * Where a diode was read that does not conduct, by a meter that opens diodes; leads exchanged.
   */
  private final Set<List<Object>> opened = new HashSet<>();

  /** The readings of one state, by the listed nets that their probes touch. */
  private static final class OfState {
    final Map<Integer, List<Judged>> readings = new HashMap<>();
    final Map<Integer, OfNet> nets = new HashMap<>();
  }

  /**
   * The readings at one net.
   *
   * @param told those whose prediction must be computed
   * @param apart those that hold a point of the net and one of another net apart, by their points
   */
  private record OfNet(List<Judged> told, Map<Long, Judged> apart) {}

  private Evidence(Circuit circuit, Predictor predictor) {
    this.circuit = circuit;
    this.predictor = predictor;
  }

  static Evidence of(Circuit circuit, Predictor predictor, List<Judged> inForce) {
    Evidence evidence = new Evidence(circuit, predictor);
    inForce.forEach(evidence::take);
    return evidence;
  }

  private void take(Judged judged) {
    if (PartValues.isOfAPart(judged, circuit)) {
      valuesOfParts.add(judged);
    }
    if (judged.observed() == Observed.APART
        && judged.outcome() == Outcome.PART_VALUE
        && judged.probing().isPair()
        && judged.expected().throughParts().filter(ThroughParts::mayBeOpen).isPresent()) {
      opened.add(probes(judged.probing().to()[0], judged.probing().from()[0], judged));
    }
    if (says(judged)) {
      OfState ofState = byState.computeIfAbsent(judged.reading().state(), state -> new OfState());
      for (int net : netsOf(judged)) {
        ofState.readings.computeIfAbsent(net, key -> new ArrayList<>(2)).add(judged);
      }
    }
  }

  private static List<Object> probes(int from, int to, Judged judged) {
    return List.of(from, to, judged.reading().state());
  }

  /** Whether a reading says anything about what is joined. */
  private static boolean says(Judged judged) {
    return judged.observed() != Observed.UNKNOWN
        || (judged.outcome() == Outcome.PART_VALUE && judged.reading().measured().made());
  }

  /** The listed nets that a reading's probes touch. */
  Set<Integer> netsOf(Judged judged) {
    Nets nets = circuit.in(judged.reading().state());
    Set<Integer> touched = new LinkedHashSet<>();
    judged.probing().points().forEach(point -> touched.add(nets.of(point)));
    return touched;
  }

  /** The readings at nets that slips touch, of those that say anything about what is joined. */
  Stream<Judged> at(List<Slip> slips) {
    return byState.entrySet().stream()
        .flatMap(
            entry ->
                nets(slips, entry.getKey()).touchedNets().stream()
                    .flatMap(
                        net -> entry.getValue().readings.getOrDefault(net, List.of()).stream()));
  }

  /** The states in which readings were made. */
  Set<SwitchState> states() {
    return byState.keySet();
  }

  SlippedNets nets(List<Slip> slips, SwitchState state) {
    return new SlippedNets(circuit, state, slips);
  }

  Expected predict(Judged judged, SlippedNets nets, List<Slip> slips) {
    return predict(probing(judged, slips), nets);
  }

  /** Where the probes really were. */
  private static Probing probing(Judged judged, List<Slip> slips) {
    for (Slip slip : slips) {
      Optional<Probing> really = slip.asMisread().flatMap(misread -> misread.probingOf(judged));
      if (really.isPresent()) {
        return really.get();
      }
    }
    return judged.probing();
  }

  /** What a reading, made or not, would find on a unit with slips. */
  Expected predict(Probing probing, List<Slip> slips) {
    return predict(probing, nets(slips, probing.state()));
  }

  /** What a reading would find in nets that slips have made. */
  Expected predict(Probing probing, SlippedNets nets) {
    return predictor.expect(probing, circuit.in(probing.state()), nets, nets.altered());
  }

  /**
   * The readings that a unit with these slips would not give.
   *
   * @param failing readings that the unit as listed does not give; they count until explained
   */
  List<Judged> contradicted(List<Slip> slips, List<Judged> failing) {
    Set<Judged> against = new LinkedHashSet<>();
    for (Map.Entry<SwitchState, OfState> entry : byState.entrySet()) {
      new Trial(entry.getKey(), entry.getValue(), slips, against).run(failing);
    }
    return List.copyOf(against);
  }

  /** A set of slips held against the readings of one state. */
  private final class Trial {
    private final SwitchState state;
    private final OfState readings;
    private final List<Slip> slips;
    private final Set<Judged> against;
    private final Nets listed;
    private final SlippedNets nets;
    private final Set<Integer> touched;

    Trial(SwitchState state, OfState readings, List<Slip> slips, Set<Judged> against) {
      this.state = state;
      this.readings = readings;
      this.slips = slips;
      this.against = against;
      this.listed = circuit.in(state);
      this.nets = nets(slips, state);
      this.touched = touchedNets();
    }

    void run(List<Judged> failing) {
      for (Judged judged : failing) {
        if (judged.reading().state().equals(state) && !isTouched(judged)) {
          judge(judged);
        }
      }
      for (int net : touched) {
        ofNet(net).told().forEach(this::judge);
      }
      nets.newGroups().forEach(this::apartWithin);
      if (!circuit.harness().parts().isEmpty()) {
        apartThroughParts();
      }
    }

    private void judge(Judged judged) {
      Probing probing = probing(judged, slips);
      if (!agrees(judged, probing, nets, predict(probing, nets))) {
        against.add(judged);
      }
    }

    private boolean isTouched(Judged judged) {
      return judged.probing().points().anyMatch(point -> touched.contains(listed.of(point)));
    }

    private Set<Integer> touchedNets() {
      Set<Integer> found = nets.touchedNets();
      // A part carries a change of its net on to the nets behind it.
      for (int net : List.copyOf(found)) {
        for (int part : listed.partsAt(net)) {
          found.add(listed.of(circuit.fromOfPart(part)));
          found.add(listed.of(circuit.toOfPart(part)));
        }
      }
      return found;
    }

    private OfNet ofNet(int net) {
      return readings.nets.computeIfAbsent(net, this::sorted);
    }

    private OfNet sorted(int net) {
      List<Judged> told = new ArrayList<>();
      Map<Long, Judged> apart = new HashMap<>();
      for (Judged judged : readings.readings.getOrDefault(net, List.of())) {
        if (judged.probing().isPair()
            && judged.observed() == Observed.APART
            && judged.expected().isApart()) {
          Judged other = apart.putIfAbsent(key(judged), judged);
          if (other != null) {
            told.add(judged);
          }
        } else {
          told.add(judged);
        }
      }
      return new OfNet(told, apart);
    }

    private long key(Judged judged) {
      return key(judged.probing().from()[0], judged.probing().to()[0]);
    }

    private long key(int one, int other) {
      return (long) Math.min(one, other) * circuit.size() + Math.max(one, other);
    }

    /** Readings that hold two points apart which the slips have put into one group. */
    private void apartWithin(int[] group) {
      List<List<Integer>> fragments = fragments(group);
      for (int i = 0; i < fragments.size(); i++) {
        for (int j = i + 1; j < fragments.size(); j++) {
          judgeApart(fragments.get(i), fragments.get(j));
        }
      }
    }

    private void judgeApart(List<Integer> some, List<Integer> others) {
      Map<Long, Judged> apart = ofNet(listed.of(some.get(0))).apart();
      if (apart.isEmpty()) {
        return;
      }
      if (apart.size() < (long) some.size() * others.size()) {
        Set<Integer> ends = new HashSet<>(some);
        Set<Integer> otherEnds = new HashSet<>(others);
        for (Judged judged : apart.values()) {
          int from = judged.probing().from()[0];
          int to = judged.probing().to()[0];
          if ((ends.contains(from) && otherEnds.contains(to))
              || (ends.contains(to) && otherEnds.contains(from))) {
            judge(judged);
          }
        }
        return;
      }
      for (int one : some) {
        for (int other : others) {
          Judged judged = apart.get(key(one, other));
          if (judged != null) {
            judge(judged);
          }
        }
      }
    }

    /** Readings that hold apart what a slip has put across a part. */
    private void apartThroughParts() {
      Set<Integer> groups = new LinkedHashSet<>();
      nets.newGroups().forEach(group -> groups.add(nets.groupOf(group[0])));
      for (AlteredPart part : nets.altered().values()) {
        groups.add(nets.groupOf(part.from()));
        groups.add(nets.groupOf(part.to()));
      }
      for (int group : groups) {
        List<List<Integer>> some = fragments(nets.pointsOf(group));
        for (int behind : behindParts(group)) {
          List<List<Integer>> others = fragments(nets.pointsOf(behind));
          some.forEach(one -> others.forEach(other -> judgeApart(one, other)));
        }
      }
    }

    /** The points of a group, by their listed nets. */
    private List<List<Integer>> fragments(int[] group) {
      Map<Integer, List<Integer>> byNet = new HashMap<>();
      for (int point : group) {
        byNet.computeIfAbsent(listed.of(point), key -> new ArrayList<>()).add(point);
      }
      return List.copyOf(byNet.values());
    }

    /** The other groups at the parts of a group. */
    private Set<Integer> behindParts(int group) {
      Set<Integer> behind = new LinkedHashSet<>();
      for (int part : nets.partsAt(group)) {
        if (!nets.altered().containsKey(part)) {
          behind.add(nets.groupOf(circuit.fromOfPart(part)));
          behind.add(nets.groupOf(circuit.toOfPart(part)));
        }
      }
      for (AlteredPart part : nets.altered().values()) {
        int from = nets.groupOf(part.from());
        int to = nets.groupOf(part.to());
        if (part.how() != How.MISSING && (from == group || to == group)) {
          behind.add(from);
          behind.add(to);
        }
      }
      behind.remove(group);
      return behind;
    }
  }

  /** Values that some part of the unit has, read where none of it is listed. */
  Set<Judged> valuesOfParts() {
    return valuesOfParts;
  }

  /** Whether a reading is what the prediction says. */
  private boolean agrees(Judged judged, Probing probing, SlippedNets nets, Expected predicted) {
    if (probing.isPair() && nets.joinsPoorly(probing.from()[0], probing.to()[0])) {
      return judged.observed() == Observed.RESISTIVE;
    }
    boolean throughPartsAsListed =
        judged.expected().throughParts().isPresent()
            && judged.outcome() == Outcome.CONFORMS
            && judged.observed() != Observed.APART;
    Optional<ThroughParts> parts = predicted.throughParts();
    if (parts.isPresent()) {
      return !(throughPartsAsListed && isRefuted(judged, parts.get(), nets))
          && agrees(judged, parts.get());
    }
    boolean valueOfAPart =
        valuesOfParts.contains(judged)
            || (judged.expected().throughParts().isPresent()
                && judged.observed() == Observed.RESISTIVE);
    if (throughPartsAsListed || valueOfAPart) {
      // A value was read, and with nothing between the sides, or a joint, there is none.
      return false;
    }
    boolean joined = predicted.isJoined();
    return switch (judged.observed()) {
      case JOINED -> joined;
      case APART -> predicted.isApart();
      // A poor joint still conducts, a leak does not join: both are told apart elsewhere.
      case RESISTIVE -> joined == judged.expected().isJoined();
      case UNKNOWN -> judged.outcome() != Outcome.PART_VALUE;
    };
  }

  /** Whether a part that is said to have another value was read by itself and has its own. */
  private boolean isRefuted(Judged judged, ThroughParts predicted, SlippedNets nets) {
    if (predicted.parts().size() != 1 || judged.reading().measured().value().isEmpty()) {
      return false;
    }
    int part = predicted.parts().get(0);
    AlteredPart altered = nets.altered().get(part);
    return altered != null
        && altered.how() == How.ANY_VALUE
        && circuit.part(part).ohms().isPresent()
        && judged
            .expected()
            .throughParts()
            .filter(listed -> listed.parts().equals(predicted.parts()))
            .isPresent();
  }

  private boolean mustConduct(Judged judged) {
    return !opened.isEmpty()
        && judged.probing().isPair()
        && opened.contains(probes(judged.probing().from()[0], judged.probing().to()[0], judged));
  }

  private boolean agrees(Judged judged, ThroughParts predicted) {
    Measured measured = judged.reading().measured();
    if (measured.isWord()) {
      return judged.observed() == Observed.JOINED
          ? predicted.lowOhms() <= judged.limit().ohms()
          : (predicted.mayBeOpen() || judged.outcome() == Outcome.CONFORMS);
    }
    if (judged.observed() == Observed.APART) {
      // What should conduct and does not is no part that may or may not.
      boolean conducts = judged.outcome() == Outcome.PART_VALUE || mustConduct(judged);
      return conducts ? Double.isInfinite(predicted.lowOhms()) : predicted.mayBeOpen();
    }
    if (measured.value().isPresent()) {
      return predicted.allows(judged.seen());
    }
    return judged.observed() == Observed.JOINED
        ? predicted.lowOhms() <= judged.limit().ohms()
        : predicted.mayBeOpen();
  }
}

package dev.ringout.diagnose;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.Expected.Joined;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Judged;
import dev.ringout.diagnose.Fault.Alternative;
import dev.ringout.diagnose.Fault.Finding;
import dev.ringout.diagnose.Fault.Pattern;
import dev.ringout.diagnose.Fault.RunnerUp;
import dev.ringout.diagnose.Region.EquivalenceClass;
import dev.ringout.diagnose.Search.Explanation;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The likeliest explanation of a region as faults, each with what shows it and what else it could
 * be.
 */
final class RegionFaults {
  private static final double LEAST_ODDS = 0.005;

  private final Circuit circuit;
  private final Neighbours neighbours;
  private final Evidence evidence;
  private final Region region;
  private final Explanation best;
  private final List<Judged> low;
  private final List<Fault> faults = new ArrayList<>();

  RegionFaults(
      Circuit circuit,
      Neighbours neighbours,
      Evidence evidence,
      Region region,
      List<Judged> lowInsulation,
      int story) {
    this.circuit = circuit;
    this.neighbours = neighbours;
    this.evidence = evidence;
    this.region = region;
    this.best = region.best().primary();
    // An insulation tester across a stray join reads next to nothing: that is no second fault.
    this.low = lowInsulation.stream().filter(judged -> isJoined(judged, best.slips())).toList();
    List<List<Slip>> groups = grouped(best.slips());
    List<List<Judged>> shownBy = shownBy(groups);
    for (int i = 0; i < groups.size(); i++) {
      Finding finding =
          new Finding(
              region.certainty(),
              List.copyOf(shownBy.get(i)),
              i == 0 ? alternatives() : List.of(),
              story,
              i == 0 ? runnerUp() : Optional.empty());
      faults.add(fault(groups.get(i), finding));
    }
  }

  List<Fault> faults() {
    return faults;
  }

  /** Every reading that these faults explain. */
  Set<Judged> explained() {
    Set<Judged> explained = new LinkedHashSet<>(region.failing());
    explained.addAll(low);
    return explained;
  }

  /**
   * Slips that misplace the same wire, or an end into the place of another misplaced end, are one
   * miswire: three ends in a ring are no two swaps, a run of shifted ends is one slip of the hand.
   */
  private List<List<Slip>> grouped(List<Slip> slips) {
    List<List<Slip>> groups = new ArrayList<>();
    for (Slip slip : slips) {
      List<Slip> group = new ArrayList<>(List.of(slip));
      for (List<Slip> known : List.copyOf(groups)) {
        if (known.stream().anyMatch(one -> hangTogether(one, slip))) {
          groups.remove(known);
          group.addAll(0, known);
        }
      }
      groups.add(group);
    }
    return groups;
  }

  private boolean hangTogether(Slip one, Slip other) {
    return !Collections.disjoint(one.misplaced(), other.misplaced())
        || takesThePlaceOf(one, other)
        || takesThePlaceOf(other, one);
  }

  private boolean takesThePlaceOf(Slip one, Slip other) {
    return one instanceof Slip.Moved into
        && other instanceof Slip.Moved away
        && into.to() == circuit.at(away.wire(), away.end());
  }

  /** For each group the failing readings that would stay unexplained without it. */
  private List<List<Judged>> shownBy(List<List<Slip>> groups) {
    List<List<Judged>> shownBy = new ArrayList<>();
    Set<Judged> shown = new HashSet<>();
    for (List<Slip> group : groups) {
      List<Slip> others = best.slips().stream().filter(slip -> !group.contains(slip)).toList();
      List<Judged> contradicted = evidence.contradicted(others, region.failing());
      List<Judged> own =
          new ArrayList<>(region.failing().stream().filter(contradicted::contains).toList());
      low.stream().filter(judged -> !isJoined(judged, others)).forEach(own::add);
      shown.addAll(own);
      shownBy.add(own);
    }
    // What only several groups together explain shows each of them.
    for (Judged judged : explained()) {
      if (!shown.contains(judged)) {
        shownBy.forEach(readings -> readings.add(judged));
      }
    }
    // A slip that is needed only so that good readings stay good: the whole region speaks for it.
    shownBy.stream().filter(List::isEmpty).forEach(none -> none.addAll(region.failing()));
    return shownBy;
  }

  private boolean isJoined(Judged judged, List<Slip> slips) {
    return evidence.predict(judged.probing(), slips) instanceof Joined;
  }

  private List<Alternative> alternatives() {
    return region.classes().stream()
        .skip(1)
        .filter(one -> one.odds() >= LEAST_ODDS || one.size() <= region.best().size())
        .map(one -> new Alternative(one.odds(), facts(one)))
        .toList();
  }

  /** Where the readings have left one story: the next, and what speaks against it. */
  private Optional<RunnerUp> runnerUp() {
    if (region.classes().size() > 1) {
      return Optional.empty();
    }
    return region.runnerUp().map(one -> new RunnerUp(facts(one.slips()), one.against()));
  }

  Region region() {
    return region;
  }

  /** An explanation in the trade's own things. */
  List<SlipFact> facts(EquivalenceClass one) {
    return facts(one.primary().slips());
  }

  private List<SlipFact> facts(List<Slip> slips) {
    return grouped(slips).stream().map(this::fact).toList();
  }

  private SlipFact fact(List<Slip> group) {
    Slip slip = group.get(0);
    if (slip instanceof Slip.Missing missing) {
      return new SlipFact.Opened(circuit.conductors().get(missing.conductor()));
    }
    if (slip instanceof Slip.Bridged bridged) {
      return new SlipFact.Bridge(circuit.point(bridged.one()), circuit.point(bridged.other()));
    }
    if (slip instanceof Slip.FaultyPart faulty) {
      return new SlipFact.BadPart(
          circuit.part(faulty.part()),
          faulty.how(),
          circuit.point(faulty.from()),
          circuit.point(faulty.to()));
    }
    if (slip instanceof Slip.FaultySwitch faulty) {
      return new SlipFact.BadSwitch(
          switchOf(faulty), faulty.how(), faulty.position(), contactPoints(faulty));
    }
    if (slip instanceof Slip.Poor poor) {
      return new SlipFact.PoorJoint(circuit.conductors().get(poor.conductor()));
    }
    if (slip instanceof Slip.Misread misread) {
      return new SlipFact.Misread(misread.judged(), listed(misread), circuit.point(misread.at()));
    }
    return new SlipFact.Misplaced(moves(group));
  }

  private Point listed(Slip.Misread misread) {
    Probing probing = misread.judged().probing();
    return circuit.point(misread.first() ? probing.from()[0] : probing.to()[0]);
  }

  /** Where the slips leave the wire ends that are not where they are listed. */
  private List<Move> moves(List<Slip> group) {
    SlippedNets nets = evidence.nets(group, SwitchState.normal());
    Set<Integer> wires = new TreeSet<>();
    group.forEach(slip -> wires.addAll(slip.misplaced()));
    List<Move> moves = new ArrayList<>();
    for (int number : wires) {
      Wire wire = ((Conductor.OfWire) circuit.conductors().get(number)).wire();
      for (Wire.End end : Wire.End.values()) {
        Point at = circuit.point(nets.end(number, end));
        if (!at.equals(wire.at(end))) {
          moves.add(new Move(wire, wire.at(end), at));
        }
      }
    }
    return moves;
  }

  private Fault fault(List<Slip> group, Finding finding) {
    Slip slip = group.get(0);
    if (slip instanceof Slip.Missing missing) {
      return open(missing, finding);
    }
    if (slip instanceof Slip.Bridged bridged) {
      return new Fault.Shorted(
          finding,
          List.of(circuit.point(bridged.one()), circuit.point(bridged.other())),
          contactsAlike(group));
    }
    if (slip instanceof Slip.FaultyPart faulty) {
      return wrongPart(faulty, finding);
    }
    if (slip instanceof Slip.FaultySwitch faulty) {
      return new Fault.WrongSwitch(
          finding, switchOf(faulty), faulty.how(), faulty.position(), contactPoints(faulty));
    }
    if (slip instanceof Slip.Misread misread) {
      return new Fault.Misread(
          finding, misread.judged(), listed(misread), circuit.point(misread.at()));
    }
    if (slip instanceof Slip.Poor poor) {
      return poorJoint(poor, finding);
    }
    List<Move> moves = moves(group);
    Optional<Arrangement> arrangement =
        group.size() == 1 && slip instanceof Slip.Rearranged many
            ? Optional.of(many.how())
            : Optional.empty();
    return new Fault.Miswire(
        finding,
        arrangement.map(RegionFaults::pattern).orElseGet(() -> pattern(group, moves)),
        arrangement,
        moves,
        equivalents(group));
  }

  private static Pattern pattern(Arrangement arrangement) {
    return switch (arrangement) {
      case SHIFTED -> Pattern.SHIFT;
      case MIRRORED, MIRRORED_ROW -> Pattern.REVERSED;
      case ROTATED -> Pattern.ROTATED;
      case RING, PLUGS_CROSSED -> Pattern.OTHER;
    };
  }

  private Pattern pattern(List<Slip> group, List<Move> moves) {
    if (group.size() == 1) {
      return group.get(0) instanceof Slip.Crossed ? Pattern.SWAP : Pattern.MOVED;
    }
    boolean sameStep =
        moves.stream().map(this::step).distinct().count() == 1 && areAtOneItem(moves);
    return sameStep ? Pattern.SHIFT : Pattern.OTHER;
  }

  /** How many pins further a wire's end sits, in the order of the item's pins. */
  private int step(Move move) {
    return neighbours.rank(circuit.index(move.to())) - neighbours.rank(circuit.index(move.from()));
  }

  /** Moves that could stand in the place of a group's without any reading showing it. */
  private List<List<Move>> equivalents(List<Slip> group) {
    List<Move> own = moves(group);
    Set<List<Move>> equivalents = new LinkedHashSet<>();
    for (Explanation other : region.best().explanations()) {
      replacement(group, other)
          .filter(slips -> slips.stream().noneMatch(slip -> slip.misplaced().isEmpty()))
          .map(this::moves)
          .filter(moves -> !moves.equals(own))
          .filter(moves -> group.size() == 1 || areAtOneItem(moves))
          .ifPresent(equivalents::add);
    }
    return List.copyOf(equivalents);
  }

  /** Contacts of switches that could stand in the place of a bridge. */
  private List<SlipFact.BadSwitch> contactsAlike(List<Slip> bridge) {
    return region.best().explanations().stream()
        .map(other -> replacement(bridge, other))
        .flatMap(Optional::stream)
        .map(this::fact)
        .filter(SlipFact.BadSwitch.class::isInstance)
        .map(SlipFact.BadSwitch.class::cast)
        .distinct()
        .toList();
  }

  private static boolean areAtOneItem(List<Move> moves) {
    return moves.stream().map(move -> move.from().ref()).distinct().count() == 1;
  }

  /** What another explanation has in the place of a group, where it differs in nothing else. */
  private Optional<List<Slip>> replacement(List<Slip> group, Explanation other) {
    Set<Slip> added = new LinkedHashSet<>(other.slips());
    best.slips().forEach(added::remove);
    Set<Slip> removed = new LinkedHashSet<>(best.slips());
    other.slips().forEach(removed::remove);
    if (removed.isEmpty() || !group.containsAll(removed) || added.size() != removed.size()) {
      return Optional.empty();
    }
    // In the other's own order: crossing twice with one wire depends on it.
    return Optional.of(
        other.slips().stream()
            .filter(slip -> added.contains(slip) || group.contains(slip))
            .toList());
  }

  private Fault poorJoint(Slip.Poor slip, Finding finding) {
    Map<Conductor, Double> odds = new LinkedHashMap<>();
    odds.put(circuit.conductors().get(slip.conductor()), region.best().odds());
    for (EquivalenceClass other : region.classes()) {
      replacement(List.of(slip), other.primary())
          .map(slips -> slips.get(0))
          .filter(Slip.Poor.class::isInstance)
          .ifPresent(
              one ->
                  odds.putIfAbsent(
                      circuit.conductors().get(((Slip.Poor) one).conductor()), other.odds()));
    }
    double all = odds.values().stream().mapToDouble(Double::doubleValue).sum();
    Judged shown = finding.readings().get(0);
    return new Fault.HighResistance(
        finding,
        odds.entrySet().stream()
            .map(one -> new Fault.Suspicion(one.getKey(), one.getValue() / all, false))
            .toList(),
        shown.probing().points().mapToObj(circuit::point).toList(),
        shown.limit().ohms(),
        shown.seen().middleOhms());
  }

  /** An open with every conductor that could be the one, as far as the readings tell. */
  private Fault open(Slip.Missing slip, Finding finding) {
    Set<Conductor> suspects = new LinkedHashSet<>();
    suspects.add(circuit.conductors().get(slip.conductor()));
    for (EquivalenceClass other : region.ofBestSize()) {
      replacement(List.of(slip), other.primary())
          .map(slips -> slips.get(0))
          .filter(Slip.Missing.class::isInstance)
          .map(one -> circuit.conductors().get(((Slip.Missing) one).conductor()))
          .ifPresent(suspects::add);
    }
    List<Alternative> alternatives =
        finding.alternatives().stream()
            .filter(alternative -> !isOneOf(alternative, suspects))
            .toList();
    return new Fault.Open(
        finding.with(alternatives),
        List.copyOf(suspects),
        ends(finding.readings().get(0), suspects));
  }

  private List<Point> ends(Judged shown, Set<Conductor> suspects) {
    if (shown.probing().isPair()) {
      return List.of(
          circuit.point(shown.probing().from()[0]), circuit.point(shown.probing().to()[0]));
    }
    return suspects.stream().flatMap(one -> Stream.of(one.from(), one.to())).distinct().toList();
  }

  private static boolean isOneOf(Alternative alternative, Set<Conductor> suspects) {
    return alternative.slips().size() == 1
        && alternative.slips().get(0) instanceof SlipFact.Opened opened
        && suspects.contains(opened.conductor());
  }

  private Switch switchOf(Slip.FaultySwitch faulty) {
    return circuit.harness().switches().get(faulty.which());
  }

  /** The contact that is welded, else every contact of the switch. */
  private List<Point> contactPoints(Slip.FaultySwitch faulty) {
    int[] contacts =
        faulty.how() == SwitchFault.WELDED
            ? new int[] {faulty.contact()}
            : circuit.contactsOf(switchOf(faulty));
    return Arrays.stream(contacts)
        .flatMap(contact -> IntStream.of(circuit.from(contact), circuit.to(contact)))
        .distinct()
        .mapToObj(circuit::point)
        .toList();
  }

  private Fault wrongPart(Slip.FaultyPart faulty, Finding finding) {
    Part part = circuit.part(faulty.part());
    Judged shown = finding.readings().get(0);
    double least = 0;
    double most = Double.POSITIVE_INFINITY;
    if (shown.expected() instanceof ThroughParts through) {
      least = through.lowOhms();
      most = through.highOhms();
    }
    return new Fault.WrongPart(
        finding,
        part,
        faulty.how(),
        List.of(circuit.point(faulty.from()), circuit.point(faulty.to())),
        least,
        most,
        shown.reading().measured().text());
  }
}

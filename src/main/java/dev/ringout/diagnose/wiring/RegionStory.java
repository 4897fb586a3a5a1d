package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.diagnose.Arrangement;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.Fault.Alternative;
import dev.ringout.diagnose.Fault.Finding;
import dev.ringout.diagnose.Fault.Pattern;
import dev.ringout.diagnose.Fault.RunnerUp;
import dev.ringout.diagnose.Move;
import dev.ringout.diagnose.PartFault;
import dev.ringout.diagnose.SlipFact;
import dev.ringout.diagnose.wiring.Region.EquivalenceClass;
import dev.ringout.diagnose.wiring.Search.Explanation;
import dev.ringout.harness.Part;
import dev.ringout.harness.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Tells the likeliest explanation of a region as faults, each with what shows it and what else it
 * could be.
 */
final class RegionStory {
  private static final double LEAST_ODDS = 0.005;

  /** A leak is seldom less: that is a bridge (common practice, no source). */
  private static final double LEAST_LEAK_OHMS = 1000;

  private final Circuit circuit;
  private final Neighbours neighbours;
  private final Evidence evidence;
  private final SlipFacts facts;
  private final Region region;
  private final Explanation best;

  /** Readings that an earlier one of the same points bears out. */
  private final Set<Judged> readTwice;

  /** Readings of values that the explanation accounts for besides. */
  private final List<Judged> besides;

  RegionStory(
      Circuit circuit,
      Neighbours neighbours,
      Evidence evidence,
      Region region,
      Set<Judged> readTwice,
      List<Judged> besides) {
    this.circuit = circuit;
    this.neighbours = neighbours;
    this.evidence = evidence;
    this.facts = new SlipFacts(circuit, evidence);
    this.region = region;
    this.readTwice = readTwice;
    this.best = region.best().primary();
    // An insulation tester across a stray join reads next to nothing, and any meter across a part
    // that now lies there what the part has: that is no second fault.
    this.besides = besides.stream().filter(judged -> isExplained(judged, best.slips())).toList();
  }

  /**
   * The region with its faults.
   *
   * @param story the number that its faults have in common
   */
  RegionFaults told(int story) {
    List<List<Slip>> groups = facts.grouped(best.slips());
    List<List<Judged>> shownBy = shownBy(groups);
    List<Alternative> otherwise = otherwise();
    Certainty certainty = certainty(otherwise);
    List<Fault> faults = new ArrayList<>();
    for (int i = 0; i < groups.size(); i++) {
      boolean isShownOnce =
          shownBy.get(i).size() == 1 && !readTwice.contains(shownBy.get(i).get(0));
      Finding finding =
          new Finding(
              isShownOnce ? certainty.inDoubt() : certainty,
              List.copyOf(shownBy.get(i)),
              i == 0 ? alternatives(otherwise) : List.of(),
              story,
              i == 0 ? runnerUp() : Optional.empty());
      faults.add(groups.get(i).get(0).match(new FaultOfKind(groups.get(i), finding)));
    }
    return new RegionFaults(circuit, evidence, region, faults, explained());
  }

  private Set<Judged> explained() {
    Set<Judged> explained = new LinkedHashSet<>(region.failing());
    explained.addAll(besides);
    return explained;
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
      besides.stream().filter(judged -> !isExplained(judged, others)).forEach(own::add);
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

  private boolean isExplained(Judged judged, List<Slip> slips) {
    Expected predicted = evidence.predict(judged.probing(), slips);
    // A value is explained by the parts that it leads through, and not by a mere join.
    return (predicted.isJoined() && judged.outcome() == Outcome.LOW_INSULATION)
        || predicted.throughParts().filter(parts -> parts.allows(judged.seen())).isPresent();
  }

  private Certainty certainty(List<Alternative> otherwise) {
    return otherwise.isEmpty() ? region.certainty() : region.certainty().inDoubt();
  }

  private List<Alternative> alternatives(List<Alternative> otherwise) {
    Stream<Alternative> others =
        region.classes().stream()
            .skip(1)
            .filter(one -> one.odds() >= LEAST_ODDS || one.size() <= region.best().size())
            .map(one -> new Alternative(one.odds(), facts.of(one.primary().slips())));
    return Stream.concat(otherwise.stream(), others)
        .sorted(Comparator.comparingDouble(Alternative::odds).reversed())
        .toList();
  }

  /**
   * What joins the same points by another kind of slip, and is not said with the first: a bridge in
   * the place of a moved wire. That two points are joined holds whatever joins them.
   */
  private List<Alternative> otherwise() {
    List<Explanation> alike = region.best().explanations();
    List<Double> shares = region.best().shares();
    return IntStream.range(1, alike.size())
        .filter(one -> isOtherwise(alike.get(one)))
        .mapToObj(
            one ->
                new Alternative(
                    region.best().odds() * shares.get(one), facts.of(alike.get(one).slips())))
        .toList();
  }

  private boolean isOtherwise(Explanation other) {
    List<Slip> instead = new ArrayList<>(other.slips());
    instead.removeAll(best.slips());
    List<Slip> only = new ArrayList<>(best.slips());
    only.removeAll(other.slips());
    boolean isAnotherEnd = instead.stream().noneMatch(one -> one.misplaced().isEmpty());
    boolean isJoinedAnyhow = only.stream().allMatch(one -> one.asBridged().isPresent());
    return !isAnotherEnd && !isJoinedAnyhow && !kinds(instead).equals(kinds(only));
  }

  private static Set<Class<?>> kinds(List<Slip> slips) {
    return slips.stream().map(Object::getClass).collect(Collectors.toSet());
  }

  /** Where the readings have left one story: the next, and what speaks against it. */
  private Optional<RunnerUp> runnerUp() {
    if (region.classes().size() > 1) {
      return Optional.empty();
    }
    return region.runnerUp().map(one -> new RunnerUp(facts.of(one.slips()), one.against()));
  }

  /** Each kind as a fault. */
  private final class FaultOfKind implements Slip.Cases<Fault> {
    private final List<Slip> group;
    private final Finding finding;

    FaultOfKind(List<Slip> group, Finding finding) {
      this.group = group;
      this.finding = finding;
    }

    private Fault miswire(Optional<Arrangement> arrangement) {
      List<Move> moves = facts.moves(group);
      return new Fault.Miswire(
          finding,
          arrangement.map(RegionStory::pattern).orElseGet(() -> pattern(group, moves)),
          arrangement,
          moves,
          equivalents(group));
    }

    @Override
    public Fault missing(Slip.Missing slip) {
      return open(slip, finding);
    }

    @Override
    public Fault moved(Slip.Moved slip) {
      return miswire(Optional.empty());
    }

    @Override
    public Fault crossed(Slip.Crossed slip) {
      return miswire(Optional.empty());
    }

    @Override
    public Fault rearranged(Slip.Rearranged slip) {
      return miswire(group.size() == 1 ? Optional.of(slip.how()) : Optional.empty());
    }

    @Override
    public Fault misread(Slip.Misread slip) {
      return new Fault.Misread(
          finding, slip.judged(), facts.listed(slip), circuit.point(slip.at()));
    }

    @Override
    public Fault exchanged(Slip.Exchanged slip) {
      return new Fault.ExchangedRows(finding, slip.one(), slip.other());
    }

    @Override
    public Fault poor(Slip.Poor slip) {
      return poorJoint(slip, finding);
    }

    @Override
    public Fault bridged(Slip.Bridged slip) {
      return new Fault.Shorted(
          finding,
          List.of(circuit.point(slip.one()), circuit.point(slip.other())),
          contactsAlike(group));
    }

    @Override
    public Fault faultyPart(Slip.FaultyPart slip) {
      return wrongPart(slip, finding);
    }

    @Override
    public Fault faultySwitch(Slip.FaultySwitch slip) {
      return new Fault.WrongSwitch(
          finding, facts.switchOf(slip), slip.how(), slip.position(), facts.contactPoints(slip));
    }
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
      return group.get(0).asCrossed().isPresent() ? Pattern.SWAP : Pattern.MOVED;
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
    List<Move> own = facts.moves(group);
    Set<List<Move>> equivalents = new LinkedHashSet<>();
    for (Explanation other : region.best().explanations()) {
      replacement(group, other)
          .filter(slips -> slips.stream().noneMatch(slip -> slip.misplaced().isEmpty()))
          .map(facts::moves)
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
        .map(facts::ofGroup)
        .flatMap(fact -> fact.asBadSwitch().stream())
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
          .flatMap(slips -> slips.get(0).asPoor())
          .ifPresent(
              one -> odds.putIfAbsent(circuit.conductors().get(one.conductor()), other.odds()));
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
          .flatMap(slips -> slips.get(0).asMissing())
          .map(one -> circuit.conductors().get(one.conductor()))
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
        && alternative
            .slips()
            .get(0)
            .asOpened()
            .filter(opened -> suspects.contains(opened.conductor()))
            .isPresent();
  }

  /** Whether a value is lower than the parts' own by what a leak beside them would make of it. */
  private static boolean mayBeALeakBeside(Judged judged) {
    double seen = judged.seen().middleOhms();
    return judged.reading().measured().value().isPresent()
        && judged
            .expected()
            .throughParts()
            .filter(parts -> seen < parts.lowOhms())
            .filter(parts -> 1 / (1 / seen - 1 / parts.lowOhms()) >= LEAST_LEAK_OHMS)
            .isPresent();
  }

  private Fault wrongPart(Slip.FaultyPart faulty, Finding finding) {
    Part part = circuit.part(faulty.part());
    Judged shown = finding.readings().get(0);
    Optional<ThroughParts> through = shown.expected().throughParts();
    boolean isDoubtful =
        faulty.how() == PartFault.OTHER_VALUE
            && finding.readings().stream().allMatch(RegionStory::mayBeALeakBeside)
            && !evidence.isReadWithLifted(faulty.part());
    return new Fault.WrongPart(
        isDoubtful ? finding.inDoubt() : finding,
        part,
        faulty.how(),
        List.of(circuit.point(faulty.from()), circuit.point(faulty.to())),
        through.map(ThroughParts::lowOhms).orElse(0.0),
        through.map(ThroughParts::highOhms).orElse(Double.POSITIVE_INFINITY),
        shown.reading().measured().text());
  }
}

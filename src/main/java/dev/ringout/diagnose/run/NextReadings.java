package dev.ringout.diagnose.run;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.DisjointPoints;
import dev.ringout.circuit.Expected.Joined;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.PartGroups;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Coverage;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Outcome;
import dev.ringout.compare.Unproven;
import dev.ringout.diagnose.Certainty;
import dev.ringout.diagnose.Fault;
import dev.ringout.diagnose.NextReading;
import dev.ringout.diagnose.NextReading.Answer;
import dev.ringout.diagnose.NextReading.Purpose;
import dev.ringout.diagnose.NextReason;
import dev.ringout.diagnose.SlipFact;
import dev.ringout.diagnose.wiring.RegionFaults;
import dev.ringout.diagnose.wiring.WiringFaults;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Reading;
import dev.ringout.standards.HandMovements;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Which readings to take next: first those that tell explanations apart, then those still owed. */
final class NextReadings {
  private static final int MOST_POINTS = 40;
  private static final int MOST_AGAIN = 3;

  /** More nets than these without insulation readings are a test to plan, not readings to name. */
  private static final int MOST_INSULATION = 4;

  private static final String REST = "REST";

  private final Circuit circuit;
  private final HandMovements movements;
  private final List<NextReading> list = new ArrayList<>();
  private final Made made;
  private final boolean namesInsulation;
  private final PartGroups behindParts;
  private final Map<Integer, List<Integer>> netsBehindParts;
  private final Set<String> named = new HashSet<>();
  private final DisjointPoints asked;

  private NextReadings(
      Circuit circuit, Comparison comparison, Coverage coverage, HandMovements movements) {
    this.circuit = circuit;
    this.movements = movements;
    made = new Made(comparison);
    behindParts = new PartGroups(circuit, part -> true);
    netsBehindParts = behindParts.netsOf();
    asked = askedFor(circuit, comparison);
    namesInsulation =
        comparison.made(Reading.Kind.INSULATION) > 0
            && coverage.unproven().stream().filter(Unproven.Insulation.class::isInstance).count()
                <= MOST_INSULATION;
  }

  static List<NextReading> of(
      Circuit circuit,
      Comparison comparison,
      Coverage coverage,
      WiringFaults wiring,
      List<Fault> faults,
      HandMovements movements) {
    NextReadings next = new NextReadings(circuit, comparison, coverage, movements);
    wiring.told().forEach(next::tellApart);
    wiring.told().forEach(next::confirm);
    Set<Fault> ofWiring = Collections.newSetFromMap(new IdentityHashMap<>());
    ofWiring.addAll(wiring.faults());
    faults.stream().filter(fault -> !ofWiring.contains(fault)).forEach(next::confirm);
    comparison.with(Outcome.NOT_TESTED).forEach(next::notTested);
    coverage.unproven().forEach(next::prove);
    return List.copyOf(next.list);
  }

  /** Points that would be proven to be joined, were every step of the sheet made and good. */
  private static DisjointPoints askedFor(Circuit circuit, Comparison comparison) {
    DisjointPoints asked = new DisjointPoints(circuit.size());
    for (Judged judged : comparison.inForce()) {
      if (judged.expected() instanceof Joined && judged.probing().isPair()) {
        asked.union(judged.probing().from()[0], judged.probing().to()[0]);
      }
    }
    return asked;
  }

  private boolean isAsked(int from, int to) {
    return asked.firstOf(from) == asked.firstOf(to);
  }

  private static String key(Reading.Kind kind, String from, String to, SwitchState state) {
    String sides = from.compareTo(to) < 0 ? from + "|" + to : to + "|" + from;
    return kind + "|" + sides + "|" + state;
  }

  /**
   * The readings that were made and judged, by one of their sides: few are asked about of the many.
   */
  private static final class Made {
    private final Map<String, List<Judged>> bySide = new HashMap<>();

    Made(Comparison comparison) {
      for (Judged judged : comparison.inForce()) {
        if (judged.reading().measured().made() && judged.outcome() != Outcome.NOT_JUDGED) {
          String from = judged.reading().from().toString();
          String to = judged.reading().to().toString();
          bySide.computeIfAbsent(one(from, to), side -> new ArrayList<>(2)).add(judged);
        }
      }
    }

    /** The same for either way round. */
    private static String one(String from, String to) {
      return from.compareTo(to) < 0 ? from : to;
    }

    boolean has(String key, String from, String to) {
      return bySide.getOrDefault(one(from, to), List.of()).stream()
          .map(Judged::reading)
          .anyMatch(
              reading ->
                  key(
                          reading.kind(),
                          reading.from().toString(),
                          reading.to().toString(),
                          reading.state())
                      .equals(key));
    }
  }

  private void add(String from, String to, SwitchState state, Purpose purpose, NextReason why) {
    add(new NextReading(Reading.Kind.CONTINUITY, from, to, state, purpose, why, List.of()));
  }

  private void add(NextReading reading) {
    if (isNew(reading)) {
      list.add(reading);
    }
  }

  /** Whether it was neither made nor asked for; it counts as asked for from then on. */
  private boolean isNew(NextReading reading) {
    String key = key(reading.kind(), reading.from(), reading.to(), reading.state());
    return !made.has(key, reading.from(), reading.to()) && named.add(key);
  }

  /** The reading that lowers the entropy of a region's odds most for each movement. */
  private void tellApart(RegionFaults told) {
    told.tellingReading(movements, this::isMade).ifPresent(this::add);
  }

  private boolean isMade(Probing probing) {
    String from = circuit.point(probing.from()[0]).toString();
    String to = probing.toRest() ? REST : circuit.point(probing.to()[0]).toString();
    String key = key(Reading.Kind.CONTINUITY, from, to, probing.state());
    return named.contains(key) || made.has(key, from, to);
  }

  /** Where a poor joint is: a reading across about half of the odds. */
  private Optional<NextReading> halving(Fault.HighResistance high) {
    if (high.suspects().size() < 2) {
      return Optional.empty();
    }
    SwitchState state = high.finding().readings().get(0).reading().state();
    Set<Integer> points = new TreeSet<>();
    for (Fault.Suspicion one : high.suspects()) {
      points.add(circuit.index(one.conductor().from()));
      points.add(circuit.index(one.conductor().to()));
    }
    Halving best = null;
    List<Integer> all = points.stream().limit(MOST_POINTS).toList();
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        Probing probing = Probing.pair(all.get(i), all.get(j), state);
        Halving halving = halving(probing, high);
        if (halving.isBetterThan(best) && !isMade(probing)) {
          best = halving;
        }
      }
    }
    return Optional.ofNullable(best).map(one -> reading(one, state));
  }

  /** The suspects that a reading leads over, and the others. */
  private record Halving(
      Probing probing, List<Fault.Suspicion> within, List<Fault.Suspicion> without) {
    double odds() {
      return within.stream().mapToDouble(Fault.Suspicion::odds).sum();
    }

    boolean isBetterThan(@Nullable Halving other) {
      return !within.isEmpty()
          && !without.isEmpty()
          && (other == null || Math.abs(odds() - 0.5) < Math.abs(other.odds() - 0.5) - 1e-9);
    }
  }

  private Halving halving(Probing probing, Fault.HighResistance high) {
    Nets nets = circuit.in(probing.state());
    Set<Conductor> way = new HashSet<>();
    if (nets.of(probing.from()[0]) == nets.of(probing.to()[0])) {
      nets.eachOnWay(
          probing.from()[0], probing.to()[0], one -> way.add(circuit.conductors().get(one)));
    }
    Map<Boolean, List<Fault.Suspicion>> parts =
        high.suspects().stream()
            .collect(Collectors.partitioningBy(one -> way.contains(one.conductor())));
    return new Halving(
        probing, parts.getOrDefault(true, List.of()), parts.getOrDefault(false, List.of()));
  }

  private NextReading reading(Halving halving, SwitchState state) {
    return new NextReading(
        Reading.Kind.CONTINUITY,
        circuit.point(halving.probing().from()[0]).toString(),
        circuit.point(halving.probing().to()[0]).toString(),
        state,
        Purpose.TELL_APART,
        new NextReason.TellsApart(),
        List.of(
            new Answer(new Joined(), true, halving.odds(), meanings(halving.within())),
            new Answer(new Joined(), false, 1 - halving.odds(), meanings(halving.without()))));
  }

  private static List<List<SlipFact>> meanings(List<Fault.Suspicion> suspects) {
    return suspects.stream()
        .map(one -> List.<SlipFact>of(new SlipFact.PoorJoint(one.conductor())))
        .toList();
  }

  private void confirm(Fault fault) {
    fault.match(new Confirming()).forEach(list::add);
  }

  /** What one reading alone shows is read again, another way where there is one. */
  private void confirm(RegionFaults told) {
    int before = list.size();
    told.faults().forEach(this::confirm);
    if (list.size() == before) {
      told.onlyReading().map(one -> again(one, new NextReason.AloneShowsIt())).ifPresent(list::add);
    }
  }

  private static NextReading again(Judged judged, NextReason why) {
    return new NextReading(
        judged.reading().kind(),
        judged.reading().from().toString(),
        judged.reading().to().toString(),
        judged.reading().state(),
        Purpose.CONFIRM,
        why,
        List.of());
  }

  /** The readings that confirm a fault, by its kind, or tell more of it. */
  private final class Confirming implements Fault.Cases<List<NextReading>> {
    /** None where it was made or is asked for already. */
    private List<NextReading> unlessMade(NextReading reading) {
      return isNew(reading) ? List.of(reading) : List.of();
    }

    /** A certain open is read across once more before anything is taken apart. */
    @Override
    public List<NextReading> open(Fault.Open fault) {
      if (fault.suspects().size() != 1) {
        return List.of();
      }
      Conductor suspect = fault.suspects().get(0);
      return unlessMade(
          new NextReading(
              Reading.Kind.CONTINUITY,
              suspect.from().toString(),
              suspect.to().toString(),
              SwitchState.normal(),
              Purpose.CONFIRM,
              new NextReason.AcrossTheOpen(suspect),
              List.of()));
    }

    @Override
    public List<NextReading> shorted(Fault.Shorted fault) {
      return List.of();
    }

    @Override
    public List<NextReading> miswire(Fault.Miswire fault) {
      return List.of();
    }

    @Override
    public List<NextReading> highResistance(Fault.HighResistance fault) {
      return halving(fault).map(this::unlessMade).orElse(List.of());
    }

    @Override
    public List<NextReading> unequalWire(Fault.UnequalWire fault) {
      return List.of();
    }

    @Override
    public List<NextReading> wrongGauge(Fault.WrongGauge fault) {
      return List.of();
    }

    @Override
    public List<NextReading> lowInsulation(Fault.LowInsulation fault) {
      if (!fault.places().isEmpty()
          || fault.finding().certainty() == Certainty.CERTAIN
          || fault.points().size() != 2) {
        return List.of();
      }
      return unlessMade(
          new NextReading(
              Reading.Kind.INSULATION,
              fault.points().get(0).toString(),
              fault.points().get(1).toString(),
              SwitchState.normal(),
              Purpose.CONFIRM,
              new NextReason.LeakOfTheTwo(),
              List.of()));
    }

    @Override
    public List<NextReading> wrongPart(Fault.WrongPart fault) {
      return List.of();
    }

    @Override
    public List<NextReading> wrongSwitch(Fault.WrongSwitch fault) {
      return List.of();
    }

    @Override
    public List<NextReading> misread(Fault.Misread fault) {
      return List.of(again(fault.judged(), new NextReason.AtTheseVeryPoints()));
    }

    @Override
    public List<NextReading> slippedRows(Fault.SlippedRows fault) {
      return fault.finding().readings().stream()
          .limit(MOST_AGAIN)
          .map(one -> again(one, new NextReason.RowOnceMore(one.reading().place())))
          .toList();
    }

    @Override
    public List<NextReading> leadsNotNulled(Fault.LeadsNotNulled fault) {
      return List.of();
    }

    @Override
    public List<NextReading> onPaper(Fault.OnPaper fault) {
      return List.of();
    }
  }

  private void notTested(Judged judged) {
    add(
        new NextReading(
            judged.reading().kind(),
            judged.reading().from().toString(),
            judged.reading().to().toString(),
            judged.reading().state(),
            Purpose.NOT_TESTED,
            new NextReason.NotMeasured(),
            List.of()));
  }

  private void prove(Unproven unproven) {
    if (unproven instanceof Unproven.Join join) {
      if (!isAsked(join.from(), join.to())) {
        add(
            circuit.point(join.from()).toString(),
            circuit.point(join.to()).toString(),
            SwitchState.normal(),
            Purpose.PROVE,
            new NextReason.NotJoined());
      }
    } else if (unproven instanceof Unproven.Isolation isolation) {
      if (!isolation.waitsForJoins()) {
        apart(isolation);
      }
    } else if (unproven instanceof Unproven.Insulation insulation) {
      if (!insulation.waitsForJoins() && namesInsulation) {
        insulation(insulation);
      }
    } else if (unproven instanceof Unproven.OfPart part && !part.read()) {
      add(
          circuit.point(circuit.fromOfPart(part.part())).toString(),
          circuit.point(circuit.toOfPart(part.part())).toString(),
          SwitchState.normal(),
          Purpose.PROVE,
          new NextReason.Owed(part));
    } else if (unproven instanceof Unproven.OfWire wire
        && circuit.normal().isCutEdge(wire.conductor())
        && !isAsked(circuit.from(wire.conductor()), circuit.to(wire.conductor()))) {
      add(
          circuit.point(circuit.from(wire.conductor())).toString(),
          circuit.point(circuit.to(wire.conductor())).toString(),
          SwitchState.normal(),
          Purpose.PROVE,
          new NextReason.NotThrough(circuit.conductors().get(wire.conductor())));
    } else if (unproven instanceof Unproven.Contact contact) {
      add(
          circuit.point(circuit.from(contact.conductor())).toString(),
          circuit.point(circuit.to(contact.conductor())).toString(),
          stateFor(contact),
          Purpose.PROVE,
          new NextReason.Owed(unproven));
    }
  }

  /** Against the rest at once, unless it is a part that would be read: then against the one net. */
  private void apart(Unproven.Isolation isolation) {
    boolean behindOneGroup =
        behindParts.of(circuit.normal().of(isolation.point()))
            == behindParts.of(circuit.normal().of(isolation.other()));
    add(
        behindOneGroup ? circuit.point(isolation.point()).toString() : side(isolation.point()),
        behindOneGroup ? circuit.point(isolation.other()).toString() : REST,
        SwitchState.normal(),
        Purpose.PROVE,
        new NextReason.Owed(isolation));
  }

  private void insulation(Unproven.Insulation owed) {
    add(
        new NextReading(
            Reading.Kind.INSULATION,
            side(owed.point()),
            REST,
            SwitchState.normal(),
            Purpose.PROVE,
            new NextReason.Owed(owed),
            List.of()));
  }

  /** A point with one of every net that parts join to its own: else the parts would be read. */
  private String side(int point) {
    Nets normal = circuit.normal();
    int own = normal.of(point);
    Set<Integer> side = new TreeSet<>();
    side.add(point);
    for (int net : netsBehindParts.getOrDefault(behindParts.of(own), List.of())) {
      if (net != own) {
        side.add(normal.pointsOf(net)[0]);
      }
    }
    return side.stream().map(one -> circuit.point(one).toString()).collect(Collectors.joining("+"));
  }

  private SwitchState stateFor(Unproven.Contact contact) {
    Conductor.OfContact conductor =
        (Conductor.OfContact) circuit.conductors().get(contact.conductor());
    Switch one = circuit.switchOf(conductor.contact());
    return SwitchState.normal().with(one, contact.position());
  }
}

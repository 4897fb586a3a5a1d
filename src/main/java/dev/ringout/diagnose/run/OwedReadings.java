package dev.ringout.diagnose.run;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.DisjointPoints;
import dev.ringout.circuit.Nets;
import dev.ringout.circuit.PartGroups;
import dev.ringout.circuit.Probing;
import dev.ringout.compare.Comparison;
import dev.ringout.compare.Coverage;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Unproven;
import dev.ringout.diagnose.NextReading;
import dev.ringout.diagnose.NextReading.Purpose;
import dev.ringout.diagnose.NextReason;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.readings.Reading;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The reading that would show what is not proven, where one is to be named. */
final class OwedReadings implements Unproven.Cases<Optional<NextReading>> {
  /** More nets than these without insulation readings are a test to plan, not readings to name. */
  private static final int MOST_INSULATION = 4;

  private final Circuit circuit;
  private final boolean namesInsulation;
  private final PartGroups behindParts;
  private final Map<Integer, List<Integer>> netsBehindParts;
  private final DisjointPoints asked;

  OwedReadings(Circuit circuit, Comparison comparison, Coverage coverage) {
    this.circuit = circuit;
    behindParts = new PartGroups(circuit, part -> true);
    netsBehindParts = behindParts.netsOf();
    asked = askedFor(circuit, comparison);
    namesInsulation =
        comparison.made(Reading.Kind.INSULATION) > 0
            && coverage.unproven().stream().filter(one -> one.asInsulation().isPresent()).count()
                <= MOST_INSULATION;
  }

  /** Points that would be proven to be joined, were every step of the sheet made and good. */
  private static DisjointPoints askedFor(Circuit circuit, Comparison comparison) {
    DisjointPoints asked = new DisjointPoints(circuit.size());
    for (Judged judged : comparison.inForce()) {
      if (judged.expected().isJoined() && judged.probing().isPair()) {
        asked.union(judged.probing().from()[0], judged.probing().to()[0]);
      }
    }
    return asked;
  }

  private boolean isAsked(int from, int to) {
    return asked.firstOf(from) == asked.firstOf(to);
  }

  @Override
  public Optional<NextReading> join(Unproven.Join gap) {
    return isAsked(gap.from(), gap.to())
        ? Optional.empty()
        : Optional.of(between(gap.from(), gap.to(), new NextReason.NotJoined()));
  }

  @Override
  public Optional<NextReading> isolation(Unproven.Isolation gap) {
    return gap.waitsForJoins() ? Optional.empty() : Optional.of(apart(gap));
  }

  @Override
  public Optional<NextReading> insulation(Unproven.Insulation gap) {
    return gap.waitsForJoins() || !namesInsulation
        ? Optional.empty()
        : Optional.of(
            new NextReading(
                Reading.Kind.INSULATION,
                side(gap.point()),
                AskedReadings.REST,
                SwitchState.normal(),
                Purpose.PROVE,
                new NextReason.Owed(gap),
                List.of()));
  }

  @Override
  public Optional<NextReading> ofPart(Unproven.OfPart gap) {
    return gap.read()
        ? Optional.empty()
        : Optional.of(
            between(
                circuit.fromOfPart(gap.part()),
                circuit.toOfPart(gap.part()),
                gap.state(),
                new NextReason.Owed(gap)));
  }

  @Override
  public Optional<NextReading> ofWire(Unproven.OfWire gap) {
    Optional<Probing> shownBy = gap.missing().shownBy();
    if (shownBy.isPresent()) {
      return shownBy.map(
          probing ->
              between(
                  probing.from()[0], probing.to()[0], probing.state(), new NextReason.Owed(gap)));
    }
    int from = circuit.from(gap.conductor());
    int to = circuit.to(gap.conductor());
    return circuit.normal().isCutEdge(gap.conductor()) && !isAsked(from, to)
        ? Optional.of(
            between(from, to, new NextReason.NotThrough(circuit.conductors().get(gap.conductor()))))
        : Optional.empty();
  }

  @Override
  public Optional<NextReading> contact(Unproven.Contact gap) {
    return Optional.of(
        between(
            circuit.from(gap.conductor()),
            circuit.to(gap.conductor()),
            stateFor(gap),
            new NextReason.Owed(gap)));
  }

  @Override
  public Optional<NextReading> pastContacts(Unproven.PastContacts gap) {
    return Optional.of(between(gap.one(), gap.other(), gap.state(), new NextReason.Owed(gap)));
  }

  private NextReading between(int from, int to, NextReason why) {
    return between(from, to, SwitchState.normal(), why);
  }

  private NextReading between(int from, int to, SwitchState state, NextReason why) {
    return continuity(circuit.point(from).toString(), circuit.point(to).toString(), state, why);
  }

  private static NextReading continuity(String from, String to, SwitchState state, NextReason why) {
    return new NextReading(Reading.Kind.CONTINUITY, from, to, state, Purpose.PROVE, why, List.of());
  }

  /** Against the rest at once, unless it is a part that would be read: then against the one net. */
  private NextReading apart(Unproven.Isolation isolation) {
    boolean behindOneGroup =
        behindParts.of(circuit.normal().of(isolation.point()))
            == behindParts.of(circuit.normal().of(isolation.other()));
    return continuity(
        behindOneGroup ? circuit.point(isolation.point()).toString() : side(isolation.point()),
        behindOneGroup ? circuit.point(isolation.other()).toString() : AskedReadings.REST,
        SwitchState.normal(),
        new NextReason.Owed(isolation));
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

  private SwitchState stateFor(Unproven.Contact gap) {
    Switch.Contact contact = circuit.conductors().get(gap.conductor()).asContact().orElseThrow();
    return SwitchState.normal().with(circuit.switchOf(contact), gap.position());
  }
}

package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.Nets;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Observed;
import dev.ringout.compare.RowExchange;
import dev.ringout.diagnose.SwitchFault;
import dev.ringout.diagnose.wiring.Arrangements.Supposed;
import dev.ringout.harness.Switch;
import dev.ringout.harness.SwitchState;
import dev.ringout.harness.Wire;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;

/** The slips that could mend one contradicted reading, found on the unit as slipped so far. */
final class Candidates {
  /** Beyond so many pins an item's wires are tried only in nearby cavities. */
  private static final int MOST_PINS = 160;

  private static final int NEARBY = 4;
  private static final int MOST_WIRES = 40;

  private final Circuit circuit;
  private final Neighbours neighbours;
  private final Evidence evidence;
  private final List<Supposed> arrangements;
  private final Set<Judged> mayBeMisread;
  private final List<RowExchange> exchanges;
  private final PartCandidates ofParts;
  private final Bridges bridges;

  /**
   * Candidates for one region.
   *
   * @param mayBeMisread readings that may have been taken at another pin
   * @param exchanges rows that may have each other's values
   */
  Candidates(
      Circuit circuit,
      Neighbours neighbours,
      Evidence evidence,
      List<Supposed> arrangements,
      Set<Judged> mayBeMisread,
      List<RowExchange> exchanges) {
    this.circuit = circuit;
    this.neighbours = neighbours;
    this.evidence = evidence;
    this.arrangements = arrangements;
    this.mayBeMisread = mayBeMisread;
    this.exchanges = exchanges;
    ofParts = new PartCandidates(circuit, neighbours, evidence);
    bridges = new Bridges(neighbours, evidence);
  }

  /** The same slips with each bridge where, beside the others, its pins are nearest. */
  List<Slip> settled(List<Slip> slips, SwitchState state) {
    return bridges.settled(slips, state);
  }

  /**
   * Slips that could mend a reading.
   *
   * @param suspects points of other contradicted readings, to which a join with the rest may lead
   */
  Set<Slip> mending(Judged judged, List<Slip> slips, Set<Integer> suspects) {
    SlippedNets nets = evidence.nets(slips, judged.reading().state());
    Set<Slip> found = new LinkedHashSet<>();
    arrange(judged, slips, found);
    misread(judged, found);
    for (RowExchange exchange : exchanges) {
      if (exchange.rows().contains(judged)) {
        found.add(new Slip.Exchanged(exchange.one(), exchange.other(), exchange.apart()));
      }
    }
    evidence
        .predict(judged, nets, slips)
        .match(new Mending(judged, slips, suspects, nets, found))
        .run();
    return found;
  }

  /** What could mend a reading, by what it should have found with the slips so far. */
  private final class Mending implements Expected.Cases<Runnable> {
    private final Judged judged;
    private final List<Slip> slips;
    private final Set<Integer> suspects;
    private final SlippedNets nets;
    private final Set<Slip> found;

    Mending(
        Judged judged, List<Slip> slips, Set<Integer> suspects, SlippedNets nets, Set<Slip> found) {
      this.judged = judged;
      this.slips = slips;
      this.suspects = suspects;
      this.nets = nets;
      this.found = found;
    }

    @Override
    public Runnable throughParts(ThroughParts predicted) {
      return () -> {
        notAsListed(predicted);
        ofParts.leadsAtValuesElsewhere(predicted, nets, slips, found);
        if (judged.observed() == Observed.APART || judged.observed() == Observed.RESISTIVE) {
          cutWaysToParts(judged, predicted, nets, found);
        }
        if (judged.observed() != Observed.APART) {
          join(judged, nets, suspects, found);
        }
      };
    }

    @Override
    public Runnable apart(Expected.Apart predicted) {
      return () -> {
        judged.expected().throughParts().ifPresent(this::notAsListed);
        if (judged.observed() == Observed.RESISTIVE) {
          ofParts.elsewhere(judged, nets, slips, found);
          ofParts
              .farLeads(judged, nets, slips)
              .forEach(one -> joinPoints(one.one(), one.other(), nets, found));
        } else {
          contactsThatJoin(judged, nets, found);
        }
        join(judged, nets, suspects, found);
      };
    }

    @Override
    public Runnable joined(Expected.Joined predicted) {
      return () -> {
        List<Integer> way = nets.way(judged.probing().from(), otherSide(judged));
        cut(way, nets, found);
        if (judged.observed() == Observed.RESISTIVE) {
          way.forEach(conductor -> found.add(new Slip.Poor(conductor)));
        }
      };
    }

    private void notAsListed(ThroughParts parts) {
      parts.parts().forEach(part -> ofParts.notAsListed(part, judged, slips, found));
    }
  }

  private void arrange(Judged judged, List<Slip> slips, Set<Slip> found) {
    Set<Integer> nets = new HashSet<>();
    judged.probing().points().forEach(point -> nets.add(circuit.normal().of(point)));
    for (Supposed supposed : arrangements) {
      boolean touches = nets.stream().anyMatch(supposed.nets()::contains);
      if (touches) {
        Set<Integer> wires = supposed.slip().misplaced();
        if (slips.stream().allMatch(slip -> Collections.disjoint(wires, slip.misplaced()))) {
          found.add(supposed.slip());
        }
      }
    }
  }

  /** The probes of a doubtful reading at a neighbouring pin. */
  private void misread(Judged judged, Set<Slip> found) {
    if (!judged.probing().isPair() || !mayBeMisread.contains(judged)) {
      return;
    }
    for (boolean first : new boolean[] {true, false}) {
      int listed = first ? judged.probing().from()[0] : judged.probing().to()[0];
      int kept = first ? judged.probing().to()[0] : judged.probing().from()[0];
      for (int pin : neighbours.itemOf(listed)) {
        if (isNextToTheEye(pin, listed) && pin != kept) {
          found.add(new Slip.Misread(judged, first, pin));
        }
      }
    }
  }

  /** On the face, or by its number. */
  private boolean isNextToTheEye(int one, int other) {
    return neighbours.areNext(one, other)
        || Math.abs(neighbours.rank(one) - neighbours.rank(other)) == 1;
  }

  /** Switches that would join two sides, were one of their contacts closed when it should not. */
  private void contactsThatJoin(Judged judged, SlippedNets nets, Set<Slip> found) {
    if (!judged.probing().isPair()) {
      return;
    }
    int one = nets.groupOf(judged.probing().from()[0]);
    int other = nets.groupOf(judged.probing().to()[0]);
    for (int which = 0; which < circuit.harness().switches().size(); which++) {
      for (int contact : circuit.contactsOf(circuit.harness().switches().get(which))) {
        int from = nets.groupOf(circuit.from(contact));
        int to = nets.groupOf(circuit.to(contact));
        if ((from == one && to == other) || (from == other && to == one)) {
          found.add(new Slip.FaultySwitch(which, SwitchFault.WELDED, "", contact));
          switchNotAsListed(which, found);
        }
      }
    }
  }

  private void switchNotAsListed(int which, Set<Slip> found) {
    Switch one = circuit.harness().switches().get(which);
    for (String position : one.states()) {
      found.add(new Slip.FaultySwitch(which, SwitchFault.STUCK, position, Nets.NONE));
    }
    if (one.states().size() == 2) {
      found.add(new Slip.FaultySwitch(which, SwitchFault.OTHER_WAY, "", Nets.NONE));
    }
  }

  private IntPredicate otherSide(Judged judged) {
    if (!judged.probing().toRest()) {
      return point -> contains(judged.probing().to(), point);
    }
    Nets listed = circuit.in(judged.reading().state());
    Set<Integer> own = evidence.netsOf(judged);
    return point -> !own.contains(listed.of(point));
  }

  private static boolean contains(int[] points, int point) {
    for (int one : points) {
      if (one == point) {
        return true;
      }
    }
    return false;
  }

  private void cutWaysToParts(
      Judged judged, ThroughParts parts, SlippedNets nets, Set<Slip> found) {
    for (int number : parts.parts()) {
      int from = circuit.fromOfPart(number);
      int to = circuit.toOfPart(number);
      for (int[] side : List.of(judged.probing().from(), judged.probing().to())) {
        cut(nets.way(side, point -> point == from || point == to), nets, found);
      }
    }
  }

  /** Whatever interrupts a way: a conductor missing, or a wire's end somewhere else. */
  private void cut(List<Integer> way, SlippedNets nets, Set<Slip> found) {
    for (int conductor : way) {
      found.add(new Slip.Missing(conductor));
      circuit
          .conductors()
          .get(conductor)
          .asContact()
          .ifPresent(contact -> switchNotAsListed(numberOfSwitch(contact), found));
      if (circuit.isWire(conductor)) {
        for (Wire.End end : Wire.End.values()) {
          int at = nets.end(conductor, end);
          for (int pin : reachable(at)) {
            found.add(new Slip.Moved(conductor, end, pin));
          }
          for (Neighbours.WireEnd other : neighbours.endsAtItemOf(at)) {
            cross(conductor, end, other, nets, found);
          }
        }
      }
    }
  }

  private int numberOfSwitch(Switch.Contact contact) {
    return circuit.harness().switches().indexOf(circuit.switchOf(contact));
  }

  /** The pins of an item in which a wire's end may sit by mistake. */
  private List<Integer> reachable(int at) {
    List<Integer> pins = neighbours.itemOf(at);
    return pins.stream()
        .filter(pin -> pin != at)
        .filter(pin -> pins.size() <= MOST_PINS || neighbours.distance(at, pin) <= NEARBY)
        .toList();
  }

  private void cross(
      int wire, Wire.End end, Neighbours.WireEnd other, SlippedNets nets, Set<Slip> found) {
    int at = nets.end(wire, end);
    int otherAt = nets.end(other.wire(), other.end());
    if (other.wire() == wire || at == otherAt || !neighbours.sameItem(at, otherAt)) {
      return;
    }
    found.add(
        wire < other.wire()
            ? new Slip.Crossed(wire, end, other.wire(), other.end())
            : new Slip.Crossed(other.wire(), other.end(), wire, end));
  }

  /** Whatever joins two sides: a bridge, a wire's end over there, two ends crossed. */
  private void join(Judged judged, SlippedNets nets, Set<Integer> suspects, Set<Slip> found) {
    for (int from : judged.probing().from()) {
      for (int to : targets(judged, suspects)) {
        if (nets.groupOf(from) != nets.groupOf(to)) {
          joinPoints(from, to, nets, found);
        }
      }
    }
  }

  private Set<Integer> targets(Judged judged, Set<Integer> suspects) {
    Set<Integer> targets = new LinkedHashSet<>();
    IntPredicate other = otherSide(judged);
    if (!judged.probing().toRest()) {
      for (int point : judged.probing().to()) {
        targets.add(point);
      }
      return targets;
    }
    suspects.stream().filter(other::test).forEach(targets::add);
    Nets listed = circuit.in(judged.reading().state());
    for (int net : evidence.netsOf(judged)) {
      int[] points = listed.pointsOf(net);
      for (int i = 0; i < Math.min(points.length, MOST_WIRES); i++) {
        reachable(points[i]).stream().filter(other::test).forEach(targets::add);
      }
    }
    return targets;
  }

  private void joinPoints(int from, int to, SlippedNets nets, Set<Slip> found) {
    found.addAll(bridges.between(from, to, nets));
    List<Integer> fromWires = few(nets.wiresIn(nets.groupOf(from)));
    List<Integer> toWires = few(nets.wiresIn(nets.groupOf(to)));
    moveInto(fromWires, nets.groupOf(to), nets, found);
    moveInto(toWires, nets.groupOf(from), nets, found);
    for (int wire : fromWires) {
      for (int other : toWires) {
        if (circuit.isWire(wire) && circuit.isWire(other)) {
          for (Wire.End end : Wire.End.values()) {
            for (Wire.End otherEnd : Wire.End.values()) {
              cross(wire, end, new Neighbours.WireEnd(other, otherEnd), nets, found);
            }
          }
        }
      }
    }
  }

  private static List<Integer> few(List<Integer> wires) {
    return wires.size() <= MOST_WIRES ? wires : wires.subList(0, MOST_WIRES);
  }

  private void moveInto(List<Integer> wires, int group, SlippedNets nets, Set<Slip> found) {
    for (int wire : wires) {
      if (!circuit.isWire(wire)) {
        continue;
      }
      for (Wire.End end : Wire.End.values()) {
        for (int pin : reachable(nets.end(wire, end))) {
          if (nets.groupOf(pin) == group) {
            found.add(new Slip.Moved(wire, end, pin));
          }
        }
      }
    }
  }
}

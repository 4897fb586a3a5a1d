package dev.ringout.diagnose;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.circuit.Expected;
import dev.ringout.circuit.Expected.Apart;
import dev.ringout.circuit.Expected.ThroughParts;
import dev.ringout.circuit.Nets;
import dev.ringout.compare.Judged;
import dev.ringout.compare.Observed;
import dev.ringout.harness.Part;
import dev.ringout.harness.Wire;
import java.util.ArrayList;
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

  Candidates(Circuit circuit, Neighbours neighbours, Evidence evidence) {
    this.circuit = circuit;
    this.neighbours = neighbours;
    this.evidence = evidence;
  }

  /**
   * Slips that could mend a reading.
   *
   * @param suspects points of other contradicted readings, to which a join with the rest may lead
   */
  Set<Slip> mending(Judged judged, List<Slip> slips, Set<Integer> suspects) {
    SlippedNets nets = evidence.nets(slips, judged.reading().state());
    Expected predicted = evidence.predict(judged, nets, slips);
    Set<Slip> found = new LinkedHashSet<>();
    if (predicted instanceof ThroughParts parts) {
      parts.parts().forEach(part -> found.add(new Slip.FaultyPart(part)));
      if (judged.observed() == Observed.APART || judged.observed() == Observed.RESISTIVE) {
        cutWaysToParts(judged, parts, nets, found);
      }
      if (judged.observed() != Observed.APART) {
        join(judged, nets, suspects, found);
      }
    } else if (predicted instanceof Apart) {
      if (judged.expected() instanceof ThroughParts parts) {
        parts.parts().forEach(part -> found.add(new Slip.FaultyPart(part)));
      }
      join(judged, nets, suspects, found);
    } else {
      cut(nets.way(judged.probing().from(), otherSide(judged)), nets, found);
    }
    return found;
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
      Part part = circuit.part(number);
      int from = circuit.index(part.from());
      int to = circuit.index(part.to());
      for (int[] side : List.of(judged.probing().from(), judged.probing().to())) {
        cut(nets.way(side, point -> point == from || point == to), nets, found);
      }
    }
  }

  /** Whatever interrupts a way: a conductor missing, or a wire's end somewhere else. */
  private void cut(List<Integer> way, SlippedNets nets, Set<Slip> found) {
    for (int conductor : way) {
      found.add(new Slip.Missing(conductor));
      if (circuit.conductors().get(conductor) instanceof Conductor.OfWire) {
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
    found.add(bridge(from, to, nets));
    List<Integer> fromWires = few(nets.wiresIn(nets.groupOf(from)));
    List<Integer> toWires = few(nets.wiresIn(nets.groupOf(to)));
    moveInto(fromWires, nets.groupOf(to), nets, found);
    moveInto(toWires, nets.groupOf(from), nets, found);
    for (int wire : fromWires) {
      for (int other : toWires) {
        if (isWire(wire) && isWire(other)) {
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

  private boolean isWire(int conductor) {
    return circuit.conductors().get(conductor) instanceof Conductor.OfWire;
  }

  private void moveInto(List<Integer> wires, int group, SlippedNets nets, Set<Slip> found) {
    for (int wire : wires) {
      if (!isWire(wire)) {
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

  /** A bridge between two groups, put where pins of theirs are next to each other if any are. */
  private Slip bridge(int from, int to, SlippedNets nets) {
    List<Integer> fromPoints = points(nets, from);
    List<Integer> toPoints = points(nets, to);
    int one = from;
    int other = to;
    int nearest = neighbours.sameItem(from, to) ? neighbours.distance(from, to) : MOST_PINS;
    for (int a : fromPoints) {
      for (int b : toPoints) {
        if (neighbours.sameItem(a, b) && neighbours.distance(a, b) < nearest) {
          nearest = neighbours.distance(a, b);
          one = a;
          other = b;
        }
      }
    }
    return new Slip.Bridged(Math.min(one, other), Math.max(one, other));
  }

  private static List<Integer> points(SlippedNets nets, int point) {
    List<Integer> points = new ArrayList<>();
    for (int one : nets.pointsOf(nets.groupOf(point))) {
      if (points.size() < MOST_WIRES) {
        points.add(one);
      }
    }
    return points;
  }
}

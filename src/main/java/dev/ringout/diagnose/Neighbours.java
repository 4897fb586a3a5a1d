package dev.ringout.diagnose;

import dev.ringout.circuit.Circuit;
import dev.ringout.circuit.Conductor;
import dev.ringout.harness.Wire;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which points belong to one item, in the order of its pins, and which wires end there. */
final class Neighbours {
  private final Circuit circuit;
  private final Map<String, List<Integer>> pointsOf = new HashMap<>();
  private final Map<String, List<WireEnd>> endsAt = new HashMap<>();
  private final int[] rank;

  /** One end of a wire, by the wire's number. */
  record WireEnd(int wire, Wire.End end) {}

  Neighbours(Circuit circuit) {
    this.circuit = circuit;
    this.rank = new int[circuit.size()];
    for (int point = 0; point < circuit.size(); point++) {
      List<Integer> points =
          pointsOf.computeIfAbsent(circuit.point(point).ref(), ref -> new ArrayList<>());
      rank[point] = points.size();
      points.add(point);
    }
    for (int c = 0; c < circuit.conductors().size(); c++) {
      if (circuit.conductors().get(c) instanceof Conductor.OfWire) {
        endsAt
            .computeIfAbsent(refOf(circuit.from(c)), ref -> new ArrayList<>())
            .add(new WireEnd(c, Wire.End.FROM));
        endsAt
            .computeIfAbsent(refOf(circuit.to(c)), ref -> new ArrayList<>())
            .add(new WireEnd(c, Wire.End.TO));
      }
    }
  }

  String refOf(int point) {
    return circuit.point(point).ref();
  }

  boolean sameItem(int one, int other) {
    return refOf(one).equals(refOf(other));
  }

  /** The points of the item that a point belongs to, in the order of its pins. */
  List<Integer> itemOf(int point) {
    return pointsOf.getOrDefault(refOf(point), List.of());
  }

  /** The wire ends at the item that a point belongs to. */
  List<WireEnd> endsAtItemOf(int point) {
    return endsAt.getOrDefault(refOf(point), List.of());
  }

  /** Whether two points follow each other in the order of one item's pins. */
  boolean areNext(int one, int other) {
    return sameItem(one, other) && Math.abs(rank[one] - rank[other]) == 1;
  }

  /** A point's place in the order of its item's pins, from 0. */
  int rank(int point) {
    return rank[point];
  }

  /** How far apart two points of one item are in the order of its pins. */
  int distance(int one, int other) {
    return Math.abs(rank[one] - rank[other]);
  }
}

package dev.ringout.diagnose.wiring;

import dev.ringout.circuit.Circuit;
import dev.ringout.harness.PinDetail;
import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which points belong to one item, which of them are next to each other, and which wires end there.
 * Places on the face count where the sheet Pins gives them for all pins of an item; else the order
 * of the pins.
 */
public final class Neighbours {
  /**
   * Up to so many times the least distance is next to each other: a square's diagonal, and slack.
   */
  private static final double DIAGONAL = 1.5;

  private final Circuit circuit;
  private final Map<String, List<Integer>> pointsOf = new HashMap<>();
  private final Map<String, List<WireEnd>> endsAt = new HashMap<>();
  private final int[] rank;
  private final Map<Integer, Face> faceOf = new HashMap<>();
  private final Map<String, Double> pitchOf = new HashMap<>();

  /** A place on an item's face, in millimetres. */
  record Face(double x, double y) {
    double distance(Face other) {
      return Math.hypot(x - other.x, y - other.y);
    }
  }

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
    for (PinDetail pin : circuit.harness().pins()) {
      if (pin.xMillimetres().isPresent() && pin.yMillimetres().isPresent()) {
        faceOf.put(
            circuit.index(pin.point()),
            new Face(pin.xMillimetres().getAsDouble(), pin.yMillimetres().getAsDouble()));
      }
    }
    for (int c = 0; c < circuit.conductors().size(); c++) {
      if (circuit.isWire(c)) {
        endsAt
            .computeIfAbsent(refOf(circuit.from(c)), ref -> new ArrayList<>())
            .add(new WireEnd(c, Wire.End.FROM));
        endsAt
            .computeIfAbsent(refOf(circuit.to(c)), ref -> new ArrayList<>())
            .add(new WireEnd(c, Wire.End.TO));
      }
    }
  }

  /** The least distance between two of an item's pins; not a number where no places are given. */
  private double pitch(List<Integer> points) {
    if (!hasFace(points)) {
      return Double.NaN;
    }
    List<Face> faces = pins(points).stream().map(this::face).toList();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < faces.size(); i++) {
      for (int j = i + 1; j < faces.size(); j++) {
        least = Math.min(least, faces.get(i).distance(faces.get(j)));
      }
    }
    return least;
  }

  private List<Integer> pins(List<Integer> points) {
    return points.stream().filter(point -> !isShell(point)).toList();
  }

  private boolean isShell(int point) {
    return circuit.point(point).pin().equals(Point.SHELL);
  }

  private Face face(int point) {
    return faceOf.getOrDefault(point, new Face(Double.NaN, Double.NaN));
  }

  /** Whether every pin among some points has a place on the face. */
  private boolean hasFace(List<Integer> points) {
    List<Integer> pins = pins(points);
    return pins.size() > 1 && pins.stream().allMatch(faceOf::containsKey);
  }

  /** The pins of an item with their places on its face; empty where any place is not given. */
  Map<Integer, Face> facesOf(String ref) {
    List<Integer> points = pointsOf.getOrDefault(ref, List.of());
    Map<Integer, Face> faces = new LinkedHashMap<>();
    if (hasFace(points)) {
      pins(points).forEach(pin -> faces.put(pin, face(pin)));
    }
    return faces;
  }

  /** The pins of an item in their order, its shell left out. */
  List<Integer> pinsOf(String ref) {
    return pins(pointsOf.getOrDefault(ref, List.of()));
  }

  /** The wire ends at an item, by its designator. */
  List<WireEnd> endsAt(String ref) {
    return endsAt.getOrDefault(ref, List.of());
  }

  /** The designator of the item that a point belongs to. */
  public String refOf(int point) {
    return circuit.point(point).ref();
  }

  /** Whether two points belong to one item. */
  public boolean sameItem(int one, int other) {
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

  /** Whether two points of one item are next to each other. */
  boolean areNext(int one, int other) {
    return sameItem(one, other) && distance(one, other) == 1;
  }

  /** A point's place in the order of its item's pins, from 0. */
  int rank(int point) {
    return rank[point];
  }

  /** How many pins apart two points of one item are, on its face or in the order of its pins. */
  public int distance(int one, int other) {
    double pitch = pitchOf.computeIfAbsent(refOf(one), ref -> pitch(itemOf(one)));
    if (Double.isNaN(pitch) || isShell(one) || isShell(other)) {
      return Math.abs(rank[one] - rank[other]);
    }
    // Diagonal neighbours of a square grid are neighbours too.
    return (int) Math.ceil(face(one).distance(face(other)) / (pitch * DIAGONAL));
  }
}

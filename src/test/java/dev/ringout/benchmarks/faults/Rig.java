package dev.ringout.benchmarks.faults;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A unit as physics sees it: points, joints with ohms, switch contacts, parts and leaks. It answers
 * what a meter would read.
 */
final class Rig {
  /** Above it the ohmmeter shows nothing. */
  static final double OVER_RANGE_OHMS = 20e6;

  private static final double GOOD_INSULATION_OHMS = 2e9;
  private static final double DIODE_OHMS = 600;

  /** What a joint is. */
  enum JointKind {
    WIRE,
    LINK,
    CONTACT,
    BRIDGE
  }

  /** Two points joined; a contact only while its switch stands at its position. */
  static final class Joint {
    final String name;
    final JointKind kind;
    final int[] ends;
    double ohms;
    final String ofSwitch;
    String position;

    Joint(
        String name,
        JointKind kind,
        int from,
        int to,
        double ohms,
        String ofSwitch,
        String position) {
      this.name = name;
      this.kind = kind;
      this.ends = new int[] {from, to};
      this.ohms = ohms;
      this.ofSwitch = ofSwitch;
      this.position = position;
    }
  }

  /** A part; a diode conducts from its first end to its second. */
  static final class Component {
    final String name;
    final boolean diode;
    final int[] ends;
    double ohms;

    Component(String name, boolean diode, int from, int to, double ohms) {
      this.name = name;
      this.diode = diode;
      this.ends = new int[] {from, to};
      this.ohms = ohms;
    }
  }

  /**
   * A leak.
   *
   * @param item the item whose moisture it is part of; empty for one by itself
   */
  record Leak(int from, int to, double ohms, String item) {}

  final List<String> points = new ArrayList<>();
  final Map<String, Integer> indexOf = new HashMap<>();
  final List<Joint> joints = new ArrayList<>();
  final List<Component> parts = new ArrayList<>();
  final List<Leak> leaks = new ArrayList<>();
  final Map<String, List<String>> positionsOf = new LinkedHashMap<>();

  /** Parts that read some other value than listed. */
  final Set<String> otherValue = new TreeSet<>();

  /** Joints that are poor. */
  final Set<String> poor = new TreeSet<>();

  /** For each item that is wet its pins that leak. */
  final List<Set<Integer>> wet = new ArrayList<>();

  /** Where pins are on a connector's face, in millimetres. */
  final Map<Integer, double[]> faceOf = new HashMap<>();

  private final Map<Map<String, String>, Nodes> nodesOf = new HashMap<>();

  int point(String name) {
    return indexOf.computeIfAbsent(
        name,
        one -> {
          points.add(one);
          return points.size() - 1;
        });
  }

  Joint joint(String name) {
    return joints.stream().filter(one -> one.name.equals(name)).findFirst().orElseThrow();
  }

  List<Joint> wires() {
    return joints.stream().filter(one -> one.kind == JointKind.WIRE).toList();
  }

  static String itemOf(String point) {
    return point.substring(0, point.indexOf('-'));
  }

  String itemOf(int point) {
    return itemOf(points.get(point));
  }

  /** The points of an item in the order in which they were made. */
  List<Integer> pinsOf(String item) {
    List<Integer> pins = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      if (itemOf(i).equals(item) && !points.get(i).endsWith("-SHELL")) {
        pins.add(i);
      }
    }
    return pins;
  }

  List<String> items() {
    return points.stream().map(Rig::itemOf).distinct().toList();
  }

  Rig copy() {
    Rig copy = new Rig();
    points.forEach(copy::point);
    joints.forEach(
        one ->
            copy.joints.add(
                new Joint(
                    one.name,
                    one.kind,
                    one.ends[0],
                    one.ends[1],
                    one.ohms,
                    one.ofSwitch,
                    one.position)));
    parts.forEach(
        one ->
            copy.parts.add(new Component(one.name, one.diode, one.ends[0], one.ends[1], one.ohms)));
    copy.leaks.addAll(leaks);
    copy.positionsOf.putAll(positionsOf);
    copy.otherValue.addAll(otherValue);
    copy.poor.addAll(poor);
    copy.wet.addAll(wet);
    copy.faceOf.putAll(faceOf);
    return copy;
  }

  boolean closed(Joint joint, Map<String, String> state) {
    if (joint.kind != JointKind.CONTACT || joint.position.equals("ALWAYS")) {
      return true;
    }
    List<String> positions = positionsOf.getOrDefault(joint.ofSwitch, List.of());
    return joint.position.equals(state.getOrDefault(joint.ofSwitch, positions.get(0)));
  }

  /** To be called after a change. */
  void changed() {
    nodesOf.clear();
  }

  Nodes nodes(Map<String, String> state) {
    return nodesOf.computeIfAbsent(state, Nodes::new);
  }

  /** Every state in which some switch has been moved from its first position, and the first. */
  List<Map<String, String>> states() {
    List<Map<String, String>> states = new ArrayList<>();
    states.add(Map.of());
    positionsOf.forEach(
        (one, positions) ->
            positions.stream().skip(1).forEach(position -> states.add(Map.of(one, position))));
    return states;
  }

  /** Equal for units that no meter can tell apart. */
  List<Object> fingerprint() {
    List<Object> print = new ArrayList<>();
    for (Map<String, String> state : states()) {
      Map<Integer, Integer> number = new HashMap<>();
      List<Integer> groups = new ArrayList<>();
      for (int node : nodes(state).of) {
        groups.add(number.computeIfAbsent(node, key -> number.size()));
      }
      print.add(groups);
      for (Component part : parts) {
        if (Double.isInfinite(part.ohms)) {
          print.add(part.name + " missing");
        } else {
          int from = groups.get(part.ends[0]);
          int to = groups.get(part.ends[1]);
          print.add(
              List.of(
                  part.diode ? from : Math.min(from, to), part.diode ? to : Math.max(from, to)));
        }
      }
      Set<List<Integer>> leaking = new HashSet<>();
      for (Leak leak : leaks) {
        int from = groups.get(leak.from());
        int to = groups.get(leak.to());
        if (from != to && leak.item().isEmpty()) {
          leaking.add(List.of(Math.min(from, to), Math.max(from, to)));
        }
      }
      print.add(leaking);
    }
    print.add(Set.copyOf(otherValue));
    print.add(Set.copyOf(poor));
    Nodes listed = nodes(Map.of());
    print.add(
        wet.stream()
            .map(
                pins ->
                    pins.stream()
                        .map(pin -> listed.membersOf(pin).get(0))
                        .collect(Collectors.toSet()))
            .collect(Collectors.toSet()));
    return print;
  }

  /** Points sorted by what joins them in one state. */
  final class Nodes {
    final int[] of;
    private final Map<String, String> state;
    private final Map<Integer, List<Integer>> members = new HashMap<>();
    private final Map<Integer, double[][]> ohmsWithin = new HashMap<>();

    private Nodes(Map<String, String> state) {
      this.state = state;
      of = new int[points.size()];
      Arrays.setAll(of, i -> i);
      for (Joint joint : joints) {
        if (closed(joint, state)) {
          of[root(joint.ends[0])] = root(joint.ends[1]);
        }
      }
      for (int i = 0; i < of.length; i++) {
        of[i] = root(i);
        members.computeIfAbsent(of[i], key -> new ArrayList<>()).add(i);
      }
    }

    private int root(int point) {
      int at = point;
      while (of[at] != at) {
        of[at] = of[of[at]];
        at = of[at];
      }
      return at;
    }

    List<Integer> membersOf(int point) {
      return members.getOrDefault(of[point], List.of());
    }

    /** Ohms between two points of one node, by the network of its joints. */
    double ohms(int one, int other) {
      List<Integer> points = membersOf(one);
      double[][] inverse = ohmsWithin.computeIfAbsent(of[one], key -> inverse(points));
      int a = points.indexOf(one);
      int b = points.indexOf(other);
      return inverse[a][a] + inverse[b][b] - 2 * inverse[a][b];
    }

    private double[][] inverse(List<Integer> points) {
      int size = points.size();
      double[][] conductance = new double[size][size];
      for (Joint joint : joints) {
        if (closed(joint, state) && joint.ends[0] != joint.ends[1]) {
          int a = points.indexOf(joint.ends[0]);
          int b = points.indexOf(joint.ends[1]);
          if (a >= 0 && b >= 0) {
            double g = 1 / joint.ohms;
            conductance[a][a] += g;
            conductance[b][b] += g;
            conductance[a][b] -= g;
            conductance[b][a] -= g;
          }
        }
      }
      // The first point to ground, so that the matrix has an inverse; it cancels in differences.
      conductance[0][0] += 1;
      return invert(conductance);
    }
  }

  private static double[][] invert(double[][] matrix) {
    int size = matrix.length;
    double[][] work = new double[size][];
    double[][] inverse = new double[size][size];
    for (int i = 0; i < size; i++) {
      work[i] = matrix[i].clone();
      inverse[i][i] = 1;
    }
    for (int column = 0; column < size; column++) {
      int pivot = column;
      for (int row = column + 1; row < size; row++) {
        if (Math.abs(work[row][column]) > Math.abs(work[pivot][column])) {
          pivot = row;
        }
      }
      double[] swap = work[column];
      work[column] = work[pivot];
      work[pivot] = swap;
      swap = inverse[column];
      inverse[column] = inverse[pivot];
      inverse[pivot] = swap;
      double lead = work[column][column];
      for (int i = 0; i < size; i++) {
        work[column][i] /= lead;
        inverse[column][i] /= lead;
      }
      for (int row = 0; row < size; row++) {
        double factor = work[row][column];
        if (row != column && factor != 0) {
          for (int i = 0; i < size; i++) {
            work[row][i] -= factor * work[column][i];
            inverse[row][i] -= factor * inverse[column][i];
          }
        }
      }
    }
    return inverse;
  }

  /** What an ohmmeter shows with its positive lead at the first point; infinite is over range. */
  double continuity(int from, int to, Map<String, String> state) {
    Nodes nodes = nodes(state);
    if (nodes.of[from] == nodes.of[to]) {
      return nodes.ohms(from, to);
    }
    return shown(throughParts(nodes, from, Set.of(nodes.of[to])));
  }

  /** The same against all points that are not in a net on paper, tied together. */
  double continuityToRest(int from, Rig paper, Map<String, String> state) {
    Nodes nodes = nodes(state);
    int[] onPaper = paper.nodes(state).of;
    Set<Integer> rest = new LinkedHashSet<>();
    for (int i = 0; i < points.size(); i++) {
      if (onPaper[i] != onPaper[from]) {
        if (nodes.of[i] == nodes.of[from]) {
          return nodes.ohms(from, i);
        }
        rest.add(nodes.of[i]);
      }
    }
    return shown(throughParts(nodes, from, rest));
  }

  private static double shown(double ohms) {
    return ohms > OVER_RANGE_OHMS ? Double.POSITIVE_INFINITY : ohms;
  }

  /** What an insulation tester shows against all points that are not in a net on paper. */
  double insulationToRest(int from, Rig paper, Map<String, String> state) {
    double through = continuityToRest(from, paper, state);
    if (Double.isFinite(through)) {
      return through;
    }
    Nodes nodes = nodes(state);
    int[] onPaper = paper.nodes(state).of;
    double conductance = 1 / GOOD_INSULATION_OHMS;
    for (Leak leak : leaks) {
      boolean here = nodes.of[leak.from()] == nodes.of[from];
      boolean there = nodes.of[leak.to()] == nodes.of[from];
      int other = here ? leak.to() : leak.from();
      boolean isRest =
          nodes.membersOf(other).stream().anyMatch(point -> onPaper[point] != onPaper[from]);
      if (here != there && isRest) {
        conductance += 1 / leak.ohms();
      }
    }
    return 1 / conductance;
  }

  /** What an insulation tester shows between two points. */
  double insulation(int from, int to, Map<String, String> state) {
    double through = continuity(from, to, state);
    if (Double.isFinite(through)) {
      return through;
    }
    Nodes nodes = nodes(state);
    List<double[]> branches = new ArrayList<>();
    for (Leak leak : leaks) {
      branches.add(new double[] {nodes.of[leak.from()], nodes.of[leak.to()], leak.ohms()});
    }
    double leak = solve(branches, nodes.of[from], nodes.of[to]);
    return 1 / (1 / GOOD_INSULATION_OHMS + 1 / leak);
  }

  /** The parts between a point's node and some others tied together. */
  private double throughParts(Nodes nodes, int from, Set<Integer> to) {
    if (parts.isEmpty() || to.isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    int source = nodes.of[from];
    int sink = to.iterator().next();
    boolean[] on = new boolean[parts.size()];
    Arrays.fill(on, true);
    // Diodes: those that would carry current backwards are taken out until none does.
    for (int round = 0; round <= parts.size(); round++) {
      List<double[]> branches = new ArrayList<>();
      List<Integer> numbers = new ArrayList<>();
      for (int i = 0; i < parts.size(); i++) {
        Component part = parts.get(i);
        int a = nodes.of[part.ends[0]];
        int b = nodes.of[part.ends[1]];
        a = to.contains(a) ? sink : a;
        b = to.contains(b) ? sink : b;
        if (on[i] && a != b && Double.isFinite(part.ohms)) {
          branches.add(new double[] {a, b, part.diode ? DIODE_OHMS : part.ohms});
          numbers.add(i);
        }
      }
      Map<Integer, Double> volts = potentials(branches, source, sink);
      if (volts.isEmpty()) {
        return Double.POSITIVE_INFINITY;
      }
      boolean backwards = false;
      for (int i = 0; i < branches.size(); i++) {
        double[] branch = branches.get(i);
        double drop =
            volts.getOrDefault((int) branch[0], 0.0) - volts.getOrDefault((int) branch[1], 0.0);
        if (parts.get(numbers.get(i)).diode && drop < -1e-9) {
          on[numbers.get(i)] = false;
          backwards = true;
        }
      }
      if (!backwards) {
        return volts.getOrDefault(source, 0.0);
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private static double solve(List<double[]> branches, int source, int sink) {
    Map<Integer, Double> volts = potentials(branches, source, sink);
    return volts.isEmpty() ? Double.POSITIVE_INFINITY : volts.getOrDefault(source, 0.0);
  }

  /** Volts against the sink with one ampere into the source; empty where no way leads there. */
  private static Map<Integer, Double> potentials(List<double[]> branches, int source, int sink) {
    List<Integer> reached = new ArrayList<>(List.of(source));
    for (int i = 0; i < reached.size(); i++) {
      for (double[] branch : branches) {
        for (int side = 0; side < 2; side++) {
          int other = (int) branch[1 - side];
          if ((int) branch[side] == reached.get(i) && !reached.contains(other)) {
            reached.add(other);
          }
        }
      }
    }
    if (!reached.contains(sink)) {
      return Map.of();
    }
    reached.remove((Integer) sink);
    int size = reached.size();
    double[][] conductance = new double[size][size];
    for (double[] branch : branches) {
      int a = reached.indexOf((int) branch[0]);
      int b = reached.indexOf((int) branch[1]);
      double g = 1 / branch[2];
      if (a >= 0) {
        conductance[a][a] += g;
      }
      if (b >= 0) {
        conductance[b][b] += g;
      }
      if (a >= 0 && b >= 0) {
        conductance[a][b] -= g;
        conductance[b][a] -= g;
      }
    }
    double[][] inverse = invert(conductance);
    Map<Integer, Double> volts = new HashMap<>();
    for (int i = 0; i < size; i++) {
      volts.put(reached.get(i), inverse[i][0]);
    }
    volts.put(sink, 0.0);
    return volts;
  }
}

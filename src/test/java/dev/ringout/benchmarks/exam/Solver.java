package dev.ringout.benchmarks.exam;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is between two sides of a unit in one state: the node equations, by plain elimination. The
 * meter has its own voltage behind its own resistance, so that a diode conducts or not as on a
 * bench.
 */
final class Solver {
  private static final double METER_VOLTS = 2.5;
  private static final double METER_OHMS = 3000;
  private static final double DIODE_VOLTS = 0.55;
  private static final double DIODE_OHMS = 5;
  private static final double DIODE_LEAKS = 1e-10;
  private static final double LEAST_OHMS = 2e-4;

  /** Above this an edge does not matter between points that lower ones join. */
  private static final double LOW_OHMS = 20_000;

  private record Edge(int a, int b, double ohms) {}

  private record Diode(int a, int k) {}

  private final int points;
  private final List<Edge> edges = new ArrayList<>();
  private final List<Diode> diodes = new ArrayList<>();
  private final Joined low;
  private final Map<Integer, Inverse> inverses = new HashMap<>();

  Solver(Box box, String state) {
    points = box.points.size();
    low = new Joined(points);
    for (Box.Cond cond : box.conds) {
      if (!cond.open() && box.closed(cond.position(), state)) {
        add(cond.a(), cond.b(), cond.ohms() + cond.extra());
      }
    }
    box.strays.forEach(stray -> add(stray.a(), stray.b(), stray.ohms()));
    for (Box.Part part : box.parts) {
      if (state.equals(part.lifted())) {
        continue;
      }
      switch (part.sort()) {
        case RESISTOR, WINDING, LAMP -> add(part.a(), part.k(), part.ohms());
        case DIODE -> diodes.add(new Diode(part.a(), part.k()));
        case SUPPRESSOR, CAPACITOR -> {
          // Open to a steady reading.
        }
      }
    }
  }

  private void add(int a, int b, double ohms) {
    if (a == b) {
      return;
    }
    edges.add(new Edge(a, b, Math.max(LEAST_OHMS, ohms)));
    if (ohms < LOW_OHMS) {
      low.join(a, b);
    }
  }

  /** The ohms that a meter finds from its positive lead at one side to the other. */
  double between(int[] plus, int[] minus) {
    if (plus.length == 1 && minus.length == 1 && low.same(plus[0], minus[0])) {
      double ohms = inverse(plus[0]).between(plus[0], minus[0]);
      if (diodes.stream().noneMatch(one -> low.same(one.a(), plus[0]))) {
        return ohms;
      }
      // No diode opens below its own volts, and no two points are farther apart than the probes.
      if (METER_VOLTS * ohms / (ohms + METER_OHMS) < DIODE_VOLTS) {
        return ohms;
      }
    }
    return solved(plus, minus);
  }

  private Inverse inverse(int point) {
    return inverses.computeIfAbsent(low.of(point), this::invert);
  }

  /** The conductances of a component, one of its points grounded, inverted. */
  private Inverse invert(int root) {
    Map<Integer, Integer> at = new LinkedHashMap<>();
    for (int point = 0; point < points; point++) {
      if (low.of(point) == root) {
        at.put(point, at.size());
      }
    }
    int size = at.size() - 1;
    double[][] g = new double[size][2 * size];
    for (Edge edge : edges) {
      if (edge.ohms() >= LOW_OHMS || low.of(edge.a()) != root) {
        continue;
      }
      stamp(g, at.getOrDefault(edge.a(), size), at.getOrDefault(edge.b(), size), 1 / edge.ohms());
    }
    for (int row = 0; row < size; row++) {
      g[row][size + row] = 1;
    }
    eliminate(g, size);
    return new Inverse(at, g, size);
  }

  private static void stamp(double[][] g, int a, int b, double siemens) {
    if (a < g.length) {
      g[a][a] += siemens;
    }
    if (b < g.length) {
      g[b][b] += siemens;
    }
    if (a < g.length && b < g.length) {
      g[a][b] -= siemens;
      g[b][a] -= siemens;
    }
  }

  /** Gauss and Jordan with the largest pivot; what stands right of the square becomes solved. */
  private static void eliminate(double[][] g, int size) {
    for (int column = 0; column < size; column++) {
      int best = column;
      for (int row = column + 1; row < size; row++) {
        if (Math.abs(g[row][column]) > Math.abs(g[best][column])) {
          best = row;
        }
      }
      double[] swapped = g[best];
      g[best] = g[column];
      g[column] = swapped;
      double pivot = swapped[column];
      for (int to = column; to < swapped.length; to++) {
        swapped[to] /= pivot;
      }
      for (int row = 0; row < size; row++) {
        double by = g[row][column];
        if (row != column && by != 0) {
          double[] other = g[row];
          for (int to = column; to < other.length; to++) {
            other[to] -= by * swapped[to];
          }
        }
      }
    }
  }

  /** An inverted component. */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  private record Inverse(Map<Integer, Integer> at, double[][] g, int size) {
    double entry(int a, int b) {
      return a < size && b < size ? g[a][size + b] : 0;
    }

    double between(int a, int b) {
      int one = at.getOrDefault(a, size);
      int other = at.getOrDefault(b, size);
      return entry(one, one) + entry(other, other) - 2 * entry(one, other);
    }
  }

  /** With both sides tied together, and diodes as the meter finds them. */
  private double solved(int[] plus, int[] minus) {
    int[] node = new int[points];
    for (int point = 0; point < points; point++) {
      node[point] = point;
    }
    Arrays.stream(plus).forEach(point -> node[point] = plus[0]);
    Arrays.stream(minus).forEach(point -> node[point] = minus[0]);
    Map<Integer, Integer> at = reached(node, plus[0]);
    if (!at.containsKey(minus[0])) {
      return Double.POSITIVE_INFINITY;
    }
    at.remove(minus[0]);
    Map<Integer, Integer> numbers = new LinkedHashMap<>();
    at.keySet().forEach(point -> numbers.put(point, numbers.size()));
    boolean[] conducts = new boolean[diodes.size()];
    double ohms = Double.POSITIVE_INFINITY;
    for (int round = 0; round < 20; round++) {
      double[] volts = volts(node, numbers, conducts, plus[0]);
      double across = volts[numbers.getOrDefault(plus[0], 0)];
      double amps = (METER_VOLTS - across) / METER_OHMS;
      ohms = amps <= 1e-13 ? Double.POSITIVE_INFINITY : across / amps;
      if (!turned(node, numbers, volts, conducts)) {
        break;
      }
    }
    return ohms;
  }

  private boolean turned(
      int[] node, Map<Integer, Integer> numbers, double[] volts, boolean[] conducts) {
    boolean turned = false;
    for (int one = 0; one < conducts.length; one++) {
      Diode diode = diodes.get(one);
      int a = numbers.getOrDefault(node[diode.a()], volts.length);
      int k = numbers.getOrDefault(node[diode.k()], volts.length);
      double across = (a < volts.length ? volts[a] : 0) - (k < volts.length ? volts[k] : 0);
      boolean now = across > DIODE_VOLTS;
      turned |= now != conducts[one];
      conducts[one] = now;
    }
    return turned;
  }

  private double[] volts(int[] node, Map<Integer, Integer> numbers, boolean[] conducts, int plus) {
    int size = numbers.size();
    double[][] g = new double[size][size + 1];
    for (Edge edge : edges) {
      if (numbers.containsKey(node[edge.a()]) || numbers.containsKey(node[edge.b()])) {
        stampSquare(g, numbers, node[edge.a()], node[edge.b()], 1 / edge.ohms());
      }
    }
    for (int one = 0; one < conducts.length; one++) {
      int a = node[diodes.get(one).a()];
      int k = node[diodes.get(one).k()];
      if (a != k && (numbers.containsKey(a) || numbers.containsKey(k))) {
        stampSquare(g, numbers, a, k, conducts[one] ? 1 / DIODE_OHMS : DIODE_LEAKS);
        if (conducts[one]) {
          inject(g, numbers, a, DIODE_VOLTS / DIODE_OHMS);
          inject(g, numbers, k, -DIODE_VOLTS / DIODE_OHMS);
        }
      }
    }
    int source = numbers.getOrDefault(plus, 0);
    g[source][source] += 1 / METER_OHMS;
    g[source][size] += METER_VOLTS / METER_OHMS;
    eliminate(g, size);
    double[] volts = new double[size];
    for (int row = 0; row < size; row++) {
      volts[row] = g[row][size];
    }
    return volts;
  }

  private static void inject(double[][] g, Map<Integer, Integer> numbers, int point, double amps) {
    Integer at = numbers.get(point);
    if (at != null) {
      g[at][g.length] += amps;
    }
  }

  private static void stampSquare(
      double[][] g, Map<Integer, Integer> numbers, int one, int other, double siemens) {
    if (one != other) {
      stamp(g, numbers.getOrDefault(one, g.length), numbers.getOrDefault(other, g.length), siemens);
    }
  }

  /** The nodes that anything joins to a node, a diode of either direction too. */
  private Map<Integer, Integer> reached(int[] node, int from) {
    Map<Integer, List<Integer>> beside = new HashMap<>();
    for (Edge edge : edges) {
      beside(beside, node[edge.a()], node[edge.b()]);
    }
    for (Diode diode : diodes) {
      beside(beside, node[diode.a()], node[diode.k()]);
    }
    Map<Integer, Integer> reached = new LinkedHashMap<>();
    Deque<Integer> left = new ArrayDeque<>(List.of(from));
    while (!left.isEmpty()) {
      int at = left.pop();
      if (reached.putIfAbsent(at, reached.size()) == null) {
        beside.getOrDefault(at, List.of()).forEach(left::push);
      }
    }
    return reached;
  }

  private static void beside(Map<Integer, List<Integer>> beside, int a, int b) {
    beside.computeIfAbsent(a, one -> new ArrayList<>()).add(b);
    beside.computeIfAbsent(b, one -> new ArrayList<>()).add(a);
  }
}

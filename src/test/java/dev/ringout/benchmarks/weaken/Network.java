package dev.ringout.benchmarks.weaken;

import dev.ringout.benchmarks.weaken.Unit.Groups;
import java.util.ArrayList;
import java.util.List;

/** Resistors between numbered nodes: Kirchhoff's current law, solved by elimination. */
final class Network {
  private record Edge(int from, int to, double ohms) {}

  private final int size;
  private final List<Edge> edges = new ArrayList<>();

  Network(int size) {
    this.size = size;
  }

  void add(int from, int to, double ohms) {
    if (Double.isFinite(ohms)) {
      edges.add(new Edge(from, to, ohms));
    }
  }

  /** What the meter finds, and the volts of each node with one volt between the sides. */
  static final class Solved {
    private final double ohms;
    private final double[] volts;

    private Solved(double ohms, double[] volts) {
      this.ohms = ohms;
      this.volts = volts;
    }

    double ohms() {
      return ohms;
    }

    /** The volts of one node; NaN where it floats. */
    double volts(int node) {
      return volts[node];
    }
  }

  Solved solve(List<Integer> from, List<Integer> to) {
    Groups node = new Groups(size);
    from.forEach(point -> node.join(from.get(0), point));
    to.forEach(point -> node.join(to.get(0), point));
    edges.stream().filter(edge -> edge.ohms() <= 0).forEach(e -> node.join(e.from(), e.to()));
    int source = node.of(from.get(0));
    int sink = node.of(to.get(0));
    if (source == sink) {
      return new Solved(0, new double[size]);
    }
    double[][] siemens = new double[size][size];
    Groups reached = new Groups(size);
    for (Edge edge : edges) {
      int one = node.of(edge.from());
      int other = node.of(edge.to());
      if (one != other) {
        siemens[one][other] += 1 / edge.ohms();
        siemens[other][one] += 1 / edge.ohms();
        reached.join(one, other);
      }
    }
    double[] volts = volts(siemens, node, reached, source, sink);
    double amperes = 0;
    for (int other = 0; other < size; other++) {
      if (siemens[source][other] > 0) {
        amperes += siemens[source][other] * (1 - volts[other]);
      }
    }
    double[] all = new double[size];
    for (int point = 0; point < size; point++) {
      all[point] = volts[node.of(point)];
    }
    boolean joined = reached.of(source) == reached.of(sink);
    return new Solved(joined ? 1 / amperes : Double.POSITIVE_INFINITY, all);
  }

  private double[] volts(double[][] siemens, Groups node, Groups reached, int source, int sink) {
    double[] volts = new double[size];
    List<Integer> unknown = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      boolean toSource = reached.of(i) == reached.of(source);
      boolean toSink = reached.of(i) == reached.of(sink);
      boolean own = node.of(i) == i && i != source && i != sink;
      volts[i] = i == source ? 1 : i == sink ? 0 : toSource ? 1 : toSink ? 0 : Double.NaN;
      if (own && toSource && toSink) {
        unknown.add(i);
      }
    }
    eliminate(siemens, unknown, source, volts);
    return volts;
  }

  private void eliminate(double[][] siemens, List<Integer> unknown, int source, double[] volts) {
    int n = unknown.size();
    double[][] rows = new double[n][n + 1];
    for (int i = 0; i < n; i++) {
      for (int other = 0; other < size; other++) {
        rows[i][i] += siemens[unknown.get(i)][other];
      }
      for (int j = 0; j < n; j++) {
        rows[i][j] -= i == j ? 0 : siemens[unknown.get(i)][unknown.get(j)];
      }
      rows[i][n] = siemens[unknown.get(i)][source];
    }
    // Diagonally dominant: no pivot is needed.
    for (int k = 0; k < n; k++) {
      for (int i = k + 1; i < n; i++) {
        double factor = rows[i][k] / rows[k][k];
        for (int j = k; j <= n && factor != 0; j++) {
          rows[i][j] -= factor * rows[k][j];
        }
      }
    }
    for (int k = n - 1; k >= 0; k--) {
      double value = rows[k][n];
      for (int j = k + 1; j < n; j++) {
        value -= rows[k][j] * volts[unknown.get(j)];
      }
      volts[unknown.get(k)] = value / rows[k][k];
    }
  }
}

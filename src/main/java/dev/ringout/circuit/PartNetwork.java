package dev.ringout.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Resistances between numbered nodes; node 0 and node 1 are the two sides of the meter.
 *
 * <p>The resistance between the sides is found by Kirchhoff's current law: with node 1 at zero and
 * one ampere into node 0, the voltage of node 0 solves L·v = i, L being the weighted Laplacian. A
 * resistance never falls when one of its parts rises (Rayleigh), so the least and greatest values
 * of the parts give the least and greatest reading.
 */
final class PartNetwork {
  private final List<Branch> branches = new ArrayList<>();

  private record Branch(int from, int to, double lowOhms, double highOhms) {}

  void add(int from, int to, double lowOhms, double highOhms) {
    branches.add(new Branch(from, to, lowOhms, highOhms));
  }

  /** The least reading: parts that may be anything count as a short. */
  double lowOhms() {
    Map<Integer, Integer> merged = new HashMap<>();
    for (Branch branch : branches) {
      if (branch.lowOhms() <= 0) {
        merged.put(root(merged, branch.from()), root(merged, branch.to()));
      }
    }
    int source = root(merged, 0);
    int sink = root(merged, 1);
    if (source == sink) {
      return 0;
    }
    List<Branch> shorted = new ArrayList<>();
    for (Branch branch : branches) {
      int from = root(merged, branch.from());
      int to = root(merged, branch.to());
      if (from != to) {
        shorted.add(new Branch(from, to, branch.lowOhms(), branch.lowOhms()));
      }
    }
    return solve(shorted, source, sink);
  }

  /**
   * The greatest reading: parts that may be anything count as an open; infinite where none is left.
   */
  double highOhms() {
    List<Branch> conducting =
        branches.stream().filter(branch -> Double.isFinite(branch.highOhms())).toList();
    return solve(conducting, 0, 1);
  }

  private static int root(Map<Integer, Integer> merged, int node) {
    int root = node;
    while (merged.containsKey(root) && merged.get(root) != root) {
      root = merged.get(root);
    }
    return root;
  }

  /** The branches' {@code highOhms} between two nodes; infinite where no path joins them. */
  private static double solve(List<Branch> branches, int source, int sink) {
    Map<Integer, Integer> row = reached(branches, source);
    Integer ground = row.get(sink);
    Integer live = row.get(source);
    if (ground == null || live == null) {
      return Double.POSITIVE_INFINITY;
    }
    int size = row.size();
    DMatrixRMaj laplacian = new DMatrixRMaj(size, size);
    for (Branch branch : branches) {
      Integer a = row.get(branch.from());
      Integer b = row.get(branch.to());
      if (a == null || b == null) {
        continue;
      }
      double siemens = 1 / branch.highOhms();
      laplacian.add(a, a, siemens);
      laplacian.add(b, b, siemens);
      laplacian.add(a, b, -siemens);
      laplacian.add(b, a, -siemens);
    }
    for (int i = 0; i < size; i++) {
      laplacian.set(ground, i, i == ground ? 1 : 0);
    }
    DMatrixRMaj amperes = new DMatrixRMaj(size, 1);
    amperes.set(live, 0, 1);
    DMatrixRMaj volts = new DMatrixRMaj(size, 1);
    if (!CommonOps_DDRM.solve(laplacian, amperes, volts)) {
      return Double.POSITIVE_INFINITY;
    }
    return volts.get(live, 0);
  }

  private static Map<Integer, Integer> reached(List<Branch> branches, int source) {
    Map<Integer, Integer> row = new HashMap<>();
    row.put(source, 0);
    boolean grew = true;
    while (grew) {
      grew = false;
      for (Branch branch : branches) {
        boolean fromKnown = row.containsKey(branch.from());
        if (fromKnown != row.containsKey(branch.to())) {
          row.put(fromKnown ? branch.to() : branch.from(), row.size());
          grew = true;
        }
      }
    }
    return row;
  }
}

package dev.ringout.circuit;

import dev.ringout.units.OhmsRange;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.data.DMatrixSparseTriplet;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.ops.DConvertMatrixStruct;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.CommonOps_DSCC;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;

/**
 * Points of one net that are joined by loops: no single point's loss would part them. The first
 * point is the block's way to the net's root.
 *
 * <p>Between two points the resistance is (e_a − e_b)ᵀ L⁻¹ (e_a − e_b), L being the Laplacian of
 * the conductances with the first point's row and column left out (Kirchhoff; D. J. Klein and M.
 * Randić, "Resistance distance", Journal of Mathematical Chemistry 12, 1993). L is factored once
 * for the least and once for the greatest resistances; a resistance never falls when one of its
 * conductors' rises (Rayleigh), so these give the ends of the range. Points that a conductor
 * without any resistance joins are one point of L.
 */
final class Block {
  /** No row: the point to which all voltages refer. */
  private static final int GROUND = -1;

  /** Up to so many points, columns of the inverse are kept. */
  private static final int MOST_POINTS_KEPT = 512;

  private final int size;
  private final int[] conductors;
  private final int[] from;
  private final int[] to;
  private final OhmsRange[] ohms;
  private final Map<Integer, Integer> rowOf = new HashMap<>();
  private final boolean known;
  private final Factored[] factored = new Factored[2];

  /**
   * A block.
   *
   * @param points its points by any numbering, the way to the root first
   * @param from for each conductor the place of one end among the points
   * @param to for each conductor the place of the other
   */
  Block(int[] points, int[] conductors, int[] from, int[] to, OhmsRange[] ohms) {
    this.size = points.length;
    this.conductors = conductors;
    this.from = from;
    this.to = to;
    this.ohms = ohms;
    boolean all = true;
    for (OhmsRange ohmsRange : ohms) {
      all &= ohmsRange.isKnown();
    }
    this.known = all;
    for (int i = 0; i < points.length; i++) {
      rowOf.put(points[i], i);
    }
  }

  /** Whether every conductor's resistance is known. */
  boolean isKnown() {
    return known;
  }

  /** The conductors, by the numbers that they were given with. */
  int[] conductors() {
    return conductors;
  }

  private int row(int point) {
    Integer row = rowOf.get(point);
    if (row == null) {
      throw new IllegalArgumentException("no point of this block: " + point);
    }
    return row;
  }

  /** The resistance between two points of the block. */
  OhmsRange between(int one, int other) {
    if (one == other) {
      return OhmsRange.NONE;
    }
    return known
        ? new OhmsRange(
            factored(false).ohms(row(one), row(other)), factored(true).ohms(row(one), row(other)))
        : OhmsRange.ANY;
  }

  private Factored factored(boolean high) {
    int which = high ? 1 : 0;
    if (factored[which] == null) {
      int[] rows = rows(high);
      factored[which] = new Factored(rows, laplacian(rows, high));
    }
    return factored[which];
  }

  private double ohms(int conductor, boolean high) {
    return high ? ohms[conductor].highOhms() : ohms[conductor].lowOhms();
  }

  /** For each point its row of L; those that nothing parts share one, the first point has none. */
  private int[] rows(boolean high) {
    DisjointPoints one = new DisjointPoints(size);
    for (int i = 0; i < conductors.length; i++) {
      if (ohms(i, high) <= 0) {
        one.union(from[i], to[i]);
      }
    }
    int[] rows = new int[size];
    Map<Integer, Integer> rowOfFirst = new HashMap<>();
    rowOfFirst.put(one.firstOf(0), GROUND);
    for (int point = 0; point < size; point++) {
      rows[point] = rowOfFirst.computeIfAbsent(one.firstOf(point), first -> rowOfFirst.size() - 1);
    }
    return rows;
  }

  private DMatrixSparseCSC laplacian(int[] rows, boolean high) {
    int count = Arrays.stream(rows).max().orElse(GROUND) + 1;
    DMatrixSparseTriplet entries = new DMatrixSparseTriplet(count, count, 4 * conductors.length);
    for (int i = 0; i < conductors.length; i++) {
      int a = rows[from[i]];
      int b = rows[to[i]];
      if (a == b) {
        continue;
      }
      double siemens = 1 / ohms(i, high);
      if (a != GROUND) {
        entries.addItem(a, a, siemens);
      }
      if (b != GROUND) {
        entries.addItem(b, b, siemens);
      }
      if (a != GROUND && b != GROUND) {
        entries.addItem(a, b, -siemens);
        entries.addItem(b, a, -siemens);
      }
    }
    DMatrixSparseCSC matrix = DConvertMatrixStruct.convert(entries, (DMatrixSparseCSC) null);
    matrix.sortIndices(null);
    CommonOps_DSCC.duplicatesAdd(matrix, null);
    return matrix;
  }

  /** One factored Laplacian and the columns of its inverse that were asked for. */
  private static final class Factored {
    private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver =
        LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
    private final int[] rows;
    private final int size;
    private final Map<Integer, double[]> columns = new HashMap<>();

    Factored(int[] rows, DMatrixSparseCSC laplacian) {
      this.rows = rows;
      this.size = laplacian.numRows;
      if (size > 0 && !solver.setA(laplacian)) {
        throw new IllegalStateException("a block in which something is not joined");
      }
    }

    double ohms(int onePoint, int otherPoint) {
      int one = rows[onePoint];
      int other = rows[otherPoint];
      if (one == other) {
        return 0;
      }
      if (one == GROUND || other == GROUND) {
        int row = Math.max(one, other);
        return column(row)[row];
      }
      double[] a = column(one);
      double[] b = column(other);
      return a[one] + b[other] - a[other] - b[one];
    }

    private double[] column(int index) {
      double[] kept = columns.get(index);
      if (kept != null) {
        return kept;
      }
      DMatrixRMaj amperes = new DMatrixRMaj(size, 1);
      amperes.set(index, 0, 1);
      DMatrixRMaj volts = new DMatrixRMaj(size, 1);
      solver.solve(amperes, volts);
      if (size < MOST_POINTS_KEPT) {
        columns.put(index, volts.data);
      }
      return volts.data;
    }
  }
}

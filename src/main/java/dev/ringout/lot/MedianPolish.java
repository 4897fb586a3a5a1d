package dev.ringout.lot;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A table of values as a row's part, a column's part and what is left of each, by taking medians
 * away in turns (J. W. Tukey, Exploratory Data Analysis, 1977, chapter 11). A few wild values move
 * none of the parts.
 */
final class MedianPolish {
  private static final int MOST_ROUNDS = 10;

  /** A round that makes the rest smaller by less than this share is the last. */
  private static final double WORTH_A_ROUND = 0.01;

  private final double[][] rest;
  private final double[] ofRow;
  private final double[] ofColumn;

  private MedianPolish(double[][] table, int columns) {
    rest = Arrays.stream(table).map(double[]::clone).toArray(double[][]::new);
    ofRow = new double[table.length];
    ofColumn = new double[columns];
  }

  /**
   * Takes a table apart.
   *
   * @param table a row for each unit; a value that is not there is not a number
   */
  static MedianPolish of(double[][] table, int columns) {
    MedianPolish polish = new MedianPolish(table, columns);
    double before = Double.POSITIVE_INFINITY;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      polish.rows();
      polish.columns();
      double left = polish.sumOfRest();
      if (left == 0 || Math.abs(left - before) < WORTH_A_ROUND * left) {
        break;
      }
      before = left;
    }
    polish.centre();
    return polish;
  }

  private void rows() {
    for (int row = 0; row < rest.length; row++) {
      double middle = middle(rest[row]);
      ofRow[row] += middle;
      for (int column = 0; column < ofColumn.length; column++) {
        rest[row][column] -= middle;
      }
    }
  }

  private void columns() {
    for (int column = 0; column < ofColumn.length; column++) {
      int at = column;
      double middle = middle(Arrays.stream(rest).mapToDouble(row -> row[at]).toArray());
      ofColumn[column] += middle;
      for (double[] row : rest) {
        row[column] -= middle;
      }
    }
  }

  /** What all rows have in common belongs to the columns: a row's part is above its fellows'. */
  private void centre() {
    double middle = middle(ofRow);
    for (int row = 0; row < ofRow.length; row++) {
      ofRow[row] -= middle;
    }
    for (int column = 0; column < ofColumn.length; column++) {
      ofColumn[column] += middle;
    }
  }

  private static double middle(double[] values) {
    double[] there = Arrays.stream(values).filter(value -> !Double.isNaN(value)).toArray();
    return there.length == 0 ? 0 : Robust.median(there);
  }

  private double sumOfRest() {
    return Arrays.stream(rest)
        .flatMapToDouble(Arrays::stream)
        .filter(value -> !Double.isNaN(value))
        .map(Math::abs)
        .sum();
  }

  /** By how much a row is above the middle one. */
  double ofRow(int row) {
    return ofRow[row];
  }

  /** What a column has in the middle row. */
  double ofColumn(int column) {
    return ofColumn[column];
  }

  /** What is left of a value; not a number where there is none. */
  double rest(int row, int column) {
    return rest[row][column];
  }

  /** What is left of the values of a column that are there. */
  double[] restOfColumn(int column) {
    return IntStream.range(0, rest.length)
        .mapToDouble(row -> rest[row][column])
        .filter(value -> !Double.isNaN(value))
        .toArray();
  }
}

package dev.ringout.circuit;

/** Sets of points that are joined step by step; each set is known by its lowest point. */
public final class DisjointPoints {
  private final int[] towardsFirst;
  private int count;

  /** So many points, each a set of its own. */
  public DisjointPoints(int size) {
    count = size;
    towardsFirst = new int[size];
    for (int point = 0; point < size; point++) {
      towardsFirst[point] = point;
    }
  }

  /** The lowest point of a point's set. */
  public int firstOf(int point) {
    int first = point;
    while (towardsFirst[first] != first) {
      towardsFirst[first] = towardsFirst[towardsFirst[first]];
      first = towardsFirst[first];
    }
    return first;
  }

  /** Makes one set of two. */
  public void union(int one, int other) {
    int first = firstOf(one);
    int second = firstOf(other);
    if (first != second) {
      towardsFirst[Math.max(first, second)] = Math.min(first, second);
      count--;
    }
  }

  /** How many sets there are. */
  public int count() {
    return count;
  }

  /** For each point the number of its set; sets are numbered from 0 by their first points. */
  public int[] numbered() {
    int[] setOf = new int[towardsFirst.length];
    int sets = 0;
    for (int point = 0; point < setOf.length; point++) {
      int first = firstOf(point);
      setOf[point] = first == point ? sets++ : setOf[first];
    }
    return setOf;
  }
}

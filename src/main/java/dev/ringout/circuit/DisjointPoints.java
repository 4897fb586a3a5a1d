package dev.ringout.circuit;

/** Sets of points that are joined step by step; each set is known by its lowest point. */
public final class DisjointPoints {
  private final int[] towardsFirst;

  /** So many points, each a set of its own. */
  public DisjointPoints(int size) {
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
    towardsFirst[Math.max(first, second)] = Math.min(first, second);
  }
}

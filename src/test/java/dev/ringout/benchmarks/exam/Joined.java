package dev.ringout.benchmarks.exam;

/** Sets of points that are joined. */
final class Joined {
  private final int[] up;

  Joined(int points) {
    up = new int[points];
    for (int one = 0; one < points; one++) {
      up[one] = one;
    }
  }

  int of(int point) {
    int at = point;
    while (up[at] != at) {
      up[at] = up[up[at]];
      at = up[at];
    }
    return at;
  }

  void join(int a, int b) {
    up[of(a)] = of(b);
  }

  boolean same(int a, int b) {
    return of(a) == of(b);
  }
}

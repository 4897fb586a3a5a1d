package dev.ringout.circuit;

import java.util.Arrays;
import java.util.stream.IntStream;

/** What every partition of a circuit's points has in common. */
final class Partitions {
  private static final int[] NO_PARTS = {};

  private Partitions() {}

  /** The parts that end at any of some points, each once. */
  static int[] partsAt(Circuit circuit, int[] points) {
    if (circuit.harness().parts().isEmpty()) {
      return NO_PARTS;
    }
    int[] parts =
        Arrays.stream(points)
            .flatMap(point -> circuit.partsAt(point).stream().mapToInt(Integer::intValue))
            .distinct()
            .sorted()
            .toArray();
    return parts.length == 0 ? NO_PARTS : parts;
  }

  /** Groups renumbered so that equal partitions have equal arrays. */
  static int[] canonical(int[] groups) {
    int[] first = new int[Arrays.stream(groups).max().orElse(-1) + 1];
    Arrays.fill(first, -1);
    int next = 0;
    int[] canonical = new int[groups.length];
    for (int i : IntStream.range(0, groups.length).toArray()) {
      if (first[groups[i]] < 0) {
        first[groups[i]] = next++;
      }
      canonical[i] = first[groups[i]];
    }
    return canonical;
  }
}

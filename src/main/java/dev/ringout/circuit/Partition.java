package dev.ringout.circuit;

/** Points sorted into groups that are joined. */
public interface Partition {
  /** The group of a point. */
  int groupOf(int point);

  /** The points of a group. */
  int[] pointsOf(int group);

  /** The parts with an end in a group, by their index in the circuit. */
  int[] partsAt(int group);
}

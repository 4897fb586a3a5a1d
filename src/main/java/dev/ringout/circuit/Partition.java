package dev.ringout.circuit;

/** Points sorted into groups that are joined. */
public interface Partition {
  /** The group of a point. */
  int groupOf(int point);

  /** Whether a group is a net just as it is listed; its number is then the net's. */
  boolean isAsListed(int group);

  /** The points of a group. */
  int[] pointsOf(int group);

  /** The parts with an end in a group, by their index in the circuit. */
  int[] partsAt(int group);
}

package dev.ringout.circuit;

/** Points sorted into groups that are joined. */
public interface Partition {
  /** The group of a point. */
  int groupOf(int point);

  /** Whether a group is a net just as it is listed; its number is then the net's. */
  boolean isAsListed(int group);

  /** The points of a group. */
  int[] pointsOf(int group);

  /** Whether a lead of a part, by its index in the circuit, is off its point. */
  boolean isLifted(int part);

  /** The parts with an end in a group, by their index in the circuit; none with a lead off. */
  int[] partsAt(int group);
}

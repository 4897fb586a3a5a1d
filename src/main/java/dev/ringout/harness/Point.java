package dev.ringout.harness;

/**
 * One place a meter probe can touch: a contact, cavity, terminal or stud of an item.
 *
 * <p>The reference designator is spelt as first written in the harness file; pins keep their case,
 * since {@code J1-A} and {@code J1-a} are two contacts of a lettered insert.
 *
 * @param ref the item's reference designator
 * @param pin the pin, or {@link #SHELL}
 */
public record Point(String ref, String pin) implements Comparable<Point> {
  /** The pin name of an item's metal shell. */
  public static final String SHELL = "SHELL";

  @Override
  public int compareTo(Point other) {
    int byRef = NaturalOrder.INSTANCE.compare(ref, other.ref);
    return byRef != 0 ? byRef : NaturalOrder.INSTANCE.compare(pin, other.pin);
  }

  @Override
  public String toString() {
    return ref + "-" + pin;
  }
}

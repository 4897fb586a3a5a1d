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

  /** A pin as it is compared: {@code 07} is {@code 7}, {@code shell} is {@code SHELL}. */
  public static String pinName(String text) {
    if (text.equalsIgnoreCase(SHELL)) {
      return SHELL;
    }
    if (!text.startsWith("0") || !text.chars().allMatch(c -> c >= '0' && c <= '9')) {
      return text;
    }
    int first = 0;
    while (first < text.length() - 1 && text.charAt(first) == '0') {
      first++;
    }
    return text.substring(first);
  }

  @Override
  public int compareTo(Point other) {
    int byRef = NaturalOrder.INSTANCE.compare(ref, other.ref);
    return byRef != 0 ? byRef : NaturalOrder.INSTANCE.compare(pin, other.pin);
  }

  // Written out: points are the keys of every large map, and a record's own take several times as
  // long before they are compiled at last.
  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof Point point && pin.equals(point.pin) && ref.equals(point.ref));
  }

  @Override
  public int hashCode() {
    return 31 * ref.hashCode() + pin.hashCode();
  }

  @Override
  public String toString() {
    return ref + "-" + pin;
  }
}

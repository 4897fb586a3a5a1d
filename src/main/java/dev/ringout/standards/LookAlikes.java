package dev.ringout.standards;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** Pins whose labels are taken for each other: 12 and 21, B and 8. */
public final class LookAlikes {
  private final Set<String> pairs = new HashSet<>();

  private LookAlikes() {
    for (Map<String, String> row :
        PublishedTable.load(LookAlikes.class, "look-alikes.csv").rows()) {
      String one = row.getOrDefault("one", "");
      String other = row.getOrDefault("other", "");
      pairs.add(one + other);
      pairs.add(other + one);
    }
  }

  /** The look-alikes that come with the program. */
  public static LookAlikes published() {
    return new LookAlikes();
  }

  /**
   * Whether one label is the other with two characters exchanged, or with one taken for another.
   */
  public boolean areAlike(String one, String other) {
    if (one.length() != other.length() || one.equals(other)) {
      return false;
    }
    int unlike = 0;
    int last = 0;
    for (int i = 0; i < one.length(); i++) {
      if (one.charAt(i) != other.charAt(i)) {
        unlike++;
        last = i;
      }
    }
    if (unlike == 1) {
      return pairs.contains("" + one.charAt(last) + other.charAt(last));
    }
    return unlike == 2
        && last > 0
        && one.charAt(last) == other.charAt(last - 1)
        && one.charAt(last - 1) == other.charAt(last);
  }
}

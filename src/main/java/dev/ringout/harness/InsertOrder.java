package dev.ringout.harness;

import java.util.Comparator;

/**
 * The order in which people read the contacts of an insert: numbers as numbers; letters A to Z,
 * then a to z, then AA and BB; the shell last (common practice, no source).
 */
public enum InsertOrder implements Comparator<String> {
  INSTANCE;

  private static final int NUMBERED = 0;
  private static final int LETTERED = 1;
  private static final int AROUND = 2;

  @Override
  public int compare(String left, String right) {
    int bySort = Integer.compare(sort(left), sort(right));
    if (bySort != 0) {
      return bySort;
    }
    int byLength = sort(left) == LETTERED ? Integer.compare(left.length(), right.length()) : 0;
    return byLength != 0 ? byLength : NaturalOrder.INSTANCE.compare(left, right);
  }

  private static int sort(String pin) {
    if (pin.equals(Point.SHELL)) {
      return AROUND;
    }
    return pin.chars().allMatch(Character::isLetter) ? LETTERED : NUMBERED;
  }
}

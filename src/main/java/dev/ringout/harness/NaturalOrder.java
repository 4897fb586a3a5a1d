package dev.ringout.harness;

import java.util.Comparator;

/**
 * The order in which people read designators: {@code J2} before {@code J10}, {@code A} before
 * {@code a}.
 */
public enum NaturalOrder implements Comparator<String> {
  INSTANCE;

  @Override
  public int compare(String left, String right) {
    int i = 0;
    int j = 0;
    while (i < left.length() && j < right.length()) {
      int iEnd = endOfDigits(left, i);
      int jEnd = endOfDigits(right, j);
      if (iEnd > i && jEnd > j) {
        int order = compareDigits(left.substring(i, iEnd), right.substring(j, jEnd));
        if (order != 0) {
          return order;
        }
        i = iEnd;
        j = jEnd;
      } else {
        int order = Character.compare(left.charAt(i++), right.charAt(j++));
        if (order != 0) {
          return order;
        }
      }
    }
    int rest = Integer.compare(left.length() - i, right.length() - j);
    return rest != 0 ? rest : left.compareTo(right);
  }

  private static int endOfDigits(String text, int from) {
    int end = from;
    while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
      end++;
    }
    return end;
  }

  private static int compareDigits(String left, String right) {
    String shortLeft = withoutLeadingZeros(left);
    String shortRight = withoutLeadingZeros(right);
    int byLength = Integer.compare(shortLeft.length(), shortRight.length());
    return byLength != 0 ? byLength : shortLeft.compareTo(shortRight);
  }

  private static String withoutLeadingZeros(String digits) {
    int start = 0;
    while (start < digits.length() - 1 && digits.charAt(start) == '0') {
      start++;
    }
    return digits.substring(start);
  }
}

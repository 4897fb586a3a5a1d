package dev.ringout.cells;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;

/**
 * What was probably meant. People who copy identifiers mostly get one character wrong, swap two
 * neighbours, or take one character for another that looks like it (trade notes, common practice).
 */
public final class LikelyMeant {
  private static final String LETTERS = "OoQDIlSZB";
  private static final String DIGITS = "000011528";

  private LikelyMeant() {}

  /** A number typed with letters that look like digits, or empty where that is no number either. */
  public static String asNumber(String text) {
    StringBuilder digits = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      int letter = LETTERS.indexOf(c);
      digits.append(letter < 0 ? c : DIGITS.charAt(letter));
    }
    String number = digits.toString();
    return !number.equals(text) && number.matches("[\\d.,/]+") ? number : "";
  }

  /** The candidate that is one slip away, or empty where none or several are. */
  public static String nearest(String text, Collection<String> candidates) {
    return candidates.stream()
        .filter(candidate -> slips(text, candidate) <= 2)
        .min(
            Comparator.<String>comparingInt(candidate -> slips(text, candidate))
                .thenComparing(Comparator.naturalOrder()))
        .orElse("");
  }

  /** 0: alike but for case or look; 1: one slip; 9: more. */
  private static int slips(String left, String right) {
    if (alike(left).equals(alike(right))) {
      return 0;
    }
    return oneSlip(left.toUpperCase(Locale.ROOT), right.toUpperCase(Locale.ROOT)) ? 1 : 9;
  }

  private static String alike(String text) {
    return text.toUpperCase(Locale.ROOT)
        .replace('O', '0')
        .replace('Q', '0')
        .replace('I', '1')
        .replace('L', '1')
        .replace('S', '5')
        .replace('Z', '2')
        .replace('B', '8');
  }

  private static boolean oneSlip(String left, String right) {
    int start = 0;
    int shorter = Math.min(left.length(), right.length());
    while (start < shorter && left.charAt(start) == right.charAt(start)) {
      start++;
    }
    int leftEnd = left.length();
    int rightEnd = right.length();
    while (leftEnd > start
        && rightEnd > start
        && left.charAt(leftEnd - 1) == right.charAt(rightEnd - 1)) {
      leftEnd--;
      rightEnd--;
    }
    int leftRest = leftEnd - start;
    int rightRest = rightEnd - start;
    boolean oneCharacter = leftRest <= 1 && rightRest <= 1;
    boolean neighboursSwapped =
        leftRest == 2
            && rightRest == 2
            && left.charAt(start) == right.charAt(start + 1)
            && left.charAt(start + 1) == right.charAt(start);
    return oneCharacter || neighboursSwapped;
  }
}

package dev.ringout.readings;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Whom a cell names: {@code R. Adeyemi}, {@code Adeyemi, R.} and {@code r adeyemi} are one. */
public final class Person {
  /** What people write where nobody is named. */
  private static final Set<String> NOBODY =
      Set.of(
          "na", "none", "nobody", "no", "nil", "tbd", "tba", "unknown", "x", "xx", "xxx", "same",
          "self", "dito", "ditto", "do");

  private static final Pattern LETTERS = Pattern.compile("[^\\p{L}\\p{N}]+");
  private static final Pattern UNSEEN = Pattern.compile("[\\p{M}\\p{Cf}]+");
  private static final Set<String> ROLES = Set.of("operator", "tester", "inspector", "same", "as");

  private Person() {}

  /** Whether a cell names anybody. */
  public static boolean isNamed(String cell) {
    return !words(cell).isEmpty();
  }

  /**
   * Whether two cells name, or may name, one person: all words of the one are the other's, an
   * initial standing for a name; or both are the same letters however they are parted.
   */
  public static boolean isSame(String one, String other) {
    List<String> words = List.copyOf(words(one));
    List<String> others = List.copyOf(words(other));
    if (words.isEmpty() || others.isEmpty()) {
      return false;
    }
    return isAmong(words, others)
        || isAmong(others, words)
        || String.join("", words).equals(String.join("", others))
        || isInitialsOf(words, others)
        || isInitialsOf(others, words);
  }

  /** {@code RA} is R. Adeyemi, and whoever else has these. */
  private static boolean isInitialsOf(List<String> some, List<String> all) {
    StringBuilder initials = new StringBuilder();
    all.forEach(word -> initials.appendCodePoint(word.codePointAt(0)));
    return all.size() > 1 && String.join("", some).contentEquals(initials);
  }

  /** Initials alone are few: they name no one else but the same initials. */
  private static boolean isAmong(List<String> some, List<String> all) {
    boolean hasName = some.stream().anyMatch(word -> word.length() > 1 && all.contains(word));
    return hasName
        ? some.stream().allMatch(word -> all.stream().anyMatch(one -> mayBe(word, one)))
        : Set.copyOf(some).equals(Set.copyOf(all));
  }

  private static boolean mayBe(String word, String other) {
    boolean isInitial = word.length() == 1 || other.length() == 1;
    return word.equals(other) || (isInitial && word.charAt(0) == other.charAt(0));
  }

  /** Letters however they are composed and marked, without signs that nobody sees. */
  private static String plain(String cell) {
    return UNSEEN
        .matcher(Normalizer.normalize(cell, Normalizer.Form.NFKD))
        .replaceAll("")
        .toLowerCase(Locale.ROOT);
  }

  private static Set<String> words(String cell) {
    List<String> words = new ArrayList<>();
    for (String word : LETTERS.split(plain(cell), -1)) {
      if (!word.isEmpty()) {
        words.add(word);
      }
    }
    boolean nobody =
        NOBODY.contains(String.join("", words)) || words.stream().anyMatch(ROLES::contains);
    return nobody ? Set.of() : new LinkedHashSet<>(words);
  }
}

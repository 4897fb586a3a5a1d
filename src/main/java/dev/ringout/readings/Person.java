package dev.ringout.readings;

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
  private static final Set<String> ROLES = Set.of("operator", "tester", "inspector", "same", "as");

  private Person() {}

  /** Whether a cell names anybody. */
  public static boolean isNamed(String cell) {
    return !words(cell).isEmpty();
  }

  /** Whether two cells name, or may name, one person: all words of the one are the other's. */
  public static boolean isSame(String one, String other) {
    Set<String> words = words(one);
    Set<String> others = words(other);
    return isAmong(words, others) || isAmong(others, words);
  }

  /** Initials alone are few: they name no one else but the same initials. */
  private static boolean isAmong(Set<String> some, Set<String> all) {
    boolean hasName = some.stream().anyMatch(word -> word.length() > 1);
    return !some.isEmpty() && (hasName ? all.containsAll(some) : all.equals(some));
  }

  private static Set<String> words(String cell) {
    List<String> words = new ArrayList<>();
    for (String word : LETTERS.split(cell.toLowerCase(Locale.ROOT), -1)) {
      if (!word.isEmpty()) {
        words.add(word);
      }
    }
    boolean nobody =
        NOBODY.contains(String.join("", words)) || words.stream().anyMatch(ROLES::contains);
    return nobody ? Set.of() : new LinkedHashSet<>(words);
  }
}

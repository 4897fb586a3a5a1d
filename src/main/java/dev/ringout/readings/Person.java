package dev.ringout.readings;

import java.lang.Character.UnicodeScript;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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

  /** Marks, signs of format, and letters that fill a place and show nothing. */
  private static final Pattern UNSEEN = Pattern.compile("[\\p{M}\\p{Cf}\u115f\u1160\u3164\uffa0]+");

  private static final Set<String> ROLES = Set.of("operator", "tester", "inspector", "same", "as");

  /** What people put before and behind their names. */
  private static final Set<String> TITLES =
      Set.of(
          "mr", "mrs", "ms", "miss", "mx", "sir", "dr", "prof", "sr", "jr", "ing", "dipl", "eng",
          "engr", "tech", "insp", "sgt", "cpl", "lt", "capt", "herr", "frau", "hr", "mme", "mlle",
          "sig", "sra", "dott");

  /**
   * Letters that are composed of nothing, and what is written for them: others (common practice, no
   * source); those that small capitals and letters of phonetics look like.
   */
  private static final Map<Character, String> WRITTEN_FOR =
      Map.ofEntries(
          Map.entry('ı', "i"),
          Map.entry('ł', "l"),
          Map.entry('ø', "o"),
          Map.entry('đ', "d"),
          Map.entry('ß', "ss"),
          Map.entry('æ', "ae"),
          Map.entry('œ', "oe"),
          Map.entry('ʙ', "b"),
          Map.entry('ɢ', "g"),
          Map.entry('ʜ', "h"),
          Map.entry('ɪ', "i"),
          Map.entry('ʟ', "l"),
          Map.entry('ɴ', "n"),
          Map.entry('ʀ', "r"),
          Map.entry('ʏ', "y"),
          Map.entry('ɑ', "a"),
          Map.entry('ɡ', "g"));

  /** Scripts whose letters look like each other's. */
  private static final Set<UnicodeScript> LOOK_ALIKE =
      Set.of(UnicodeScript.LATIN, UnicodeScript.CYRILLIC, UnicodeScript.GREEK);

  private static final Pattern NUMBER_AT_END = Pattern.compile("(?<=\\p{L})\\p{N}+$");
  private static final Pattern NUMBER = Pattern.compile("\\p{N}+");

  private Person() {}

  /** Whether a cell names anybody. */
  public static boolean isNamed(String cell) {
    return !words(cell).isEmpty();
  }

  /**
   * Whether two cells name, or may name, one person: all words of the one are the other's, an
   * initial standing for a name; or both are the same letters, however they are parted and in
   * whichever order. In doubt they may.
   */
  public static boolean isSame(String one, String other) {
    List<String> words = List.copyOf(words(one));
    List<String> others = List.copyOf(words(other));
    if (words.isEmpty() || others.isEmpty()) {
      return false;
    }
    return isAmong(words, others)
        || isAmong(others, words)
        || letters(words).equals(letters(others))
        || isPaired(words, others)
        || isInitialsOf(words, others)
        || isInitialsOf(others, words);
  }

  private static List<Integer> letters(List<String> words) {
    return String.join("", words).codePoints().sorted().boxed().toList();
  }

  /** {@code Rotimi A.} may be R. Adeyemi: each word of the one may be one of the other's. */
  private static boolean isPaired(List<String> words, List<String> others) {
    if (words.size() != others.size() || words.size() < 2) {
      return false;
    }
    List<String> left = new ArrayList<>(others);
    for (String word : words) {
      Optional<String> pair = left.stream().filter(one -> mayBe(word, one)).findFirst();
      if (pair.isEmpty()) {
        return false;
      }
      left.remove(pair.get());
    }
    return true;
  }

  /** {@code RA} is R. Adeyemi, and whoever else has these. */
  private static boolean isInitialsOf(List<String> some, List<String> all) {
    StringBuilder initials = new StringBuilder();
    all.forEach(word -> initials.appendCodePoint(word.codePointAt(0)));
    return all.size() > 1 && String.join("", some).contentEquals(initials);
  }

  /** Initials alone are few: they may be whoever has names that begin so. */
  private static boolean isAmong(List<String> some, List<String> all) {
    boolean hasName = some.stream().anyMatch(word -> word.length() > 1 && all.contains(word));
    return hasName
        ? some.stream().allMatch(word -> all.stream().anyMatch(one -> mayBe(word, one)))
        : some.stream().allMatch(word -> word.length() == 1 && startsOne(word, all))
            || Set.copyOf(some).equals(Set.copyOf(all));
  }

  private static boolean startsOne(String initial, List<String> all) {
    return all.stream().anyMatch(word -> word.startsWith(initial));
  }

  private static boolean mayBe(String word, String other) {
    boolean isInitial = word.length() == 1 || other.length() == 1;
    return word.equals(other) || (isInitial && word.charAt(0) == other.charAt(0));
  }

  /** Letters however they are composed and marked, without signs that nobody sees. */
  private static String plain(String cell) {
    String plain =
        UNSEEN
            .matcher(Normalizer.normalize(cell, Normalizer.Form.NFKD))
            .replaceAll("")
            .toLowerCase(Locale.ROOT);
    StringBuilder letters = new StringBuilder();
    for (int i = 0; i < plain.length(); i++) {
      letters.append(WRITTEN_FOR.getOrDefault(plain.charAt(i), plain.substring(i, i + 1)));
    }
    return letters.toString();
  }

  private static Set<String> words(String cell) {
    List<String> words = new ArrayList<>();
    for (String word : LETTERS.split(plain(cell), -1)) {
      if (!word.isEmpty()) {
        words.add(word);
      }
    }
    if (words.stream().anyMatch(Person::isOfTwoScripts)) {
      return Set.of();
    }
    boolean nobody =
        NOBODY.contains(String.join("", words)) || words.stream().anyMatch(ROLES::contains);
    return nobody ? Set.of() : new LinkedHashSet<>(bare(words));
  }

  /** No name is written so, but one that is to look like another's. */
  private static boolean isOfTwoScripts(String word) {
    return word.codePoints()
            .mapToObj(UnicodeScript::of)
            .filter(LOOK_ALIKE::contains)
            .distinct()
            .count()
        > 1;
  }

  /** Without titles and numbers, where anything else is left. */
  private static List<String> bare(List<String> words) {
    List<String> bare =
        words.stream()
            .filter(word -> !TITLES.contains(word) && !NUMBER.matcher(word).matches())
            .map(word -> NUMBER_AT_END.matcher(word).replaceFirst(""))
            .toList();
    return bare.isEmpty() ? words : bare;
  }
}

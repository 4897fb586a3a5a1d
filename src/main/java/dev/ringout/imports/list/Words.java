package dev.ringout.imports.list;

import dev.ringout.cells.CellText;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** The trade's words in headings and cells, from one data file a language. */
public final class Words {
  /** Kinds of words with which others are written as one. */
  private static final Set<String> BEGINS_COMPOUNDS =
      Set.of("from", "to", "far", "item", "pin", "wire", "cable", "core", "color", "signal");

  private static final int LONGEST_PHRASE = 3;

  private static final String FILLER = "filler";

  /** {@code N°}, {@code nº}, {@code N.º}. */
  private static final Pattern NUMBER_SIGN = Pattern.compile("(?i)(?<!\\p{L})n\\.? ?[º°]|№");

  private static final Pattern MARKS_OF_LETTERS = Pattern.compile("\\p{Mn}+");

  /** An article without its vowel: {@code l'isolant}, {@code d'arrivo}. */
  private static final Pattern ELIDED =
      Pattern.compile("(?i)(?<!\\p{L})(?:d|l|dell|all)['’](?=\\p{L})");

  private static final int MOST_REMEMBERED = 4096;

  private final Map<String, Set<String>> kindsOf = new HashMap<>();
  private final Map<String, Set<String>> kindsOfTexts = new HashMap<>();

  private Words() {}

  /** The languages that come with the program. */
  public static Words standard() {
    Words words = new Words();
    for (String language : lines("languages.txt")) {
      words.add(lines("words." + language + ".txt"));
    }
    return words;
  }

  private static List<String> lines(String resource) {
    try (InputStream in = Words.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("missing from the program: " + resource);
      }
      return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Adds the words of a data file.
   *
   * @param lines a kind, a colon, words with commas between; {@code #} begins a remark
   * @throws IllegalArgumentException naming the line without a colon
   */
  public void add(List<String> lines) {
    for (String line : lines) {
      String text = line.strip();
      if (text.isEmpty() || text.startsWith("#")) {
        continue;
      }
      int colon = text.indexOf(':');
      if (colon < 0) {
        throw new IllegalArgumentException("\"" + text + "\" has no colon after its kind");
      }
      String kind = text.substring(0, colon).strip();
      for (String word : text.substring(colon + 1).split(",", -1)) {
        String phrase = String.join(" ", tokens(word));
        if (!phrase.isEmpty()) {
          kindsOf.computeIfAbsent(phrase, key -> new LinkedHashSet<>()).add(kind);
        }
      }
    }
  }

  /** Whether a whole cell is a word of this kind. */
  public boolean is(String kind, String text) {
    return text.length() < 40 && !isName(text) && kindsOfText(text).contains(kind);
  }

  /** Names of points and wires end in a digit, no word of the trade does that is asked for here. */
  private static boolean isName(String text) {
    return !text.isEmpty() && CellText.isDigit(text.charAt(text.length() - 1));
  }

  private Set<String> kindsOfText(String text) {
    Set<String> known = kindsOfTexts.get(text);
    if (known == null) {
      known = kinds(String.join(" ", tokens(text)));
      if (kindsOfTexts.size() < MOST_REMEMBERED) {
        kindsOfTexts.put(text, known);
      }
    }
    return known;
  }

  /** A mark for "as above". */
  public boolean isDitto(String clean) {
    return switch (clean) {
      case "id.",
          "\"",
          "''",
          "\u2033",
          "\u3003",
          "\u2193",
          "\"\"",
          "-\"-",
          "--\"--",
          "|",
          "\u2502" ->
          true;
      default -> clean.length() < 16 && !clean.isEmpty() && is("ditto", clean);
    };
  }

  /** A word or a dash that says: nothing here. */
  public boolean isNothing(String clean) {
    if (clean.isEmpty() || clean.length() > 24) {
      return clean.isEmpty() || (clean.length() < 40 && beginsWithNothing(clean));
    }
    boolean dashes =
        clean.chars().allMatch(c -> c == '-' || c == '.' || c == '_' || c == '*' || c == '/');
    return dashes || is("spare", clean) || beginsWithNothing(clean);
  }

  /** {@code not fitted at far end}: begins with words, not one alone, that say: nothing here. */
  private boolean beginsWithNothing(String clean) {
    int first = clean.indexOf(' ');
    if (first < 0 || CellText.hasDigit(clean)) {
      return false;
    }
    int second = clean.indexOf(' ', first + 1);
    return second > 0 && is("spare", clean.substring(0, second));
  }

  /** Whether a word is of this kind among others. */
  public boolean isAny(String kind, String word) {
    return kinds(String.join(" ", tokens(word))).contains(kind);
  }

  /** Whether any word of a text, or two together, is of this kind. */
  public boolean mentions(String kind, String text) {
    List<String> tokens = tokens(text);
    for (int i = 0; i < tokens.size(); i++) {
      String one = tokens.get(i);
      if (kinds(one).contains(kind)
          || (i + 1 < tokens.size() && kinds(one + " " + tokens.get(i + 1)).contains(kind))) {
        return true;
      }
    }
    return false;
  }

  /** The colour that a word names, or empty. */
  public String color(String word) {
    for (String kind : kinds(String.join(" ", tokens(word)))) {
      if (kind.startsWith("color ")) {
        return kind.substring("color ".length());
      }
    }
    return "";
  }

  private Set<String> kinds(String phrase) {
    return kindsOf.getOrDefault(phrase, Set.of());
  }

  /** A phrase of a heading with the kinds that it may be; none where it is not known. */
  public record Part(String phrase, Set<String> kinds) {}

  /**
   * A heading in known phrases, the longest first, and unknown words. A word that joins others is
   * nothing else between them: "de" is an end in "De borne" and none in "Couleur de fil".
   */
  public List<Part> parts(String heading) {
    List<String> tokens = tokens(heading);
    List<Part> parts = new ArrayList<>();
    int at = 0;
    while (at < tokens.size()) {
      Part part = new Part(tokens.get(at), Set.of());
      int length = 1;
      for (int end = Math.min(tokens.size(), at + LONGEST_PHRASE); end > at; end--) {
        String phrase = String.join(" ", tokens.subList(at, end));
        Set<String> kinds = kinds(phrase);
        if (!kinds.isEmpty()) {
          boolean joins = kinds.contains(FILLER) && at > 0 && end < tokens.size();
          part = new Part(phrase, joins ? Set.of(FILLER) : kinds);
          length = end - at;
          break;
        }
      }
      parts.addAll(part.kinds().isEmpty() ? compound(part) : List.of(part));
      at += length;
    }
    return parts;
  }

  /** {@code Zielklemme}, {@code kabelnr}: two known words written as one, or the word as it is. */
  private List<Part> compound(Part part) {
    String word = part.phrase();
    for (int at = word.length() - 2; at >= 3; at--) {
      Set<String> second = kinds(word.substring(at));
      Set<String> first = kinds(word.substring(0, at));
      if (first.isEmpty() && at > 3) {
        // A letter joins them: Klemmleistennummer, Zielsklemme.
        first = kinds(word.substring(0, at - 1));
      }
      boolean longEnough = word.length() - at >= 4 || second.contains(FILLER);
      if (first.stream().anyMatch(BEGINS_COMPOUNDS::contains) && !second.isEmpty() && longEnough) {
        return List.of(
            new Part(word.substring(0, at), first), new Part(word.substring(at), second));
      }
    }
    return List.of(part);
  }

  /**
   * Words in lower case and without accents, for people type them or not: runs of letters, runs of
   * digits, {@code #} and {@code N°} as "no".
   */
  public static List<String> tokens(String written) {
    String text = plainLetters(written);
    List<String> tokens = new ArrayList<>();
    StringBuilder token = new StringBuilder();
    char previous = ' ';
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean letter = Character.isLetter(c) || c == '²';
      boolean digit = c >= '0' && c <= '9';
      boolean boundary =
          (digit && Character.isLetter(previous) && token.length() > 2)
              || (letter && previous >= '0' && previous <= '9')
              || (Character.isUpperCase(c) && Character.isLowerCase(previous));
      if ((!letter && !digit) || boundary) {
        flush(token, tokens);
      }
      if (letter || digit) {
        token.append(c);
      } else if (c == '#') {
        tokens.add("no");
      }
      previous = c;
    }
    flush(token, tokens);
    return tokens;
  }

  /** With the letters that every keyboard has; the umlauts of German lose their dots as well. */
  private static String plainLetters(String written) {
    String text = written;
    if (text.indexOf('\'') >= 0 || text.indexOf('’') >= 0) {
      text = ELIDED.matcher(text).replaceAll("");
    }
    if (text.chars().allMatch(c -> c < 0x80)) {
      return text;
    }
    text = NUMBER_SIGN.matcher(text).replaceAll("no ").replace('º', ' ');
    String apart = Normalizer.normalize(text, Normalizer.Form.NFD);
    return MARKS_OF_LETTERS
        .matcher(apart)
        .replaceAll("")
        .replace("ß", "ss")
        .replace("œ", "oe")
        .replace("Œ", "OE");
  }

  private static void flush(StringBuilder token, List<String> tokens) {
    if (token.length() > 0) {
      tokens.add(token.toString().toLowerCase(Locale.ROOT));
      token.setLength(0);
    }
  }
}

package dev.ringout.imports.list;

import dev.ringout.cells.CellText;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** The item that a title names. */
public final class Titles {
  private static final int LONGEST_NAME = 24;

  /** Capitals with a dash in them: no word of a sentence that is all in capitals. */
  private static final Pattern SHORT_NAME = Pattern.compile("[A-Z]{1,4}\\d{0,3}-[A-Z0-9]{1,3}");

  /** {@code J1 / J2}, {@code J1 to J4}: which of them the rows below are of is not said. */
  private static final Pattern SEVERAL =
      Pattern.compile(
          "\\b([A-Z]{1,3})\\d{1,3}(?:\\s*[,/&+]\\s*|\\s+(?:to|and|or|bis|und|oder|et|ou|y|o|e|en|of|a|al)\\s+)\\1\\d{1,3}\\b");

  private Titles() {}

  /**
   * The designator after a word for an item, else the one with which the title begins, else the
   * only one; empty where there is none: {@code J7} of "Enclosure A2, connector J7 (25 ways)".
   */
  public static String item(String title, Words words) {
    String text = CellText.clean(title);
    if (words.mentions("changes wire", text) || SEVERAL.matcher(text).find()) {
      return "";
    }
    String[] parts =
        text.split("[\\s,:;()=]+|\\.(?:\\s|$)|(?<=\\d)-|-(?=\\D)|(?<=[a-z])-(?=[A-Z])", -1);
    String first = "";
    int designators = 0;
    boolean leads = false;
    for (int i = 0; i < parts.length; i++) {
      if (!Ends.isDesignator(parts[i])) {
        continue;
      }
      String before = i == 0 ? "" : parts[i - 1];
      if (words.isAny("item", before)) {
        return parts[i];
      }
      if (!words.isAny("furniture", before)) {
        leads |= i == 0;
        first = first.isEmpty() ? parts[i] : first;
        designators++;
      }
    }
    String found = leads || designators == 1 ? first : "";
    return found.isEmpty() && designators == 0 ? afterItemWord(text, words) : found;
  }

  /** Whether a title is led by its item, or names it behind a word for one. */
  public static boolean leads(String item, String title, Words words) {
    String text = CellText.clean(title);
    int at = text.indexOf(item);
    String before = at <= 0 ? "" : text.substring(0, at).strip();
    String word = before.substring(before.lastIndexOf(' ') + 1);
    return before.isEmpty()
        || before.chars().noneMatch(Character::isLetterOrDigit)
        || words.isAny("item", word);
  }

  /** {@code TB-A} of "TERMINAL STRIP TB-A, PAGE 1": a short name in capitals after such a word. */
  private static String afterItemWord(String text, Words words) {
    String[] tokens = text.split("[\\s,;:()]+", -1);
    String last = "";
    for (int i = 1; i < tokens.length; i++) {
      boolean named = SHORT_NAME.matcher(tokens[i]).matches() && !words.isAny("item", tokens[i]);
      if (named && words.isAny("item", tokens[i - 1]) && !words.isAny("furniture", tokens[i])) {
        last = tokens[i];
      }
    }
    return last;
  }

  /**
   * A short text as the name of what is listed below it: {@code ECU} of "Connector ECU", {@code
   * PUMP A} as it is; empty where it tells of the list itself.
   */
  public static String name(String title, Words words) {
    String text = first(title).replaceFirst("^[^\\p{L}\\d]+", "");
    text = text.replaceFirst("\\s*\\([^()]*\\)$", "").replaceFirst("\\s*:$", "");
    int blank = text.indexOf(' ');
    while (blank > 0
        && words.isAny("item", text.substring(0, blank))
        && blank + 1 < text.length()) {
      text = text.substring(blank + 1).strip();
      blank = text.indexOf(' ');
    }
    boolean plain =
        !SEVERAL.matcher(CellText.clean(title)).find()
            && text.length() > 1
            && text.length() <= LONGEST_NAME
            && text.chars().filter(c -> c == ' ').count() <= 2
            && text.matches("[\\p{L}\\d ._/+-]+")
            && text.chars().anyMatch(Character::isLetter)
            && !words.mentions("furniture", text)
            && !words.mentions("wire", text)
            && !words.mentions("cable", text)
            && !words.mentions("pin", text);
    return plain ? text : "";
  }

  /** The items at both ends of what is listed below a title. */
  public record BothEnds(String from, String to) {}

  /**
   * Both ends that a title names: "Cable W01, from Q1 to XM (12 m)"; empty where it does not.
   *
   * <p>A name ends at a bracket, a comma, a dash between blanks or two blanks.
   */
  public static Optional<BothEnds> ends(String title, Words words) {
    String text = title.replace('\u00a0', ' ').strip();
    List<String> parts = List.of(text.split("(?<=\\s)|(?<=:)(?!\\S)", -1));
    int from = -1;
    for (int i = 0; i < parts.size(); i++) {
      String word = bare(parts.get(i));
      if (word.isEmpty()) {
        continue;
      }
      if (from < 0 && isWordFor("from", word, words)) {
        from = i;
      } else if (from >= 0 && i > from + 1 && isWordFor("to", word, words)) {
        String one = name(String.join("", parts.subList(from + 1, i)));
        String other = name(String.join("", parts.subList(i + 1, parts.size())));
        boolean named = isOneName(one, words) && isOneName(other, words);
        return named ? Optional.of(new BothEnds(one, other)) : Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** A name, and no sentence that goes on: "XM via X5", "P1 and P2", "J6 in 2020". */
  private static boolean isOneName(String name, Words words) {
    List<String> tokens = Words.tokens(name);
    boolean goesOn =
        tokens.size() > 1
            && tokens.stream()
                .anyMatch(
                    token ->
                        words.is("and", token)
                            || words.is("either", token)
                            || words.is("by way of", token));
    return !name.isEmpty() && !goesOn;
  }

  private static boolean isWordFor(String side, String word, Words words) {
    return words.is(side, word) || words.is(side + " beside from", word);
  }

  private static String bare(String part) {
    return part.strip().replaceFirst(":$", "").strip();
  }

  /** What a title begins with, up to a dash, a comma or a bracket: {@code SOCA A}. */
  public static String first(String title) {
    String name = name(title);
    return name.isEmpty() ? CellText.clean(title) : name;
  }

  /** The name with which a text begins. */
  private static String name(String text) {
    String rest = text.strip().replaceFirst("^[:\\s]+", "");
    String name = rest.split("\\s*[(,;]|\\s+[-\u2013\u2014]\\s|\\s{2,}", 2)[0].strip();
    return name.length() <= 30 && name.chars().anyMatch(Character::isLetterOrDigit) ? name : "";
  }
}

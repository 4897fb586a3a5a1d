package dev.ringout.review;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A ring or spade lug as a list names it: {@code red ring #10}.
 *
 * @param stud the stud that its hole is for: {@code 10}, {@code 1/4}; or empty
 */
record Lug(String colour, String stud) {
  private static final Pattern KIND = Pattern.compile("\\b(ring|lug|spade|fork|terminal)\\b");
  private static final Pattern COLOUR = Pattern.compile("\\b(red|blue|yellow)\\b");
  private static final Pattern STUD =
      Pattern.compile("(?:#|no\\.? ?|stud )(\\d{1,2})\\b|\\b(\\d/\\d{1,2})\\b");

  /** A coloured lug, or nothing where the text names none. */
  static Optional<Lug> of(String contact) {
    if (contact.isEmpty()) {
      return Optional.empty();
    }
    String text = contact.toLowerCase(Locale.ROOT);
    Matcher colour = COLOUR.matcher(text);
    return KIND.matcher(text).find() && colour.find()
        ? Optional.of(new Lug(colour.group(1), stud(text)))
        : Optional.empty();
  }

  /** The stud that a text names: {@code #10}, {@code 1/4}; or empty. */
  static String stud(String text) {
    if (text.isEmpty()) {
      return "";
    }
    Matcher stud = STUD.matcher(text.toLowerCase(Locale.ROOT));
    if (!stud.find()) {
      return "";
    }
    String number = stud.group(1);
    return number == null ? String.valueOf(stud.group(2)) : number;
  }
}

package dev.ringout.units;

import java.util.Collection;
import java.util.Locale;
import java.util.stream.Collectors;

/** Sentences put together the same in every locale: some would write their own digits. */
public final class Text {
  /** What stands for a character that must not be shown. */
  public static final char REPLACED = '\ufffd';

  private Text() {}

  /** A sentence with its blanks filled, as {@link String#format}. */
  public static String of(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  /** Names in a row, the first of them where there are many: {@code A, B, C and 7 more}. */
  public static String first(Collection<String> names, int most) {
    String shown = names.stream().limit(most).collect(Collectors.joining(", "));
    return names.size() > most ? of("%s and %d more", shown, names.size() - most) : shown;
  }

  /**
   * The text without what can't be seen and yet acts: control characters, which steer a terminal
   * and have no place in XML, and marks that turn the direction of reading. Each becomes {@code
   * U+FFFD}.
   */
  public static String visible(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (isHidden(text.charAt(i))) {
        StringBuilder visible = new StringBuilder(text);
        for (int j = i; j < text.length(); j++) {
          if (isHidden(text.charAt(j))) {
            visible.setCharAt(j, REPLACED);
          }
        }
        return visible.toString();
      }
    }
    return text;
  }

  /** The same of what is to stay in one line: ends of lines become {@code U+FFFD} too. */
  public static String visibleInOneLine(String text) {
    return visible(text).replace('\n', REPLACED).replace('\r', REPLACED);
  }

  private static boolean isHidden(char c) {
    if (c < ' ') {
      return c != '\t' && c != '\n' && c != '\r';
    }
    return (c >= 0x7f && c < 0xa0)
        || (c >= 0x202a && c <= 0x202e)
        || (c >= 0x2066 && c <= 0x2069)
        || c == 0xfffe
        || c == 0xffff;
  }
}

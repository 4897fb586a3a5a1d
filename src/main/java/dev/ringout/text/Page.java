package dev.ringout.text;

import java.util.Locale;
import java.util.regex.Pattern;

/** Lines of text within the width of a terminal; colour only adds to what the words already say. */
final class Page {
  /** Printed as a blank, and no line ends there. */
  static final char UNBROKEN = '\u00A0';

  private static final Pattern COLOUR = Pattern.compile("\u001B\\[[0-9;]*m");

  private final StringBuilder text = new StringBuilder();
  private final Look look;

  Page(Look look) {
    this.look = look;
  }

  /** The look of a piece of text, where colour is wanted. */
  enum Style {
    GOOD("\u001B[1;32m"),
    BAD("\u001B[1;31m"),
    OWED("\u001B[1;33m"),
    STRONG("\u001B[1m");

    private final String start;

    Style(String start) {
      this.start = start;
    }
  }

  int width() {
    return look.width();
  }

  String styled(Style style, String words) {
    return look.colour() ? style.start + words + "\u001B[0m" : words;
  }

  Page blank() {
    text.append('\n');
    return this;
  }

  /** A line that is known to fit. */
  Page line(String line) {
    text.append(line.stripTrailing().replace(UNBROKEN, ' ')).append('\n');
    return this;
  }

  Page heading(String words) {
    return blank().line(styled(Style.STRONG, words.toUpperCase(Locale.ROOT)));
  }

  /** A paragraph: the first line after {@code lead}, the others indented to it. */
  Page paragraph(String lead, String words) {
    String indent = " ".repeat(lead.length());
    StringBuilder line = new StringBuilder(lead);
    boolean empty = true;
    for (String word : words.split(" ", -1)) {
      if (!empty && !word.isEmpty() && seen(line) + 1 + seen(word) > look.width()) {
        line(line.toString());
        line = new StringBuilder(indent);
        empty = true;
      }
      if (!empty) {
        line.append(' ');
      }
      line.append(word);
      empty = false;
    }
    return line(line.toString());
  }

  /** Colours have no width. */
  private int seen(CharSequence text) {
    return !look.colour() ? text.length() : COLOUR.matcher(text).replaceAll("").length();
  }

  @Override
  public String toString() {
    return text.toString();
  }
}

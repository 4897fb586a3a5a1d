package dev.ringout.sheet;

import java.io.IOException;
import java.io.Reader;

/**
 * Whether the quotes of a text parted by tabs are those that hold a cell together. People write a
 * bare {@code "} for "as above" too, and inches: then nothing is quoted.
 */
final class TabQuotes {
  private enum At {
    BEGIN,
    PLAIN,
    QUOTED,
    /** A quote within quotes: the last, or the first of two that stand for one. */
    MAYBE_END
  }

  private At at = At.BEGIN;
  private boolean empty;
  private boolean tab;
  private boolean line;
  private boolean bare;

  private TabQuotes() {}

  /** Reads a text to its end, or to where it is known that nothing is quoted. */
  static boolean holdCells(Reader text) throws IOException {
    TabQuotes quotes = new TabQuotes();
    for (int c = text.read(); c >= 0 && !quotes.bare; c = text.read()) {
      quotes.next((char) c);
    }
    return !quotes.bare && quotes.at != At.QUOTED;
  }

  private void next(char c) {
    boolean ends = c == '\t' || c == '\n' || c == '\r';
    switch (at) {
      case BEGIN -> {
        at = c == '"' ? At.QUOTED : ends ? At.BEGIN : At.PLAIN;
        empty = true;
        tab = false;
        line = false;
      }
      case PLAIN -> at = ends ? At.BEGIN : At.PLAIN;
      case QUOTED -> within(c, ends);
      case MAYBE_END -> {
        // What stands behind a closing quote is for the reader to refuse.
        at = c == '"' ? At.QUOTED : ends ? At.BEGIN : At.PLAIN;
      }
    }
  }

  private void within(char c, boolean ends) {
    if (c == '"') {
      at = At.MAYBE_END;
      return;
    }
    tab |= c == '\t';
    line |= c == '\n';
    // A quote alone is "as above"; no cell of several lines holds tabs.
    bare |= (empty && ends) || (tab && line);
    empty = false;
  }
}

package dev.ringout.sheet;

/**
 * The text of a cell of an OpenDocument spreadsheet: its paragraphs, each a line (OASIS
 * OpenDocument 1.3 part 3, 6.1.2: blanks that stand there for the eye of who reads the file are
 * one, and none at the beginning).
 */
final class OdsText {
  private final StringBuilder text = new StringBuilder();
  private final StringBuilder left = new StringBuilder();
  private boolean begun;
  private boolean struck;
  private boolean red;
  private boolean blankBefore;

  void clear() {
    text.setLength(0);
    left.setLength(0);
    begun = false;
    struck = false;
    red = false;
  }

  void paragraph() {
    if (begun) {
      append('\n', false);
    }
    begun = true;
    blankBefore = true;
  }

  /** Characters as they stand in the file. */
  void characters(char[] characters, int start, int length, boolean areStruck, boolean areRed) {
    for (int i = start; i < start + length; i++) {
      char c = characters[i];
      if (c == ' ' || c == '\t' || c == '\n' || c == '\r') {
        if (!blankBefore) {
          append(' ', areStruck);
          blankBefore = true;
        }
      } else {
        red |= areRed;
        put(c, areStruck);
      }
    }
  }

  /** A character that an element stands for: it is there, blank or not, however many. */
  void put(char c, int count, boolean isStruck) {
    for (int i = 0; i < count; i++) {
      put(c, isStruck);
    }
  }

  private void put(char c, boolean isStruck) {
    append(c, isStruck);
    blankBefore = false;
  }

  private void append(char c, boolean isStruck) {
    text.append(c);
    if (isStruck) {
      struck = true;
    } else {
      left.append(c);
    }
  }

  Cell.Ink ink() {
    return struck ? new Cell.Ink(true, left.toString(), red) : red ? Cell.Ink.RED : Cell.Ink.PLAIN;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}

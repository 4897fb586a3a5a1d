package dev.ringout.sheet;

import org.xml.sax.Attributes;

/**
 * A text made of runs; phonetic hints are left out. A run with properties of its own is in its own
 * ink, one without is in the cell's.
 */
final class XlsxRuns {
  private final StringBuilder text = new StringBuilder();
  private final StringBuilder ownPlain = new StringBuilder();
  private final StringBuilder notStruck = new StringBuilder();
  private final StringBuilder piece = new StringBuilder();
  private boolean inText;
  private boolean inPhonetic;
  private boolean inRun;
  private boolean runHasInk;
  private boolean runStruck;
  private boolean rich;
  private boolean anyRed;

  /**
   * What runs say of their text.
   *
   * @param text the whole text
   * @param ownPlain what runs of their own ink leave unstruck
   * @param notStruck that and what is in the cell's ink
   */
  record Rich(String text, String ownPlain, String notStruck, boolean red) {

    /** How the text is marked in a cell whose style is this. */
    Cell.Ink in(boolean styleStruck, boolean styleRed) {
      String left = styleStruck ? ownPlain : notStruck;
      boolean isRed = red || styleRed;
      if (left.length() < text.length()) {
        return new Cell.Ink(true, left, isRed);
      }
      return isRed ? Cell.Ink.RED : Cell.Ink.PLAIN;
    }
  }

  void clear() {
    text.setLength(0);
    piece.setLength(0);
    ownPlain.setLength(0);
    notStruck.setLength(0);
    inRun = false;
    rich = false;
    anyRed = false;
  }

  void start(String local, Attributes attributes) {
    switch (local) {
      case "r" -> {
        inRun = true;
        rich = true;
        runHasInk = false;
        runStruck = false;
      }
      case "rPr" -> runHasInk = true;
      case "strike" -> runStruck = XlsxStyles.isOn(attributes);
      case "color" -> anyRed |= inRun && XlsxStyles.isRed(attributes);
      case "rPh" -> inPhonetic = true;
      case "t" -> inText = !inPhonetic;
      default -> {}
    }
  }

  void characters(char[] characters, int start, int length) {
    if (inText) {
      piece.append(characters, start, length);
    }
  }

  private void endText() {
    String read = Xstring.decoded(piece.toString());
    piece.setLength(0);
    text.append(read);
    if (!inRun || !runHasInk) {
      notStruck.append(read);
    } else if (!runStruck) {
      ownPlain.append(read);
      notStruck.append(read);
    }
  }

  void end(String local) {
    switch (local) {
      case "r" -> inRun = false;
      case "rPh" -> inPhonetic = false;
      case "t" -> {
        inText = false;
        endText();
      }
      default -> {}
    }
  }

  /** Whether the text has runs. */
  boolean isRich() {
    return rich;
  }

  String text() {
    return text.toString();
  }

  Rich rich() {
    return new Rich(text.toString(), ownPlain.toString(), notStruck.toString(), anyRed);
  }
}

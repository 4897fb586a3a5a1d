package dev.ringout.sheet;

import org.xml.sax.Attributes;

/** A text made of runs, each in its own ink; phonetic hints are left out. */
final class XlsxRuns {
  private final StringBuilder text = new StringBuilder();
  private final StringBuilder left = new StringBuilder();
  private boolean inText;
  private boolean inPhonetic;
  private boolean runStruck;
  private boolean anyStruck;
  private boolean anyRed;

  void clear() {
    text.setLength(0);
    left.setLength(0);
    runStruck = false;
    anyStruck = false;
    anyRed = false;
  }

  void start(String local, Attributes attributes) {
    switch (local) {
      case "r" -> runStruck = false;
      case "strike" -> runStruck = XlsxStyles.isOn(attributes);
      case "color" -> anyRed |= XlsxStyles.isRed(attributes);
      case "rPh" -> inPhonetic = true;
      case "t" -> inText = !inPhonetic;
      default -> {}
    }
  }

  void characters(char[] characters, int start, int length) {
    if (!inText) {
      return;
    }
    text.append(characters, start, length);
    if (runStruck) {
      anyStruck = true;
    } else {
      left.append(characters, start, length);
    }
  }

  void end(String local) {
    switch (local) {
      case "r" -> runStruck = false;
      case "rPh" -> inPhonetic = false;
      case "t" -> inText = false;
      default -> {}
    }
  }

  String text() {
    return text.toString();
  }

  Cell.Ink ink() {
    if (anyStruck) {
      return new Cell.Ink(true, left.toString(), anyRed);
    }
    return anyRed ? Cell.Ink.RED : Cell.Ink.PLAIN;
  }
}

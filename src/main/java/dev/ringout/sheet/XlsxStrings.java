package dev.ringout.sheet;

import java.util.ArrayList;
import java.util.List;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/**
 * The texts that a workbook's cells share. Read here rather than through the library's table, which
 * makes a formatted-text object of its XML binding for every cell asked for: measured, that took
 * half of a large check and a quarter of a small one.
 */
final class XlsxStrings extends DefaultHandler {
  private final List<String> texts = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private boolean inText;
  private boolean inPhonetic;

  int size() {
    return texts.size();
  }

  String get(int index) {
    return texts.get(index);
  }

  @Override
  public void startElement(String uri, String local, String qualified, Attributes attributes) {
    switch (local) {
      case "si" -> text.setLength(0);
      case "rPh" -> inPhonetic = true;
      case "t" -> inText = !inPhonetic;
      default -> {}
    }
  }

  @Override
  public void characters(char[] characters, int start, int length) {
    if (inText) {
      text.append(characters, start, length);
    }
  }

  @Override
  public void endElement(String uri, String local, String qualified) {
    switch (local) {
      case "si" -> texts.add(text.toString());
      case "rPh" -> inPhonetic = false;
      case "t" -> inText = false;
      default -> {}
    }
  }
}

package dev.ringout.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/**
 * The texts that a workbook's cells share. Read here rather than through the library's table, which
 * makes a formatted-text object of its XML binding for every cell asked for: measured, that took
 * half of a large check and a quarter of a small one.
 */
final class XlsxStrings extends DefaultHandler {
  private final List<Cell> texts = new ArrayList<>();
  private final Map<Integer, XlsxRuns.Rich> rich = new HashMap<>();
  private final XlsxRuns runs = new XlsxRuns();

  int size() {
    return texts.size();
  }

  /** The text as a cell in plain ink. */
  Cell get(int index) {
    return texts.get(index);
  }

  /** Whether any text has runs. */
  boolean anyRich() {
    return !rich.isEmpty();
  }

  /** What a text's runs say of it; empty where it has none. */
  Optional<XlsxRuns.Rich> rich(int index) {
    return Optional.ofNullable(rich.get(index));
  }

  @Override
  public void startElement(String uri, String local, String qualified, Attributes attributes) {
    if (local.equals("si")) {
      runs.clear();
    } else {
      runs.start(local, attributes);
    }
  }

  @Override
  public void characters(char[] characters, int start, int length) {
    runs.characters(characters, start, length);
  }

  @Override
  public void endElement(String uri, String local, String qualified) {
    if (local.equals("si")) {
      if (runs.isRich()) {
        rich.put(texts.size(), runs.rich());
      }
      texts.add(Cell.text(runs.text()));
    } else {
      runs.end(local);
    }
  }
}

package dev.ringout.imports.find;

import dev.ringout.cells.CellText;
import dev.ringout.imports.list.Ends;
import dev.ringout.imports.list.Words;

/** The item that a title names. */
public final class Titles {
  private Titles() {}

  /**
   * The designator after a word for an item, else the one with which the title begins, else the
   * only one; empty where there is none: {@code J7} of "Enclosure A2, connector J7 (25 ways)".
   */
  public static String item(String title, Words words) {
    String text = CellText.clean(title);
    if (words.mentions("changes wire", text)) {
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
    return leads || designators == 1 ? first : "";
  }
}

package dev.ringout.sheet;

import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.List;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** What an OpenDocument spreadsheet says of itself as a whole: its sheets and its styles. */
final class OdsBook extends DefaultHandler {
  private final OdsStyles styles = new OdsStyles();
  private final List<Entry> sheets = new ArrayList<>();
  private boolean filterButtons;
  private int depth;
  private int spreadsheet = -1;

  /** A sheet by its name and the style of the whole. */
  record Entry(String name, String style) {}

  OdsStyles styles() {
    return styles;
  }

  List<Entry> sheets() {
    return sheets;
  }

  /** Whether any filter may hide rows. */
  boolean filterButtons() {
    return filterButtons;
  }

  @Override
  public void startElement(String uri, String local, String qualified, Attributes attributes) {
    depth++;
    String name = OdsNames.of(uri, local);
    switch (name) {
      case "office:spreadsheet" -> spreadsheet = depth;
      case "table:database-range" ->
          filterButtons |=
              OdsNames.value(attributes, "table:display-filter-buttons").equals("true");
      case "table:table" -> {
        if (depth == spreadsheet + 1) {
          sheets.add(
              new Entry(
                  Text.visible(OdsNames.value(attributes, "table:name")),
                  OdsNames.value(attributes, "table:style-name")));
        }
      }
      default -> styles.start(name, attributes);
    }
  }

  @Override
  public void endElement(String uri, String local, String qualified) {
    if (depth == spreadsheet) {
      spreadsheet = -1;
    }
    depth--;
  }
}

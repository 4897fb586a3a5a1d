package dev.ringout.sheet;

import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.List;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** The workbook's own list of sheets, in the order of their tabs. */
final class XlsxWorkbook extends DefaultHandler {
  private final List<Entry> sheets = new ArrayList<>();
  private boolean dates1904;
  private boolean calculatesOnLoad;
  private boolean begun;

  record Entry(String name, String relationId, boolean hidden) {}

  List<Entry> sheets() {
    return sheets;
  }

  /** Whether dates count from 1904, as some workbooks do. */
  boolean dates1904() {
    return dates1904;
  }

  /** Whether who wrote it asks for all formulas to be calculated: he may not have done so. */
  boolean calculatesOnLoad() {
    return calculatesOnLoad;
  }

  @Override
  public void startElement(String uri, String local, String qualified, Attributes attributes)
      throws SAXException {
    if (!begun && !local.equals("workbook")) {
      throw new SAXException("it holds no workbook but a " + local);
    }
    begun = true;
    if (local.equals("sheet")) {
      String state = attributes.getValue("state");
      String name = attributes.getValue("name");
      sheets.add(
          new Entry(
              name == null ? "" : Text.visible(Xstring.decoded(name)),
              relationId(attributes),
              state != null && !state.equals("visible")));
    } else if (local.equals("workbookPr")) {
      dates1904 = XlsxRows.isOn(attributes.getValue("date1904"));
    } else if (local.equals("calcPr")) {
      calculatesOnLoad = XlsxRows.isOn(attributes.getValue("fullCalcOnLoad"));
    }
  }

  private static String relationId(Attributes attributes) {
    for (int i = 0; i < attributes.getLength(); i++) {
      if (attributes.getLocalName(i).equals("id") && !attributes.getURI(i).isEmpty()) {
        return attributes.getValue(i);
      }
    }
    return "";
  }
}

package dev.ringout.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** The colours of a workbook's theme (ECMA-376 part 1, 20.1.6.2). */
final class XlsxTheme extends DefaultHandler {
  /** As styles count them: the light of a pair before its dark. */
  private static final List<String> ORDER =
      List.of(
          "lt1",
          "dk1",
          "lt2",
          "dk2",
          "accent1",
          "accent2",
          "accent3",
          "accent4",
          "accent5",
          "accent6",
          "hlink",
          "folHlink");

  private final String[] colours = new String[ORDER.size()];
  private boolean inScheme;
  private int at = -1;

  XlsxTheme() {
    Arrays.fill(colours, "");
  }

  @Override
  public void startElement(String uri, String local, String qualified, Attributes attributes) {
    if (local.equals("clrScheme")) {
      inScheme = true;
    } else if (inScheme && ORDER.contains(local)) {
      at = ORDER.indexOf(local);
    } else if (inScheme && at >= 0 && colours[at].isEmpty()) {
      String own = attributes.getValue(local.equals("sysClr") ? "lastClr" : "val");
      colours[at] = own == null ? "" : own;
    }
  }

  @Override
  public void endElement(String uri, String local, String qualified) {
    if (local.equals("clrScheme")) {
      inScheme = false;
    }
  }

  /** The colours in the order in which styles count them; empty where the theme lacks one. */
  List<String> colours() {
    return new ArrayList<>(List.of(colours));
  }
}

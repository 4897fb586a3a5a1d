package dev.ringout.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DateUtil;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Which cell styles show a number as a date. Read here rather than through the library's style
 * table, which loads its whole XML binding for this one question.
 */
final class XlsxStyles extends DefaultHandler {
  private final Map<Integer, String> formats = new HashMap<>();
  private final List<Integer> formatOfStyle = new ArrayList<>();
  private boolean inCellStyles;

  /** Whether cells of this style show dates. */
  boolean isDate(int style) {
    if (style < 0 || style >= formatOfStyle.size()) {
      return false;
    }
    int format = formatOfStyle.get(style);
    String code = formats.getOrDefault(format, builtin(format));
    return DateUtil.isADateFormat(format, code);
  }

  private static String builtin(int format) {
    String code = BuiltinFormats.getBuiltinFormat(format);
    return code == null ? "" : code;
  }

  @Override
  public void startElement(String uri, String local, String qualified, Attributes attributes) {
    switch (local) {
      case "numFmt" ->
          formats.put(
              Integer.parseInt(attributes.getValue("numFmtId")), attributes.getValue("formatCode"));
      case "cellXfs" -> inCellStyles = true;
      case "xf" -> {
        if (inCellStyles) {
          String format = attributes.getValue("numFmtId");
          formatOfStyle.add(format == null ? 0 : Integer.parseInt(format));
        }
      }
      default -> {}
    }
  }

  @Override
  public void endElement(String uri, String local, String qualified) {
    if (local.equals("cellXfs")) {
      inCellStyles = false;
    }
  }
}

package dev.ringout.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DateUtil;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Which cell styles show a number as a date, strike a text through, write it in red or fill its
 * cell with a colour. Read here rather than through the library's style table, which loads its
 * whole XML binding for this one question.
 */
final class XlsxStyles extends DefaultHandler {
  private final Map<Integer, String> formats = new HashMap<>();
  private final List<Integer> formatOfStyle = new ArrayList<>();
  private final List<Boolean> struckFonts = new ArrayList<>();
  private final List<Boolean> redFonts = new ArrayList<>();
  private final List<Integer> fontOfStyle = new ArrayList<>();
  private final Map<Integer, Optional<ShownNumbers>> shownByStyle = new HashMap<>();
  private final FillColours fills = new FillColours();
  private final List<Integer> fillOfStyle = new ArrayList<>();
  private boolean inFonts;
  private boolean inFills;
  private boolean inPalette;
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

  /** What cells of this style show of a number; found out once a style. */
  Optional<ShownNumbers> shown(int style) {
    if (style < 0 || style >= formatOfStyle.size()) {
      return Optional.empty();
    }
    return shownByStyle.computeIfAbsent(
        style,
        one -> {
          int format = formatOfStyle.get(one);
          String code = formats.getOrDefault(format, builtin(format));
          return code.isEmpty() ? Optional.empty() : ShownNumbers.of(code);
        });
  }

  /** Whether cells of this style strike their text through. */
  boolean isStruck(int style) {
    return fontIs(struckFonts, style);
  }

  /** Whether cells of this style are written in red. */
  boolean isRed(int style) {
    return fontIs(redFonts, style);
  }

  /** The colour that cells of this style are filled with, or empty. */
  String fill(int style) {
    return style < 0 || style >= fillOfStyle.size()
        ? FillColours.NONE
        : fills.of(fillOfStyle.get(style));
  }

  /** The colours of the fills, which may need the theme. */
  FillColours fills() {
    return fills;
  }

  private boolean fontIs(List<Boolean> fonts, int style) {
    if (style < 0 || style >= fontOfStyle.size()) {
      return false;
    }
    int font = fontOfStyle.get(style);
    return font >= 0 && font < fonts.size() && fonts.get(font);
  }

  /** Whether {@code <strike/>} or {@code <color rgb="FFFF0000"/>} and the like say yes. */
  static boolean isOn(Attributes attributes) {
    String value = attributes.getValue("val");
    return value == null || value.equals("1") || value.equals("true");
  }

  /** A red that stands out: much more red than green or blue, and the palette's own. */
  static boolean isRed(Attributes attributes) {
    String rgb = attributes.getValue("rgb");
    if (rgb == null || rgb.length() < 6) {
      String indexed = attributes.getValue("indexed");
      return "10".equals(indexed) || "2".equals(indexed);
    }
    try {
      int colour = Integer.parseInt(rgb.substring(rgb.length() - 6), 16);
      return isRed(colour >> 16, (colour >> 8) & 0xff, colour & 0xff);
    } catch (NumberFormatException e) {
      return false;
    }
  }

  /** Whether a mixture of 0 to 255 each reads as red. */
  static boolean isRed(int red, int green, int blue) {
    return red >= 0xc0 && green <= 0x50 && blue <= 0x50;
  }

  private static String builtin(int format) {
    String code = BuiltinFormats.getBuiltinFormat(format);
    return code == null ? "" : code;
  }

  @Override
  public void startElement(String uri, String local, String qualified, Attributes attributes)
      throws SAXException {
    switch (local) {
      case "numFmt" -> startFormat(attributes);
      case "fonts" -> inFonts = true;
      case "font" -> {
        if (inFonts) {
          struckFonts.add(false);
          redFonts.add(false);
        }
      }
      case "strike" -> setLast(struckFonts, isOn(attributes));
      case "color" -> setLast(redFonts, isRed(attributes));
      case "fills" -> inFills = true;
      case "indexedColors" -> inPalette = true;
      case "fill", "patternFill", "fgColor", "rgbColor" -> startColour(local, attributes);
      case "cellXfs" -> inCellStyles = true;
      case "xf" -> {
        if (inCellStyles) {
          String format = attributes.getValue("numFmtId");
          formatOfStyle.add(format == null ? 0 : Integer.parseInt(format));
          String font = attributes.getValue("fontId");
          fontOfStyle.add(font == null ? 0 : Integer.parseInt(font));
          String fill = attributes.getValue("fillId");
          fillOfStyle.add(fill == null ? 0 : Integer.parseInt(fill));
        }
      }
      default -> {}
    }
  }

  @Override
  public void endElement(String uri, String local, String qualified) {
    if (local.equals("cellXfs")) {
      inCellStyles = false;
    } else if (local.equals("fonts")) {
      inFonts = false;
    } else if (local.equals("fills")) {
      inFills = false;
    } else if (local.equals("indexedColors")) {
      inPalette = false;
    }
  }

  private void startFormat(Attributes attributes) throws SAXException {
    String code = attributes.getValue("formatCode");
    if (code == null) {
      throw new SAXException("a number format shows nothing");
    }
    formats.put(Integer.parseInt(attributes.getValue("numFmtId")), code);
  }

  /** Fills of conditional formats stand elsewhere: they depend on what a cell says. */
  private void startColour(String local, Attributes attributes) {
    if (inPalette && local.equals("rgbColor")) {
      fills.ofPalette(attributes);
    } else if (inFills) {
      switch (local) {
        case "fill" -> fills.begin();
        case "patternFill" -> fills.pattern(attributes);
        case "fgColor" -> fills.colour(attributes);
        default -> {}
      }
    }
  }

  private void setLast(List<Boolean> fonts, boolean value) {
    if (inFonts && !fonts.isEmpty()) {
      fonts.set(fonts.size() - 1, value);
    }
  }
}

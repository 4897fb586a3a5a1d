package dev.ringout.sheet;

import dev.ringout.units.Text;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.hssf.util.HSSFColor;
import org.xml.sax.Attributes;

/**
 * The colours that a workbook's cells are filled with: given as they are, by a place in the
 * palette, or by a place in the theme with a tint (ECMA-376 part 1, 18.8.3, 18.8.19, 18.8.27).
 */
final class FillColours {
  /** White is paper: a cell filled with it is as one that is not. */
  static final String NONE = "";

  private static final int MOST = 0xff;

  private final List<Colour> fills = new ArrayList<>();
  private final List<String> palette = new ArrayList<>();
  private final Map<Integer, String> found = new HashMap<>();
  private List<String> theme = List.of();
  private boolean solid;

  /** A colour as the file gives it; resolved once the theme is known. */
  private record Colour(String rgb, int indexed, int ofTheme, double tint) {
    static final Colour NONE = new Colour("", -1, -1, 0);
  }

  /** A fill begins. */
  void begin() {
    solid = false;
    fills.add(Colour.NONE);
  }

  /** The fill's pattern; what is hatched or dotted is not of one colour. */
  void pattern(Attributes attributes) {
    solid = "solid".equals(attributes.getValue("patternType"));
  }

  /** The colour of the fill that began last. */
  void colour(Attributes attributes) {
    if (solid && !fills.isEmpty()) {
      fills.set(
          fills.size() - 1,
          new Colour(
              value(attributes, "rgb"),
              (int) number(value(attributes, "indexed"), -1),
              (int) number(value(attributes, "theme"), -1),
              number(value(attributes, "tint"), 0)));
    }
  }

  /** A colour of the workbook's own palette, in its order. */
  void ofPalette(Attributes attributes) {
    palette.add(value(attributes, "rgb"));
  }

  private static String value(Attributes attributes, String name) {
    String value = attributes.getValue(name);
    return value == null ? "" : value;
  }

  private static double number(String text, double otherwise) {
    try {
      return text.isEmpty() ? otherwise : Double.parseDouble(text);
    } catch (NumberFormatException e) {
      return otherwise;
    }
  }

  /** Whether the theme is needed. */
  boolean askForTheme() {
    return fills.stream().anyMatch(one -> one.ofTheme() >= 0);
  }

  /** The theme's colours as fills count them: light, dark, light, dark, accents. */
  void theme(List<String> colours) {
    theme = colours;
  }

  /** The colour of a fill by its number, or none. */
  String of(int fill) {
    return fill < 0 || fill >= fills.size()
        ? NONE
        : found.computeIfAbsent(fill, one -> resolved(fills.get(one)));
  }

  private String resolved(Colour colour) {
    if (colour.rgb().length() >= 6) {
      return shown(colour.rgb(), colour.tint());
    }
    if (colour.indexed() >= 0 && colour.indexed() < palette.size()) {
      return shown(palette.get(colour.indexed()), colour.tint());
    }
    if (colour.indexed() >= 0) {
      HSSFColor standard = HSSFColor.getIndexHash().get(colour.indexed());
      return standard == null ? NONE : of(standard.getTriplet());
    }
    return colour.ofTheme() >= 0 && colour.ofTheme() < theme.size()
        ? shown(theme.get(colour.ofTheme()), colour.tint())
        : NONE;
  }

  /** A colour by its red, green and blue, of 0 to 255 each. */
  static String of(short[] mixture) {
    return hex(mixture[0], mixture[1], mixture[2]);
  }

  /**
   * A colour by its hexadecimal digits, whatever stands before the last six; none where it is none.
   */
  static String shown(String digits, double tint) {
    try {
      int mixture = Integer.parseInt(digits.substring(Math.max(0, digits.length() - 6)), 16);
      return tinted(mixture >> 16, (mixture >> 8) & MOST, mixture & MOST, tint);
    } catch (NumberFormatException e) {
      return NONE;
    }
  }

  /**
   * A tint below zero takes that part of the lightness away, one above zero that part of what is
   * missing from white. Both are the same for red, green and blue alike.
   */
  private static String tinted(int red, int green, int blue, double tint) {
    if (tint == 0 || !Double.isFinite(tint)) {
      return hex(red, green, blue);
    }
    double most = Math.max(red, Math.max(green, blue)) / (double) MOST;
    double least = Math.min(red, Math.min(green, blue)) / (double) MOST;
    double lightness = (most + least) / 2;
    double chroma = most - least;
    double saturation = chroma == 0 ? 0 : chroma / (1 - Math.abs(2 * lightness - 1));
    double bounded = Math.max(-1, Math.min(1, tint));
    double other = bounded < 0 ? lightness * (1 + bounded) : lightness + (1 - lightness) * bounded;
    double otherChroma = saturation * (1 - Math.abs(2 * other - 1));
    double base = other - otherChroma / 2;
    int[] mixed = new int[3];
    int[] own = {red, green, blue};
    for (int i = 0; i < mixed.length; i++) {
      double share = chroma == 0 ? 0 : (own[i] / (double) MOST - least) / chroma;
      mixed[i] = (int) Math.round((base + share * otherChroma) * MOST);
    }
    return hex(mixed[0], mixed[1], mixed[2]);
  }

  private static String hex(int red, int green, int blue) {
    boolean white = red >= MOST && green >= MOST && blue >= MOST;
    return white ? NONE : Text.of("%02X%02X%02X", red, green, blue);
  }
}

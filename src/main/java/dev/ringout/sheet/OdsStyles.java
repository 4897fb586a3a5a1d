package dev.ringout.sheet;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.xml.sax.Attributes;

/**
 * What the styles of an OpenDocument spreadsheet say of ink, fill and whether a sheet is shown
 * (OASIS OpenDocument 1.3 part 3: {@code style:text-line-through-style}, {@code fo:color}, {@code
 * fo:background-color}, {@code table:display}). A style says what it says itself, else what its
 * parent says.
 */
final class OdsStyles {
  private static final String CELL = "table-cell";
  private static final String TEXT = "text";
  private static final String TABLE = "table";

  private final Map<String, Style> styles = new HashMap<>();
  private Style style = new Style("");

  private static final class Style {
    private final String parent;
    private Optional<Boolean> struck = Optional.empty();
    private Optional<Boolean> red = Optional.empty();
    private Optional<String> fill = Optional.empty();
    private Optional<Boolean> hidden = Optional.empty();

    Style(String parent) {
      this.parent = parent;
    }
  }

  boolean isStruck(String cell) {
    return asked(CELL, cell, one -> one.struck).orElse(false);
  }

  boolean isRed(String cell) {
    return asked(CELL, cell, one -> one.red).orElse(false);
  }

  /** What the style of a run strikes through, where it says so. */
  Optional<Boolean> struckRun(String run) {
    return asked(TEXT, run, one -> one.struck);
  }

  /** Whether the style of a run is red, where it says so. */
  Optional<Boolean> redRun(String run) {
    return asked(TEXT, run, one -> one.red);
  }

  /** The colour that cells of a style are filled with, or empty. */
  String fill(String cell) {
    return asked(CELL, cell, one -> one.fill).orElse(FillColours.NONE);
  }

  /** Whether sheets of a style are hidden. */
  boolean isHidden(String sheet) {
    return asked(TABLE, sheet, one -> one.hidden).orElse(false);
  }

  private <T> Optional<T> asked(String family, String name, Function<Style, Optional<T>> what) {
    Set<String> seen = new HashSet<>();
    String key = family + "/" + name;
    while (seen.add(key) && styles.containsKey(key)) {
      Optional<T> said = what.apply(styles.get(key));
      if (said.isPresent()) {
        return said;
      }
      key = family + "/" + styles.get(key).parent;
    }
    return Optional.empty();
  }

  /** Takes note of an element that belongs to a style; others say nothing to it. */
  void start(String name, Attributes attributes) {
    switch (name) {
      case "style:style" -> {
        style = new Style(OdsNames.value(attributes, "style:parent-style-name"));
        styles.put(
            OdsNames.value(attributes, "style:family")
                + "/"
                + OdsNames.value(attributes, "style:name"),
            style);
      }
      case "style:default-style" -> style = new Style("");
      case "style:text-properties" -> text(attributes);
      case "style:table-cell-properties" -> fill(attributes);
      case "style:table-properties" -> {
        String display = OdsNames.value(attributes, "table:display");
        if (!display.isEmpty()) {
          style.hidden = Optional.of(display.equals("false"));
        }
      }
      default -> {}
    }
  }

  private void text(Attributes attributes) {
    String line = OdsNames.value(attributes, "style:text-line-through-style");
    String type = OdsNames.value(attributes, "style:text-line-through-type");
    if (!line.isEmpty() || !type.isEmpty()) {
      style.struck =
          Optional.of(
              (!line.isEmpty() && !line.equals("none"))
                  || (!type.isEmpty() && !type.equals("none")));
    }
    String colour = OdsNames.value(attributes, "fo:color");
    if (colour.matches("#[0-9a-fA-F]{6}")) {
      int mixture = Integer.parseInt(colour.substring(1), 16);
      style.red =
          Optional.of(XlsxStyles.isRed(mixture >> 16, (mixture >> 8) & 0xff, mixture & 0xff));
    }
  }

  private void fill(Attributes attributes) {
    String colour = OdsNames.value(attributes, "fo:background-color");
    if (colour.matches("#[0-9a-fA-F]{6}")) {
      style.fill = Optional.of(FillColours.shown(colour, 0));
    } else if (colour.equals("transparent")) {
      style.fill = Optional.of(FillColours.NONE);
    }
  }
}

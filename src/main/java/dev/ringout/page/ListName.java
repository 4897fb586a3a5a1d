package dev.ringout.page;

import dev.ringout.units.Text;
import java.util.regex.Pattern;

/** The name under which a file that a page hands in is kept: it leads to no other folder. */
final class ListName {
  private static final int MOST_LETTERS = 60;
  private static final int MOST_OF_ENDING = 8;
  private static final String NAMELESS = "list";

  /** What separates folders, or no system or not every system takes in a name. */
  private static final Pattern NOT_IN_A_NAME =
      Pattern.compile("[<>:\"|?*\\p{Cntrl}\\p{Cf}\\p{Zl}\\p{Zp}" + Text.REPLACED + "]");

  /** Names that mean devices on some systems, whatever ending they have. */
  private static final Pattern DEVICE =
      Pattern.compile("(?i)(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])([ .].*)?");

  private ListName() {}

  /** A name like the one given. */
  static String of(String given) {
    String name = given.substring(Math.max(given.lastIndexOf('/'), given.lastIndexOf('\\')) + 1);
    name = NOT_IN_A_NAME.matcher(Text.visibleInOneLine(name)).replaceAll("_");
    name = name.replaceAll("^[\\s.]+|[\\s.]+$", "");
    if (name.isEmpty()) {
      return NAMELESS;
    }
    String shortened = shortened(name);
    return DEVICE.matcher(shortened).matches() ? "_" + shortened : shortened;
  }

  /** Cut in its middle: the ending says what kind of file it is. */
  private static String shortened(String name) {
    int dot = name.lastIndexOf('.');
    String ending = dot > 0 && name.length() - dot <= MOST_OF_ENDING ? name.substring(dot) : "";
    String stem = name.substring(0, name.length() - ending.length());
    int[] letters = stem.codePoints().limit(MOST_LETTERS).toArray();
    return new String(letters, 0, letters.length).replaceAll("[\\s.]+$", "") + ending;
  }
}

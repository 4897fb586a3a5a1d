package dev.ringout.intake;

import dev.ringout.cells.Names;
import java.util.List;

/**
 * A column of one of the contract's sheets.
 *
 * @param aliases other spellings of the same word
 * @param takesUnit whether the heading may end in a unit: {@code Length (ft)}
 */
record Column(String name, List<String> aliases, boolean takesUnit) {

  static Column of(String name, String... aliases) {
    return new Column(name, List.of(aliases), false);
  }

  static Column withUnit(String name) {
    return new Column(name, List.of(), true);
  }

  /** Whether a heading is this column's name, unit or not. */
  boolean matches(String heading) {
    String key = Names.key(heading);
    return key.equals(Names.key(name))
        || aliases.stream().anyMatch(alias -> key.equals(Names.key(alias)));
  }

  /** What follows the column's name in a heading, without brackets; empty where nothing does. */
  String unitIn(String heading) {
    String text = heading.strip();
    if (!takesUnit || text.length() <= name.length() || !startsWithName(text)) {
      return "";
    }
    String rest = text.substring(name.length()).strip();
    boolean bracketed =
        rest.length() > 2
            && ((rest.startsWith("(") && rest.endsWith(")"))
                || (rest.startsWith("[") && rest.endsWith("]")));
    boolean parted = !Character.isLetterOrDigit(text.charAt(name.length()));
    if (!bracketed && !parted) {
      return "";
    }
    return bracketed
        ? rest.substring(1, rest.length() - 1).strip()
        : rest.replaceFirst("^[,;:/_-]\\s*", "");
  }

  private boolean startsWithName(String text) {
    return text.regionMatches(true, 0, name, 0, name.length());
  }
}

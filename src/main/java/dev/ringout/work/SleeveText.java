package dev.ringout.work;

import dev.ringout.harness.Point;
import dev.ringout.harness.Wire;
import dev.ringout.standards.Tables;
import dev.ringout.standards.Tables.Entry;
import java.util.List;
import java.util.Optional;

/**
 * What is printed on the sleeve at one end of a wire.
 *
 * @param pattern words in braces stand for what they name, all else for itself
 */
public record SleeveText(String pattern) {
  /** The names of the common schemes. */
  public static List<String> schemes(Tables tables) {
    return tables.rows("sleeve-schemes").stream().map(row -> row.get("scheme")).toList();
  }

  /** A scheme by its name, or a pattern of one's own; absent where it is neither. */
  public static Optional<SleeveText> of(String schemeOrPattern, Tables tables) {
    if (schemeOrPattern.contains("{")) {
      return Optional.of(new SleeveText(schemeOrPattern));
    }
    return tables.rows("sleeve-schemes").stream()
        .filter(row -> row.get("scheme").equals(schemeOrPattern))
        .map((Entry row) -> new SleeveText(row.get("text")))
        .findFirst();
  }

  /** The text for the end of a wire that goes on a point. */
  String at(Wire wire, Point here, Point there) {
    return pattern
        .replace("{wire}", wire.name())
        .replace("{signal}", wire.signal())
        .replace("{cable}", wire.cable())
        .replace("{here}", here.toString())
        .replace("{here.ref}", here.ref())
        .replace("{here.pin}", here.pin())
        .replace("{here.number}", number(here))
        .replace("{there}", there.toString())
        .replace("{there.ref}", there.ref())
        .replace("{there.pin}", there.pin())
        .replace("{there.number}", number(there));
  }

  /** {@code 401} of {@code TB401}; a designator without a number stands for itself. */
  private static String number(Point point) {
    String number = point.ref().replaceFirst("^[A-Za-z]+(?=[0-9])", "");
    return number.isEmpty() ? point.ref() : number;
  }
}

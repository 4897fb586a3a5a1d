package dev.ringout.standards;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** The colours that wires bear, in words, short forms and digits. */
public final class ColourCodes {
  /** Said of a colour, or of a wire that has none. */
  private static final Set<String> QUALIFIERS =
      Set.of("BARE", "BRAID", "CLEAR", "LIGHT", "DARK", "LT", "DK", "TAN");

  private static final Set<String> FILLERS =
      Set.of(
          "", "STRIPE", "STRIPES", "STRIPED", "TRACER", "TRACERS", "BAND", "BANDS", "RING", "RINGS",
          "DASH", "DASHED", "WITH", "AND");

  /** {@code white w/ green stripe}: with, and not a colour W. */
  private static final Pattern WITH = Pattern.compile("(?<=\\S)\\s+W/\\s*");

  /** {@code green stripe on white}: the base is named last. */
  private static final Pattern ON = Pattern.compile("^(.+)\\s+ON\\s+(.+)$");

  private final Map<String, List<String>> colours = new HashMap<>();
  private final String citation;

  private ColourCodes(List<Tables.Entry> rows) {
    QUALIFIERS.forEach(word -> colours.put(word, List.of(word)));
    FILLERS.forEach(word -> colours.put(word, List.of()));
    for (Tables.Entry row : rows) {
      List<String> named = List.of(row.get("colour").split("-", -1));
      for (String word : row.get("words").toUpperCase(Locale.ROOT).split(" ", -1)) {
        colours.put(word, named);
      }
      if (!row.get("digit").isEmpty()) {
        colours.put(row.get("digit"), named);
      }
    }
    citation = rows.get(0).citation();
  }

  /** The published codes with a user's own laid over them. */
  public static ColourCodes of(Tables tables) {
    return new ColourCodes(tables.rows("colour-codes"));
  }

  /** Where the codes stand. */
  public String citation() {
    return citation;
  }

  /** The parts of a colour as written that are in no code. */
  public List<String> unknownParts(String text) {
    return parts(text).stream().filter(part -> !colours.containsKey(part)).toList();
  }

  /**
   * The colours that a text means, base first ({@code WHT/BLU}, {@code 96} and {@code white with
   * blue stripe} mean the same); absent where a part of it is in no code.
   */
  public Optional<List<String>> meaning(String text) {
    List<String> meant = new ArrayList<>();
    for (String part : parts(text)) {
      if (!colours.containsKey(part)) {
        return Optional.empty();
      }
      meant.addAll(colours.getOrDefault(part, List.of()));
    }
    return Optional.of(List.copyOf(meant));
  }

  /** Words; a run of digits is a colour each. */
  private static List<String> parts(String text) {
    List<String> parts = new ArrayList<>();
    String with = WITH.matcher(text.toUpperCase(Locale.ROOT).strip()).replaceAll(" WITH ");
    String upper = ON.matcher(with).replaceAll("$2 WITH $1");
    for (String part : upper.split("[\\s/,;+-]+", -1)) {
      if (part.matches("[0-9]{1,4}")) {
        parts.addAll(List.of(part.split("", -1)));
      } else {
        parts.add(part);
      }
    }
    return parts;
  }
}

package dev.ringout.json;

import com.fasterxml.jackson.jr.ob.JSON;
import dev.ringout.imports.list.ColumnChoice;
import dev.ringout.imports.list.ImportOptions;
import dev.ringout.imports.list.Units;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** A shop's way of writing lists as it was kept before: still read, no longer written. */
public final class ProfileJson {
  private static final String FORMAT = "ringout-profile/1";

  private ProfileJson() {}

  /** A text that is no profile, in words for the user that follow the file's name. */
  public static final class Unreadable extends Exception {
    private static final long serialVersionUID = 1L;

    private Unreadable(String text) {
      super(text);
    }
  }

  /**
   * What a profile says.
   *
   * @throws Unreadable where the text is no profile, or names what no column can be
   */
  public static ImportOptions read(String text) throws Unreadable {
    Map<String, Object> json = parsed(text);
    if (!FORMAT.equals(json.get("format"))) {
      throw new Unreadable("is not a profile: its format should be \"" + FORMAT + "\"");
    }
    return new ImportOptions(
        columns(json),
        texts(json, "joinBy"),
        texts(json, "marks"),
        texts(json, "onePoint"),
        new Units(
            unit(json, "lengthUnit", Units.OfLength::of),
            unit(json, "gaugeUnit", Units.OfGauge::of)),
        Map.of(),
        ImportOptions.Shape.UNSAID,
        ImportOptions.Corrections.NONE);
  }

  private static <T> Optional<T> unit(
      Map<String, Object> json, String name, Function<String, Optional<T>> named)
      throws Unreadable {
    if (!json.containsKey(name)) {
      return Optional.empty();
    }
    String word = String.valueOf(json.get(name));
    Optional<T> unit = named.apply(word);
    if (unit.isEmpty()) {
      throw new Unreadable("\"" + word + "\" is not a " + name);
    }
    return unit;
  }

  private static Map<String, Object> parsed(String text) throws Unreadable {
    try {
      return JSON.std.mapFrom(text);
    } catch (IOException e) {
      throw new Unreadable("can't be read: " + e.getMessage());
    }
  }

  private static Map<String, ColumnChoice> columns(Map<String, Object> json) throws Unreadable {
    Map<String, ColumnChoice> columns = new LinkedHashMap<>();
    if (json.get("columns") instanceof Map<?, ?> map) {
      for (Map.Entry<?, ?> entry : map.entrySet()) {
        String title = String.valueOf(entry.getValue());
        columns.put(
            String.valueOf(entry.getKey()),
            ColumnChoice.of(title)
                .orElseThrow(
                    () -> new Unreadable("\"" + title + "\" is nothing that a column can be")));
      }
    }
    return columns;
  }

  private static Set<String> texts(Map<String, Object> json, String name) {
    Set<String> texts = new LinkedHashSet<>();
    if (json.get(name) instanceof List<?> list) {
      list.forEach(one -> texts.add(String.valueOf(one)));
    }
    return texts;
  }
}

package dev.ringout.cli;

import com.fasterxml.jackson.jr.ob.JSON;
import dev.ringout.imports.list.ColumnChoice;
import dev.ringout.imports.list.ImportOptions;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A shop's way of writing lists, kept in a file: what would be said as options each time. */
final class Profile {
  private static final String FORMAT = "ringout-profile/1";

  private Profile() {}

  /** A profile that can't be read, in words for the user. */
  static final class Unreadable extends Exception {
    private static final long serialVersionUID = 1L;

    Unreadable(String text) {
      super(text);
    }
  }

  static ImportOptions read(Path file) throws Unreadable {
    Map<String, Object> json;
    try {
      json = JSON.std.mapFrom(Files.readString(file));
    } catch (IOException e) {
      throw new Unreadable("can't be read: " + e.getMessage());
    }
    if (!FORMAT.equals(json.get("format"))) {
      throw new Unreadable("is no profile: its format should be \"" + FORMAT + "\"");
    }
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
    return new ImportOptions(
        columns, texts(json, "joinBy"), texts(json, "marks"), texts(json, "onePoint"));
  }

  private static Set<String> texts(Map<String, Object> json, String name) {
    Set<String> texts = new LinkedHashSet<>();
    if (json.get(name) instanceof List<?> list) {
      list.forEach(one -> texts.add(String.valueOf(one)));
    }
    return texts;
  }

  static String text(ImportOptions options) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("format", FORMAT);
    Map<String, String> columns = new LinkedHashMap<>();
    options.columns().forEach((heading, role) -> columns.put(heading, role.toString()));
    json.put("columns", columns);
    json.put("joinBy", new ArrayList<>(options.joinBy()));
    json.put("marks", new ArrayList<>(options.marks()));
    json.put("onePoint", new ArrayList<>(options.onePoint()));
    try {
      return JSON.std.with(JSON.Feature.PRETTY_PRINT_OUTPUT).asString(json) + "\n";
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<String> words(Path file) throws Unreadable {
    try {
      return Files.readAllLines(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new Unreadable("can't be read: " + e.getMessage());
    }
  }
}

package dev.ringout.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Expected output kept in files. With {@code -Dringout.updateGolden=true} the file is written anew
 * and the test still fails: every update is a difference that someone reads.
 */
public final class Golden {
  private static final Path FOLDER = Path.of("src/test/resources/golden");

  private Golden() {}

  /** Compares with what is kept. */
  public static void assertMatches(String name, String actual) throws IOException {
    Path file = FOLDER.resolve(name);
    if (Boolean.getBoolean("ringout.updateGolden")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, actual);
      fail(name + " was written anew; read the difference and run again");
    }
    assertEquals(Files.readString(file), actual);
  }

  /** Compares with one section of a file: what follows {@code == } and its name. */
  public static void assertSection(String name, String section, String actual) throws IOException {
    Path file = FOLDER.resolve(name);
    Map<String, String> sections = sections(file);
    if (Boolean.getBoolean("ringout.updateGolden")) {
      sections.put(section, actual);
      StringBuilder text = new StringBuilder();
      sections.forEach((title, told) -> text.append("== ").append(title).append('\n').append(told));
      Files.writeString(file, text);
      fail(name + ", " + section + " was written anew; read the difference and run again");
    }
    assertEquals(sections.getOrDefault(section, ""), actual);
  }

  private static Map<String, String> sections(Path file) throws IOException {
    Map<String, String> sections = new LinkedHashMap<>();
    String title = "";
    for (String line : Files.exists(file) ? Files.readAllLines(file) : List.<String>of()) {
      if (line.startsWith("== ")) {
        title = line.substring(3);
        sections.put(title, "");
      } else {
        sections.merge(title, line + "\n", String::concat);
      }
    }
    return sections;
  }
}

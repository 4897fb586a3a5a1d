package dev.ringout.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What comes with the program stands in its notices: as {@code components.json} names it, which is
 * made when the program is packaged.
 */
class NoticesIT {
  private static final Path NOTICES = Path.of("docs/notices.md");
  private static final Path COMPONENTS = Path.of("target/components.json");

  private static Object part(Map<?, ?> of, String name) {
    return Objects.requireNonNull(of.get(name), name);
  }

  private static List<Map<?, ?>> objects(Map<?, ?> of, String name) {
    List<Map<?, ?>> objects = new ArrayList<>();
    for (Object one : (List<?>) part(of, name)) {
      objects.add((Map<?, ?>) one);
    }
    return objects;
  }

  private static List<Map<?, ?>> components() throws IOException {
    return objects(JSON.std.mapFrom(Files.readString(COMPONENTS)), "components");
  }

  /** A licence by its SPDX id, else by its name. */
  private static String licences(Map<?, ?> component) {
    List<String> names = new ArrayList<>();
    for (Map<?, ?> one : objects(component, "licenses")) {
      Map<?, ?> licence = (Map<?, ?>) part(one, "license");
      names.add(part(licence, licence.containsKey("id") ? "id" : "name").toString());
    }
    return String.join("; ", names);
  }

  @Test
  void every_library_stands_in_the_notices_with_its_version_and_licence() throws IOException {
    Set<String> expected = new TreeSet<>();
    for (Map<?, ?> one : components()) {
      String name = one.get("group") + ":" + one.get("name");
      expected.add("| `" + name + "` | " + one.get("version") + " | " + licences(one) + " |");
    }
    Set<String> written =
        Files.readAllLines(NOTICES).stream()
            .filter(line -> line.startsWith("| `"))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(String.join("\n", expected), String.join("\n", written));
    assertTrue(expected.size() > 10, "the list of components is read");
  }

  @Test
  void every_library_that_a_user_gets_is_a_component() throws IOException {
    Set<String> jars = new TreeSet<>();
    try (Stream<Path> files = Files.list(Path.of("target/lib"))) {
      files.map(file -> String.valueOf(file.getFileName())).forEach(jars::add);
    }
    jars.removeIf(name -> name.startsWith("ringout.") || !name.endsWith(".jar"));
    Set<String> named = new TreeSet<>();
    for (Map<?, ?> one : components()) {
      named.add(one.get("name") + "-" + one.get("version") + ".jar");
    }
    assertEquals(named, jars);
  }
}

package dev.ringout.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;

/**
 * What comes with the program stands in its notices, as {@code components.json} names it, and
 * travels with the text of its licence.
 */
class NoticesIT {
  private static final Path NOTICES = Path.of("docs/notices.md");
  private static final Path COMPONENTS = Path.of("src/main/launcher/components.json");
  private static final Path LICENCES = Path.of("src/main/launcher/licences");
  private static final Path LIB = Path.of("target/lib");

  /** Where the whole text of each licence stands; the short form of MIT holds the holder's name. */
  private static final Map<String, String> WHOLE_TEXTS =
      Map.of(
          "Apache-2.0", "Apache-2.0.txt",
          "BSD-2-Clause", "BSD-2-Clause.txt",
          "Bouncy Castle Licence", "bouncycastle/",
          "Eclipse Public License (EPL) 2.0", "EPL-2.0.md",
          "GNU Lesser GPL, Version 3", "LGPL-3.0.txt",
          "LGPL-2.1-only", "LGPL-2.1.txt",
          "LGPL-2.1-or-later", "LGPL-2.1.txt",
          "MIT", "fastcsv/");

  /** A line of the notices. */
  private record Notice(String library, String version, String licences, List<String> texts) {
    private static final Pattern LINE =
        Pattern.compile("\\| `([^`]+)` \\| ([^|]+) \\| ([^|]+) \\| ([^|]+) \\|");

    static List<Notice> all() throws IOException {
      List<Notice> all = new ArrayList<>();
      for (String line : Files.readAllLines(NOTICES)) {
        Matcher cells = LINE.matcher(line);
        if (cells.matches()) {
          List<String> texts = List.of(cells.group(4).replace("`", "").split(", "));
          all.add(new Notice(cells.group(1), cells.group(2), cells.group(3), texts));
        }
      }
      return all;
    }

    String jar() {
      return library.substring(library.indexOf(':') + 1) + "-" + version + ".jar";
    }
  }

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
      expected.add(name + " " + one.get("version") + " " + licences(one));
    }
    Set<String> written = new TreeSet<>();
    for (Notice notice : Notice.all()) {
      written.add(notice.library() + " " + notice.version() + " " + notice.licences());
    }
    assertEquals(String.join("\n", expected), String.join("\n", written));
    assertTrue(expected.size() > 10, "the list of components is read");
  }

  @Test
  void every_library_that_a_user_gets_is_a_component_byte_for_byte()
      throws IOException, NoSuchAlgorithmException {
    Set<String> named = new TreeSet<>();
    for (Map<?, ?> one : components()) {
      String digest = "";
      for (Map<?, ?> hash : objects(one, "hashes")) {
        digest = part(hash, "alg").equals("SHA-256") ? part(hash, "content").toString() : digest;
      }
      named.add(one.get("name") + "-" + one.get("version") + ".jar " + digest);
    }
    Set<String> jars = new TreeSet<>();
    for (String jar : jars()) {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      byte[] digest = sha.digest(Files.readAllBytes(LIB.resolve(jar)));
      jars.add(jar + " " + HexFormat.of().formatHex(digest));
    }
    assertEquals(String.join("\n", named), String.join("\n", jars));
  }

  private static Set<String> jars() throws IOException {
    Set<String> jars = new TreeSet<>();
    try (Stream<Path> files = Files.list(LIB)) {
      files.map(file -> String.valueOf(file.getFileName())).forEach(jars::add);
    }
    jars.removeIf(name -> name.startsWith("ringout.") || !name.endsWith(".jar"));
    return jars;
  }

  @Test
  void each_library_has_the_whole_text_of_its_licence() throws IOException {
    for (Notice notice : Notice.all()) {
      for (String licence : notice.licences().split("; ", -1)) {
        String text = Objects.requireNonNull(WHOLE_TEXTS.get(licence), "no text of " + licence);
        assertTrue(notice.texts().contains(text), notice.library() + " is under " + licence);
      }
      assertTrue(texts(notice).stream().anyMatch(text -> text.length() > 700), notice.library());
    }
  }

  @Test
  void what_a_library_says_of_its_licence_itself_is_among_its_texts() throws IOException {
    for (Notice notice : Notice.all()) {
      Set<String> texts = texts(notice);
      try (ZipFile jar = new ZipFile(LIB.resolve(notice.jar()).toFile())) {
        for (ZipEntry entry : Collections.list(jar.entries())) {
          if (isOfLicence(entry)) {
            try (InputStream in = jar.getInputStream(entry)) {
              String said = withoutBlanks(in.readAllBytes());
              assertTrue(texts.contains(said), notice.jar() + " " + entry.getName());
            }
          }
        }
      }
    }
  }

  private static boolean isOfLicence(ZipEntry entry) {
    String name = entry.getName().toLowerCase(Locale.ROOT);
    String file = name.substring(name.lastIndexOf('/') + 1);
    return (file.contains("license") || file.contains("licence") || file.contains("notice"))
        && !file.endsWith(".class")
        && !file.endsWith(".xsb");
  }

  private static Set<String> texts(Notice notice) throws IOException {
    Set<String> texts = new TreeSet<>();
    for (String name : notice.texts()) {
      try (Stream<Path> files = Files.walk(LICENCES.resolve(name))) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          texts.add(withoutBlanks(Files.readAllBytes(file)));
        }
      }
    }
    return texts;
  }

  /**
   * Texts are held against each other byte by byte, whatever their encoding and their line ends.
   */
  private static String withoutBlanks(byte[] text) {
    return new String(text, StandardCharsets.ISO_8859_1).replaceAll("[ \t\r\n]", "");
  }

  @Test
  void no_text_is_of_a_library_that_is_no_longer_here_and_all_of_them_travel() throws IOException {
    Set<String> named = new TreeSet<>();
    Notice.all().forEach(notice -> named.addAll(notice.texts()));
    Set<String> there = new TreeSet<>();
    try (Stream<Path> files = Files.list(LICENCES)) {
      for (Path file : files.toList()) {
        there.add(file.getFileName() + (Files.isDirectory(file) ? "/" : ""));
      }
    }
    assertEquals(named, there);
    String zip = Files.readString(Path.of("src/main/launcher/zip.xml"));
    assertTrue(zip.contains("${project.basedir}/src/main/launcher/licences</directory>"));
  }
}

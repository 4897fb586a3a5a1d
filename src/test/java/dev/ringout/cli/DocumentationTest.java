package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import dev.ringout.imports.list.OddityKind;
import dev.ringout.support.Run;
import dev.ringout.words.ImportWords;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The documents say what the program does. */
class DocumentationTest {
  /** Shown by a list that others made, or by a test of the command line. */
  private static final Set<OddityKind> ELSEWHERE =
      Set.of(
          OddityKind.NAMES_DIFFER,
          OddityKind.ALIAS,
          OddityKind.CODE,
          OddityKind.HEADING,
          OddityKind.REFERENCE,
          OddityKind.MODULES,
          OddityKind.PARTS);

  /** What the guides name of Java, of a library, or of a type within another. */
  private static final Set<String> NOT_OURS =
      Set.of("BiconnectivityInspector", "Map", "String", "System", "Cases", "Request");

  private static String between(String text, String name) {
    String begin = "<!-- " + name + ": begin -->\n```text\n";
    int start = text.indexOf(begin);
    int end = text.indexOf("```\n<!-- " + name + ": end -->");
    assertTrue(start >= 0 && end > start, "no part " + name);
    return text.substring(start + begin.length(), end);
  }

  @Test
  void the_readme_s_example_is_what_the_sample_prints() throws IOException {
    String example = between(Files.readString(Path.of("README.md")), "example");
    String golden = Files.readString(Path.of("src/test/resources/golden/swing-bridge.txt"));
    assertTrue(golden.startsWith(example.stripTrailing()), "the README's example has drifted");
    assertTrue(example.lines().count() > 20);
  }

  /** Every command, as the program names them. */
  static Stream<String> commands() {
    return Run.of("--help")
        .out()
        .lines()
        .dropWhile(line -> !line.equals("Commands:"))
        .map(line -> line.replaceAll("^  ([a-z]+) .*", "$1"))
        .filter(name -> name.matches("[a-z]+"));
  }

  @ParameterizedTest
  @MethodSource("commands")
  void a_command_has_its_page_and_the_readme_leads_there(String command) throws IOException {
    assertTrue(Files.exists(Path.of("docs/reference/" + command + ".md")));
    assertTrue(
        Files.readString(Path.of("README.md"))
            .contains("[`ringout " + command + "`](docs/reference/" + command + ".md)"));
  }

  @ParameterizedTest
  @MethodSource("commands")
  void the_reference_shows_the_help_as_it_is(String command) throws IOException {
    Path page = Path.of("docs/reference/" + command + ".md");
    String text = Files.readString(page);
    String help = Run.of(command, "--help").out();
    if (Boolean.getBoolean("ringout.updateGolden")) {
      Files.writeString(
          page, text.replace(between(text, "help") + "```\n<!--", help + "```\n<!--"));
      fail("the help was written anew; read the difference and run again");
    }
    assertEquals(help, between(text, "help"));
  }

  @Test
  void every_kind_of_finding_has_its_line_and_a_list_that_shows_it() throws IOException {
    String page = Files.readString(Path.of("docs/reference/import.md"));
    StringBuilder lists = new StringBuilder();
    try (Stream<Path> files = Files.list(Path.of("src/test/resources/lists"))) {
      for (Path file : files.toList()) {
        lists.append(Files.readString(file));
      }
    }
    for (OddityKind kind : OddityKind.values()) {
      assertTrue(
          page.contains("| `" + kind.word() + "` | " + ImportWords.kind(kind) + " |"), kind.word());
      boolean shown =
          Stream.of("error", "warning", "note")
              .anyMatch(severity -> lists.indexOf(severity + " " + kind.word()) >= 0);
      assertTrue(shown || ELSEWHERE.contains(kind), "no list shows " + kind.word());
    }
  }

  @Test
  void the_readme_s_two_commands_are_what_ci_runs() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    String test = "mvn -B verify";
    assertTrue(readme.contains("\n    " + test + "\n"));
    assertTrue(Files.readString(Path.of(".ci/run")).strip().endsWith("exec " + test));
  }

  /** {@code intake.ReadingsReader}, {@code Fault.Cases}, {@code CheckResult}. */
  @ParameterizedTest
  @ValueSource(strings = {"DEVELOPERS.md", "docs/explanation/architecture.md"})
  void a_type_that_a_guide_names_is_there(String page) throws IOException {
    Set<String> types = new TreeSet<>();
    try (Stream<Path> files = Files.walk(Path.of("src"))) {
      files
          .map(file -> "" + file.getFileName())
          .filter(name -> name.endsWith(".java"))
          .forEach(name -> types.add(name.replace(".java", "")));
    }
    Set<String> gone = new TreeSet<>();
    Matcher named =
        Pattern.compile("`(?:[a-z]+\\.)*([A-Z]\\w*[a-z]\\w*)[^`]*`")
            .matcher(Files.readString(Path.of(page)));
    while (named.find()) {
      if (!types.contains(named.group(1)) && !NOT_OURS.contains(named.group(1))) {
        gone.add(named.group());
      }
    }
    assertEquals(Set.of(), gone);
  }

  @Test
  void a_test_that_a_page_names_is_there() throws IOException {
    String page = Files.readString(Path.of("docs/explanation/robustness.md"));
    Matcher named = Pattern.compile("`(\\w+(?:Test|IT))(?:\\.(\\w+))?`").matcher(page);
    Map<String, String> sources = new HashMap<>();
    try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
      for (Path file : files.filter(one -> one.toString().endsWith(".java")).toList()) {
        String name = file.getFileName().toString().replace(".java", "");
        sources.merge(name, Files.readString(file), String::concat);
      }
    }
    Set<String> missing = new TreeSet<>();
    while (named.find()) {
      String method = named.group(2) == null ? "class " + named.group(1) : named.group(2) + "(";
      if (!sources.getOrDefault(named.group(1), "").contains(method)) {
        missing.add(named.group());
      }
    }
    assertEquals(Set.of(), missing);
  }

  @Test
  void every_link_between_documents_leads_somewhere() throws IOException {
    List<String> broken = new ArrayList<>();
    List<Path> pages = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
    try (Stream<Path> docs = Files.walk(Path.of("docs"))) {
      docs.filter(path -> path.toString().endsWith(".md")).forEach(pages::add);
    }
    for (Path page : pages) {
      Matcher link = Pattern.compile("\\]\\(([^)#:]+)\\)").matcher(Files.readString(page));
      while (link.find()) {
        if (!Files.exists(page.resolveSibling(link.group(1)))) {
          broken.add(page + " -> " + link.group(1));
        }
      }
    }
    assertEquals(List.of(), broken);
  }
}

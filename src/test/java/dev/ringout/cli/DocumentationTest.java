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
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The documents say what the program does. */
class DocumentationTest {
  /** Shown by a list that others made, or by a test of the command line. */
  private static final Set<OddityKind> ELSEWHERE =
      Set.of(OddityKind.NAMES_DIFFER, OddityKind.ALIAS, OddityKind.CODE, OddityKind.HEADING);

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

  @ParameterizedTest
  @ValueSource(
      strings = {
        "asfound", "check", "diff", "found", "import", "plan", "report", "review", "trace", "work"
      })
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

  @Test
  void every_link_between_documents_leads_somewhere() throws IOException {
    List<String> broken = new ArrayList<>();
    List<Path> pages = new ArrayList<>(List.of(Path.of("README.md")));
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

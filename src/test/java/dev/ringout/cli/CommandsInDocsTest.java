package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** Every command that a page shows does what the page is about; page after page, in its order. */
class CommandsInDocsTest {
  private static final Path SAMPLE = Path.of("harness-samples/swing-bridge");

  /** A file that a page has its reader save, or a command by itself in a line. */
  private static final Pattern STEP =
      Pattern.compile(
          "(?m)^```csv (?<name>\\S+)\\n(?<text>(?:(?!```).*\\n)*)```$"
              + "|^ {4,}(?:target/|C:\\\\ringout\\\\)?ringout(?:\\.bat)? (?<command>.*)$");

  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  /** What a page names inline: its command, and what follows. */
  private static final Pattern NAMED = Pattern.compile("`ringout ([a-z]+)((?: [^`]*)?)`");

  /** What needs a meter, a browser or a server is only taken apart. */
  private static final Pattern NOT_HERE =
      Pattern.compile(
          "^bench .*|^meters --(?:try|practice) .*|.*postgresql:.*|.*\\$RINGOUT_STORE.*|.*~/.*");

  @TempDir private Path folder;

  static Stream<Path> pages() throws IOException {
    List<Path> pages = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
    try (Stream<Path> docs = Files.walk(Path.of("docs"))) {
      docs.filter(page -> page.toString().endsWith(".md"))
          .filter(page -> !page.endsWith("changelog.md"))
          .sorted()
          .forEach(pages::add);
    }
    return pages.stream();
  }

  static Stream<Path> pagesWithCommands() throws IOException {
    List<Path> pages = new ArrayList<>();
    for (Path page : pages().toList()) {
      Matcher step = STEP.matcher(Files.readString(page));
      while (step.find()) {
        if (step.group("command") != null && !pages.contains(page)) {
          pages.add(page);
        }
      }
    }
    return pages.stream();
  }

  /** What the pages call the reader's own files. */
  private void makeFilesOfTheReader() throws IOException {
    Path readings = SAMPLE.resolve("point-to-point.xlsx");
    for (String list : List.of("junction-box.xlsx", "unit.xlsx")) {
      Files.copy(SAMPLE.resolve("junction-box.xlsx"), folder.resolve(list));
    }
    Files.copy(readings, folder.resolve("point-to-point.xlsx"));
    Files.copy(
        readings, Files.createDirectory(folder.resolve("sheets")).resolve(readings.getFileName()));
    Files.createDirectory(folder.resolve("backup"));
    copySamples();
    Files.writeString(folder.resolve("passphrase.txt"), "four lamps on a bridge\n");
    Files.writeString(folder.resolve("bench-1.csv"), "Name,Value\nprocedure,HSB-TP-07\n");
  }

  private void copySamples() throws IOException {
    try (Stream<Path> samples = Files.walk(SAMPLE)) {
      for (Path file : samples.filter(Files::isRegularFile).toList()) {
        Path to = folder.resolve(file.toString());
        Files.createDirectories(to.getParent());
        Files.copy(file, to);
      }
    }
  }

  private List<Object> words(String command) {
    List<Object> words = new ArrayList<>();
    Matcher word = WORD.matcher(command);
    while (word.find()) {
      String text = word.group(1) != null ? word.group(1) : word.group(2);
      boolean isPath = text.matches("/?[\\w./-]+(?:\\.[a-z]{2,7}|/)");
      words.add(
          isPath
              ? folder.resolve(text.replaceFirst("^/", "")) + (text.endsWith("/") ? "/" : "")
              : text);
    }
    boolean ofStore = command.matches("(?:units|store|people) ?.*|.*\\b(?:unit|station):.*");
    if (ofStore && !command.contains("--store")) {
      words.add("--store");
      words.add(folder.resolve("ringout.db"));
    }
    return words;
  }

  @ParameterizedTest
  @MethodSource("pagesWithCommands")
  void a_page_s_commands_run_as_they_are_written(Path page) throws IOException {
    makeFilesOfTheReader();
    String text = Files.readString(page);
    if (text.contains("unit:0418") || text.contains("ringout units")) {
      Object store = folder.resolve("ringout.db");
      assertEquals(
          0,
          Run.of(
                  "store",
                  "add",
                  SAMPLE.resolve("junction-box.xlsx"),
                  SAMPLE.resolve("point-to-point.xlsx"),
                  "--store",
                  store)
              .code());
    }
    if (text.contains("inspector.key") && !text.contains("--new-key inspector.key")) {
      assertEquals(0, Run.of("report", "--new-key", folder.resolve("inspector.key")).code());
    }
    Matcher step = STEP.matcher(text);
    while (step.find()) {
      if (step.group("command") == null) {
        Path file = folder.resolve(step.group("name"));
        Files.createDirectories(file.getParent());
        Files.writeString(file, step.group("text"));
      } else if (NOT_HERE.matcher(step.group("command")).matches()) {
        takesApart(step.group("command"));
      } else {
        Run run = Run.of(words(step.group("command")).toArray());
        assertTrue(run.code() < 64, page + ": " + step.group("command") + "\n" + run.err());
      }
    }
  }

  private static void takesApart(String command) {
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(command);
    while (word.find()) {
      words.add(word.group(1) != null ? word.group(1) : word.group(2));
    }
    all().parseArgs(words.toArray(String[]::new));
  }

  private static CommandLine all() {
    PrintStream nowhere =
        new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
    return Main.all(new Output(nowhere, nowhere, false, 80));
  }

  @Test
  void the_mechanic_s_box_is_wrong_first_and_proven_after_the_retest() throws IOException {
    Path page = Path.of("docs/tutorial/rewire-and-prove.md");
    a_page_s_commands_run_as_they_are_written(page);
    Path list = folder.resolve("gate-box.csv");
    Run first = Run.of("check", list, folder.resolve("first"));
    assertTrue(first.out().startsWith("FAULTS: 1."), first.out());
    assertTrue(first.out().contains("W3 and W4 are crossed"), first.out());
    Run after = Run.of("check", list, folder.resolve("first"), folder.resolve("retest"));
    assertTrue(after.out().startsWith("CONFORMS. Everything on the list is proven."), after.out());
    assertEquals(0, after.code());
  }

  @Test
  void a_record_is_as_sealed_and_a_concession_is_told() throws IOException {
    a_page_s_commands_run_as_they_are_written(Path.of("docs/tutorial/sign-it-off.md"));
    Run verified =
        Run.of(
            "report",
            "--verify",
            folder.resolve("record-0417.pdf"),
            "--key",
            folder.resolve("inspector.key.pub"));
    assertEquals(0, verified.code(), verified.out());
    assertTrue(verified.out().contains("As sealed: record, inputs and signature."), verified.out());
  }

  @Test
  void a_command_that_is_named_has_the_options_that_are_named() throws IOException {
    Map<String, CommandLine> commands = all().getSubcommands();
    Set<String> wrong = new TreeSet<>();
    for (Path page : pages().toList()) {
      Matcher named = NAMED.matcher(Files.readString(page));
      while (named.find()) {
        CommandLine command = commands.get(named.group(1));
        boolean is =
            command == null
                ? named.group(1).equals("help")
                : options(named.group(2)).allMatch(option -> has(command, option));
        if (!is) {
          wrong.add(page + ": " + named.group());
        }
      }
    }
    assertEquals(Set.of(), wrong);
  }

  private static Stream<String> options(String words) {
    return Pattern.compile("(?<= )--?[a-z][a-z-]*")
        .matcher(words)
        .results()
        .map(MatchResult::group);
  }

  private static boolean has(CommandLine command, String option) {
    return command.getCommandSpec().optionsMap().containsKey(option)
        || command.getSubcommands().values().stream().anyMatch(one -> has(one, option));
  }
}

package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What shells complete and what the manual says is what the commands have. */
class ShellFilesTest {
  private static final Path LAUNCHER = Path.of("src/main/launcher");

  @Test
  void the_files_of_the_distribution_are_made_from_the_options_as_they_are() throws IOException {
    Map<Path, String> files = new ShellFiles().files();
    Set<Path> drifted = new TreeSet<>();
    for (Map.Entry<Path, String> file : files.entrySet()) {
      Path at = LAUNCHER.resolve(file.getKey());
      if (!Files.exists(at) || !Files.readString(at).equals(file.getValue())) {
        drifted.add(file.getKey());
        if (Boolean.getBoolean("ringout.updateGolden")) {
          Files.createDirectories(at.getParent());
          Files.writeString(at, file.getValue());
        }
      }
    }
    if (Boolean.getBoolean("ringout.updateGolden") && !drifted.isEmpty()) {
      fail("written anew; read the difference and run again: " + drifted);
    }
    assertEquals(Set.of(), drifted);
    try (Stream<Path> pages = Files.list(LAUNCHER.resolve("man/man1"))) {
      assertEquals(
          files.keySet().stream()
              .filter(file -> file.startsWith("man"))
              .collect(Collectors.toSet()),
          pages.map(LAUNCHER::relativize).collect(Collectors.toSet()));
    }
  }

  /** Every option that a command's help shows. */
  @Test
  void every_option_of_every_command_is_in_each_of_them() throws IOException {
    // An option may have a short name before.
    String fish =
        Files.readString(LAUNCHER.resolve("completion/ringout.fish"))
            .replaceAll(" -s \\w -l", " -l");
    for (String command : DocumentationTest.commands().toList()) {
      Matcher option =
          Pattern.compile("(?m)^ {2,6}(?:-\\w, )?(--[a-z-]+)")
              .matcher(Run.of(command, "--help").out());
      String manual = Files.readString(LAUNCHER.resolve("man/man1/ringout-" + command + ".1"));
      while (option.find()) {
        String name = option.group(1);
        assertTrue(manual.contains(name.replace("-", "\\-")), command + " " + name);
        for (String file : List.of("ringout.bash", "_ringout")) {
          assertTrue(Files.readString(LAUNCHER.resolve("completion").resolve(file)).contains(name));
        }
        assertTrue(fish.contains("_from " + command + "' -l " + name.substring(2) + " "), name);
      }
    }
  }

  @Test
  void a_shell_takes_its_file() throws IOException, InterruptedException {
    for (List<String> shell :
        List.of(
            List.of("bash", "-n", "completion/ringout.bash"),
            List.of("zsh", "-n", "completion/_ringout"),
            List.of("fish", "-n", "completion/ringout.fish"))) {
      if (isThere(shell.get(0))) {
        Process process =
            new ProcessBuilder(shell)
                .directory(LAUNCHER.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals("0 ", process.waitFor() + " " + said, shell.toString());
      }
    }
  }

  @Test
  void bash_completes_the_commands_that_begin_so() throws IOException, InterruptedException {
    assumeTrue(isThere("bash"));
    String script =
        "source completion/ringout.bash; COMP_WORDS=(ringout re); COMP_CWORD=1; "
            + "_complete_ringout; echo \"${COMPREPLY[@]}\"";
    Process process = new ProcessBuilder("bash", "-c", script).directory(LAUNCHER.toFile()).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals("report review", said.strip());
  }

  private static boolean isThere(String program) {
    return Stream.of(System.getenv().getOrDefault("PATH", "").split(":", -1))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
  }
}

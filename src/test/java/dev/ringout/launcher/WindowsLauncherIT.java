package dev.ringout.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the launcher of Windows leaves behind. The batch file itself can't be run here; what it asks
 * of the program can.
 */
class WindowsLauncherIT {
  private static final Path LIB = Path.of("target/lib").toAbsolutePath();
  private static final Path SAMPLE = Path.of("harness-samples/swing-bridge").toAbsolutePath();

  @TempDir Path folder;

  /** In the place of Windows' own: writes down what it is asked for. */
  @BeforeEach
  void commandInterpreter() throws IOException {
    Path interpreter = folder.resolve("cmd.exe");
    Files.writeString(interpreter, "#!/bin/sh\necho \"$@\" >>\"" + folder + "/asked\"\n");
    Files.setPosixFilePermissions(interpreter, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private Process check(String codePage) throws IOException {
    List<String> command =
        List.of(
            System.getProperty("java.home") + "/bin/java",
            "-Dringout.codePage=" + codePage,
            "-cp",
            LIB.resolve("ringout.jar").toString(),
            "dev.ringout.cli.Main",
            "check",
            SAMPLE.resolve("junction-box.xlsx").toString(),
            SAMPLE.resolve("point-to-point.xlsx").toString(),
            "--json");
    ProcessBuilder builder =
        new ProcessBuilder(new ArrayList<>(command)).redirectError(ProcessBuilder.Redirect.INHERIT);
    builder.environment().put("PATH", folder + ":" + System.getenv("PATH"));
    return builder.start();
  }

  private List<String> asked() throws IOException {
    Path asked = folder.resolve("asked");
    return Files.exists(asked) ? Files.readAllLines(asked) : List.of();
  }

  /** More is printed than a pipe holds: the program waits for a reader, and can't have ended. */
  private static int interruptedWhilePrinting(Process check)
      throws IOException, InterruptedException {
    try (InputStream out = check.getInputStream()) {
      assertNotEquals(-1, out.read());
      check.destroy();
      return check.waitFor();
    }
  }

  @Test
  void interrupted_it_sets_the_window_back_to_its_own_code_page() throws Exception {
    assertNotEquals(1, interruptedWhilePrinting(check("850")));
    assertEquals(List.of("/c chcp 850"), asked());
  }

  @Test
  void at_its_end_it_leaves_the_code_page_to_the_batch_file() throws Exception {
    Process check = check("850");
    try (InputStream out = check.getInputStream()) {
      assertTrue(out.readAllBytes().length > 70_000, "more than a pipe holds");
    }
    assertEquals(1, check.waitFor());
    assertEquals(List.of(), asked());
  }

  @Test
  void where_the_code_page_is_not_known_nothing_is_set() throws Exception {
    for (String none : List.of("", "850 & del x")) {
      interruptedWhilePrinting(check(none));
    }
    assertEquals(List.of(), asked());
  }

  @Test
  void the_batch_file_takes_paths_as_they_are_and_tells_the_program_the_code_page()
      throws IOException {
    List<String> lines = Files.readAllLines(Path.of("target/ringout.bat"));
    assertEquals("setlocal EnableExtensions DisableDelayedExpansion", lines.get(2));
    assertTrue(
        lines.stream()
            .anyMatch(line -> line.contains("\"-Dringout.codePage=%RINGOUT_CODE_PAGE%\"")),
        "the program can set it back");
    assertFalse(lines.stream().anyMatch(line -> line.contains("!RINGOUT")));
  }
}

package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.ringout.support.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A device never ends and a pipe waits for ever: where a file should be, neither is opened. */
class DevicesAndPipesTest {
  private static final Duration FOR_EVER = Duration.ofMinutes(2);

  @TempDir Path folder;
  private Path list;
  private Path sheet;

  @BeforeEach
  void write() throws IOException {
    SmallUnit unit = new SmallUnit(folder);
    list = unit.list();
    sheet = unit.sheet("sheet");
  }

  private Path pipe(String name) throws Exception {
    Path pipe = folder.resolve(name);
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/mkfifo")), "a system with pipes in folders");
    assertEquals(0, new ProcessBuilder("/usr/bin/mkfifo", pipe.toString()).start().waitFor());
    return pipe;
  }

  private Run run(String words, Object what) {
    String[] line =
        words
            .replace("LIST", list.toString())
            .replace("SHEET", sheet.toString())
            .replace("WHAT", what.toString())
            .replace("FOLDER", folder.toString())
            .split(" ", -1);
    return assertTimeoutPreemptively(FOR_EVER, () -> Run.of((Object[]) line));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check WHAT SHEET",
        "check LIST WHAT",
        "check LIST SHEET --tables WHAT",
        "check unit:1 --store WHAT",
        "import WHAT",
        "import LIST/wires.csv --profile WHAT",
        "import LIST/wires.csv --words WHAT",
        "report LIST SHEET -o FOLDER/r.html --waivers WHAT",
        "report LIST SHEET -o FOLDER/r.html --seal WHAT",
        "report LIST SHEET -o FOLDER/r.html --continues WHAT",
        "report --verify WHAT",
        "report --verify FOLDER/sealed.html --key WHAT",
        "store migrate --store WHAT",
        "asfound WHAT",
        "plan LIST --after WHAT",
        "diff WHAT LIST",
        "lot LIST WHAT",
        "meters --try 127.0.0.1:1 --profile WHAT"
      })
  void it_is_refused_whatever_it_is_given_as(String words) throws Exception {
    run("report LIST SHEET -o FOLDER/sealed.html", "");
    for (Path what : new Path[] {pipe("pipe"), Path.of("/dev/zero")}) {
      Run run = run(words, what);
      assertTrue(run.code() >= ExitCode.USAGE && run.code() != ExitCode.DEFECT, run.toString());
    }
  }

  /** "Disk full" would send somebody to look in the wrong place. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "units --store WHAT",
        "store check --store WHAT",
        "store migrate --store WHAT",
        "store copy WHAT FOLDER/copy.db",
        "people list --store WHAT",
        "report unit:1 -o FOLDER/r.html --store WHAT"
      })
  void as_a_store_it_is_called_what_it_is(String words) throws Exception {
    for (Path what : new Path[] {pipe("pipe"), Path.of("/dev/zero")}) {
      Run run = run(words, what);
      assertEquals(ExitCode.MISSING_INPUT, run.code(), run.toString());
      assertTrue(run.err().contains("is a device or a pipe, not a file"), run.err());
    }
  }

  /** A record that came in a folder: its seal, or itself, may be anything. */
  @ParameterizedTest
  @ValueSource(strings = {"sealed.html", "sealed.html.seal", "sheet/continuity.csv"})
  void it_is_not_opened_either_where_a_seal_leads_to_it(String name) throws Exception {
    run("report LIST SHEET -o FOLDER/sealed.html", "");
    Files.delete(folder.resolve(name));
    pipe(name);
    Run run = run("report --verify FOLDER/sealed.html", "");
    assertTrue(run.code() != ExitCode.DONE && run.code() != ExitCode.DEFECT, run.toString());
  }

  /** {@code --passphrase <(show-the-secret)}, as a shell has it. */
  @Test
  void a_passphrase_may_come_through_a_pipe_and_a_device_is_none() throws Exception {
    Path pipe = pipe("secret");
    Thread writer = new Thread(() -> writeTo(pipe));
    writer.start();
    Run made = run("report --new-key FOLDER/key --passphrase WHAT", pipe);
    writer.join();
    assertEquals(ExitCode.DONE, made.code(), made.err());
    Path file = Files.writeString(folder.resolve("pass"), "swing bridge");
    Run sealed =
        run("report LIST SHEET -o FOLDER/r.html --seal FOLDER/key --passphrase WHAT", file);
    assertTrue(sealed.code() <= ExitCode.INCOMPLETE, sealed.err());
    Run endless = run("report --new-key FOLDER/other --passphrase WHAT", "/dev/zero");
    assertEquals(ExitCode.USAGE, endless.code(), endless.err());
  }

  private static void writeTo(Path pipe) {
    try {
      Files.writeString(pipe, "swing bridge\n");
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}

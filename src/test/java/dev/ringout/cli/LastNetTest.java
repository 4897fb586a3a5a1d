package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.ringout.support.Run;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever goes wrong in the program itself is one line and 70 in every command, and never a page
 * of stack traces or a code that means something else.
 */
class LastNetTest {
  private static final String BOX = "harness-samples/swing-bridge/junction-box.xlsx";
  private static final String SHEET = "harness-samples/swing-bridge/point-to-point.xlsx";

  private static final String AS_RECEIVED =
      "harness-samples/swing-bridge/as-received/cable-schedule.ods";

  @TempDir static Path folder;

  @BeforeAll
  static void fill() {
    assertEquals(0, Run.of("store", "add", BOX, SHEET, "--store", store()).code());
    Run.of("report", BOX, SHEET, "-o", folder.resolve("record.html"));
  }

  private static Path store() {
    return folder.resolve("bench.db");
  }

  /** A run of each command that prints something, and of each way in which it prints it. */
  static Stream<List<String>> runs() {
    String store = " --store " + store();
    return Stream.of(
            "asfound " + SHEET,
            "bench --no-browser" + store,
            "check " + BOX + " " + SHEET,
            "check " + BOX + " " + SHEET + " --json",
            "check unit:0418" + store,
            "diff " + BOX + " " + BOX,
            "diff " + BOX + " " + BOX + " --json",
            "found " + BOX + " --help",
            "import " + AS_RECEIVED,
            "import " + AS_RECEIVED + " --json",
            "lot " + BOX + " " + SHEET,
            "meters",
            "meters --json",
            "plan " + BOX,
            "plan " + BOX + " --json",
            "report --verify " + folder.resolve("record.html"),
            "report --new-key " + folder.resolve("key") + " --force",
            "review " + BOX,
            "review " + BOX + " --json",
            "store add " + BOX + " " + SHEET + store,
            "store check" + store,
            "store check --json" + store,
            "store copy " + store() + " " + folder.resolve("copy.db"),
            "people list" + store,
            "trace " + BOX + " J1-A",
            "trace " + BOX + " J1-A --json",
            "units" + store,
            "units 0418 --json" + store,
            "work " + BOX)
        .map(words -> List.of(words.split(" ", -1)));
  }

  /** Nothing can be printed, for the stack or the memory is at its end just then. */
  private static Run failing(List<String> words, Supplier<Error> what) {
    OutputStream broken =
        new OutputStream() {
          @Override
          public void write(int one) {
            throw what.get();
          }
        };
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code =
        Main.run(
            new PrintStream(broken, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            false,
            words.toArray(String[]::new));
    return new Run(code, "", err.toString(StandardCharsets.UTF_8));
  }

  private static void assertOneLine(Run run, String begin) {
    assertEquals(ExitCode.DEFECT, run.code(), run.err());
    List<String> lines = run.err().lines().toList();
    assertTrue(lines.get(lines.size() - 1).startsWith(begin), run.err());
    assertEquals(1, lines.stream().filter(line -> line.startsWith("ringout: ")).count(), run.err());
    assertFalse(run.err().contains("\tat "), run.err());
  }

  @ParameterizedTest
  @MethodSource("runs")
  void a_stack_at_its_end_is_one_line_and_no_verdict(List<String> words) {
    assertOneLine(
        failing(words, StackOverflowError::new),
        "ringout: a defect in ringout itself, not in your files: java.lang.StackOverflowError");
  }

  @ParameterizedTest
  @MethodSource("runs")
  void memory_at_its_end_is_one_line_with_what_helps(List<String> words) {
    assertOneLine(
        failing(words, () -> new OutOfMemoryError("Java heap space")),
        "ringout: out of memory; give Java more with RINGOUT_JAVA_OPTS=-Xmx2g");
  }

  /** A command that is new has a run here. */
  @Test
  void no_command_is_left_out() {
    Set<String> tried = new TreeSet<>();
    runs().forEach(words -> tried.add(words.get(0)));
    Set<String> all = new TreeSet<>();
    Pattern.compile("(?m)^  ([a-z]+) ")
        .matcher(Run.of("--help").out())
        .results()
        .forEach(found -> all.add(found.group(1)));
    assertEquals(all, tried);
  }

  /** What a thread of its own throws reaches nobody who waits for it. */
  @Test
  void a_thread_beside_the_command_ends_in_one_line_too() throws Exception {
    List<String> command =
        new ArrayList<>(
            List.of(
                System.getProperty("java.home") + "/bin/java",
                "-cp",
                System.getProperty("java.class.path"),
                ThreadThatFails.class.getName()));
    Process process = new ProcessBuilder(command).start();
    String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    assertTrue(err.startsWith("ringout: a defect in ringout itself"), err);
    assertEquals(1, err.lines().count(), err);
  }

  /** The program, beside which a thread fails that it does not know. */
  static final class ThreadThatFails {
    private ThreadThatFails() {}

    /** As the launcher starts it; what it prints waits until the thread has failed. */
    public static void main(String[] args) throws InterruptedException {
      Thread program = new Thread(() -> Main.main(new String[] {"--help"}));
      Runtime.getRuntime().addShutdownHook(new Thread(ThreadThatFails::fail));
      program.start();
      program.join();
    }

    private static void fail() {
      Thread failing =
          new Thread(
              () -> {
                throw new StackOverflowError();
              });
      failing.start();
      try {
        failing.join();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
  }
}

package dev.ringout.benchmarks.damage;

import dev.ringout.cli.Main;
import dev.ringout.support.Folders;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;

/** Runs of the command line in the same process, and what broke in them. */
final class Runs {
  private static final Set<Integer> CODES = Set.of(0, 1, 2, 64, 65, 66, 73);
  private static final long MOST_SECONDS = 10;

  /** The machine does other things too: what counts is the thread's own time. */
  private static final long PATIENCE_SECONDS = 1200;

  private final Path folder;
  private final Map<String, Integer> finds = new TreeMap<>();
  private final Map<String, Integer> codes = new TreeMap<>();
  private long longest;
  private int count;

  Runs(Path folder) {
    this.folder = folder;
  }

  /** A run: its exit code and what it printed. */
  record Ran(int code, String out, String err) {}

  Ran run(Path work, String... command) throws IOException, InterruptedException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int[] code = {-1};
    long[] took = {0};
    Thread thread =
        new Thread(
            () -> {
              code[0] =
                  Main.run(
                      new PrintStream(out, true, StandardCharsets.UTF_8),
                      new PrintStream(err, true, StandardCharsets.UTF_8),
                      false,
                      command);
              took[0] = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            });
    thread.setDaemon(true);
    thread.start();
    await(thread);
    count++;
    Ran ran = new Ran(code[0], text(out), text(err));
    long seconds = TimeUnit.NANOSECONDS.toSeconds(took[0]);
    longest = Math.max(longest, TimeUnit.NANOSECONDS.toMillis(took[0]));
    codes.merge(command[0] + " " + ran.code(), 1, Integer::sum);
    if (thread.isAlive() || seconds >= MOST_SECONDS) {
      keep(work, "more than " + MOST_SECONDS + " s", command);
    } else if (!CODES.contains(ran.code())) {
      keep(work, "code " + ran.code() + ": " + ran.err(), command);
    }
    return ran;
  }

  /** Waits until it ends, takes thrice what it may, or waits for something that never comes. */
  private static void await(Thread thread) throws InterruptedException {
    for (int i = 0; i < PATIENCE_SECONDS && thread.isAlive(); i++) {
      thread.join(TimeUnit.SECONDS.toMillis(1));
      long nanos = ManagementFactory.getThreadMXBean().getThreadCpuTime(thread.getId());
      if (TimeUnit.NANOSECONDS.toSeconds(nanos) >= 3 * MOST_SECONDS) {
        return;
      }
    }
  }

  /** A run without which there is nothing to damage. */
  void must(Path work, String... command) throws IOException, InterruptedException {
    Ran ran = run(work, command);
    if (ran.code() > 2) {
      throw new IOException(String.join(" ", command) + " ended with " + ran);
    }
  }

  /** Counts what is no run of the command line. */
  void counted(String what) {
    count++;
    codes.merge(what, 1, Integer::sum);
  }

  private static String text(ByteArrayOutputStream bytes) {
    return bytes.toString(StandardCharsets.UTF_8);
  }

  /** Keeps what broke with its files. */
  void keep(Path work, String what, String... command) throws IOException {
    String find = command[0] + ": " + what.replaceAll("\\s+", " ").replace(work.toString(), "");
    find = find.substring(0, Math.min(240, find.length())).replaceAll("[0-9]{2,}", "#");
    if (finds.merge(find, 1, Integer::sum) == 1) {
      Path kept = Files.createDirectories(folder).resolve("find-" + finds.size());
      Folders.copy(work, kept);
      Files.writeString(kept.resolve("command.txt"), String.join(" ", command) + "\n" + what);
    }
  }

  /** Prints what was found; whether that is nothing. */
  boolean told(PrintStream to) {
    to.println(count + " runs, the longest " + longest + " ms; " + codes);
    finds.forEach((find, times) -> to.println(times + " × " + find));
    return finds.isEmpty();
  }
}

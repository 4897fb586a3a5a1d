package dev.ringout.launcher;

import dev.ringout.cli.Main;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * Several runs of the packaged program in one process of Java: each line of a file is a code, a tab
 * and the words of a run with tabs between. Tells which runs end otherwise.
 */
final class ManyRuns {
  private ManyRuns() {}

  public static void main(String[] args) throws IOException {
    boolean otherwise = false;
    for (String line : Files.readAllLines(Path.of(args[0]))) {
      String[] run = line.split("\t", -1);
      String[] words = Arrays.copyOfRange(run, 1, run.length);
      ByteArrayOutputStream said = new ByteArrayOutputStream();
      PrintStream err = new PrintStream(said, true, StandardCharsets.UTF_8);
      int code =
          Main.run(
              new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
              err,
              false,
              words);
      if (code != Integer.parseInt(run[0])) {
        otherwise = true;
        System.err.println(
            code + " and not " + line + "\n" + said.toString(StandardCharsets.UTF_8));
      }
    }
    if (otherwise) {
      System.exit(1);
    }
  }
}

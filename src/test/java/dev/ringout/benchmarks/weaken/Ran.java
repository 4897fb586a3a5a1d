package dev.ringout.benchmarks.weaken;

import dev.ringout.cli.Main;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A run of the command line. */
record Ran(int code, String out, String err) {
  static final int CONFORMS = 0;
  static final int FAULTS = 1;
  static final int INCOMPLETE = 2;
  static final int REFUSED = 65;

  static Ran of(List<String> words) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code =
        Main.run(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            false,
            words.toArray(String[]::new));
    return new Ran(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}

package dev.ringout.support;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;

/** Programs that others made, where they are installed. */
public final class Installed {
  private Installed() {}

  /** Whether a command runs and ends well. */
  public static boolean isThere(String... command) {
    try {
      Process run =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      return run.waitFor(20, TimeUnit.SECONDS) && run.exitValue() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /** What a command prints. */
  public static String run(String... command) throws IOException, InterruptedException {
    Process run = new ProcessBuilder(command).redirectErrorStream(true).start();
    String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    run.waitFor();
    return said;
  }
}

package dev.ringout.jobs;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The name and version that the build writes beside the classes. */
public final class Program {
  private Program() {}

  /** Such as "ringout 0.1.0": the same on the class path and on the module path. */
  public static String text() {
    try (InputStream version = Program.class.getResourceAsStream("version.txt")) {
      if (version == null) {
        throw new IllegalStateException("the build has left out version.txt");
      }
      return "ringout " + new String(version.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

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
    // On the class path the jar says it, which is read already; no module has it from there.
    String ofJar = Program.class.getPackage().getImplementationVersion();
    return "ringout " + (ofJar == null ? ofFile() : ofJar);
  }

  private static String ofFile() {
    try (InputStream version = Program.class.getResourceAsStream("version.txt")) {
      if (version == null) {
        throw new IllegalStateException("the build has left out version.txt");
      }
      return new String(version.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

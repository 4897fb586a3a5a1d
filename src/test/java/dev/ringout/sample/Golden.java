package dev.ringout.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Expected output kept in files. With {@code -Dringout.updateGolden=true} the file is written anew
 * and the test still fails: every update is a difference that someone reads.
 */
public final class Golden {
  private static final Path FOLDER = Path.of("src/test/resources/golden");

  private Golden() {}

  /** Compares with what is kept. */
  public static void assertMatches(String name, String actual) throws IOException {
    Path file = FOLDER.resolve(name);
    if (Boolean.getBoolean("ringout.updateGolden")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, actual);
      fail(name + " was written anew; read the difference and run again");
    }
    assertEquals(Files.readString(file), actual);
  }
}

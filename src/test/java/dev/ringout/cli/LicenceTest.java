package dev.ringout.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The licence is one text, wherever it stands. */
class LicenceTest {
  @Test
  void the_page_holds_the_licence_that_is_in_the_program() throws IOException {
    String inside = Files.readString(Path.of("src/main/resources/META-INF/LICENSE.txt"));
    assertTrue(Files.readString(Path.of("docs/licence.md")).contains(inside.stripTrailing()));
  }
}

package dev.ringout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What compilers newer than that of the build refuse: the sources are built by JDK 17 to 25. */
class SourcesTest {
  private static final Pattern COMMENT_BEFORE_A_COMMENT = Pattern.compile("\\*/\\s+/\\*\\*");

  /** From JDK 23 on a warning, and a warning is an error. */
  @Test
  void a_comment_stands_before_what_it_is_about() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src"))) {
      List<Path> astray =
          files
              .filter(file -> file.toString().endsWith(".java"))
              .filter(file -> COMMENT_BEFORE_A_COMMENT.matcher(text(file)).find())
              .toList();
      assertEquals(List.of(), astray);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

package dev.ringout.diagnose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import dev.ringout.sample.Told;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Units worked out by hand and what is told of them, page by page; common practice, no source. As
 * with the other golden files {@code -Dringout.updateGolden=true} writes the pages anew and fails.
 */
class ToldTest {
  private static final Path FOLDER = Path.of("src/test/resources/diagnoses");

  @TempDir Path folder;

  static List<Path> pages() throws IOException {
    try (Stream<Path> pages = Files.list(FOLDER)) {
      return pages.sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("pages")
  void a_unit_is_told_as_its_page_says(Path page) throws IOException {
    List<ToldCase> cases = ToldCase.read(page);
    List<String> now =
        cases.stream()
            .map(one -> one.written(Told.of(one.check(folder.resolve("" + cases.indexOf(one))))))
            .toList();
    if (Boolean.getBoolean("ringout.updateGolden")) {
      Files.writeString(page, String.join("", now));
      fail(page + " was written anew; read the difference and run again");
    }
    assertEquals(
        cases.stream().map(one -> one.written(one.told())).collect(Collectors.joining()),
        String.join("", now));
  }
}

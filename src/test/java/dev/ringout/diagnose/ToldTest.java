package dev.ringout.diagnose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import dev.ringout.sample.Told;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

  static Stream<ToldCase> cases() throws IOException {
    try (Stream<Path> pages = Files.list(FOLDER)) {
      return pages.sorted().toList().stream().flatMap(page -> ToldCase.read(page).stream());
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void a_unit_is_told_as_its_page_says(ToldCase one) throws IOException {
    String told = Told.of(one.check(folder));
    if (Boolean.getBoolean("ringout.updateGolden")) {
      StringBuilder page = new StringBuilder();
      for (ToldCase on : ToldCase.read(one.file())) {
        page.append(on.written(on.name().equals(one.name()) ? told : on.told()));
      }
      Files.writeString(one.file(), page);
      fail(one + " was written anew; read the difference and run again");
    }
    assertEquals(one.told(), told);
  }
}

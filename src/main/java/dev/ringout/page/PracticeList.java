package dev.ringout.page;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

/** The list to practise on: a swing bridge's control junction box and its cables. */
public final class PracticeList {
  private static final String NAME = "junction-box.xlsx";

  private PracticeList() {}

  /**
   * Its file in a folder; one that is there already stays as it is.
   *
   * @throws IOException where it can't be written
   */
  public static Path in(Path folder) throws IOException {
    Path file = folder.resolve(NAME);
    if (!Files.exists(file)) {
      Files.createDirectories(folder);
      try (InputStream in =
          Objects.requireNonNull(PracticeList.class.getResourceAsStream(NAME), NAME)) {
        Files.copy(in, file);
      }
    }
    return file;
  }
}

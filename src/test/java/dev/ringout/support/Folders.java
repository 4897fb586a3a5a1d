package dev.ringout.support;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.stream.Stream;

/** Whole folders. */
public final class Folders {
  private Folders() {}

  /** Copies a folder, or a file, with all that is in it. */
  public static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path one : all.toList()) {
        Path target = to.resolve(from.relativize(one).toString());
        if (Files.isDirectory(one)) {
          Files.createDirectories(target);
        } else {
          Files.copy(one, target);
        }
      }
    }
  }

  /** Deletes a folder and all that is in it. */
  public static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path one : all.sorted(Collections.reverseOrder()).toList()) {
        Files.deleteIfExists(one);
      }
    }
  }
}

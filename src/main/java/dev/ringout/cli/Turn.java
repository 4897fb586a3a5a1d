package dev.ringout.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;

/**
 * The turn of one run to put files in their places that belong together: of two at once each would
 * else leave half of its own. It is held by a file beside the first, for as long as renaming takes.
 */
final class Turn {
  private static final Duration PAUSE = Duration.ofMillis(20);
  private static final Duration LONGEST_WAIT = Duration.ofSeconds(20);

  /** Nobody takes so long to rename files: who holds it has been killed. */
  private static final Duration DEAD = Duration.ofSeconds(10);

  private Turn() {}

  /** What is done when it is one's turn. */
  interface Work {
    void run() throws IOException;
  }

  /**
   * Waits for the turn at a file, and does the work.
   *
   * @throws IOException where others have it for too long, or nothing can be written there
   */
  static void at(Path to, Work work) throws IOException {
    Path file = to.toAbsolutePath().resolveSibling("." + to.getFileName() + ".turn");
    take(file);
    try {
      work.run();
    } finally {
      Files.deleteIfExists(file);
    }
  }

  private static void take(Path file) throws IOException {
    long end = System.nanoTime() + LONGEST_WAIT.toNanos();
    while (true) {
      try {
        Files.createFile(file);
        return;
      } catch (FileAlreadyExistsException e) {
        if (System.nanoTime() > end) {
          throw new IOException("another run is writing it; if there is none, delete " + file);
        }
        takeFromDead(file);
        pause();
      }
    }
  }

  private static void takeFromDead(Path file) throws IOException {
    try {
      Instant since = Files.getLastModifiedTime(file, LinkOption.NOFOLLOW_LINKS).toInstant();
      if (since.plus(DEAD).isBefore(Instant.now())) {
        Files.deleteIfExists(file);
      }
    } catch (NoSuchFileException e) {
      // It has just been given back.
      return;
    }
  }

  private static void pause() throws IOException {
    try {
      Thread.sleep(PAUSE.toMillis());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted", e);
    }
  }
}

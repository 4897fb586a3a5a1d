package dev.ringout.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Optional;

/**
 * The turn of one run to put files in their places that belong together: of two at once each would
 * else leave half of its own. It is held by a file beside the first, for as long as renaming takes.
 */
final class Turn {
  private static final int PAUSE_MILLIS = 20;
  private static final int MOST_PAUSES = 1500;

  /** Nobody takes three seconds to rename files: who has held it so long has been killed. */
  private static final int PAUSES_OF_THE_LIVING = 150;

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
    Optional<FileTime> since = Optional.empty();
    int sameFor = 0;
    for (int pauses = 0; pauses < MOST_PAUSES; pauses++) {
      try {
        Files.createFile(file);
        return;
      } catch (FileAlreadyExistsException e) {
        Optional<FileTime> now = made(file);
        sameFor = now.equals(since) ? sameFor + 1 : 0;
        since = now;
        if (sameFor > PAUSES_OF_THE_LIVING) {
          Files.deleteIfExists(file);
        }
        pause();
      }
    }
    throw new IOException("another run is writing it; if there is none, delete " + file);
  }

  /** When the file was made that holds the turn; absent where it has just been given back. */
  private static Optional<FileTime> made(Path file) throws IOException {
    try {
      return Optional.of(Files.getLastModifiedTime(file, LinkOption.NOFOLLOW_LINKS));
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
  }

  private static void pause() throws IOException {
    try {
      Thread.sleep(PAUSE_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted", e);
    }
  }
}

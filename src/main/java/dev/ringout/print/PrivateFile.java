package dev.ringout.print;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A file for a library that takes nothing else, in a folder of its own that no other user can look
 * into or has made before. The folder bears the number of the process: what one that was killed has
 * left is taken away by the next.
 *
 * @param path the file
 */
record PrivateFile(Path path) implements Closeable {
  private static final String PREFIX = "ringout-";
  private static final Pattern OF_PROCESS = Pattern.compile(PREFIX + "([0-9]{1,18})-.*");

  static PrivateFile of(Supplier<InputStream> content) throws IOException {
    Path folder = Files.createTempDirectory(PREFIX + ProcessHandle.current().pid() + "-");
    takeAwayLeftovers(folder);
    PrivateFile file = new PrivateFile(folder.resolve("file"));
    try (InputStream in = content.get()) {
      Files.copy(in, file.path());
      return file;
    } catch (IOException e) {
      file.close();
      throw e;
    }
  }

  private static void takeAwayLeftovers(Path own) throws IOException {
    Path all = own.toAbsolutePath().getParent();
    if (all == null) {
      return;
    }
    try (Stream<Path> folders = Files.list(all)) {
      for (Path folder : folders.filter(one -> isOfNobody(one, own)).toList()) {
        delete(folder);
      }
    } catch (IOException e) {
      // Somebody else clears up at the same time, or the folder may not be listed: no harm.
      return;
    }
  }

  /** Whether a folder is this user's, and of a process that is no more. */
  private static boolean isOfNobody(Path folder, Path own) {
    Matcher process = OF_PROCESS.matcher(String.valueOf(folder.getFileName()));
    try {
      return process.matches()
          && Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)
          && Files.getOwner(folder, LinkOption.NOFOLLOW_LINKS).equals(Files.getOwner(own))
          && ProcessHandle.of(Long.parseLong(process.group(1))).isEmpty();
    } catch (IOException | UnsupportedOperationException e) {
      return false;
    }
  }

  private static void delete(Path folder) throws IOException {
    List<Path> inside;
    try (Stream<Path> files = Files.list(folder)) {
      inside = files.toList();
    }
    for (Path file : inside) {
      Files.deleteIfExists(file);
    }
    Files.deleteIfExists(folder);
  }

  @Override
  public void close() throws IOException {
    Path folder = path.toAbsolutePath().getParent();
    if (folder != null) {
      delete(folder);
    }
  }
}

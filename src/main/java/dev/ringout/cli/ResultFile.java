package dev.ringout.cli;

import static java.nio.file.StandardOpenOption.CREATE_NEW;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A result on its way: made whole beside its place, under a name that nobody knows before, and then
 * put there. It takes the place of nothing but a file or a folder like itself: what a link leads
 * to, a device or a pipe is nobody's earlier result.
 */
final class ResultFile {
  private static final int UNGUESSABLE_BYTES = 8;

  private final Path to;
  private final Path beside;
  private final boolean folder;
  private final Maker maker;

  /** Makes a file or a folder at a place where there is nothing. */
  private interface Maker {
    void make(Path beside) throws IOException;
  }

  private ResultFile(Path to, boolean folder, Maker maker) {
    this.to = to;
    this.beside = beside(to);
    this.folder = folder;
    this.maker = maker;
  }

  /**
   * A file. It is made here and written through no second name, so that in a folder of many people
   * nobody can lead it elsewhere.
   *
   * @param rights with which it is made; none: those that every file is made with
   */
  static ResultFile file(Path to, Output.Content content, FileAttribute<?>... rights) {
    return new ResultFile(
        to,
        false,
        beside -> {
          try (OutputStream out =
              new BufferedOutputStream(
                  Channels.newOutputStream(
                      Files.newByteChannel(beside, Set.of(CREATE_NEW, WRITE), rights)))) {
            content.writeTo(out);
          }
        });
  }

  /** A folder, which its content makes. */
  static ResultFile folder(Path to, Output.FolderContent content) {
    return new ResultFile(to, true, content::writeTo);
  }

  Path to() {
    return to;
  }

  private static Path beside(Path to) {
    byte[] random = new byte[UNGUESSABLE_BYTES];
    new SecureRandom().nextBytes(random);
    return to.toAbsolutePath()
        .resolveSibling(".ringout" + HexFormat.of().formatHex(random) + ".part");
  }

  /** Makes it beside its place. */
  void make(boolean overExisting) throws IOException {
    checkPlace(overExisting);
    maker.make(beside);
  }

  /** Refuses a place where something stands that it can't take the place of. */
  void checkPlace(boolean overExisting) throws IOException {
    if (!Files.exists(to, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (Files.isSymbolicLink(to)) {
      throw new IOException("it is a link; name the file itself");
    }
    boolean isFolder = Files.isDirectory(to, LinkOption.NOFOLLOW_LINKS);
    if (!isFolder && !Files.isRegularFile(to, LinkOption.NOFOLLOW_LINKS)) {
      throw new IOException("it is a device or a pipe, not a file");
    }
    if (!overExisting) {
      throw new FileAlreadyExistsException(to.toString());
    }
    if (isFolder != folder) {
      throw new IOException(isFolder ? "it is a folder" : "it is a file, not a folder");
    }
  }

  /** Puts what was made in its place. */
  void put(boolean overExisting) throws IOException {
    checkPlace(overExisting);
    if (Files.isDirectory(to, LinkOption.NOFOLLOW_LINKS)) {
      replaceFiles(beside, to);
    } else if (overExisting) {
      Files.move(beside, to, StandardCopyOption.REPLACE_EXISTING);
    } else {
      moveToNothing(beside, to);
    }
  }

  /** A link can be made only where there is nothing, whoever writes there at the same time. */
  private static void moveToNothing(Path beside, Path to) throws IOException {
    if (Files.isRegularFile(beside, LinkOption.NOFOLLOW_LINKS)) {
      try {
        Files.createLink(to, beside);
        return;
      } catch (FileAlreadyExistsException e) {
        throw new FileAlreadyExistsException(to.toString());
      } catch (IOException | UnsupportedOperationException e) {
        // Not every file system has links: those of USB sticks do not.
        Files.move(beside, to);
        return;
      }
    }
    Files.move(beside, to);
  }

  /** Files of the folder that the result does not have stay: they are the user's. */
  private static void replaceFiles(Path from, Path to) throws IOException {
    try (Stream<Path> made = Files.list(from)) {
      List<Path> files = made.toList();
      for (Path file : files) {
        Path old = to.resolve(file.getFileName());
        if (Files.exists(old, LinkOption.NOFOLLOW_LINKS)
            && !Files.isRegularFile(old, LinkOption.NOFOLLOW_LINKS)) {
          throw new IOException(file.getFileName() + " in it is not a file");
        }
      }
      for (Path file : files) {
        Files.move(file, to.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
      }
    }
  }

  /** Takes away what is left beside its place; what can't be is named as unfinished. */
  void clean() {
    try {
      if (Files.isDirectory(beside, LinkOption.NOFOLLOW_LINKS)) {
        try (Stream<Path> files = Files.list(beside)) {
          for (Path path : files.toList()) {
            Files.delete(path);
          }
        }
      }
      Files.deleteIfExists(beside);
    } catch (IOException e) {
      // It bears the name of what is unfinished, and the result has been told.
      return;
    }
  }
}

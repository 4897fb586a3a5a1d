package dev.ringout.cli;

import static java.nio.file.StandardOpenOption.CREATE_NEW;
import static java.nio.file.StandardOpenOption.WRITE;

import dev.ringout.jobs.Answer;
import dev.ringout.words.ProblemText;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.channels.Channels;
import java.nio.charset.StandardCharsets;
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
 * Where results and messages go.
 *
 * @param terminal whether results go to a terminal, which may show colours
 */
record Output(PrintStream out, PrintStream err, boolean terminal) {
  private static final int UNGUESSABLE_BYTES = 8;

  /** Whether colours are shown unless asked for: on a terminal alone, and not against NO_COLOR. */
  boolean showsColour() {
    return terminal && System.getenv("NO_COLOR") == null;
  }

  /**
   * Writes a file beside its place and renames it, so that a crash leaves no half file.
   *
   * @return {@link ExitCode#DONE}, or {@link ExitCode#CANNOT_WRITE} with the reason said
   */
  int write(Path file, String text, boolean overExisting) {
    return write(file, out -> out.write(text.getBytes(StandardCharsets.UTF_8)), overExisting);
  }

  /** Says why a job has no result; gives the exit code. */
  int refuse(Answer.Refused<?> answer) {
    err.print(ProblemText.write(answer.problems()));
    return answer.missing() ? ExitCode.MISSING_INPUT : ExitCode.NOT_UNDERSTOOD;
  }

  /** A result that is written to a file. */
  interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  /** A result that is a folder, which it makes. */
  interface FolderContent {
    void writeTo(Path folder) throws IOException;
  }

  /**
   * Writes a file beside its place and renames it. The file beside it is made here and written
   * through no second name, so that in a folder of many people nobody can lead it elsewhere.
   *
   * @return {@link ExitCode#DONE}, or {@link ExitCode#CANNOT_WRITE} with the reason said
   */
  int write(Path file, Content content, boolean overExisting) {
    return write(file, content, overExisting, List.of());
  }

  /** The same for a file that only its owner may read. */
  int writeSecret(Path file, Content content, boolean overExisting) {
    return write(file, content, overExisting, Secret.rights());
  }

  private int write(
      Path file, Content content, boolean overExisting, List<FileAttribute<?>> rights) {
    return write(
        file,
        overExisting,
        beside -> {
          try (OutputStream out =
              new BufferedOutputStream(
                  Channels.newOutputStream(
                      Files.newByteChannel(
                          beside,
                          Set.of(CREATE_NEW, WRITE),
                          rights.toArray(FileAttribute[]::new))))) {
            content.writeTo(out);
          }
        });
  }

  /**
   * Writes a folder beside its place and renames it.
   *
   * @return {@link ExitCode#DONE}, or {@link ExitCode#CANNOT_WRITE} with the reason said
   */
  int writeFolder(Path folder, FolderContent content, boolean overExisting) {
    return write(folder, overExisting, content);
  }

  private int write(Path to, boolean overExisting, FolderContent content) {
    try {
      if (Files.exists(to) && !overExisting) {
        throw new FileAlreadyExistsException(to.toString());
      }
      Path beside = beside(to);
      try {
        content.writeTo(beside);
        if (Files.isDirectory(to) && !Files.isSymbolicLink(to)) {
          replaceFiles(beside, to);
        } else if (overExisting) {
          Files.move(beside, to, StandardCopyOption.REPLACE_EXISTING);
        } else {
          moveToNothing(beside, to);
        }
      } finally {
        deleteAll(beside);
      }
      return ExitCode.DONE;
    } catch (FileAlreadyExistsException e) {
      err.println("ringout: " + to + " exists; write over it with --force");
    } catch (IOException e) {
      err.println("ringout: " + to + " can't be written: " + e.getMessage());
    }
    return ExitCode.CANNOT_WRITE;
  }

  /** A name that nobody knows before. */
  private static Path beside(Path to) {
    byte[] random = new byte[UNGUESSABLE_BYTES];
    new SecureRandom().nextBytes(random);
    return to.toAbsolutePath()
        .resolveSibling(".ringout" + HexFormat.of().formatHex(random) + ".part");
  }

  /** A link can be made only where there is nothing, whoever writes there at the same time. */
  private static void moveToNothing(Path beside, Path to) throws IOException {
    if (Files.isRegularFile(beside, LinkOption.NOFOLLOW_LINKS)) {
      try {
        Files.createLink(to, beside);
        return;
      } catch (FileAlreadyExistsException e) {
        throw e;
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
    if (!Files.isDirectory(from)) {
      throw new IOException("it is a folder");
    }
    try (Stream<Path> files = Files.list(from)) {
      for (Path path : files.toList()) {
        Files.move(path, to.resolve(path.getFileName()), StandardCopyOption.REPLACE_EXISTING);
      }
    }
  }

  private static void deleteAll(Path beside) throws IOException {
    if (Files.isDirectory(beside, LinkOption.NOFOLLOW_LINKS)) {
      try (Stream<Path> files = Files.list(beside)) {
        for (Path path : files.toList()) {
          Files.delete(path);
        }
      }
    }
    Files.deleteIfExists(beside);
  }
}

package dev.ringout.cli;

import dev.ringout.jobs.Answer;
import dev.ringout.words.ProblemText;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.stream.Stream;

/**
 * Where results and messages go.
 *
 * @param terminal whether results go to a terminal, which may show colours
 */
record Output(PrintStream out, PrintStream err, boolean terminal) {

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
    return write(
        file, beside -> Files.writeString(beside, text, StandardCharsets.UTF_8), overExisting);
  }

  /** Says why a job has no result; gives the exit code. */
  int refuse(Answer.Refused<?> answer) {
    err.print(ProblemText.write(answer.problems()));
    return answer.missing() ? ExitCode.MISSING_INPUT : ExitCode.NOT_UNDERSTOOD;
  }

  /** Puts a result into a file, or into a folder that it makes. */
  interface Content {
    void writeTo(Path beside) throws IOException;
  }

  /**
   * Writes a file, or a folder where the content makes one, beside its place and renames it.
   *
   * @return {@link ExitCode#DONE}, or {@link ExitCode#CANNOT_WRITE} with the reason said
   */
  int write(Path file, Content content, boolean overExisting) {
    try {
      if (Files.exists(file) && !overExisting) {
        throw new FileAlreadyExistsException(file.toString());
      }
      Path folder = file.toAbsolutePath().getParent();
      Path beside = Files.createTempFile(folder, ".ringout", ".part");
      Files.delete(beside);
      try {
        content.writeTo(beside);
        if (Files.isDirectory(file) && !Files.isSymbolicLink(file)) {
          replaceFiles(beside, file);
        } else {
          Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
        }
      } finally {
        deleteAll(beside);
      }
      return ExitCode.DONE;
    } catch (FileAlreadyExistsException e) {
      err.println("ringout: " + file + " exists; write over it with --force");
    } catch (IOException e) {
      err.println("ringout: " + file + " can't be written: " + e.getMessage());
    }
    return ExitCode.CANNOT_WRITE;
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
    if (Files.isDirectory(beside)) {
      try (Stream<Path> files = Files.list(beside)) {
        for (Path path : files.toList()) {
          Files.delete(path);
        }
      }
    }
    Files.deleteIfExists(beside);
  }
}

package dev.ringout.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Where results and messages go.
 *
 * @param terminal whether results go to a terminal, which may show colours
 */
record Output(PrintStream out, PrintStream err, boolean terminal) {

  /**
   * Writes a file beside its place and renames it, so that a crash leaves no half file.
   *
   * @return {@link ExitCode#DONE}, or {@link ExitCode#CANNOT_WRITE} with the reason said
   */
  int write(Path file, String text, boolean overExisting) {
    try {
      if (Files.exists(file) && !overExisting) {
        throw new FileAlreadyExistsException(file.toString());
      }
      Path folder = file.toAbsolutePath().getParent();
      Path beside = Files.createTempFile(folder, ".ringout", ".part");
      try {
        Files.writeString(beside, text, StandardCharsets.UTF_8);
        Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(beside);
      }
      return ExitCode.DONE;
    } catch (FileAlreadyExistsException e) {
      err.println("ringout: " + file + " exists; write over it with --force");
    } catch (IOException e) {
      err.println("ringout: " + file + " can't be written: " + e.getMessage());
    }
    return ExitCode.CANNOT_WRITE;
  }
}

package dev.ringout.cli;

import dev.ringout.jobs.Answer;
import dev.ringout.text.Look;
import dev.ringout.text.WrittenText;
import dev.ringout.units.Text;
import dev.ringout.words.ProblemText;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Where results and messages go.
 *
 * @param terminal whether results go to a terminal, which may show colours
 * @param width signs in a line of the terminal
 */
record Output(PrintStream out, PrintStream err, boolean terminal, int width) {
  /** How pages look: colours are shown on a terminal alone, and not against NO_COLOR. */
  Look look() {
    return new Look(terminal && System.getenv("NO_COLOR") == null, width);
  }

  /** Says that a result was written, and what is in it. */
  void written(Path file, String what) {
    out.print(WrittenText.write(Text.visible("" + file), what, look()));
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
   * Writes a file beside its place and renames it.
   *
   * @return {@link ExitCode#DONE}, or {@link ExitCode#CANNOT_WRITE} with the reason said
   */
  int write(Path file, Content content, boolean overExisting) {
    return write(List.of(ResultFile.file(file, content)), overExisting);
  }

  /**
   * Writes a folder beside its place and renames it.
   *
   * @return {@link ExitCode#DONE}, or {@link ExitCode#CANNOT_WRITE} with the reason said
   */
  int writeFolder(Path folder, FolderContent content, boolean overExisting) {
    return write(List.of(ResultFile.folder(folder, content)), overExisting);
  }

  /**
   * Writes results that belong together: each is made in its order, and only when all are whole are
   * they put in their places, in turn with every other run that puts the same there.
   *
   * @return {@link ExitCode#DONE}, or {@link ExitCode#CANNOT_WRITE} with the reason said
   */
  int write(List<ResultFile> results, boolean overExisting) {
    Path at = results.get(0).to();
    try {
      for (ResultFile result : results) {
        at = result.to();
        result.make(overExisting);
      }
      if (results.size() == 1) {
        results.get(0).put(overExisting);
      } else {
        Turn.at(results.get(0).to(), () -> putAll(results, overExisting));
      }
      return ExitCode.DONE;
    } catch (FileAlreadyExistsException e) {
      err.println("ringout: " + e.getFile() + " exists; write over it with --force");
    } catch (IOException e) {
      err.println("ringout: " + at + " can't be written: " + why(e, at));
    } finally {
      results.forEach(ResultFile::clean);
    }
    return ExitCode.CANNOT_WRITE;
  }

  private static void putAll(List<ResultFile> results, boolean overExisting) throws IOException {
    for (ResultFile result : results) {
      result.checkPlace(overExisting);
    }
    for (ResultFile result : results) {
      result.put(overExisting);
    }
  }

  /** The reason, told of the folder that the user named and not of a file that he never saw. */
  private static String why(IOException e, Path to) {
    Path folder = to.toAbsolutePath().normalize().getParent();
    if (e instanceof AccessDeniedException) {
      return "nothing may be written in the folder " + folder + " (permission denied)";
    }
    if (folder != null && !Files.exists(folder)) {
      return "there is no folder " + folder;
    }
    if (folder != null && !Files.isDirectory(folder)) {
      return folder + " is not a folder";
    }
    if (e instanceof FileSystemException failed && failed.getReason() != null) {
      return failed.getReason();
    }
    return String.valueOf(e.getMessage());
  }
}
